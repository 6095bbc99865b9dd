import type { BedPosition, WrittenBed, WrittenPacking } from '../repack/bedEdits.ts';

/** The beds of a chamber of a packing that may be of any shape. */
export const bedsOf = (packing: WrittenPacking, chamber: string): readonly WrittenBed[] => {
  const beds: unknown = packing[chamber];
  return Array.isArray(beds) ? beds.map((bed) => Object(bed) as WrittenBed) : [];
};

/** Without one bed; a chamber in which nothing is left goes with it, since the filter may not have it. */
export const withoutBedAt = (packing: WrittenPacking, { chamber, place }: BedPosition): WrittenPacking => {
  const left = bedsOf(packing, chamber).filter((_, each) => each !== place);
  const { [chamber]: _, ...others } = packing;
  return left.length === 0 ? others : { ...packing, [chamber]: left };
};

/** One bed moved behind those of another chamber. */
export const withBedIn = (packing: WrittenPacking, from: BedPosition, chamber: string): WrittenPacking => {
  const bed = bedsOf(packing, from.chamber)[from.place];
  if (bed === undefined) return packing;
  const without = withoutBedAt(packing, from);
  return { ...without, [chamber]: [...bedsOf(without, chamber), bed] };
};
