import { describe, expect, it } from 'vitest';
import { spongeFilter } from '../assessment/testing/airModels.ts';
import { familyModels } from '../assessment/testing/familyModels.ts';
import { days, oneBasket, stackCanister } from '../assessment/testing/models.ts';
import type { Model } from '../model/model.ts';
import { type Cause, causes, signs } from './causes.ts';
import { type Faults, type FaultyFilter, faultyFilter, flowUnder, speedUnder } from './faultyFilter.ts';
import { findCause } from './findCause.ts';
import type { FadedReadings, Measured } from './readings.ts';
import type { Question } from './trials.ts';
import { curedInto, signChance } from './weigh.ts';

const SHUTOFF_M = 1.4;
const read = (value: number): Measured => ({ value, doubt: 0.03 * value });

const only = (cause: Cause, share: number): Faults =>
  Float64Array.from(causes, (one) => (one === cause ? share : Number.NaN));

/** How grave each cause is made, so that a third and more of the flow is gone where it can take that much. */
const faultsOf = (filter: FaultyFilter, cause: Cause): Faults | undefined =>
  [0.5, 0.6, 0.7, 0.8, 0.9, 0.99]
    .map((share) => only(cause, share))
    .find((faults) => flowUnder(filter, faults) < 0.7 * filter.cleanFlowM3PerS);

/** What a filter with these faults answers. */
const answered = (
  readings: FadedReadings,
  question: Question,
  { filter, faults }: { readonly filter: FaultyFilter; readonly faults: Faults },
): FadedReadings => {
  switch (question.kind) {
    case 'look':
      return {
        ...readings,
        signs: { ...readings.signs, [question.sign]: signChance(faults, question.sign) > 0.35 },
      };
    case 'shutoff':
      return { ...readings, shutoffNow: read(SHUTOFF_M * speedUnder(faults) ** 2) };
    case 'trial': {
      const done = [...readings.done.map(({ trial }) => trial), question.trial];
      const flow = flowUnder(filter, curedInto(new Float64Array(causes.length), faults, done));
      return { ...readings, done: [...readings.done, { trial: question.trial, flowAfter: read(flow) }] };
    }
  }
};

const firstReadings = ({ cleanFlowM3PerS }: FaultyFilter, flow: number): FadedReadings => ({
  flowNow: read(flow),
  flowBefore: read(cleanFlowM3PerS),
  shutoffBefore: read(SHUTOFF_M),
  signs: {},
  done: [],
});

/** Asks what it is told to ask, until the flow is back or the questions run out. */
const questioned = (model: Model, cause: Cause, most: number) => {
  const filter = faultyFilter(model);
  const faults = faultsOf(filter, cause);
  if (faults === undefined || !filter.possible.has(cause)) return undefined;
  let readings = firstReadings(filter, flowUnder(filter, faults));
  let asked = 0;
  let found = findCause(model, readings, SHUTOFF_M);
  for (; asked < most && found.faded === 'yes' && found.questions.length > 0; asked += 1) {
    readings = answered(readings, found.questions[0]!.question, { filter, faults });
    found = findCause(model, readings, SHUTOFF_M);
  }
  return { found, asked };
};

/** One of each way to the tank: by two hoses, over an edge, within it. */
const traced = familyModels.filter(([family]) =>
  ['canister with a stack of baskets', 'hang-on-back', 'internal box'].includes(family),
);

