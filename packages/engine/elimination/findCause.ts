import { flowDoubtRatio } from '../assessment/findings/measured.ts';
import type { Model } from '../model/model.ts';
import { type Cause, causes } from './causes.ts';
import { type Faults, type FaultyFilter, faultyFilter, flowUnder } from './faultyFilter.ts';
import { type RankedQuestion, rankedQuestions } from './questions.ts';
import type { FadedReadings } from './readings.ts';
import { type Suspects, suspectsOf } from './suspects.ts';
import { isThere } from './weigh.ts';

/** A figure with the ends of the range that holds it four times in five. */
export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** How likely one cause is, and what it takes. */
export interface CauseShare {
  readonly cause: Cause;
  /** Chance that it takes the most flow of all. */
  readonly mainShare: number;
  /** Chance that it is there at all. */
  readonly presentShare: number;
  /** Flow, m³/s, that curing it alone would leave, where it is there; absent where it never is. */
  readonly flowCuredM3PerS?: Ranged;
}

/** What lies behind a faded flow, as far as the readings tell. */
export interface FadedFlow {
  /** Flow in order, with clean media, as computed, m³/s. */
  readonly cleanFlowM3PerS: number;
  /** Flow now over flow in order, as read; over the computed one where nobody measured that. */
  readonly leftRatio: number;
  /** Most likely main cause first; causes that this construction cannot have are left out. */
  readonly causes: readonly CauseShare[];
  /** Best question first; the first is the one to ask. */
  readonly questions: readonly RankedQuestion[];
  /** False where no set of these causes comes near to what was measured: something else, or a reading, is wrong. */
  readonly explained: boolean;
  /** `not` where the flow is hardly less than in order, `back` where what was done has brought it back. */
  readonly faded: 'yes' | 'not' | 'back';
  /** Effective number of sets of faults that fit: shares are known to about one over its root. */
  readonly effective: number;
}

/** Beyond three standard doubts the best set of faults does not explain what was measured. */
const EXPLAINED_WITHIN = 9;
/** A flow counts as back, and as not faded at all, from this share of what it was, where that was measured. */
const BACK_FROM = 0.93;

/**
 * The same where the flow in order is only computed: what an assessment of the same job says agrees with what was
 * measured has not faded, for the difference may be the model's.
 */
const backFrom = (model: Model, { flowBefore, flowNow }: FadedReadings, before: number): number =>
  flowBefore === undefined
    ? Math.min(BACK_FROM, 1 - flowDoubtRatio(model) - flowNow.doubt / before)
    : BACK_FROM;

const rangeOf = (values: readonly number[]): Ranged => {
  const rising = values.toSorted((a, b) => a - b);
  const at = (share: number): number => rising[Math.floor(share * (rising.length - 1) + 0.5)]!;
  return { value: at(0.5), low: at(0.1), high: at(0.9) };
};

/** Flow under each of the suspects with one cause cured, in the order of `causes`; NaN where it is not there. */
const curedFlows = (filter: FaultyFilter, { kept }: Suspects): readonly (readonly number[])[] => {
  const left: Faults = new Float64Array(causes.length);
  return kept.map((faults) =>
    causes.map((cause, place) => {
      if (!isThere(faults, cause)) return Number.NaN;
      left.set(faults);
      left[place] = Number.NaN;
      return flowUnder(filter, left);
    }),
  );
};

/** The cause whose cure brings back most; undefined where there is none. */
const mainCauseOf = (flows: readonly number[]): Cause | undefined => {
  let main: Cause | undefined;
  let most = Number.NEGATIVE_INFINITY;
  flows.forEach((flow, place) => {
    if (flow > most) [most, main] = [flow, causes[place]];
  });
  return main;
};

const sharesOf = (
  filter: FaultyFilter,
  flows: readonly (readonly number[])[],
  main: readonly Cause[],
): CauseShare[] =>
  causes
    .filter((cause) => filter.possible.has(cause))
    .map((cause) => {
      const place = causes.indexOf(cause);
      const present = flows.map((row) => row[place]!).filter((flow) => !Number.isNaN(flow));
      return {
        cause,
        mainShare: main.filter((one) => one === cause).length / main.length,
        presentShare: present.length / flows.length,
        ...(present.length === 0 ? {} : { flowCuredM3PerS: rangeOf(present) }),
      };
    })
    .toSorted((a, b) => b.mainShare - a.mainShare);

/** Suspects under which anything is wrong at all, each with its main cause. */
const withMain = (filter: FaultyFilter, suspects: Suspects) => {
  const flows = curedFlows(filter, suspects);
  const rows = flows.flatMap((row, place) => {
    const main = mainCauseOf(row);
    return main === undefined ? [] : [{ row, main, faults: suspects.kept[place]! }];
  });
  return {
    flows: rows.map(({ row }) => row),
    main: rows.map(({ main }) => main),
    suspects: { ...suspects, kept: rows.map(({ faults }) => faults) },
  };
};

/**
 * Likely causes of a faded flow, by elimination: sets of faults are put into the filter's own network, and those that
 * go with all readings are kept. The shares start from what is usual (from memory, see `causeFacts`) and are moved by
 * the readings alone.
 *
 * @param model the filter with its packing; the packing's order and dirt count
 * @param usualShutoffM shut-off head in order as the job has it, m
 * @returns causes ranked, and the questions that would settle most; the same each time
 */
export const findCause = (model: Model, readings: FadedReadings, usualShutoffM: number): FadedFlow => {
  const filter = faultyFilter(model, readings.sinceCleanedS);
  const found = suspectsOf({ filter, readings, usualShutoffM });
  const { flows, main, suspects } = withMain(filter, found);
  const before = readings.flowBefore?.value ?? filter.cleanFlowM3PerS;
  const leftRatio = readings.flowNow.value / before;
  const lastRatio = (readings.done.at(-1)?.flowAfter ?? readings.flowNow).value / before;
  const isBack = backFrom(model, readings, before);
  const faded = leftRatio >= isBack ? 'not' : lastRatio >= isBack ? 'back' : 'yes';
  const asking = { filter, readings, suspects, main };
  return {
    cleanFlowM3PerS: filter.cleanFlowM3PerS,
    leftRatio,
    causes: faded === 'not' || main.length === 0 ? [] : sharesOf(filter, flows, main),
    questions: faded === 'yes' && main.length > 0 ? rankedQuestions(asking) : [],
    explained: found.misfit <= EXPLAINED_WITHIN,
    faded,
    effective: found.effective,
  };
};
