import { AIR_LIFT_FACTOR } from '../assessment/findings/measured.ts';
import { type Cause, causeFacts, causes, SHOWN_BY_NOTHING, type Sign, signs } from './causes.ts';
import { type Faults, type FaultyFilter, flowUnder, speedUnder } from './faultyFilter.ts';
import type { FadedReadings, Measured } from './readings.ts';
import { type Trial, trialFacts } from './trials.ts';

/*
 * How well a set of faults goes with what was read. Every reading counts as a ratio to the same filter in order, so
 * that what the model has wrong of the filter as a whole cancels.
 */

/** Standard doubt of a computed ratio of two flows of one filter, in its logarithm; ours, no source. */
const MODEL_DOUBT = 0.05;
/** The same of the computed flow in order, where nobody measured it. */
const COMPUTED_FLOW_DOUBT = 0.13;
/** The same of an air-lift. */
const COMPUTED_LIFT_DOUBT = Math.log(AIR_LIFT_FACTOR) / 2;
/** The same of the power by `powerFactor`, and of a shut-off head in order that nobody measured. */
const POWER_DOUBT = 0.08;
const ASSUMED_HEAD_DOUBT = 0.25;

/** Standard doubt of a measured figure, as a share of it: its half-width stands for two of them. */
const relative = ({ value, doubt }: Measured): number => doubt / 2 / value;

/** A filter that gives nothing at all counts as one that gives this share of its flow: a ratio needs some. */
const LEAST_SHARE = 1e-3;

/** Logarithm of a likelihood of a ratio, but for a constant. */
const logLikelihood = (read: number, expected: number, doubt: number): number =>
  -0.5 * (Math.log(read / expected) / doubt) ** 2;

/** Whether a cause is there. */
export const isThere = (faults: Faults, cause: Cause): boolean =>
  !Number.isNaN(faults[causes.indexOf(cause)]!);

/** The faults that are left after these trials, written into `left`. */
export const curedInto = (left: Faults, faults: Faults, done: readonly Trial[]): Faults => {
  left.set(faults);
  for (const trial of done)
    for (const cause of trialFacts[trial].cures) left[causes.indexOf(cause)] = Number.NaN;
  return left;
};

/** Chance that a sign is there under these faults: each brings it about by itself, and it may be there without any. */
export const signChance = (faults: Faults, sign: Sign): number => {
  let absent = 1 - SHOWN_BY_NOTHING;
  for (const cause of causes) {
    const shows = causeFacts[cause].shows[sign];
    if (shows !== undefined && isThere(faults, cause)) absent *= 1 - shows;
  }
  return 1 - absent;
};

const ofSigns = (faults: Faults, readings: FadedReadings): number => {
  let sum = 0;
  for (const sign of signs) {
    const seen = readings.signs[sign];
    if (seen === undefined) continue;
    const chance = signChance(faults, sign);
    sum += Math.log(seen ? chance : 1 - chance);
  }
  return sum;
};

const ofPower = (faults: Faults, { powerNow, powerBefore }: FadedReadings): number => {
  if (powerNow === undefined || powerBefore === undefined) return 0;
  let expected = 1;
  causes.forEach((cause, place) => {
    const share = faults[place]!;
    if (!Number.isNaN(share)) expected *= causeFacts[cause].powerFactor ** share;
  });
  const doubt = Math.hypot(POWER_DOUBT, relative(powerNow), relative(powerBefore));
  return logLikelihood(powerNow.value / powerBefore.value, expected, doubt);
};

const ofShutoff = (faults: Faults, { shutoffNow, shutoffBefore }: FadedReadings, usualM: number): number => {
  if (shutoffNow === undefined) return 0;
  const before = shutoffBefore?.value ?? usualM;
  const beforeDoubt = shutoffBefore ? relative(shutoffBefore) : ASSUMED_HEAD_DOUBT;
  const doubt = Math.hypot(MODEL_DOUBT, relative(shutoffNow), beforeDoubt);
  return logLikelihood(shutoffNow.value / before, speedUnder(faults) ** 2, doubt);
};

/** What the weighing needs beside the faults. */
export interface Weighing {
  readonly filter: FaultyFilter;
  readonly readings: FadedReadings;
  /** Shut-off head in order, m, as the job has it. */
  readonly usualShutoffM: number;
}

/** How a set of faults goes with the readings. */
export interface Weight {
  /** Logarithm of the likelihood, but for a constant. */
  readonly log: number;
  /** Distance from what was measured: sum of squares, in standard doubts. */
  readonly misfit: number;
}

/** How well faults go with all readings. */
export const weigh = ({ filter, readings, usualShutoffM }: Weighing, faults: Faults): Weight => {
  const { flowNow, flowBefore, done } = readings;
  const shareUnder = (left: Faults): number =>
    Math.max(LEAST_SHARE, flowUnder(filter, left) / filter.cleanFlowM3PerS);
  const share = shareUnder(faults);
  const computedDoubt = filter.airCurves ? COMPUTED_LIFT_DOUBT : COMPUTED_FLOW_DOUBT;
  const beforeDoubt = flowBefore ? relative(flowBefore) : computedDoubt;
  const before = flowBefore?.value ?? filter.cleanFlowM3PerS;
  let measured =
    logLikelihood(flowNow.value / before, share, Math.hypot(MODEL_DOUBT, relative(flowNow), beforeDoubt)) +
    ofPower(faults, readings) +
    ofShutoff(faults, readings, usualShutoffM);
  const left = new Float64Array(causes.length);
  done.forEach(({ flowAfter }, place) => {
    const sofar = done.slice(0, place + 1).map(({ trial }) => trial);
    const after = shareUnder(curedInto(left, faults, sofar));
    const doubt = Math.hypot(MODEL_DOUBT, relative(flowAfter), relative(flowNow));
    measured += logLikelihood(flowAfter.value / flowNow.value, after / share, doubt);
  });
  return { log: measured + ofSigns(faults, readings), misfit: -2 * measured };
};
