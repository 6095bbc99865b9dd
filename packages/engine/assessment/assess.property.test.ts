import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Model } from '../model/model.ts';
import { seededRandom } from '../network/testing/randomNetworks.ts';
import { assess, COMPARISON_DAY, evaluate, MODEL_EDITION } from './assess.ts';
import { compiledJob } from './testing/compiled.ts';
import { familyModels } from './testing/familyModels.ts';
import { days, gramsPerDay, stackCanister, withFilter, withTank } from './testing/models.ts';
import { randomModel } from './testing/randomModels.ts';

const shuffled = <Value>(record: Readonly<Record<string, Value>>, seed: number): Record<string, Value> => {
  const random = seededRandom(seed);
  const keyed = Object.entries(record).map((entry) => [random(), entry] as const);
  return Object.fromEntries(keyed.toSorted(([one], [other]) => one - other).map(([, entry]) => entry));
};

const inAnotherOrder = (model: Model, seed: number): Model => ({
  ...model,
  packing: shuffled(model.packing, seed),
  media: shuffled(model.media, seed + 1),
  filter: { ...model.filter, measurements: shuffled(model.filter.measurements, seed + 2) },
});

/** Where two results differ by more than 1e-12 of the figure, as a path; undefined where nowhere. */
const difference = (one: unknown, other: unknown, path = ''): string | undefined => {
  if (typeof one === 'number' && typeof other === 'number') {
    const same =
      Object.is(one, other) || Math.abs(one - other) <= 1e-12 * Math.max(Math.abs(one), Math.abs(other));
    return same ? undefined : `${path}: ${one} and ${other}`;
  }
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other ? undefined : path;
  const entries = Object.entries(one);
  if (entries.length !== Object.keys(other).length) return path;
  const others = new Map(Object.entries(other));
  for (const [key, value] of entries) {
    const found = difference(value, others.get(key), `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
};

const anySeed = fc.integer({ min: 1, max: 1_000_000 });

describe('an assessment', () => {
  it('does not hang on the order in which packing, media and measurements are written', () => {
    fc.assert(
      fc.property(anySeed, anySeed, (seed, order) => {
        const model = randomModel(seed);
        expect(difference(assess(model), assess(inAnotherOrder(model, order)))).toBeUndefined();
      }),
      { numRuns: 40 },
    );
  });

  it('is the same each time, and when a compiled job is evaluated again', () => {
    for (const [, model] of familyModels) {
      const compiled = compiledJob(model);
      const first = evaluate(compiled);
      expect(difference(first, assess(model))).toBeUndefined();
    }
  });

  it('holds only numbers, with any packing', () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const { layout: _layout, chemical: _chemical, ...figures } = assess(randomModel(seed));
        // JSON turns what is no number into null.
        expect(JSON.stringify(figures)).not.toContain('null');
      }),
      { numRuns: 60 },
    );
  });

  it('leaves its job as it was', () => {
    const model = stackCanister();
    const before = structuredClone(model);
    assess(model);
    expect(model).toEqual(before);
  });

  it('names its edition and is made for 60 days unless another day is asked for', () => {
    const usual = assess(stackCanister());
    expect(usual.edition).toBe(MODEL_EDITION);
    expect(usual.carries.day.dayS).toBe(days(COMPARISON_DAY));
    expect(assess(stackCanister(), { day: 14 }).carries.day.dayS).toBe(days(14));
    expect(usual.carries.clean.dayS).toBe(0);
    expect(usual.carries.intervalEnd.dayS).toBeCloseTo(usual.cleaning.timeS, 3);
  });

  it('says from when the tank is fed more than the filter carries, and leaves the rhythm of cleaning alone', () => {
    const feedKgPerS = gramsPerDay(1.2);
    const fed = assess(withTank(stackCanister(), { feedKgPerS }));
    expect(fed.carries.clean.feedKgPerS).toBeGreaterThan(feedKgPerS);
    expect(fed.carries.day.feedKgPerS).toBeLessThan(feedKgPerS);
    expect(fed.cleaning.overfedFromS).toBeGreaterThan(0);
    expect(fed.cleaning.overfedFromS).toBeLessThan(fed.carries.day.dayS);
    expect(fed.cleaning.endedBy).toBe('bed-flow');
    const little = assess(withTank(stackCanister(), { feedKgPerS: gramsPerDay(0.2) }));
    expect(little.cleaning.overfedFromS).toBeUndefined();
    const much = assess(withTank(stackCanister(), { feedKgPerS: gramsPerDay(10) }));
    expect(much.cleaning.overfedFromS).toBe(0);
  });

  it('does not hang on the depth of the cabinet under a closed loop: hoses apart, heights cancel', () => {
    const usual = assess(stackCanister());
    expect(usual.headBudget.some(({ part }) => part === 'lift')).toBe(false);
    const lifted = assess(withFilter(stackCanister(), { outletLiftM: 0.1 }));
    expect(lifted.dutyPoint.flowM3PerS).toBeLessThan(usual.dutyPoint.flowM3PerS);
  });

  it('says what each way in which dirt works against the bacteria costs, none of them below nothing at the shares’ own sign', () => {
    const { orderShares } = assess(stackCanister());
    expect(orderShares.carbon).toBeGreaterThanOrEqual(0);
    expect(orderShares.cleaning).toBeGreaterThanOrEqual(0);
    expect(orderShares.decay).toBeGreaterThanOrEqual(0);
    const unfed = assess(withTank(stackCanister(), { feedKgPerS: 0 })).orderShares;
    expect(Math.abs(unfed.clogging) + Math.abs(unfed.carbon) + Math.abs(unfed.decay)).toBeLessThan(1e-9);
  });
});
