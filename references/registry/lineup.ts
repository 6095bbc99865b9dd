import { splitCanister } from '@fettle/engine/assessment/testing/models.ts';
import { changeHolding, settle, type TankTerms } from '@fettle/engine/lineup/settle.ts';
import { tankBalance } from '@fettle/engine/lineup/tankBalance.ts';
import { bracketedRoot } from '@fettle/engine/numerics/roots.ts';
import { adapter, type Registry } from './adapter.ts';

/** Work without bound: whatever comes is oxidised at once. */
const ENDLESS_M3_PER_S = 1e3;

const ripe: TankTerms['oxidise'] = (ammonia, nitrite) => ({
  ammonia: ENDLESS_M3_PER_S * ammonia,
  nitrite: ENDLESS_M3_PER_S * nitrite,
});

/** Least amount of bed at which the ammonia of a tank without water changes does not rise for ever. */
const leastBed = (of: { loadKgNPerS: number; ratePerUnit: number }): number => {
  const { loadKgNPerS, ratePerUnit } = of;
  const spare = (amount: number): number => {
    const most = amount * ratePerUnit;
    const oxidise: TankTerms['oxidise'] = (ammonia, nitrite) => ({
      ammonia: (most * ammonia) / (1e-6 + ammonia),
      nitrite: (most * nitrite) / (1e-6 + nitrite),
    });
    const { rising } = settle({ volumeM3: 1, loadKgNPerS, changePerS: 0, oxidise });
    return rising.ammonia > 0 ? -rising.ammonia : 1e-6 * loadKgNPerS;
  };
  return bracketedRoot(spare, { low: 0, high: (10 * loadKgNPerS) / ratePerUnit, tolerance: 1e-6 });
};

export const lineupLaws = {
  'lineup.nitrate': adapter({
    inputs: { loadKgNPerS: 'kg/s', newWaterM3PerS: 'm3/s' },
    result: 'kg/m3',
    compute: ({ loadKgNPerS, newWaterM3PerS }) =>
      settle({ volumeM3: 1, loadKgNPerS, changePerS: newWaterM3PerS, oxidise: ripe }).nitrate,
  }),
  'lineup.newWater': adapter({
    inputs: { loadKgNPerS: 'kg/s', targetKgNPerM3: 'kg/m3' },
    result: 'm3/s',
    compute: ({ loadKgNPerS, targetKgNPerM3 }) =>
      changeHolding({ volumeM3: 1, loadKgNPerS, changePerS: 0, oxidise: ripe }, targetKgNPerM3),
  }),
  'lineup.leastArea': adapter({
    inputs: { loadKgNPerS: 'kg/s', ratePerUnit: 'kg/m2/s' },
    result: 'm2',
    compute: leastBed,
  }),
  'lineup.leastVolume': adapter({
    inputs: { loadKgNPerS: 'kg/s', ratePerUnit: 'kg/m3/s' },
    result: 'm3',
    compute: leastBed,
  }),
  'lineup.alkalinityPerNitrogen': adapter({
    inputs: {},
    result: '1',
    compute: () => {
      const { alkalinity, intervalEnd } = tankBalance(splitCanister());
      return alkalinity.usedKgPerS / intervalEnd.oxidised.ammonia;
    },
  }),
  'lineup.oxygenPerNitrogen': adapter({
    inputs: {},
    result: '1',
    compute: () => {
      const plain = splitCanister();
      // Without water changes no nitrite gets away before it is oxidised on.
      const model = { ...plain, tank: { ...plain.tank, waterChangePerS: 0 } };
      const { oxygen, intervalEnd } = tankBalance(model);
      return oxygen.bacteriaKgPerS / intervalEnd.oxidised.ammonia;
    },
  }),
} satisfies Registry;
