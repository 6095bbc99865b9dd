import { assess } from '@fettle/engine/assessment/assess.ts';
import { beginTank } from '@fettle/engine/assessment/tank/beginTank.ts';
import { forecastTank } from '@fettle/engine/assessment/tank/tankForecast.ts';
import { at } from '@fettle/engine/assessment/tank/tankState.ts';
import { splitCanister } from '@fettle/engine/assessment/testing/models.ts';
import {
  GROWTH_REFERENCE_K,
  growthFigures,
  leastSubstrateRittmannMcCarty1980,
  netGrowthMonod1949,
} from '@fettle/engine/laws/life/growth.ts';
import { temperatureFactor } from '@fettle/engine/laws/life/nitrification.ts';
import { pHByAlkalinityHenderson1908 } from '@fettle/engine/laws/water/carbonate.ts';
import { bubbleReaeration, weirDeficitRatioGameson1957 } from '@fettle/engine/laws/water/reaeration.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { marchStiff } from '@fettle/engine/numerics/stiff.ts';
import { adapter, type Registry } from './adapter.ts';

const DAY_S = 86_400;
/** Share of what its filter carries that a tank is fed while it starts. */
const STARTING_SHARE = 0.4;

/** A tank in water that suits bacteria, with room in its filter. */
const startingTank = (temperatureK: number): Model => {
  const plain = splitCanister();
  const model = { ...plain, tank: { ...plain.tank, temperatureK, pH: 7.5, alkalinityKgPerM3: 0.12 } };
  const feedKgPerS = STARTING_SHARE * assess(model).carries.day.feedKgPerS;
  return { ...model, tank: { ...model.tank, feedKgPerS } };
};

const fromNothing = { days: 300, start: { kind: 'new' }, happenings: [] } as const;

/** Time until ammonia and nitrite are both under target for good, s. */
const startUp = ({ temperatureK }: { temperatureK: number }): number => {
  const { ammonia, nitrite } = forecastTank(startingTank(temperatureK), fromNothing);
  return Math.max(ammonia.backS ?? 0, nitrite.backS ?? 0);
};

const LOW_AMMONIA = 0.25e-3;

/** Time until the ammonia of a new tank is below 0.25 mg/L again, s, within 30 days. */
const ammoniaThrough = (of: { temperatureK: number; risePerS: number }): number => {
  const plain = startingTank(of.temperatureK);
  const { habitat } = beginTank(plain, fromNothing).regime;
  const volumeM3 = (habitat.nitrogenPerFeedRatio * plain.tank.feedKgPerS) / of.risePerS;
  // Fish farms keep their alkalinity up by hand.
  const model = { ...plain, tank: { ...plain.tank, volumeM3, waterChangePerS: 0, alkalinityKgPerM3: 0.4 } };
  const { march } = beginTank(model, fromNothing);
  let lastS = 0;
  marchStiff(march, 30 * DAY_S, ({ to }) => {
    if (march.y[at.ammonia]! > LOW_AMMONIA) lastS = to;
  });
  return lastS;
};

/** Alkalinity that a tank without water changes has lost over the nitrogen that it has oxidised. */
const alkalinityPerNitrogen = (): number => {
  const plain = startingTank(298.15);
  const model = { ...plain, tank: { ...plain.tank, waterChangePerS: 0 } };
  const { leastAlkalinity, ledger } = forecastTank(model, { ...fromNothing, days: 50 });
  return ((model.tank.alkalinityKgPerM3 - leastAlkalinity.value) * model.tank.volumeM3) / ledger.firstKg;
};

/** Oxygen that the bacteria of a ripe tank use over the ammonia that they oxidise all the way. */
const oxygenPerNitrogen = (): number => {
  const tank = beginTank(startingTank(298.15), { ...fromNothing, start: { kind: 'mature' } });
  const { system, march, regime } = tank;
  system.derivative(0, march.y, new Float64Array(system.size));
  const dirt = regime.habitat.working.rates.dirtOxygenKgPerS.reduce((sum, one) => sum + one, 0);
  const oxidised = system.work.first.reduce((sum, one) => sum + one, 0);
  return -(system.work.oxygenKgPerS + dirt) / oxidised;
};

const growing = { growthPerS: '1/s', decayPerS: '1/s', halfKgPerM3: 'kg/m3' } as const;

export const tankLaws = {
  netGrowthMonod1949: adapter({
    inputs: { ...growing, levelKgPerM3: 'kg/m3' },
    result: '1/s',
    compute: netGrowthMonod1949,
  }),
  leastSubstrateRittmannMcCarty1980: adapter({
    inputs: growing,
    result: 'kg/m3',
    compute: leastSubstrateRittmannMcCarty1980,
  }),
  weirDeficitRatioGameson1957: adapter({
    inputs: { fallM: 'm', temperatureK: 'K' },
    result: '1',
    compute: weirDeficitRatioGameson1957,
  }),
  bubbleReaeration: adapter({
    inputs: { airFlowM3PerS: 'm3/s', depthM: 'm', saturatedKgPerM3: 'kg/m3' },
    result: 'm3/s',
    compute: bubbleReaeration,
  }),
  pHByAlkalinityHenderson1908: adapter({
    inputs: { pH: '1', beforeKgPerM3: 'kg/m3', alkalinityKgPerM3: 'kg/m3' },
    result: '1',
    compute: pHByAlkalinityHenderson1908,
  }),
  'tank.firstGrowth': adapter({
    inputs: { temperatureK: 'K' },
    result: '1/s',
    compute: ({ temperatureK }) =>
      growthFigures.ammoniaGrowthPerS.value *
      temperatureFactor({
        temperatureK,
        theta: growthFigures.ammoniaGrowthTheta.value,
        referenceK: GROWTH_REFERENCE_K,
      }),
  }),
  'tank.secondGrowth': adapter({
    inputs: { temperatureK: 'K' },
    result: '1/s',
    compute: ({ temperatureK }) =>
      growthFigures.nitriteGrowthPerS.value *
      temperatureFactor({
        temperatureK,
        theta: growthFigures.nitriteGrowthTheta.value,
        referenceK: GROWTH_REFERENCE_K,
      }),
  }),
  'tank.startUp': adapter({ inputs: { temperatureK: 'K' }, result: 's', compute: startUp }),
  'tank.ammoniaThrough': adapter({
    inputs: { temperatureK: 'K', risePerS: 'kg/m3/s' },
    result: 's',
    compute: ammoniaThrough,
  }),
  'tank.alkalinityPerNitrogen': adapter({ inputs: {}, result: '1', compute: alkalinityPerNitrogen }),
  'tank.oxygenPerNitrogen': adapter({ inputs: {}, result: '1', compute: oxygenPerNitrogen }),
} satisfies Registry;
