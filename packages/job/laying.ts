import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Laying, OtherSlot } from '@fettle/engine/model/model.ts';
import { sidewaysRatio } from '@fettle/engine/packing/pressing.ts';
import { isMassInRoom } from './beds.ts';
import { acceptedQuantity, type WrittenQuantity } from './schema/fields.ts';
import { slotSchema } from './schema/filter.ts';
import type { JobDocument } from './schema/job.ts';
import { bagSchema, bedSchema, mixedSchema } from './schema/packing.ts';

type DocumentBed = NonNullable<JobDocument['packing']>[string][number];

/** A bed of the document in its place. */
interface BedInPlace {
  readonly bed: DocumentBed;
  readonly chamber: Chamber;
  readonly medium: Medium;
  readonly depthM: number;
  /** Volume as it lies, m³. */
  readonly roomM3: number;
}

const read = (schema: Parameters<typeof acceptedQuantity>[0], written: WrittenQuantity): number =>
  acceptedQuantity(schema, written).value;

/** Volume before over volume as it lies, by mass in a room, or by how much larger it was cut and how far pressed. */
function pressedRatio({ bed, chamber, medium, depthM, roomM3 }: BedInPlace, cutLargerM: number): number {
  const { mass, pressedFrom } = bed;
  if (mass !== undefined && isMassInRoom(bed, medium))
    return read(bedSchema.shape.mass, mass) / (medium.bulkDensityKgPerM3.value * roomM3);
  const sideways = sidewaysRatio(chamber, cutLargerM);
  return sideways * (pressedFrom === undefined ? 1 : read(bedSchema.shape.pressedFrom, pressedFrom) / depthM);
}

/** How a bed lies; undefined where it lies loose from wall to wall. */
export function layingOf(place: BedInPlace): Laying | undefined {
  const { cutGap, mixed, bag, oversize } = place.bed;
  const cutLargerM = oversize === undefined ? 0 : read(bedSchema.shape.oversize, oversize);
  const ratio = pressedRatio(place, cutLargerM);
  const laying: Laying = {
    ...(cutGap === undefined ? {} : { cutGapM: read(bedSchema.shape.cutGap, cutGap) }),
    ...(ratio === 1 ? {} : { pressedRatio: ratio }),
    ...(cutLargerM === 0 ? {} : { cutLargerM }),
    ...(mixed === undefined
      ? {}
      : { mixed: { medium: mixed.medium, share: read(mixedSchema.shape.share, mixed.share) } }),
    ...(bag === undefined
      ? {}
      : {
          bag: {
            openFraction: read(bagSchema.shape.open, bag.open),
            cornerRadiusM: bag.corners === undefined ? 0 : read(bagSchema.shape.corners, bag.corners),
          },
        }),
  };
  return Object.keys(laying).length === 0 ? undefined : laying;
}

/** A lip or a seat is about this wide along the flow where nothing is said, m (common practice, no source). */
const LIP_M = 0.003;

/** The slots past chambers, SI; those past chambers that are not there are left out. */
export function otherSlotsOf(
  slots: NonNullable<JobDocument['filter']['slots']>,
  chambers: readonly Chamber[],
): readonly OtherSlot[] {
  return slots.flatMap((slot, index) => {
    const chamber = chambers.find(({ id }) => id === slot.past);
    if (chamber === undefined) return [];
    const { width, length } = slot;
    return [
      {
        id: `${index + 1}`,
        chamber: chamber.id,
        at: slot.at,
        thicknessM: read(slotSchema.shape.thickness, slot.thickness),
        widthM: width === undefined ? chamber.gap.widthM : read(slotSchema.shape.width, width),
        lengthM: length === undefined ? LIP_M : read(slotSchema.shape.length, length),
      },
    ];
  });
}
