import type { Chamber } from '../../families/layout.ts';
import {
  archimedesNumber,
  buoyantHead,
  expandedVoidageRichardsonZaki1954,
  expansionExponentKhanRichardson1989,
  fluidisingVelocityWenYu1966,
  type Grains,
  settlingVelocityHaiderLevenspiel1989,
} from '../../laws/hydraulics/fluidised.ts';
import type { Medium } from '../../model/medium.ts';
import type { LinkLaw } from '../../network/links.ts';
import { pieceOf, voidageOf } from './bed.ts';
import type { WaterState } from './water.ts';

/** Worn sand and crushed grains lie between 0.7 and 0.9 (from memory). */
const SPHERICITY = 0.8;

/** How a bed is carried, or why it is not. */
export interface CarriedBed {
  /** Superficial velocity at which water begins to carry it, m/s; infinite for media that float or barely sink. */
  readonly fluidisingMPerS: number;
  /** Head that carries all of it, m. */
  readonly buoyantHeadM: number;
  /** Its depth at a superficial velocity, m. */
  depthAt(velocityMPerS: number): number;
}

const grainsOf = (medium: Medium, water: WaterState): Grains => ({
  sizeM: pieceOf(medium),
  solidDensityKgPerM3: medium.bulkDensityKgPerM3.value / (1 - voidageOf(medium)),
  densityKgPerM3: water.densityKgPerM3,
  viscosityPaS: water.viscosityPaS,
});

/** A bed of grains in rising water; undefined where its pieces do not sink. */
export const carriedBed = (
  bed: { readonly medium: Medium; readonly depthM: number },
  water: WaterState,
): CarriedBed | undefined => {
  const grains = grainsOf(bed.medium, water);
  if (!(archimedesNumber(grains) > 0)) return undefined;
  const voidage = voidageOf(bed.medium);
  const settling = settlingVelocityHaiderLevenspiel1989({ ...grains, sphericity: SPHERICITY });
  const exponent = expansionExponentKhanRichardson1989(grains);
  return {
    fluidisingMPerS: fluidisingVelocityWenYu1966(grains),
    buoyantHeadM: buoyantHead({ ...grains, voidage, depthM: bed.depthM }),
    depthAt: (velocityMPerS) => {
      const expanded = expandedVoidageRichardsonZaki1954({
        velocityMPerS,
        settlingMPerS: settling,
        exponent,
        settledVoidage: voidage,
      });
      return expanded < 1 ? (bed.depthM * (1 - voidage)) / (1 - expanded) : Number.POSITIVE_INFINITY;
    },
  };
};

/** Points of a carried bed's curve up to where all of it is carried, and beyond that. */
const POINTS = 24;
const BEYOND = 50;

/**
 * A bed that rising water carries: at rest its own law, and from where that reaches the bed's buoyant weight just that
 * weight, whatever flows. As points of a curve whose head is negative: what it takes.
 * @param packed the bed's law at rest
 */
export const carriedBedLaw = (
  packed: { readonly linear: number; readonly quadratic: number },
  buoyantHeadM: number,
): LinkLaw => {
  const { linear, quadratic } = packed;
  // The root of linear·Q + quadratic·Q² = head, in the form that holds where one of the terms vanishes.
  const lifting = (2 * buoyantHeadM) / (linear + Math.sqrt(linear ** 2 + 4 * quadratic * buoyantHeadM));
  const rising = Array.from({ length: POINTS + 1 }, (_, i) => (lifting * i) / POINTS);
  const flows = [...rising, 1.05 * lifting, BEYOND * lifting];
  const taken = flows.map((flow) => Math.min(linear * flow + quadratic * flow ** 2, buoyantHeadM));
  return { kind: 'pump-points', flowM3PerS: flows, headM: taken.map((head) => -head) };
};

/** A medium as it is when it tumbles about in the whole of its chamber: spread out by the share that it fills. */
export const stirredMedium = (medium: Medium, fillFraction: number): Medium => {
  const { resistance } = medium;
  if (resistance.law === 'fibre' || resistance.law === 'foam') return medium;
  const spread = 1 - (1 - resistance.voidage.value) * fillFraction;
  const voidage = { ...resistance.voidage, value: spread };
  if (resistance.law === 'grains') return { ...medium, resistance: { ...resistance, voidage } };
  const surfacePerM = { ...resistance.surfacePerM, value: resistance.surfacePerM.value * fillFraction };
  return { ...medium, resistance: { ...resistance, voidage, surfacePerM } };
};

/** Share of a chamber that its beds fill at rest, 0 to 1. */
export const fillFraction = (chamber: Chamber, beds: readonly { readonly depthM: number }[]): number =>
  Math.min(1, beds.reduce((sum, { depthM }) => sum + depthM, 0) / chamber.depthM);
