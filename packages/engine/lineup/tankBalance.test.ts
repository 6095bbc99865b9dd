import { describe, expect, test } from 'vitest';
import { assess } from '../assessment/assess.ts';
import { compiledOf } from '../assessment/compile.ts';
import { march } from '../assessment/dirt/march.ts';
import { bacteriaShares } from '../assessment/life/bacteria.ts';
import { ammoniaMadeIn, solidsMadeIn } from '../assessment/loads.ts';
import { beginTank } from '../assessment/tank/beginTank.ts';
import { usualTankFigures } from '../assessment/tank/tankFigures.ts';
import { at } from '../assessment/tank/tankState.ts';
import { heldAsStated } from '../assessment/tank/testing/heldAsStated.ts';
import { hangOnBack, splitCanister, stackCanister } from '../assessment/testing/models.ts';
import type { Model, Tank } from '../model/model.ts';
import { beginStiff, marchStiff } from '../numerics/stiff.ts';
import { sideBySide } from './stops.ts';
import { tankBalance } from './tankBalance.ts';
import { settledWith, type TankState, workplaceOf } from './tankState.ts';

const DAY_S = 86_400;

const inTank = (model: Model, tank: Partial<Tank>): Model => ({ ...model, tank: { ...model.tank, ...tank } });

const sponge = { name: 'sponge', flowM3PerS: 200 / 3.6e6, areaM2: 1 };
const withSponge = (model: Model): Model => ({ ...model, otherFilters: [sponge] });

const sum = (parts: { ammonia: number; nitrite: number; nitrate: number }): number =>
  parts.ammonia + parts.nitrite + parts.nitrate;

const nitrogenLost = ({ taken, changed, rising, loadKgNPerS }: TankState): number =>
  Math.abs((sum(taken) + sum(changed) + sum(rising)) / loadKgNPerS - 1);

const workOf = (state: TankState, kind: 'filter' | 'other' | 'walls'): number =>
  state.work.reduce((all, one) => all + (one.kind === kind ? one.ammonia : 0), 0);

describe('nitrogen', () => {
  test.each([
    ['canister of two halves', splitCanister()],
    ['planted', inTank(splitCanister(), { planted: true, planting: 'densely' })],
    ['without water changes', inTank(stackCanister(), { waterChangePerS: 0 })],
    ['overfed', inTank(hangOnBack(), { feedKgPerS: 3e-7 })],
    ['two filters', withSponge(splitCanister())],
    ['cold and acid', inTank(splitCanister(), { temperatureK: 281.15, pH: 6.2 })],
  ])('%s: none is lost or made, with clean and with dirty media', (_, model) => {
    const { clean, intervalEnd, stops } = tankBalance(model);
    for (const state of [clean, intervalEnd, ...stops.flatMap(({ soon, madeUp }) => [soon, madeUp])]) {
      expect(nitrogenLost(state)).toBeLessThan(1e-9);
      const { oxidised, work } = state;
      expect(work.reduce((all, one) => all + one.ammonia, 0) / oxidised.ammonia).toBeCloseTo(1, 12);
    }
  });

  test('plants hold nitrate lower, and denser ones lower still', () => {
    const nitrate = (tank: Partial<Tank>): number => tankBalance(inTank(splitCanister(), tank)).clean.nitrate;
    const levels = [
      nitrate({}),
      nitrate({ planted: true, planting: 'lightly' }),
      nitrate({ planted: true }),
      nitrate({ planted: true, planting: 'densely' }),
    ];
    expect([...levels].sort((one, other) => other - one)).toEqual(levels);
    expect(new Set(levels).size).toBe(4);
  });
});

describe('agreement with what the filter carries', () => {
  test('fed what it carries, the filter alone would stand at the target: walls and changes keep the tank below', () => {
    const model = splitCanister();
    const { carries } = assess(model);
    const { clean } = tankBalance(inTank(model, { feedKgPerS: carries.clean.feedKgPerS }));
    expect(clean.ammonia).toBeLessThan(1e-4);
    expect(workOf(clean, 'filter')).toBeLessThan(carries.clean.oxidisedKgNPerS);
    expect(workOf(clean, 'walls')).toBeGreaterThan(0);
  });
});

