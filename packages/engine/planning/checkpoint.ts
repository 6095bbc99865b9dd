import { MODEL_EDITION } from '../assessment/assess.ts';
import type { SearchCheckpoint } from './plan.ts';
import type { Figures } from './score.ts';

const PER_CANDIDATE = 4;

export const checkpointOf = (figures: readonly number[], from = 0): SearchCheckpoint => ({
  edition: MODEL_EDITION,
  figures: figures.slice(from),
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
