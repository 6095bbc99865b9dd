import { morrillIndex, type ResidenceSummary } from '../../laws/residence/routes.ts';
import { type TracerSample, tracerMoments, tracerQuantile } from '../../laws/residence/tracer.ts';
import type { DyeTest, Model } from '../../model/model.ts';
import { type ResidenceFigures, residenceFigures } from './residence.ts';

/** Figures of a pulse, each with its 95 % half-width. */
export interface DyeFigures {
  readonly measured: ResidenceSummary;
  readonly doubt: ResidenceSummary;
  /** True where the readings end before the colour is gone: mean, variance and t90 are too small then. */
  readonly isCutOff: boolean;
  /** The curve of one pass, its area 1: 1/s by s. */
  readonly curve: readonly TracerSample[];
}

/** A pulse beside what the map says of the same flow. */
export interface DyeComparison extends DyeFigures {
  readonly test: DyeTest;
  /** Absent where the models say nothing about the state that was tested. */
  readonly computed?: ResidenceSummary;
  /** Share of the water that none passes, by mean against volume over flow; below 0 where it stayed longer. */
  readonly deadShare?: number;
}

/** More than this share of the strongest reading at the end is a tail that was cut off (our own choice). */
const CUT_OFF = 0.05;
const TURNS = 12;

/** The curve of the first pass alone: what came back through the vessel is taken off, reading by reading. */
const firstPass = (
  samples: readonly TracerSample[],
  loop: { readonly flowM3PerS: number; readonly waterM3: number },
): readonly TracerSample[] => {
  const perS = loop.flowM3PerS / loop.waterM3;
  const vessel: number[] = [0];
  for (let place = 1; place < samples.length; place += 1) {
    const [before, now] = [samples[place - 1]!, samples[place]!];
    const left = Math.exp(-perS * (now.timeS - before.timeS));
    vessel.push(vessel[place - 1]! * left + ((before.concentration + now.concentration) / 2) * (1 - left));
  }
  const vesselAt = (timeS: number): number => {
    const next = samples.findIndex((sample) => sample.timeS >= timeS);
    if (next <= 0) return timeS < 0 ? 0 : vessel[0]!;
    const [from, to] = [samples[next - 1]!, samples[next]!];
    const share = (timeS - from.timeS) / (to.timeS - from.timeS);
    return vessel[next - 1]! + share * (vessel[next]! - vessel[next - 1]!);
  };
  let once = samples;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const { area } = tracerMoments(once);
    const earlier = once;
    once = samples.map(({ timeS, concentration }) => {
      const back = tracerMoments(
        earlier
          .filter((sample) => sample.timeS <= timeS)
          .map((sample) => ({
            timeS: sample.timeS,
            concentration: sample.concentration * vesselAt(timeS - sample.timeS),
          })),
      ).area;
      return { timeS, concentration: Math.max(0, concentration - back / area) };
    });
  }
  return once;
};

const summaryOf = (samples: readonly TracerSample[]): ResidenceSummary => {
  const { meanS, varianceS2 } = tracerMoments(samples);
  const t10S = tracerQuantile(samples, 0.1);
  const t90S = tracerQuantile(samples, 0.9);
  const t50S = tracerQuantile(samples, 0.5);
  return { meanS, varianceS2, t10S, t50S, t90S, morrillIndex: morrillIndex({ t10S, t90S }) };
};

const combined = (
  keys: readonly (keyof ResidenceSummary)[],
  of: (key: keyof ResidenceSummary) => number,
): ResidenceSummary => Object.fromEntries(keys.map((key) => [key, of(key)])) as unknown as ResidenceSummary;

/**
 * Reduces a pulse to mean, variance and percentiles. Doubts are carried over reading by reading; the clock's is the same
 * for all of them.
 *
 * @param flowM3PerS flow during the test: what came back depends on it
 */
export const dyeFigures = (test: DyeTest, flowM3PerS: number): DyeFigures => {
  const { samples: read, returnsToM3, readingDoubt, timeDoubtS } = test;
  const begun = read[0]!.timeS > 0 ? [{ timeS: 0, concentration: 0 }, ...read] : read;
  const once = (samples: readonly TracerSample[]): readonly TracerSample[] =>
    returnsToM3 === undefined ? samples : firstPass(samples, { flowM3PerS, waterM3: returnsToM3 });
  const samples = once(begun);
  const measured = summaryOf(samples);
  const keys = Object.keys(measured) as (keyof ResidenceSummary)[];
  const changed = samples.map((_, place) =>
    summaryOf(
      samples.map((sample, at) =>
        at === place ? { ...sample, concentration: sample.concentration + readingDoubt } : sample,
      ),
    ),
  );
  const later = summaryOf(samples.map((sample) => ({ ...sample, timeS: sample.timeS + timeDoubtS })));
  const doubt = combined(keys, (key) =>
    Math.hypot(later[key] - measured[key], ...changed.map((one) => one[key] - measured[key])),
  );
  const strongest = Math.max(...samples.map(({ concentration }) => concentration));
  const { area } = tracerMoments(samples);
  return {
    measured,
    doubt,
    isCutOff: samples.at(-1)!.concentration > CUT_OFF * strongest,
    curve: samples.map(({ timeS, concentration }) => ({ timeS, concentration: concentration / area })),
  };
};

/** The filter in the state that was tested; undefined where the model is of another one. */
const testedModel = (model: Model, { state }: DyeTest): Model | undefined => {
  if (state === 'clean-empty') return { ...model, packing: {} };
  if (state === 'as-left') return model.packedState === 'as-left' ? model : undefined;
  return model;
};

/** What the map says at the flow of the test: with the same shares of ways, times go with volume over flow. */
const atFlow = ({ whole, flowM3PerS }: ResidenceFigures, tested: number): ResidenceSummary => {
  const factor = flowM3PerS / tested;
  return {
    meanS: whole.meanS * factor,
    varianceS2: whole.varianceS2 * factor ** 2,
    t10S: whole.t10S * factor,
    t50S: whole.t50S * factor,
    t90S: whole.t90S * factor,
    morrillIndex: whole.morrillIndex,
  };
};

/** Every dye test of a job beside what the map says; those in which nothing was read are left out. */
export const compareDye = (model: Model): DyeComparison[] =>
  (model.dyeTests ?? []).flatMap((test) => {
    if (test.samples.length < 2 || !test.samples.some(({ concentration }) => concentration > 0)) return [];
    const tested = testedModel(model, test);
    const figures = tested && residenceFigures(tested);
    const flowM3PerS = test.flowM3PerS ?? figures?.flowM3PerS;
    if (flowM3PerS === undefined) return [];
    const reduced = { test, ...dyeFigures(test, flowM3PerS) };
    if (figures === undefined) return [reduced];
    const computed = atFlow(figures, flowM3PerS);
    const throughM3 = reduced.measured.meanS * flowM3PerS;
    return [{ ...reduced, computed, deadShare: 1 - throughM3 / figures.volumeM3 }];
  });
