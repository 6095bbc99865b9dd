import { bestPowerTest, bestShutoffTest } from '../../model/benchTests.ts';
import type { BenchTest, Model } from '../../model/model.ts';
import { statedShutoffHead } from '../../model/pump.ts';
import { quantity } from '../../wording/facts.ts';
import { said } from '../../wording/said.ts';
import { assess } from '../assess.ts';
import type { Assessment, Carries } from '../assessment.ts';
import { constantFigures } from '../constants.ts';
import { HIDDEN_FROM } from '../intervalEnd.ts';
import { type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** A bench test beside what the models say. */
export interface Comparison {
  readonly test: BenchTest;
  readonly measured: number;
  readonly doubt: number;
  /** Absent where the models say nothing about the state that was tested. */
  readonly computed?: number;
  /**
   * `below-clean`: less than the clean figure, as a dirty filter gives, which contradicts nothing. `below-dirty`: less
   * than with dirty media too, so that dirt in the media does not explain it.
   */
  readonly verdict: 'agrees' | 'differs' | 'below-clean' | 'below-dirty' | 'not-compared';
  /** True where the models go by what was measured, not by what was stated or assumed. */
  readonly used: boolean;
}

type Compared = Omit<Comparison, 'used'>;

/** Until ranges are computed, a computed flow is taken to be this far off, as a share of it (from memory). */
export const COMPUTED_DOUBT = 0.15;

/** Factor (95 %) within which the flow of an air-lift is computed. */
export const AIR_LIFT_FACTOR = constantFigures.airLiftFlowRatio.doubt.size;

/** How far off a computed flow of a filter is taken to be, as a share of it. */
export const flowDoubtRatio = ({ filter }: Pick<Model, 'filter'>): number =>
  filter.pump.curve.kind === 'air-lift' ? 1 - 1 / AIR_LIFT_FACTOR : COMPUTED_DOUBT;

const emptied = (model: Model): Model => ({ ...model, packing: {} });

const compared = (
  test: BenchTest,
  figures: {
    measured: number;
    doubt: number;
    computed: number;
    computedDoubt?: number;
    oneSided?: boolean;
  },
): Compared => {
  const { measured, doubt, computed, computedDoubt = COMPUTED_DOUBT, oneSided } = figures;
  const allowed = doubt + computedDoubt * computed;
  const off = measured - computed;
  if (Math.abs(off) <= allowed) return { test, measured, doubt, computed, verdict: 'agrees' };
  return { test, measured, doubt, computed, verdict: oneSided && off < 0 ? 'below-clean' : 'differs' };
};

/**
 * The flow at the tank with the dirtiest media that are computed: at the end of the cleaning interval or on the day of
 * the comparison, nothing cleaned between. Undefined where still more dirt would slow it further: only where the water
 * goes past a bed that is full, or none gets full in a year, is there an end to what dirt takes.
 */
const dirtyState = ({ carries, cleaning }: Assessment): Carries | undefined => {
  if (cleaning.flowRatio < HIDDEN_FROM) return undefined;
  return carries.day.flowM3PerS < carries.intervalEnd.flowM3PerS ? carries.day : carries.intervalEnd;
};

/** As found a filter is dirty: less than the clean flow is no contradiction unless dirty media give more; more is. */
const compareAsFound = (
  test: Extract<BenchTest, { kind: 'timed-volume' }>,
  model: Model,
  assessment: Assessment,
): Compared => {
  const computed = assessment.dutyPoint.flowM3PerS;
  const computedDoubt = flowDoubtRatio(model);
  const figures = { measured: test.flowM3PerS, doubt: test.doubtM3PerS, computed, computedDoubt };
  const beside = compared(test, { ...figures, oneSided: true });
  const dirtyM3PerS = dirtyState(assessment)?.flowM3PerS;
  if (beside.verdict !== 'below-clean' || dirtyM3PerS === undefined) return beside;
  // Where cleaning alone brought the flow back, what was cleaned away explains it.
  const cameBack = model.tests.some(
    (other) =>
      other.kind === 'timed-volume' &&
      other.state === 'cleaned-original' &&
      compared(other, { ...figures, measured: other.flowM3PerS, doubt: other.doubtM3PerS }).verdict ===
        'agrees',
  );
  const isBelow = compared(test, { ...figures, computed: dirtyM3PerS, oneSided: true }).verdict !== 'agrees';
  return isBelow && !cameBack ? { ...beside, verdict: 'below-dirty' } : beside;
};

const compareFlow = (
  test: Extract<BenchTest, { kind: 'timed-volume' }>,
  model: Model,
  assessment: Assessment,
): Compared => {
  const figures = {
    measured: test.flowM3PerS,
    doubt: test.doubtM3PerS,
    computedDoubt: flowDoubtRatio(model),
  };
  switch (test.state) {
    case 'clean-empty':
      return compared(test, { ...figures, computed: assess(emptied(model)).dutyPoint.flowM3PerS });
    case 'cleaned-original':
      return compared(test, { ...figures, computed: assessment.dutyPoint.flowM3PerS });
    case 'as-found':
      return compareAsFound(test, model, assessment);
    case 'as-left':
      // What goes back is clean, so that too little is as much a contradiction as too much.
      return model.packedState === 'as-left'
        ? compared(test, { ...figures, computed: assessment.dutyPoint.flowM3PerS })
        : { test, measured: figures.measured, doubt: figures.doubt, verdict: 'not-compared' };
  }
};

const chamberVolume = (assessment: Assessment, id: string): number | undefined => {
  const chamber = assessment.layout.chambers.find((one) => one.id === id);
  return chamber ? chamber.areaM2 * chamber.depthM : undefined;
};

const compareOne = (test: BenchTest, model: Model, assessment: Assessment): Compared => {
  switch (test.kind) {
    case 'timed-volume':
      return compareFlow(test, model, assessment);
    case 'power':
      return compared(test, {
        measured: test.powerW,
        doubt: test.doubtW,
        computed: model.filter.pump.powerW,
      });
    case 'shutoff-head': {
      const computed = statedShutoffHead(model.filter.pump);
      const figures = { measured: test.headM, doubt: test.doubtM };
      return computed === undefined
        ? { test, ...figures, verdict: 'not-compared' }
        : compared(test, { ...figures, computed });
    }
    case 'displacement': {
      const computed = chamberVolume(assessment, test.chamber);
      const figures = { measured: test.volumeM3, doubt: test.doubtM3 };
      return computed === undefined
        ? { test, ...figures, verdict: 'not-compared' }
        : compared(test, { ...figures, computed });
    }
  }
};

/** Every bench test beside the figure that the models give for it. */
export const compareTests = (model: Model, assessment: Assessment): Comparison[] => {
  const used = [bestPowerTest(model), bestShutoffTest(model)];
  return model.tests.map((test) => ({
    ...compareOne(test, model, assessment),
    used: used.some((one) => one === test),
  }));
};

/** What kind of quantity each bench test measures. */
export const testDimensions = {
  'timed-volume': 'flow',
  power: 'power',
  'shutoff-head': 'length',
  displacement: 'volume',
} as const;

/** A bench test and the models disagree beyond their doubts. */
export const measuredDiffers: FindingRule = {
  id: 'measured-differs',
  look(context): readonly Sighting[] {
    return compareTests(context.model, context.assessment).flatMap(
      ({ test, measured, computed, verdict }) => {
        if (verdict !== 'differs' || computed === undefined) return [];
        const dimension = testDimensions[test.kind];
        const evidence = {
          test: { name: test.kind },
          state: { name: test.state },
          measured: quantity(measured, dimension),
          computed: quantity(computed, dimension),
        };
        const says =
          computed > 0
            ? said('fault.measured-differs', {
                ...evidence,
                share: { share: Math.abs(measured / computed - 1) },
              })
            : said('fault.measured-differs.from-none', evidence);
        return [{ place: test.id, says, cure: said('cure.measured-differs'), severity: 'marked' as const }];
      },
    );
  },
};

/** A flow timed as found is less than dirt in the media explains. */
export const measuredBelowDirty: FindingRule = {
  id: 'measured-below-dirty',
  look(context): readonly Sighting[] {
    const dirty = dirtyState(context.assessment);
    if (dirty === undefined) return [];
    return compareTests(context.model, context.assessment).flatMap(({ measured, computed, verdict }) => {
      if (verdict !== 'below-dirty' || computed === undefined) return [];
      const evidence = {
        measured: quantity(measured, 'flow'),
        computed: quantity(computed, 'flow'),
        dirty: quantity(dirty.flowM3PerS, 'flow'),
        uncleaned: { spanS: dirty.dayS },
      };
      const { says, cure } = saysAndCure('measured-below-dirty', evidence);
      const isAir = context.model.filter.pump.curve.kind === 'air-lift';
      const sought = isAir ? said('cure.measured-below-dirty.air') : cure;
      return [{ place: 'outlet', says, cure: sought, severity: 'marked' as const }];
    });
  },
};
