import { alike } from '@fettle/job/changes/alike.ts';
import type { History, Step } from './history.ts';

/** All steps of a history in the order in which they were done: those that can be undone, then those undone. */
export type Line = readonly Step[];

/** Where a history stands on its line. */
export interface OnTheLine {
  /** How many of the steps are done. */
  readonly done: number;
}

type Steps = Pick<History, 'past' | 'future'>;

export const lineOf = ({ past, future }: Steps): Line => [...past, ...future];

export const splitAt = (line: Line, done: number): Steps => ({
  past: line.slice(0, done),
  future: line.slice(done),
});

/** The first place at which two lines differ; the length of the shorter where they do not. */
export const sameUntil = (one: Line, other: Line): number => {
  const shorter = Math.min(one.length, other.length);
  const differs = other
    .slice(0, shorter)
    .findIndex((step, place) => step !== one[place] && !alike(step, one[place]));
  return differs < 0 ? shorter : differs;
};
