import { describe, expect, test } from 'vitest';
import { constantNames, usualConstants } from '../assessment/constants.ts';
import { spongeFilter } from '../assessment/testing/airModels.ts';
import { litresPerHour } from '../assessment/testing/modelParts.ts';
import { oneBasket, stackCanister } from '../assessment/testing/models.ts';
import type { Given, Model } from '../model/model.ts';
import { doubtOf } from './doubtOf.ts';
import { drawingOf } from './draws.ts';
import { drawnAt, uncertainInputs } from './inputs.ts';
import { outcomeNames } from './outcome.ts';

const DRAWS = 128;
const canister = stackCanister();

const feedKnown = (model: Model, size: number): Model => {
  const given: Given = {
    path: 'tank.feed',
    modelPath: 'tank.feedKgPerS',
    value: model.tank.feedKgPerS,
    unit: 'kg/s',
    doubt: { kind: 'factor', size },
  };
  return { ...model, givens: [...model.givens, given] };
};

const timed = (model: Model, flowLPerH: number): Model => ({
  ...model,
  tests: [
    {
      kind: 'timed-volume',
      id: 'jug',
      state: 'cleaned-original',
      flowM3PerS: litresPerHour(flowLPerH),
      doubtM3PerS: litresPerHour(5),
      repeats: 3,
    },
  ],
});

const widthOf = ({ low, high }: { low: number; high: number }): number => high - low;

describe('what is drawn', () => {
  test('is a figure itself at its middle, its doubt at 2.5 and 97.5 hundredths, and no share leaves 0 to 1', () => {
    const base = { id: 'x', kind: 'job', place: ['x'], isShare: false } as const;
    const factor = { ...base, value: 3, doubt: { kind: 'factor', size: 2 } } as const;
    expect(drawnAt(factor, 0.5)).toBeCloseTo(3, 9);
    // Two deviations stand for 95 %: 1.96 of them, a fiftieth less.
    expect(drawnAt(factor, 0.975)).toBeCloseTo(6 / 2 ** 0.02, 1);
    const width = { ...base, value: 3, doubt: { kind: 'plus-minus', size: 0.5 } } as const;
    expect(drawnAt(width, 0.025)).toBeCloseTo(2.51, 2);
    const share = { ...width, value: 0.9, isShare: true } as const;
    expect(drawnAt(share, 0.999)).toBe(0.99);
    expect(drawnAt({ ...width, value: 0.1 }, 1e-6)).toBeCloseTo(0.005, 12);
  });

  test.each([
    ['a canister with three baskets', canister],
    ['a sponge on a lift tube', spongeFilter()],
  ])('finds the place of every input of %s, and leaves the job itself as it was', (_, model) => {
    const before = JSON.stringify(model);
    const inputs = uncertainInputs(feedKnown(model, 1.2));
    const drawing = drawingOf(feedKnown(model, 1.2), inputs);
    expect(new Set(inputs.map(({ id }) => id)).size).toBe(inputs.length);
    drawing.put(inputs.map(() => 0.5));
    for (const name of constantNames)
      expect(drawing.constants[name] / usualConstants[name]).toBeCloseTo(1, 9);
    drawing.put(inputs.map(() => 0.9));
    expect(drawing.model.tank.feedKgPerS).toBeGreaterThan(model.tank.feedKgPerS);
    expect(JSON.stringify(model)).toBe(before);
  });
});

describe('the ranges of a job', () => {
  const doubts = doubtOf(canister, { draws: DRAWS });

  test('are the same at every look, and rise from low over the middle to high', () => {
    expect(doubtOf(canister, { draws: DRAWS })).toEqual(doubts);
    for (const name of outcomeNames) {
      const { low, median, high } = doubts.ranges[name];
      expect(low).toBeLessThanOrEqual(median);
      expect(median).toBeLessThanOrEqual(high);
      expect(Number.isNaN(low + high)).toBe(false);
    }
  });

  test('grow with the doubt of the feed where the feed decides, which then stands in front of the list', () => {
    const sure = doubtOf(feedKnown(canister, 1.05), { draws: DRAWS });
    const unsure = doubtOf(feedKnown(canister, 6), { draws: DRAWS });
    const ratio = ({ low, high }: { low: number; high: number }) => high / low;
    expect(ratio(unsure.ranges.intervalS)).toBeGreaterThan(ratio(sure.ranges.intervalS));
    const shareOfFeed = ({ inputs }: typeof sure) => inputs.find(({ id }) => id === 'tank.feed')!.share;
    expect(shareOfFeed(unsure)).toBeGreaterThan(shareOfFeed(sure));
  });

  test('narrow about a flow that was timed, and tell of one that no draw can have', () => {
    const flowLPerH = doubts.ranges.flowM3PerS.median * 3.6e6;
    const { tested, ranges } = doubtOf(timed(canister, 1.02 * flowLPerH), { draws: 512 });
    expect(tested).toMatchObject({ tests: ['jug'], agrees: true });
    expect(widthOf(tested!.ranges.flowM3PerS)).toBeLessThan(0.5 * widthOf(ranges.flowM3PerS));
    const off = doubtOf(timed(canister, 0.4 * flowLPerH), { draws: DRAWS });
    expect(off.tested).toMatchObject({ agrees: false });
    expect(off.tested!.ranges).toEqual(off.ranges);
  });

  test('ask for the measurement that tells most first, and for none that is worth nothing', () => {
    const { measureNext } = doubts;
    expect(measureNext.length).toBeGreaterThan(0);
    const left = measureNext.map(({ widthLeft }) => widthLeft);
    expect(left).toEqual(left.toSorted((one, other) => one - other));
    expect(left.at(-1)).toBeLessThan(0.98);
    expect(measureNext[0]?.kind).toBe('challenge-with-ammonia');
  });

  test('count a packing of nothing as one that carries nothing', () => {
    const { ranges, measureNext } = doubtOf(oneBasket([]), { draws: 32 });
    expect(ranges['intervalEnd.servedM3']).toEqual({ low: 0, median: 0, high: 0 });
    expect(measureNext).toEqual([]);
  });
});
