import { isUsedUp } from '../model/medium.ts';
import type { Model } from '../model/model.ts';
import { readings, varianceGone } from './narrowing.ts';
import { drawsOf, type Sample } from './sample.ts';

/** Measurements that a technician can take; the language packs say what each is and how it is done. */
export type MeasurementKind =
  | 'time-flow'
  | 'measure-shutoff-head'
  | 'challenge-with-ammonia'
  | 'watch-the-flow-fall'
  | 'weigh-the-feed'
  | 'measure-volume'
  | 'test-the-water'
  | 'measure-the-part'
  | 'find-pore-space';

/** One measurement and what it would be worth. */
export interface Measurement {
  readonly kind: MeasurementKind;
  /** What is measured: path of a field of the job, id of a medium; absent where the kind says all. */
  readonly of?: string;
  /** Doubt of the reading at 95 %, as a factor. */
  readonly doubtRatio: number;
  /** Share of the range's width that is left behind it, on the mean; 0 to 1. */
  readonly widthLeft: number;
}

interface Candidate {
  readonly kind: MeasurementKind;
  readonly of?: string;
  readonly doubtRatio: number;
  readonly values: ArrayLike<number>;
}

/** Doubts of careful readings at the bench, as factors at 95 % (common practice, no source). */
const doubtOfReading: Readonly<Record<MeasurementKind, number>> = {
  'time-flow': 1.03,
  'measure-shutoff-head': 1.03,
  'challenge-with-ammonia': 1.25,
  'watch-the-flow-fall': 1.2,
  'weigh-the-feed': 1.05,
  'measure-volume': 1.03,
  'test-the-water': 1.1,
  'measure-the-part': 1.03,
  'find-pore-space': 1.02,
};

/** Which measurement tells of an input of the job. */
const kindOfField = (id: string): MeasurementKind | undefined => {
  if (id === 'tank.feed') return 'weigh-the-feed';
  if (id === 'tank.volume') return 'measure-volume';
  if (/^tank\.(pH|alkalinity|temperature|oxygen|salinity)$/.test(id)) return 'test-the-water';
  if (id === 'filter.pump.shutoffHead') return 'measure-shutoff-head';
  // What a plate says of the flow is told by timing the flow itself; a life in years no tape tells.
  if (/^filter\.(measurements|hoses|gaps|slots|placing)\b/.test(id) && !id.endsWith('roughness'))
    return 'measure-the-part';
  return undefined;
};

const ofInputs = (sample: Sample): readonly Candidate[] =>
  sample.inputs.flatMap(({ id, kind }, index): readonly Candidate[] => {
    const values = (): Float64Array => drawsOf(sample, index);
    if (kind === 'medium' && id.endsWith('.voidage'))
      return [candidate('find-pore-space', values(), id.slice(0, id.lastIndexOf('.')))];
    const measured = kind === 'job' ? kindOfField(id) : undefined;
    if (measured === undefined) return [];
    return [candidate(measured, values(), measured === 'measure-shutoff-head' ? undefined : id)];
  });

const candidate = (kind: MeasurementKind, values: ArrayLike<number>, of?: string): Candidate => ({
  kind,
  doubtRatio: doubtOfReading[kind],
  values,
  ...(of === undefined ? {} : { of }),
});

const ofFigures = ({ figures }: Sample, model: Model): readonly Candidate[] => {
  const flow = candidate('time-flow', figures.flowM3PerS);
  const falls = candidate('watch-the-flow-fall', figures.intervalS);
  // A packing of nothing but what is thrown away has no bacteria to challenge.
  const lasting = Object.values(model.packing).some((beds) =>
    beds.some(({ medium }) => !isUsedUp(model.media[medium]!)),
  );
  return lasting
    ? [flow, falls, candidate('challenge-with-ammonia', figures.oxidisedCleanKgNPerS)]
    : [flow, falls];
};

/** Below this share of the width taken away a measurement is not worth the water. */
const LEAST_GAIN = 0.02;

/**
 * What to measure next: each measurement by how much it would narrow, on the mean of what it may read, the range of a
 * figure; the one that narrows it most first. Nothing is computed anew: the draws themselves tell.
 *
 * @param of the figure by its draws, in the logarithm where it may be 0 nowhere
 */
export const measureNext = (
  sample: Sample,
  model: Model,
  of: { readonly values: ArrayLike<number>; readonly weights: ArrayLike<number>; readonly seed: number },
): readonly Measurement[] =>
  [...ofFigures(sample, model), ...ofInputs(sample)]
    .map(({ values, ...measurement }, place) => {
      const read = readings(values, { ratio: measurement.doubtRatio, seed: of.seed + place });
      return { ...measurement, widthLeft: Math.sqrt(1 - varianceGone(of, read)) };
    })
    .filter(({ widthLeft }) => widthLeft < 1 - LEAST_GAIN)
    .sort((one, other) => one.widthLeft - other.widthLeft);
