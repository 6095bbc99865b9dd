import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { type BedPosition, type WrittenPacking, withBedMoved, withBedsSwapped } from './bedEdits.ts';
import { landingOf } from './hand.ts';

/** What came of a move: the packing afterwards and where the bed lies in it, or why it stayed. */
export interface Moved {
  readonly says: string;
  readonly packing?: WrittenPacking;
  readonly at?: BedPosition;
}

/** Millimetres as people read them. */
export const millimetres = (metres: number): string => `${Math.round(Math.max(0, metres) * 1000)} mm`;

export const positionOf = ({ chamber, place }: BedPlace): BedPosition => ({ chamber: chamber.id, place });

/** The name of a chamber. */
export const chamberName = (id: string, { chambers }: SectionPlaces): string =>
  chambers.find(({ chamber }) => chamber.id === id)?.chamber.label ?? id;

/** Moves a bed to a position, or swaps it with the one there; tells why where it has no room. */
export function movedBed(
  packing: WrittenPacking,
  move: { readonly bed: BedPlace; readonly to: BedPosition },
  places: SectionPlaces,
): Moved {
  const { bed, to } = move;
  const landing = landingOf(bed, to, places);
  switch (landing?.how) {
    case 'moves': {
      const isBehind = to.chamber === bed.chamber.id && to.place > bed.place;
      return {
        says: `move ${bed.name} to ${chamberName(to.chamber, places)}`,
        packing: withBedMoved(packing, positionOf(bed), to),
        at: { chamber: to.chamber, place: isBehind ? to.place - 1 : to.place },
      };
    }
    case 'swaps': {
      const at = positionOf(landing.with);
      return {
        says: `swap ${bed.name} and ${landing.with.name}`,
        packing: withBedsSwapped(packing, positionOf(bed), at),
        at,
      };
    }
    default: {
      const free = millimetres(landing?.freeM ?? 0);
      return {
        says: `${bed.name} is ${millimetres(bed.depthM)} deep, and ${chamberName(to.chamber, places)} has ${free} free: make it thinner, or take something out there first.`,
      };
    }
  }
}
