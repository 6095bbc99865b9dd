import { differingRun } from '@fettle/job/changes/alike.ts';
import type { BedPosition, WrittenPacking } from './bedEdits.ts';

/**
 * Where a bed lies in a packing that became of another one: others of its chamber may have come, gone or changed.
 *
 * @returns undefined where it was taken out, or put into another chamber
 */
export function positionAfter(
  before: WrittenPacking,
  after: WrittenPacking,
  { chamber, place }: BedPosition,
): BedPosition | undefined {
  const [beds, next] = [before[chamber] ?? [], after[chamber] ?? []];
  const { from, toBefore, toAfter } = differingRun(beds, next);
  if (place < from) return { chamber, place };
  if (place >= toBefore) return { chamber, place: place + toAfter - toBefore };
  const isChanged = toBefore === toAfter && next[place]?.medium === beds[place]?.medium;
  return isChanged ? { chamber, place } : undefined;
}