describe('a flow that has faded', () => {
  it.each(causes.flatMap((cause) => traced.map(([family, model]) => [cause, family, model] as const)))(
    'by %s is traced to it in a %s within five questions',
    (cause, _family, model) => {
      const end = questioned(model, cause, 5);
      // Not every construction has every cause, and some cannot take a third of its flow.
      if (end === undefined) return;
      expect(end.found.explained).toBe(true);
      expect(end.found.causes[0]?.cause).toBe(cause);
      expect(end.found.causes[0]!.mainShare).toBeGreaterThan(0.5);
    },
  );

  it('of an air-lift is traced to its air, and to no impeller', () => {
    const end = questioned(spongeFilter(), 'air-short', 3)!;
    expect(end.found.causes[0]?.cause).toBe('air-short');
    expect(end.found.causes.map(({ cause }) => cause)).not.toContain('impeller-worn');
  });

  it('of an air-lift is laid to its air with less certainty where the law, not a jug, says what it gave before', () => {
    const model = spongeFilter();
    const filter = faultyFilter(model);
    const readings = firstReadings(filter, 0.55 * filter.cleanFlowM3PerS);
    const airShare = (known: FadedReadings): number =>
      findCause(model, known, SHUTOFF_M).causes.find(({ cause }) => cause === 'air-short')!.mainShare;
    const { flowBefore: _, ...computed } = readings;
    expect(airShare(computed)).toBeLessThan(airShare(readings) - 0.05);
    // What the assessment calls an agreement is no fading.
    const { flowBefore: __, ...within } = firstReadings(filter, 0.6 * filter.cleanFlowM3PerS);
    expect(findCause(model, within, SHUTOFF_M).faded).toBe('not');
  });

  it('can be traced in each of these to three causes and more', () => {
    for (const [, model] of traced) {
      const filter = faultyFilter(model);
      const able = causes.filter((cause) => filter.possible.has(cause) && faultsOf(filter, cause));
      expect(able.length).toBeGreaterThanOrEqual(3);
    }
  });

  it('is not laid to media that have an open gap beside them', () => {
    const model = stackCanister();
    const filter = faultyFilter(model);
    const { causes: ranked } = findCause(
      model,
      firstReadings(filter, 0.5 * filter.cleanFlowM3PerS),
      SHUTOFF_M,
    );
    expect(ranked.find(({ cause }) => cause === 'media-clogged')!.mainShare).toBeLessThan(0.05);
  });

  it('is laid to media the less, the shorter since they were cleaned', () => {
    const model = oneBasket([['floss-packed', 60]]);
    const filter = faultyFilter(model);
    const readings = firstReadings(filter, 0.6 * filter.cleanFlowM3PerS);
    const shareAfter = (time: number): number =>
      findCause(model, { ...readings, sinceCleanedS: days(time) }, SHUTOFF_M).causes.find(
        ({ cause }) => cause === 'media-clogged',
      )!.mainShare;
    expect(shareAfter(0.2)).toBeLessThan(0.1);
    expect(shareAfter(120)).toBeGreaterThan(3 * shareAfter(0.2));
  });

  it('that rattles points to the impeller more than one of which that is not known', () => {
    const model = stackCanister();
    const readings = firstReadings(faultyFilter(model), 0.6 * faultyFilter(model).cleanFlowM3PerS);
    const worn = (rattle: boolean): number =>
      findCause(model, { ...readings, signs: { rattle } }, SHUTOFF_M).causes.find(
        ({ cause }) => cause === 'impeller-worn',
      )!.presentShare;
    expect(worn(true)).toBeGreaterThan(2 * worn(false));
  });

  it('that has not faded has no cause and asks nothing', () => {
    const model = stackCanister();
    const filter = faultyFilter(model);
    const found = findCause(model, firstReadings(filter, 0.98 * filter.cleanFlowM3PerS), SHUTOFF_M);
    expect(found).toMatchObject({ faded: 'not', causes: [], questions: [] });
  });

  it('that has risen is explained by nothing', () => {
    const model = stackCanister();
    const filter = faultyFilter(model);
    const found = findCause(model, firstReadings(filter, 1.5 * filter.cleanFlowM3PerS), SHUTOFF_M);
    expect(found.explained).toBe(false);
  });

  it('has shares that sum to one, questions that settle no more than is open, and the same answer twice', () => {
    const model = stackCanister();
    const filter = faultyFilter(model);
    const readings = firstReadings(filter, 0.55 * filter.cleanFlowM3PerS);
    const found = findCause(model, readings, SHUTOFF_M);
    expect(found.causes.reduce((sum, { mainShare }) => sum + mainShare, 0)).toBeCloseTo(1, 9);
    for (const { settles } of found.questions) {
      expect(settles).toBeGreaterThanOrEqual(0);
      expect(settles).toBeLessThanOrEqual(1);
    }
    expect(found.questions.filter(({ question }) => question.kind === 'look')).toHaveLength(signs.length);
    expect(findCause(model, readings, SHUTOFF_M)).toEqual(found);
  });
});
