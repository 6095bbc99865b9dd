import { spongeFilter } from '../../assessment/testing/airModels.ts';
import { stackCanister } from '../../assessment/testing/models.ts';
import type { Given, Model } from '../../model/model.ts';
import { normalQuantile } from '../../numerics/normal.ts';
import { type RandomStream, randomStream } from '../../numerics/random.ts';
import { doubtOf, type Ranges } from '../doubtOf.ts';
import { drawingOf } from '../draws.ts';
import { uncertainInputs } from '../inputs.ts';
import { type Outcome, type OutcomeName, outcomeOf } from '../outcome.ts';

const DAY_S = 86_400;

/** Filters whose hidden truth is drawn: what is stated of them is off by as much as its doubt says. */
const kinds: readonly (() => Model)[] = [
  () => stackCanister(),
  () =>
    stackCanister({
      'basket-1': [['foam-20ppi', 50]],
      'basket-2': [['ceramic-rings-15mm', 50]],
      'basket-3': [['foam-30ppi', 40]],
    }),
  () => spongeFilter(),
];

const evenly = (random: RandomStream): number => Math.min(1 - 1e-9, Math.max(1e-9, random()));

/** What a technician says of a filter: each figure read with an error, and its doubt. */
const statedOf = (model: Model, random: RandomStream): Model => {
  const read = (place: Pick<Given, 'path' | 'modelPath'>, value: number, size: number): Given => ({
    ...place,
    // Read once: where the truth lies about the reading is as sure as the reading about the truth.
    value: value * size ** (normalQuantile(evenly(random)) / 2),
    unit: 'SI',
    doubt: { kind: 'factor', size },
  });
  const feed = read({ path: 'tank.feed', modelPath: 'tank.feedKgPerS' }, model.tank.feedKgPerS, 1.3);
  const volume = read({ path: 'tank.volume', modelPath: 'tank.volumeM3' }, model.tank.volumeM3, 1.05);
  return {
    ...model,
    tank: { ...model.tank, feedKgPerS: feed.value, volumeM3: volume.value },
    givens: [...model.givens, feed, volume],
  };
};

/** One filter with its truth, and the ranges told of it by one who does not know the truth. */
export interface Hidden {
  readonly truth: Outcome;
  readonly ranges: Ranges;
}

/**
 * A filter whose true numbers are drawn from what is stated of it, and the ranges that are told. In every second one the
 * true flow was timed, to 3 %, and the ranges are those that go with it.
 */
export const hiddenFilter = (seed: number, draws: number): Hidden => {
  const random = randomStream(seed);
  const model = statedOf(kinds[seed % kinds.length]!(), random);
  const inputs = uncertainInputs(model);
  const drawing = drawingOf(model, inputs);
  drawing.put(inputs.map(() => evenly(random)));
  const truth = outcomeOf(drawing.model, {
    constants: drawing.constants,
    dayS: 60 * DAY_S,
    refinement: 1,
  })!;
  const timed = 1 + 0.015 * normalQuantile(evenly(random));
  const told = seed % 2 === 0 ? model : withTimedFlow(model, truth.flowM3PerS * timed, 0.03);
  const { tested, ranges } = doubtOf(told, { draws, seed: seed + 1 });
  return { truth, ranges: tested?.ranges ?? ranges };
};

const withTimedFlow = (model: Model, flowM3PerS: number, doubtRatio: number): Model => ({
  ...model,
  tests: [
    {
      kind: 'timed-volume',
      id: 'jug',
      state: 'cleaned-original',
      flowM3PerS,
      doubtM3PerS: doubtRatio * flowM3PerS,
      repeats: 3,
    },
  ],
});

/** The figures that are counted: what is asked of a filter first. */
const counted: readonly OutcomeName[] = [
  'flowM3PerS',
  'intervalS',
  'intervalEnd.servedM3',
  'clean.feedKgPerS',
];

/** Share of the truths that lie within the ranges told, over so many filters, by figure. */
export const coverage = (filters: number, draws: number): Readonly<Record<string, number>> => {
  const held = Object.fromEntries(counted.map((name) => [name, 0])) as Record<OutcomeName, number>;
  const told = { ...held };
  for (let seed = 0; seed < filters; seed += 1) {
    const { truth, ranges } = hiddenFilter(seed, draws);
    for (const name of counted) {
      const { low, high } = ranges[name];
      // A range that ends at the end of the year is open there.
      if (name === 'intervalS' && high >= 365 * DAY_S && low >= 365 * DAY_S) continue;
      told[name] += 1;
      if (truth[name] >= low && truth[name] <= high) held[name] += 1;
    }
  }
  return Object.fromEntries(counted.map((name) => [name, held[name] / Math.max(1, told[name])]));
};
