import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { BedPosition } from './bedEdits.ts';

/** A point of the sheet, mm. */
export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

const isIn = ({ x, y }: SheetPoint, box: { x: number; y: number; width: number; height: number }): boolean =>
  x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;

/** Whether the beds of a chamber lie on one another, not behind one another. */
export const isUpright = ({ flow }: Chamber): boolean => flow === 'up' || flow === 'down';

/**
 * Where a bed would come that is let go at a point of the sheet: between the beds of the chamber there, by whose
 * middles it is told on which side of them. Undefined outside every chamber.
 */
export function positionAt(point: SheetPoint, places: SectionPlaces): BedPosition | undefined {
  const found = places.chambers.find(({ box }) => isIn(point, box));
  if (found === undefined) return undefined;
  const { id } = found.chamber;
  const beds = places.beds.filter(({ chamber }) => chamber.id === id);
  const before = beds.filter(({ box, chamber }) =>
    isUpright(chamber) ? box.y + box.height / 2 < point.y : box.x + box.width / 2 < point.x,
  );
  return { chamber: id, place: before.length };
}

/** Depth of a chamber that no bed takes, m. */
export const freeDepthM = (chamber: Chamber, beds: readonly BedPlace[]): number =>
  chamber.depthM -
  beds.filter((bed) => bed.chamber.id === chamber.id).reduce((sum, { depthM }) => sum + depthM, 0);

/** A new bed is this deep where there is room for it, m. */
const usualDepthM = 0.03;

/** How deep a medium that is put into a chamber comes to lie, m; nothing where there is no room for a millimetre. */
export const depthToPut = (chamber: Chamber, beds: readonly BedPlace[]): number | undefined => {
  const room = Math.floor(freeDepthM(chamber, beds) * 1000 + 1e-6) / 1000;
  return room < 0.001 ? undefined : Math.min(usualDepthM, room);
};

/**
 * The depth of a bed whose edge was pulled, whole millimetres within what its chamber leaves beside the other beds.
 * The bed is as it was when it was taken hold of; among the beds it may be drawn deeper already.
 */
export const pulledDepthM = (bed: BedPlace, beds: readonly BedPlace[], byM: number): number => {
  const others = beds.filter(({ chamber, place }) => chamber.id !== bed.chamber.id || place !== bed.place);
  const most = freeDepthM(bed.chamber, others);
  const wanted = Math.round((bed.depthM + byM) * 1000) / 1000;
  return Math.max(0.001, Math.min(wanted, Math.floor(most * 1000 + 1e-6) / 1000));
};

/** What becomes of a bed that is let go somewhere. */
export type Landing =
  | { readonly how: 'moves'; readonly to: BedPosition }
  | { readonly how: 'swaps'; readonly with: BedPlace }
  | { readonly how: 'stays'; readonly chamber: Chamber; readonly freeM: number };

/** Beds lie with this much play, m: a millimetre that was rounded up is no reason to refuse. */
export const playM = 1e-6;

/**
 * Where a bed comes to lie that is let go at a position: there where it has room, else in the place of the bed that
 * it was let go on where each fits into the other's chamber, else where it was.
 */
export function landingOf(
  bed: BedPlace,
  to: BedPosition,
  { chambers, beds }: SectionPlaces,
): Landing | undefined {
  const chamber = chambers.find((each) => each.chamber.id === to.chamber)?.chamber;
  if (chamber === undefined) return undefined;
  const freeM = freeDepthM(chamber, beds);
  if (chamber.id === bed.chamber.id || bed.depthM <= freeM + playM) return { how: 'moves', to };
  const there = beds
    .filter((each) => each.chamber.id === chamber.id)
    .toSorted((one, other) => one.place - other.place);
  const other = there[Math.min(to.place, there.length - 1)];
  const swaps =
    other !== undefined &&
    bed.depthM <= freeM + other.depthM + playM &&
    other.depthM <= freeDepthM(bed.chamber, beds) + bed.depthM + playM;
  return swaps ? { how: 'swaps', with: other } : { how: 'stays', chamber, freeM };
}

/** Places that a bed goes to by the keys: within its chamber, then into the chamber before or behind. */
export function neighbourOf(bed: BedPlace, places: SectionPlaces, step: -1 | 1): BedPosition | undefined {
  const { chambers, beds } = places;
  const here = chambers.findIndex(({ chamber }) => chamber.id === bed.chamber.id);
  const count = (id: string): number => beds.filter(({ chamber }) => chamber.id === id).length;
  const next = bed.place + (step === 1 ? 2 : -1);
  if (next >= 0 && next <= count(bed.chamber.id)) return { chamber: bed.chamber.id, place: next };
  const other = chambers[here + step]?.chamber;
  if (other === undefined) return undefined;
  return { chamber: other.id, place: step === 1 ? 0 : count(other.id) };
}
