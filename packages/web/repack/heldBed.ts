import type { BedPlace } from '@fettle/drawing/sectionPlaces.ts';
import { alike } from '@fettle/job/changes/alike.ts';
import type { History } from '../session/history.ts';
import { type BedPosition, type WrittenPacking, withBedWritten } from './bedEdits.ts';
import { positionAfter } from './followedBed.ts';
import { positionOf } from './moving.ts';

/** A bed that a hand has taken hold of, also while other windows change the packing that it lies in. */
export interface HeldBed {
  /** The bed, with the place at which it lies by now; undefined where it was taken out meanwhile. */
  now(): BedPlace | undefined;
  /** Makes it so deep, if it is there; all pulls are one step. */
  pull(depthM: number): void;
  /** Makes it what it was, as if no hand had been there. */
  putBack(): void;
}

/** The packing that a bed is held in, and its ways back. */
interface Held {
  packing(): WrittenPacking;
  /** What was done when the hand came. */
  readonly before: History;
  /** Takes the step of a name back where it is the last. */
  takeBack(key: string, before: History): void;
  resize(bed: BedPlace, depthM: number, key: string): void;
  change(packing: WrittenPacking, says: string): void;
}

let holds = 0;

/** Takes hold of a bed where it lies now. */
export function heldBed(bed: BedPlace, of: Held): HeldBed {
  holds += 1;
  // Another window of this browser counts its own.
  const key = `hold ${holds} of ${performance.timeOrigin}`;
  let seen = of.packing();
  let at: BedPosition | undefined = positionOf(bed);
  const written = seen[at.chamber]?.[at.place];
  const follow = (): BedPosition | undefined => {
    const next = of.packing();
    at = at && positionAfter(seen, next, at);
    seen = next;
    return at;
  };
  const now = (): BedPlace | undefined => {
    const to = follow();
    return to && { ...bed, place: to.place };
  };
  return {
    now,
    pull: (depthM) => {
      const held = now();
      if (held === undefined) return;
      of.resize(held, depthM, key);
      // What others do next is told apart from this.
      follow();
    },
    putBack: () => {
      of.takeBack(key, of.before);
      // Where another window has done something meanwhile, the bed alone goes back.
      const to = follow();
      if (to === undefined || written === undefined) return;
      if (!alike(seen[to.chamber]?.[to.place], written))
        of.change(withBedWritten(seen, to, written), `leave ${bed.name} as it was`);
    },
  };
}
