import { depthsOfVolumes } from '@fettle/engine/families/bedShape.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import { productDoubt } from './doubts.ts';
import type { Draft } from './draft.ts';
import { readField } from './schema/fields.ts';
import { bedSchema } from './schema/packing.ts';

/** A bed as a draft has it. */
export type DraftBed = NonNullable<NonNullable<NonNullable<Draft['packing']>[string]>[number]>;

/** The ways to say how much of a medium a bed has. */
export const amountFields = ['depth', 'volume', 'mass', 'fill'] as const;

type AmountField = (typeof amountFields)[number];

/** The ways that a bed's amount is given in; exactly one is right. */
export function amountsGiven(bed: DraftBed): readonly AmountField[] {
  return amountFields.filter((field) => field in bed);
}

/** Whether a medium gives way, so that its mass and its room are two things. */
export function isPressable(medium: Medium | undefined): boolean {
  return medium?.resistance.law === 'foam' || medium?.resistance.law === 'fibre';
}

/** The room that a mass of foam or floss was put into is said beside it. */
export function isMassInRoom(bed: DraftBed, medium: Medium | undefined): boolean {
  const given = amountsGiven(bed);
  return given.length === 2 && given.includes('mass') && isPressable(medium);
}

/** The field that says how deep a bed is; undefined where none or too many do. */
function depthField(bed: DraftBed, medium: Medium | undefined): AmountField | undefined {
  const given = amountsGiven(bed);
  if (isMassInRoom(bed, medium)) return given.find((field) => field !== 'mass');
  return given.length === 1 ? given[0] : undefined;
}

/** A bed's depth in its chamber, m, with its doubt, and the field that says it. */
interface DepthGiven {
  readonly depthM: number;
  readonly doubt?: Doubt;
  readonly field: AmountField;
}

/** Where a bed lies and what it is of. */
interface BedPlace {
  readonly chamber: Chamber;
  readonly medium: Medium | undefined;
  /** Depth of what lies between it and the tube, m, in a chamber about a tube. */
  readonly behindM: number;
}

/**
 * Depths of the beds of a chamber as listed, m, each with its doubt; `undefined` for one whose amount cannot be read.
 * Only a mass needs the medium to be known.
 */
export function bedDepths(
  listed: readonly { readonly bed: DraftBed; readonly medium: Medium | undefined }[],
  chamber: Chamber,
): readonly (DepthGiven | undefined)[] {
  let behindM = 0;
  // About a tube the last bed listed lies innermost.
  const depths = listed.toReversed().map(({ bed, medium }) => {
    const depth = bedDepth(bed, { chamber, medium, behindM });
    behindM += depth?.depthM ?? 0;
    return depth;
  });
  return depths.toReversed();
}

function bedDepth(bed: DraftBed, place: BedPlace): DepthGiven | undefined {
  const { chamber, medium } = place;
  const field = depthField(bed, medium);
  if (field === undefined) return undefined;
  const reading = readField(bedSchema.shape[field], bed[field]);
  if (!reading.ok) return undefined;
  const density = medium?.bulkDensityKgPerM3;
  if (field === 'mass' && density === undefined) return undefined;
  const volumePerUnit = density === undefined ? 0 : 1 / density.value;
  const depthPerUnit: Readonly<Record<AmountField, number>> = {
    depth: 1,
    volume: depthPerVolume(reading.value, place),
    mass: volumePerUnit * depthPerVolume(reading.value * volumePerUnit, place),
    fill: chamber.depthM,
  };
  const depthM = reading.value * depthPerUnit[field];
  const doubt = doubtOfDepth(field, reading, {
    depthPerUnit: depthPerUnit[field],
    density: density?.doubt,
    of: density?.value ?? 0,
  });
  return { depthM, field, ...(doubt === undefined ? {} : { doubt }) };
}

/** Depth that a volume of media makes, over the volume, 1/m². */
function depthPerVolume(volumeM3: number, { chamber, behindM }: BedPlace): number {
  if (chamber.ring === undefined || !(volumeM3 > 0)) return 1 / chamber.areaM2;
  const innerRadiusM = chamber.ring.innerRadiusM + behindM;
  const about = { ...chamber, ring: { ...chamber.ring, innerRadiusM } };
  return (depthsOfVolumes(about, [volumeM3])[0] ?? 0) / volumeM3;
}

function doubtOfDepth(
  field: AmountField,
  reading: Quantity,
  by: { readonly depthPerUnit: number; readonly density: Doubt | undefined; readonly of: number },
): Doubt | undefined {
  if (field === 'mass') {
    return productDoubt([
      { value: reading.value, doubt: reading.doubt },
      { value: by.of, doubt: by.density },
    ]);
  }
  if (reading.doubt?.kind !== 'plus-minus') return reading.doubt;
  return { kind: 'plus-minus', size: reading.doubt.size * by.depthPerUnit };
}
