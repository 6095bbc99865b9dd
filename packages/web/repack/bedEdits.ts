import type { Edit } from '../session/history.ts';

/** The packings of a job document that hands change: as found, and those that follow. */
export type PackingField = 'found' | 'planned' | 'asLeft';

/** A bed as the document has it, its amount in one of the ways of writing it. */
export interface WrittenBed {
  readonly medium: string;
  readonly [amount: string]: unknown;
}

/** Beds by chamber, from the top down or from the pump's side. */
export type WrittenPacking = Readonly<Record<string, readonly WrittenBed[]>>;

/** Where a bed lies: its chamber and its place in it, from 0. */
export interface BedPosition {
  readonly chamber: string;
  readonly place: number;
}

const millimetres = (metres: number): string => `${Math.max(1, Math.round(metres * 1000))} mm`;

/** The beds of a chamber, copied so that they can be changed. */
const bedsIn = (packing: WrittenPacking, chamber: string): WrittenBed[] => [...(packing[chamber] ?? [])];

/** Puts a new bed of a medium into a chamber. */
export const withBedPut = (
  packing: WrittenPacking,
  { chamber, place }: BedPosition,
  bed: { readonly medium: string; readonly depthM: number },
): WrittenPacking => {
  const beds = bedsIn(packing, chamber);
  beds.splice(place, 0, { medium: bed.medium, depth: millimetres(bed.depthM) });
  return { ...packing, [chamber]: beds };
};

/** Moves a bed; `to` counts the places of its chamber as they are before the bed is lifted out. */
export const withBedMoved = (packing: WrittenPacking, from: BedPosition, to: BedPosition): WrittenPacking => {
  const source = bedsIn(packing, from.chamber);
  const [bed] = source.splice(from.place, 1);
  if (bed === undefined) return packing;
  const isWithin = from.chamber === to.chamber;
  const target = isWithin ? source : bedsIn(packing, to.chamber);
  target.splice(isWithin && to.place > from.place ? to.place - 1 : to.place, 0, bed);
  return { ...packing, [from.chamber]: source, [to.chamber]: target };
};

/** Puts two beds each in the place of the other. */
export const withBedsSwapped = (
  packing: WrittenPacking,
  one: BedPosition,
  other: BedPosition,
): WrittenPacking => {
  const [first, second] = [one, other].map(({ chamber, place }) => packing[chamber]?.[place]);
  if (first === undefined || second === undefined) return packing;
  const put = (into: WrittenPacking, { chamber, place }: BedPosition, bed: WrittenBed): WrittenPacking => ({
    ...into,
    [chamber]: bedsIn(into, chamber).with(place, bed),
  });
  return put(put(packing, one, second), other, first);
};

/** Writes a bed anew. */
export const withBedWritten = (
  packing: WrittenPacking,
  { chamber, place }: BedPosition,
  bed: WrittenBed,
): WrittenPacking =>
  packing[chamber]?.[place] === undefined
    ? packing
    : { ...packing, [chamber]: bedsIn(packing, chamber).with(place, bed) };

/** Gives a bed another depth, whatever its amount was written in before. */
export const withBedDepth = (
  packing: WrittenPacking,
  { chamber, place }: BedPosition,
  depthM: number,
): WrittenPacking => {
  const bed = packing[chamber]?.[place];
  if (bed === undefined) return packing;
  const { volume: _, mass: __, fill: ___, pressedFrom: ____, ...kept } = bed;
  return withBedWritten(packing, { chamber, place }, { ...kept, depth: millimetres(depthM) });
};

/** The depth of a bed that was set by hand, m; undefined where its amount is written in another way. */
export const writtenDepthM = (
  packing: WrittenPacking,
  { chamber, place }: BedPosition,
): number | undefined => {
  const written = packing[chamber]?.[place]?.depth;
  const found = typeof written === 'string' ? /^(\d+) mm$/.exec(written)?.[1] : undefined;
  return found === undefined ? undefined : Number(found) / 1000;
};

/** Makes two beds of one, each half as deep. */
export const withBedSplit = (
  packing: WrittenPacking,
  { chamber, place }: BedPosition,
  depthM: number,
): WrittenPacking => {
  const beds = bedsIn(packing, chamber);
  const bed = beds[place];
  const whole = Math.round(depthM * 1000);
  if (bed === undefined || whole < 2) return packing;
  const upper = Math.ceil(whole / 2);
  beds.splice(
    place,
    1,
    { medium: bed.medium, depth: `${upper} mm` },
    { medium: bed.medium, depth: `${whole - upper} mm` },
  );
  return { ...packing, [chamber]: beds };
};

/** Takes a bed out. */
export const withoutBed = (packing: WrittenPacking, { chamber, place }: BedPosition): WrittenPacking => ({
  ...packing,
  [chamber]: (packing[chamber] ?? []).filter((_, each) => each !== place),
});

/** The change of the job that puts a packing in the place of the one before; the state is begun where there is none. */
export const repacking = (
  field: PackingField,
  packing: WrittenPacking,
  of: { readonly says: string; readonly key?: string },
): Edit => ({
  ...of,
  recipe: (draft) => {
    if (field === 'found') draft.packing = packing;
    else draft[field] = { ...Object(draft[field]), packing };
  },
});
