import { describe, expect, it } from 'vitest';
import { media } from '../../catalogue/media.ts';
import { throatM } from '../../catalogue/throat.ts';
import type { Model } from '../../model/model.ts';
import { EQUALLY_FINE_RATIO } from '../../packing/order.ts';
import type { Compiled } from '../compiled.ts';
import { compiledJob } from '../testing/compiled.ts';
import { familyModels } from '../testing/familyModels.ts';
import { intervalInSteps } from '../testing/fineMarch.ts';
import {
  days,
  gramsPerDay,
  hangOnBack,
  oneBasket,
  stackCanister,
  withMeasurements,
} from '../testing/models.ts';
import { layGrid } from './grid.ts';
import { type March, march, stateAt, YEAR_S } from './march.ts';
import { solveAt } from './step.ts';

/** Solids of a tank fed 1.5 g a day, kg/s. */
const usual = 0.25 * gramsPerDay(1.5);
const marched = (model: Model, made = usual): March => march(compiledJob(model), made, days(60));
const interval = (model: Model, made = usual): number => marched(model, made).ending.timeS;

describe('cleaning interval', () => {
  it.each(familyModels)('of a %s lies beyond a year where nothing is fed', (_family, model) => {
    const { ending } = marched(model, 0);
    expect(ending).toMatchObject({ timeS: YEAR_S, beyond: true, endedBy: 'none' });
    expect(ending.flowRatio).toBeCloseTo(1, 7);
  });

  it.each(familyModels)('of a %s never grows with the feed', (_family, model) => {
    const all = [0.2, 0.5, 1, 2, 5].map((times) => interval(model, times * usual));
    expect(all).toEqual(all.toSorted((a, b) => b - a));
    // Media that rub against each other all the time hold no dirt.
    const holdsDirt = compiledJob(model).beds.some((bed) => !bed.moved);
    expect(all.at(-1)! < all[0]!).toBe(holdsDirt);
  });

  it('is five times shorter where five times as much is fed, or more: up to half rots where there is time', () => {
    const model = oneBasket([['foam-30ppi', 100]]);
    const ratio = interval(model, usual) / interval(model, 5 * usual);
    expect(ratio).toBeGreaterThan(5);
    expect(ratio).toBeLessThan(10);
  });

  it('ends where the water through the bed is down by a third', () => {
    const compiled = compiledJob(oneBasket([['foam-30ppi', 100]]));
    const { ending, clean, atEnd } = march(compiled, usual, days(60));
    const through = (state: March['clean']): number => {
      expect(state.deposit.length).toBeGreaterThan(0);
      return flowAt(compiled, state);
    };
    expect(ending.endedBy).toBe('bed-flow');
    expect(through(atEnd) / through(clean)).toBeCloseTo(2 / 3, 2);
  });

  it('names the bed that is clogged, not another in its chamber', () => {
    const { ending } = marched(
      oneBasket([
        ['foam-10ppi', 60],
        ['floss-packed', 30],
      ]),
    );
    expect(ending.place).toBe('basket-1/2');
  });

  it('of a hang-on-back without a gap ends when its overflow opens', () => {
    const tight = withMeasurements(hangOnBack({ 'slot-1': [['floss-packed', 20]] }), { railGap: 0 });
    const { ending } = marched(tight);
    expect(ending).toMatchObject({ endedBy: 'overflow', place: 'overflow-lip', beyond: false });
  });

  it('is the same each time', () => {
    expect(marched(stackCanister())).toEqual(marched(stackCanister()));
  });

  it('is of no moment where no water runs: a year', () => {
    const compiled = compiledJob({
      ...stackCanister(),
      filter: { ...stackCanister().filter, outletLiftM: 3 },
    });
    expect(march(compiled, usual, days(60)).ending).toMatchObject({ beyond: true, flowRatio: 1 });
  });
});

const flowAt = (compiled: Compiled, state: March['clean']): number => {
  solveAt(compiled, state);
  return compiled.network.flow[compiled.beds[0]!.link]!;
};

const mechanical = Object.values(media)
  .filter(({ stage }) => stage === 'mechanical')
  .toSorted((a, b) => throatM(b) - throatM(a));

/** Pairs of mechanical media of clearly different fineness, coarse first. */
const pairs = mechanical.flatMap((coarse, place) =>
  mechanical
    .slice(place + 1)
    .filter((fine) => throatM(coarse) > EQUALLY_FINE_RATIO * throatM(fine))
    .map((fine) => {
      const layer = (medium: string) => [medium, 40] as const;
      // Listed from the top down; water rises.
      const coarseFirst = interval(oneBasket([layer(fine.id), layer(coarse.id)])) / days(1);
      const fineFirst = interval(oneBasket([layer(coarse.id), layer(fine.id)])) / days(1);
      return { coarse: coarse.id, fine: fine.id, coarseFirst, fineFirst };
    }),
);

describe('coarse before fine', () => {
  it.each(pairs)(
    '$coarse before $fine: $coarseFirst days; the other way round $fineFirst',
    ({ coarseFirst, fineFirst }) => {
      expect(coarseFirst).toBeGreaterThanOrEqual(fineFirst);
    },
  );
});

const shelf = Object.keys(media).flatMap((medium) =>
  [20, 50, 180].map((depthMm) => [medium, depthMm] as const),
);

describe('what the reckoning itself is worth', () => {
  it.each(shelf)('%s %s mm: halving the slices moves the interval by less than 5 %%', (medium, depthMm) => {
    const compiled = compiledJob(oneBasket([[medium, depthMm]]));
    const as = march(compiled, usual, days(60)).ending.timeS;
    const finer = { ...compiled, grid: layGrid(compiled.beds, compiled.water, { refinement: 2 }) };
    expect(Math.abs(march(finer, usual, days(60)).ending.timeS / as - 1)).toBeLessThan(0.05);
  });

  it.each(shelf)(
    '%s %s mm: ten times smaller steps move the interval by less than 5 %%',
    (medium, depthMm) => {
      const compiled = compiledJob(oneBasket([[medium, depthMm]]));
      const as = march(compiled, usual, days(60)).ending.timeS;
      const fine = intervalInSteps(compiled, { madeKgPerS: usual, cuts: 10 });
      expect(Math.abs(as / fine - 1)).toBeLessThan(0.05);
    },
  );
});

describe('states of a march', () => {
  const { passed, atDay, clean } = marched(stackCanister());

  it('start clean and go on in time', () => {
    expect(passed[0]).toBe(clean);
    const times = passed.map(({ timeS }) => timeS);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    expect(atDay.timeS).toBe(days(60));
  });

  it('lie between their neighbours at any time between, in time and in dirt', () => {
    for (const [place, before] of passed.slice(0, -1).entries()) {
      const after = passed[place + 1]!;
      const middle = stateAt(passed, 0.5 * (before.timeS + after.timeS));
      expect(middle.timeS).toBeCloseTo(0.5 * (before.timeS + after.timeS), 3);
      middle.deposit.forEach((value, slice) => {
        expect(value).toBeCloseTo(0.5 * (before.deposit[slice]! + after.deposit[slice]!), 12);
      });
    }
  });

  it('are the first before the start and the last after the end', () => {
    expect(stateAt(passed, 0)).toBe(passed[0]);
    expect(stateAt(passed, 1e12)).toBe(passed.at(-1));
  });
});
