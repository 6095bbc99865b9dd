import type { BedShape } from '../../families/bedShape.ts';
import type { Chamber } from '../../families/layout.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { CORNER_LAMINAR_CONSTANT, cornerWay } from '../../laws/hydraulics/corner.ts';
import { perforatedPlateK } from '../../laws/hydraulics/orifice.ts';
import { SLOT_ENTRANCE_K } from '../../laws/hydraulics/slot.ts';
import type { Bed, Laying, OtherSlot } from '../../model/model.ts';
import type { LinkLaw } from '../../network/links.ts';
import { slotLaw } from './linkLaws.ts';

/** A gap may not take more than this of half a chamber's width: something of the bed has to be left. */
const MOST_OF_HALF = 0.9;

/** The chamber's two clear widths across the flow, m. */
const widthsOf = ({ areaM2, widthM }: Chamber): readonly [number, number] => [widthM, areaM2 / widthM];

const gapOf = (chamber: Chamber, { cutGapM = 0 }: Laying): number =>
  Math.min(cutGapM, (MOST_OF_HALF * Math.min(...widthsOf(chamber))) / 2);

/** Area of the four corners that a bag leaves open, m². */
const cornersOf = (chamber: Chamber, { bag }: Laying) => {
  const radiusM = Math.min(bag?.cornerRadiusM ?? 0, (MOST_OF_HALF * Math.min(...widthsOf(chamber))) / 2);
  return cornerWay({ radiusM });
};

/** Shape of a bed as it lies: less wide than its chamber where it was cut small or lies in a bag. */
export const laidShape = (chamber: Chamber, { laying }: Bed, shape: BedShape): BedShape => {
  if (laying === undefined || shape.ring) return shape;
  const [width, depth] = widthsOf(chamber);
  const gap = gapOf(chamber, laying);
  const area = (width - 2 * gap) * (depth - 2 * gap) - 4 * cornersOf(chamber, laying).areaM2;
  const share = area / chamber.areaM2;
  return share === 1
    ? shape
    : { ...shape, volumeM3: shape.volumeM3 * share, faceAreaM2: shape.faceAreaM2 * share };
};

/** A way beside one bed, inside its chamber. */
interface BesideBed {
  /** `cut:<bed>` or `corners:<bed>`. */
  readonly id: string;
  readonly law: LinkLaw;
}

/** What the water finds beside a bed: the slot round a piece cut small, the corners of a bag. */
export const besideBed = (chamber: Chamber, bed: Bed): readonly BesideBed[] => {
  const { laying, depthM } = bed;
  if (laying === undefined || chamber.ring) return [];
  const [width, depth] = widthsOf(chamber);
  const gap = gapOf(chamber, laying);
  const slot = { thicknessM: gap, widthM: 2 * (width + depth) - 4 * gap, lengthM: depthM };
  const { areaM2, hydraulicDiameterM } = cornersOf(chamber, laying);
  const corners: LinkLaw = {
    kind: 'conduit',
    areaM2: 4 * areaM2,
    hydraulicDiameterM,
    lengthM: depthM,
    relativeRoughness: 0,
    minorK: SLOT_ENTRANCE_K,
    linear: 0,
    laminarConstant: CORNER_LAMINAR_CONSTANT,
    friction: 'churchill',
  };
  return [
    ...(gap > 0 ? [{ id: `cut:${bed.id}`, law: slotLaw(slot) }] : []),
    ...(areaM2 > 0 ? [{ id: `corners:${bed.id}`, law: corners }] : []),
  ];
};

/** The mesh of a bag, which the water passes on its way in and out; undefined without a bag. */
export const meshLaw = (shape: BedShape, { laying }: Bed): LinkLaw | undefined => {
  if (laying?.bag === undefined) return undefined;
  const { openFraction } = laying.bag;
  const quadratic = (2 * perforatedPlateK({ openFraction })) / (2 * GRAVITY * shape.faceAreaM2 ** 2);
  return { kind: 'resistance', linear: 0, quadratic };
};

/** Slots past a chamber at lips, end caps and partitions. */
export const slotsPast = (chamber: Chamber, slots: readonly OtherSlot[] | undefined): readonly OtherSlot[] =>
  (slots ?? []).filter((slot) => slot.chamber === chamber.id && slot.thicknessM > 0);
