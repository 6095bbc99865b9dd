import { type Cause, causes, type Sign, signs } from './causes.ts';
import { type Faults, type FaultyFilter, flowUnder, speedUnder } from './faultyFilter.ts';
import type { FadedReadings } from './readings.ts';
import type { Suspects } from './suspects.ts';
import { LOOK_MINUTES, type Question, SHUTOFF_MINUTES, type Trial, trialFacts, trials } from './trials.ts';
import { curedInto, signChance } from './weigh.ts';

/** A question, and how well its answer would tell the causes apart. */
export interface RankedQuestion {
  readonly question: Question;
  /** Share of what is open about the main cause that the answer settles on average, 0 to 1. */
  readonly settles: number;
  readonly minutes: number;
}

/** Standard doubt of a flow or head that is measured at the bench, in its logarithm; common practice, no source. */
const READING_DOUBT = 0.04;
/** Answers are told apart in strips this wide: half a standard doubt. */
const STRIP = READING_DOUBT / 2;
/** Nothing is told apart below this share of the flow. */
const LEAST_RATIO = 0.02;

const entropy = (shares: Iterable<number>): number => {
  let sum = 0;
  for (const share of shares) if (share > 0) sum -= share * Math.log2(share);
  return sum;
};

/** Entropy of the main cause, bits. */
export const openBits = (main: readonly Cause[]): number =>
  entropy(causes.map((cause) => main.filter((one) => one === cause).length / main.length));

/**
 * Information, bits, that an answer gives on the main cause: what is open before less what is open after, on average.
 *
 * @param chances by strip of the answer and by cause: joint shares, together 1
 */
const informationOf = (chances: readonly Float64Array[]): number => {
  const ofCause = causes.map((_, place) => chances.reduce((sum, strip) => sum + strip[place]!, 0));
  const ofStrip = chances.map((strip) => strip.reduce((sum, share) => sum + share, 0));
  return entropy(ofCause) + entropy(ofStrip) - entropy(chances.flatMap((strip) => [...strip]));
};

/** Joint shares of strips and causes of an answer that is read as a logarithm with `READING_DOUBT`. */
const jointShares = (answers: readonly number[], main: readonly Cause[]): Float64Array[] => {
  const least = Math.min(...answers) - 4 * READING_DOUBT;
  const count = Math.ceil((Math.max(...answers) + 4 * READING_DOUBT - least) / STRIP) + 1;
  const strips = Array.from({ length: count }, () => new Float64Array(causes.length));
  const reach = Math.ceil((4 * READING_DOUBT) / STRIP);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, place) =>
    Math.exp(-0.5 * (((place - reach) * STRIP) / READING_DOUBT) ** 2),
  );
  const total = bell.reduce((sum, height) => sum + height, 0) * answers.length;
  answers.forEach((answer, place) => {
    const middle = Math.round((answer - least) / STRIP);
    const cause = causes.indexOf(main[place]!);
    bell.forEach((height, offset) => {
      const strip = strips[middle + offset - reach];
      if (strip !== undefined) strip[cause] = strip[cause]! + height / total;
    });
  });
  return strips;
};

const ofLook = (suspects: Suspects, main: readonly Cause[], sign: Sign): number => {
  const seen = new Float64Array(causes.length);
  const unseen = new Float64Array(causes.length);
  suspects.kept.forEach((faults, place) => {
    const chance = signChance(faults, sign) / suspects.kept.length;
    const cause = causes.indexOf(main[place]!);
    seen[cause] = seen[cause]! + chance;
    unseen[cause] = unseen[cause]! + 1 / suspects.kept.length - chance;
  });
  return informationOf([seen, unseen]);
};

/** What is asked of: the filter, what was read of it, and what goes with that. */
export interface Asking {
  readonly filter: FaultyFilter;
  readonly readings: FadedReadings;
  readonly suspects: Suspects;
  /** The main cause under each of the suspects. */
  readonly main: readonly Cause[];
}

const doneTrials = ({ readings }: Asking): readonly Trial[] => readings.done.map(({ trial }) => trial);

/** Flow under each of the suspects once these trials are done, m³/s; a filter that gives nothing counts a little. */
const flowsAfter = ({ filter, suspects }: Asking, done: readonly Trial[]): number[] => {
  const left: Faults = new Float64Array(causes.length);
  const least = LEAST_RATIO * filter.cleanFlowM3PerS;
  return suspects.kept.map((faults) => Math.max(least, flowUnder(filter, curedInto(left, faults, done))));
};

const ofTrial = (asking: Asking, trial: Trial, before: readonly number[]): number => {
  const after = flowsAfter(asking, [...doneTrials(asking), trial]);
  const answers = after.map((flow, place) => Math.log(flow / before[place]!));
  return informationOf(jointShares(answers, asking.main));
};

const ofShutoff = (asking: Asking): number => {
  const left: Faults = new Float64Array(causes.length);
  const done = doneTrials(asking);
  const answers = asking.suspects.kept.map(
    (faults) => 2 * Math.log(speedUnder(curedInto(left, faults, done))),
  );
  return informationOf(jointShares(answers, asking.main));
};

const openQuestions = (asking: Asking): RankedQuestion[] => {
  const { filter, readings, suspects, main } = asking;
  const done = doneTrials(asking);
  const cured = done.flatMap((trial) => trialFacts[trial].cures);
  const looks = signs
    .filter((sign) => readings.signs[sign] === undefined && done.length === 0)
    .map((sign) => ({
      question: { kind: 'look', sign } as const,
      settles: ofLook(suspects, main, sign),
      minutes: LOOK_MINUTES,
    }));
  const before = flowsAfter(asking, done);
  const tries = trials
    .filter((trial) =>
      trialFacts[trial].cures.some((cause) => filter.possible.has(cause) && !cured.includes(cause)),
    )
    .filter((trial) => {
      const { after } = trialFacts[trial];
      return after === undefined || done.includes(after);
    })
    .map((trial) => ({
      question: { kind: 'trial', trial } as const,
      settles: ofTrial(asking, trial, before),
      minutes: trialFacts[trial].minutes,
    }));
  const lifts = filter.compiled.model.filter.outlet !== undefined && readings.shutoffNow === undefined;
  const shutoff = lifts
    ? [{ question: { kind: 'shutoff' } as const, settles: ofShutoff(asking), minutes: SHUTOFF_MINUTES }]
    : [];
  return [...looks, ...tries, ...shutoff];
};

/** Questions whose answers settle as much to a tenth are told apart by their time. */
const AS_GOOD = 0.9;

/** Everything that may be asked next, best first: what settles most of the main cause, and of equals the quickest. */
export const rankedQuestions = (asking: Asking): readonly RankedQuestion[] => {
  const open = openBits(asking.main);
  const all = openQuestions(asking).map((one) => ({
    ...one,
    settles: open > 0 ? Math.max(0, one.settles) / open : 0,
  }));
  const ranked: RankedQuestion[] = [];
  const left = all.toSorted((a, b) => b.settles - a.settles);
  while (left.length > 0) {
    const equals = left.filter(({ settles }) => settles >= AS_GOOD * left[0]!.settles);
    const quickest = equals.reduce((best, one) => (one.minutes < best.minutes ? one : best));
    ranked.push(quickest);
    left.splice(left.indexOf(quickest), 1);
  }
  return ranked;
};
