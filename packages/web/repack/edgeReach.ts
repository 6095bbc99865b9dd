import type { BedPlace } from '@fettle/drawing/sectionPlaces.ts';
import type { Box } from '@fettle/engine/families/layout.ts';
import { isUpright } from './hand.ts';

/** A stretch of the sheet from one place to another, mm. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

const across = ({ x, width }: Box): Stretch => ({ from: x, to: x + width });
const down = ({ y, height }: Box): Stretch => ({ from: y, to: y + height });

const meets = (one: Stretch, other: Stretch): boolean => one.from < other.to && other.from < one.to;

/** Lines that touch may lie apart by what rounding leaves, mm. */
const touchMm = 1e-6;

/** How far beyond an edge another bed lies, with the third of it that may be reached into; without one, any distance. */
function roomBeyond(bed: BedPlace, beds: readonly BedPlace[]): number {
  const upright = isUpright(bed.chamber);
  const [along, beside] = upright ? [down, across] : [across, down];
  const here = along(bed.box);
  const rooms = beds.flatMap(({ box }) => {
    const there = along(box);
    const gap = upright ? here.from - there.to : there.from - here.to;
    const isBeyond = box !== bed.box && gap >= -touchMm && meets(beside(box), beside(bed.box));
    return isBeyond ? [gap + (there.to - there.from) / 3] : [];
  });
  return Math.min(...rooms);
}

/**
 * The part of the sheet by which the free edge of a bed can be taken: as wide as is wanted, mm, but never more than a
 * third of the bed on either side of it, so that each bed can still be taken by its middle. Where one side has less
 * room, the other gives what it has.
 */
export function edgeReach(bed: BedPlace, beds: readonly BedPlace[], wantedMm: number): Box {
  const { box, chamber } = bed;
  const upright = isUpright(chamber);
  const inward = Math.min(wantedMm / 2, (upright ? box.height : box.width) / 3);
  const beyond = Math.max(0, Math.min(wantedMm - inward, roomBeyond(bed, beds)));
  const wide = inward + beyond;
  return upright
    ? { x: box.x, y: box.y - beyond, width: box.width, height: wide }
    : { x: box.x + box.width - inward, y: box.y, width: wide, height: box.height };
}
