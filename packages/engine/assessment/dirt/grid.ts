import { captureCoefficient } from '../../laws/dirt/capture.ts';
import { solidsSizeClasses } from '../../laws/dirt/sizes.ts';
import { radialPathThiem1906 } from '../../laws/hydraulics/radialFlow.ts';
import type { Medium } from '../../model/medium.ts';
import type { CompiledBed, DirtGrid } from '../compiled.ts';
import { type Constants, usualConstants } from '../constants.ts';
import type { WaterState } from '../hydraulics/water.ts';

const CLASSES = 6;
const SMALLEST_M = 2e-6;
const LARGEST_M = 500e-6;

/** A slice is full when deposit fills this share of its pores. */
const FULL_SHARE_OF_PORES = 0.5;

/** Dirt sits mostly behind a bed's face: slices grow from about this thickness, m, by this ratio. */
const FIRST_SLICE_M = 1e-4;
const SLICE_GROWTH = 1.5;

/** Slice thicknesses from the face inward; together the bed's depth. */
export const sliceThicknesses = (depthM: number, refinement: number): number[] => {
  const growth = SLICE_GROWTH ** (1 / refinement);
  const thicknesses: number[] = [];
  let left = depthM;
  for (let next = FIRST_SLICE_M / refinement; left > 1.5 * next; next *= growth) {
    thicknesses.push(next);
    left -= next;
  }
  thicknesses.push(left);
  return thicknesses;
};

/** Area of each slice of a bed, m², and its share of the bed's resistance in creeping flow. */
const sliceShapes = (
  { areaM2, depthM, ring }: CompiledBed,
  thicknesses: readonly number[],
): { readonly areaM2: number; readonly share: number }[] => {
  if (!ring) return thicknesses.map((thickness) => ({ areaM2, share: thickness / depthM }));
  const { lengthM } = ring;
  const whole = radialPathThiem1906(ring);
  let outerRadiusM = ring.outerRadiusM;
  return thicknesses.map((thickness, place) => {
    const last = place === thicknesses.length - 1;
    const innerRadiusM = last ? ring.innerRadiusM : outerRadiusM - thickness;
    const slice = { outerRadiusM, innerRadiusM, lengthM };
    outerRadiusM = innerRadiusM;
    return {
      areaM2: Math.PI * lengthM * (slice.outerRadiusM + innerRadiusM),
      share: radialPathThiem1906(slice) / whole,
    };
  });
};

/** Pieces that rub against each other keep themselves clean: what they catch they give off again. */
const NOTHING_CAUGHT = { steadyPerM: 0, settlingPerS: 0, strainedFraction: 0 };

interface Conditions {
  readonly water: WaterState;
  readonly constants: Constants;
}

const captureOf = (medium: Medium, sizeM: number, { water, constants }: Conditions) =>
  captureCoefficient({
    resistance: medium.resistance,
    sizeM,
    viscosityPaS: water.viscosityPaS,
    stickingFraction: constants.stickingFraction,
    excessDensityKgPerM3: constants.excessDensityKgPerM3,
  });

/**
 * Lays the slices of all beds.
 * @param by.refinement 1 as used; 2 halves every slice, to see what the grid is worth
 */
export const layGrid = (
  beds: readonly CompiledBed[],
  water: WaterState,
  by: { readonly constants?: Constants; readonly refinement?: number } = {},
): DirtGrid => {
  const { constants = usualConstants, refinement = 1 } = by;
  const classes = solidsSizeClasses({
    count: CLASSES,
    smallestM: SMALLEST_M,
    largestM: LARGEST_M,
    exponent: constants.sizeExponent,
  });
  const thicknesses = beds.map((bed) => sliceThicknesses(bed.depthM, refinement));
  const sliceStart = new Int32Array(beds.length + 1);
  thicknesses.forEach((slices, bed) => {
    sliceStart[bed + 1] = sliceStart[bed]! + slices.length;
  });
  const shapes = beds.flatMap((bed, place) => sliceShapes(bed, thicknesses[place]!));
  const capture = beds.flatMap((bed) =>
    classes.map(({ sizeM }) =>
      bed.moved ? NOTHING_CAUGHT : captureOf(bed.medium, sizeM, { water, constants }),
    ),
  );
  const sliceThicknessM = Float64Array.from(thicknesses.flat());
  return {
    classShare: Float64Array.from(classes, ({ massFraction }) => massFraction),
    sliceStart,
    sliceThicknessM,
    sliceAreaM2: Float64Array.from(shapes, ({ areaM2 }) => areaM2),
    sliceKg: Float64Array.from(
      shapes,
      ({ areaM2 }, slice) => constants.depositDryDensityKgPerM3 * areaM2 * sliceThicknessM[slice]!,
    ),
    sliceShare: Float64Array.from(shapes, ({ share }) => share),
    steadyPerM: Float64Array.from(capture, ({ steadyPerM }) => steadyPerM),
    settlingPerS: Float64Array.from(capture, ({ settlingPerS }) => settlingPerS),
    matShare: Float64Array.from(capture, ({ strainedFraction }) => strainedFraction),
    fullFraction: Float64Array.from(beds, (bed) => FULL_SHARE_OF_PORES * bed.voidage),
  };
};
