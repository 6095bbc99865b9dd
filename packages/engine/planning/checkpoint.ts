import { MODEL_EDITION } from '../assessment/assess.ts';
import type { Figures } from './score.ts';

/**
 * How far a search got, as plain data that survives a text of JSON: a search looks at candidates in an order
 * that job and options decide alone, so the figures of those assessed are all that a later run needs.
 */
export interface SearchCheckpoint {
  /** Edition of the model that the figures are from; those of another edition are of no use. */
  readonly edition: string;
  /** For each candidate in turn: feed, kg/s; flow, m³/s; cleaning interval, s; solids, kg/m³. */
  readonly figures: readonly number[];
}

const PER_CANDIDATE = 4;

export const checkpointOf = (figures: readonly number[]): SearchCheckpoint => ({
  edition: MODEL_EDITION,
  figures: [...figures],
});

export const figureRow = ({ feedKgPerS, flowM3PerS, intervalS, solidsKgPerM3 }: Figures): number[] => [
  feedKgPerS,
  flowM3PerS,
  intervalS,
  solidsKgPerM3,
];

/** Figures to begin from: none where the checkpoint is of another edition of the model or is not whole. */
export const figuresFrom = (checkpoint: SearchCheckpoint | undefined): readonly number[] => {
  if (checkpoint?.edition !== MODEL_EDITION) return [];
  const { figures } = checkpoint;
  const whole = figures.length % PER_CANDIDATE === 0 && figures.every((figure) => Number.isFinite(figure));
  return whole ? figures : [];
};

/** Figures of the candidate at a place in the order, counted from 0; undefined past the end. */
export const figuresAt = (figures: readonly number[], place: number): Figures | undefined => {
  const [feedKgPerS, flowM3PerS, intervalS, solidsKgPerM3] = figures.slice(
    place * PER_CANDIDATE,
    (place + 1) * PER_CANDIDATE,
  );
  if (
    feedKgPerS === undefined ||
    flowM3PerS === undefined ||
    intervalS === undefined ||
    solidsKgPerM3 === undefined
  )
    return undefined;
  return { feedKgPerS, flowM3PerS, intervalS, solidsKgPerM3 };
};