describe('agreement with the run in time', () => {
  test.each([
    ['as it is', {}],
    ['planted', { planted: true, planting: 'densely' }],
  ] as const)('%s: where bacteria are as many as the area feeds, both come to the same levels', (_, of) => {
    const model = inTank(splitCanister(), of);
    const compiled = compiledOf(model);
    const marched = march(compiled, solidsMadeIn(compiled), 60 * DAY_S);
    const shares = bacteriaShares(compiled, marched, ammoniaMadeIn(compiled));
    const ripe = { ...shares, cleaningFactor: shares.cleaningFactor.map((one) => (one > 0 ? 1 : 0)) };
    const dirt = marched.atDay;
    const looking = { figures: usualTankFigures, shares: ripe, dirt, caughtKgPerS: 0 };
    const settled = settledWith(workplaceOf(compiled, looking));
    const tank = beginTank(model, { days: 1, start: { kind: 'seeded', share: 1 }, happenings: [] });
    Object.assign(tank.regime, { countsBacteria: false });
    const start = tank.march.y.slice();
    start[at.oxygen] = compiled.water.oxygenKgPerM3;
    const held = heldAsStated(tank);
    const run = beginStiff(held, { time: 0, y: start }, tank.march.closeness);
    marchStiff(run, 3000 * DAY_S);
    expect(run.y[at.ammonia]! / settled.ammonia).toBeCloseTo(1, 4);
    expect(run.y[at.nitrite]! / settled.nitrite).toBeCloseTo(1, 4);
    expect(run.y[at.nitrate]! / settled.nitrate).toBeCloseTo(1, 3);
  });
});

describe('water changes and lime', () => {
  test('the named change holds the nitrate that was asked', () => {
    const target = 5e-3;
    const model = splitCanister();
    const { nitrateHeld } = tankBalance(model, { nitrateTargetKgNPerM3: target });
    const held = tankBalance(inTank(model, { waterChangePerS: nitrateHeld.changePerS }));
    // The share of the solids that changes carry off differs a little too, and with it the dirt that rots.
    expect(held.intervalEnd.nitrate / target).toBeCloseTo(1, 1);
  });

  test('alkalinity falls by 7.14 g for each g of nitrogen, and water changes hold it where that balances', () => {
    const { alkalinity, intervalEnd } = tankBalance(splitCanister());
    const { alkalinityKgPerM3, waterChangePerS, volumeM3 } = splitCanister().tank;
    expect(alkalinity.usedKgPerS / intervalEnd.oxidised.ammonia).toBeCloseTo(7.14, 9);
    const brought = waterChangePerS * (alkalinityKgPerM3 - alkalinity.settlesKgPerM3) * volumeM3;
    expect(brought / alkalinity.usedKgPerS).toBeCloseTo(1, 9);
  });

  test('oxygen settles where what is used is brought', () => {
    const model = splitCanister();
    const { oxygen } = tankBalance(model);
    const { saturatedOxygenKgPerM3, oxygenKgPerM3 } = compiledOf(model).water;
    const supply = oxygen.broughtKgPerS / (saturatedOxygenKgPerM3 - oxygenKgPerM3);
    const used = oxygen.fishKgPerS + oxygen.bacteriaKgPerS + oxygen.dirtKgPerS;
    expect((supply * (saturatedOxygenKgPerM3 - oxygen.settlesKgPerM3)) / used).toBeCloseTo(1, 9);
  });
});

describe('several filters', () => {
  test('one filter alone has nobody to make up for it', () => {
    expect(tankBalance(splitCanister()).stops).toEqual([]);
  });

  test('when one stops ammonia rises, the most before the others have grown', () => {
    const { stops, intervalEnd } = tankBalance(withSponge(splitCanister()));
    expect(stops.map(({ name }) => name)).toEqual([undefined, 'sponge']);
    for (const { soon, madeUp } of stops) {
      expect(madeUp.ammonia).toBeGreaterThan(intervalEnd.ammonia);
      expect(soon.ammonia).toBeGreaterThanOrEqual(madeUp.ammonia * (1 - 1e-6));
      expect(soon.nitrite).toBeGreaterThanOrEqual(madeUp.nitrite * (1 - 1e-6));
    }
  });

  test('a stopped filter leaves the tank as one that was never there', () => {
    const { stops } = tankBalance(withSponge(splitCanister()));
    const spongeStops = stops.find(({ name }) => name === 'sponge')!;
    const still = { ...sponge, areaM2: 0 };
    // The still sponge goes on catching dirt, as a stopped one is taken to.
    const never = tankBalance({ ...splitCanister(), otherFilters: [still] }).intervalEnd;
    expect(spongeStops.madeUp.ammonia / never.ammonia).toBeCloseTo(1, 9);
  });

  test('side by side until nine tenths are there: 2.3 times the recovery time, longer in the cold', () => {
    const recoveryS = 12 * DAY_S;
    expect(sideBySide({ recoveryS, temperatureK: 298.15 }) / DAY_S).toBeCloseTo(27.63, 2);
    expect(sideBySide({ recoveryS, temperatureK: 288.15 })).toBeGreaterThan(2 * 27.63 * DAY_S);
  });
});
