import type { ValidRange } from '../range.ts';

/** A hollow cylinder of media about a tube, crossed by water from its outer to its inner face or back. */
export interface HollowCylinder {
  /** Radius of its outer face, m; above the inner. */
  readonly outerRadiusM: number;
  /** Radius of its inner face, m; above 0. */
  readonly innerRadiusM: number;
  /** Length along its axis, m; above 0. */
  readonly lengthM: number;
}

export const radialPathThiem1906Range = {
  innerRadiusM: { least: 1e-4, most: 10 },
} as const satisfies ValidRange;

/**
 * What a hollow cylinder has in place of depth over area, for the part of a bed's resistance that goes with the flow.
 *
 * Δp = linear·Q·∫dr/A = linear·Q·ln(r₂/r₁)/(2πL), A = 2πrL.
 *
 * @returns ∫dr/A from face to face, 1/m; the depth over the area at the middle radius where the wall is thin
 * Accuracy: exact for flow at right angles to the axis, the same at every height.
 * @source Thiem 1906, Hydrologische Methoden, Leipzig: steady flow to a well
 */
export const radialPathThiem1906 = (cylinder: HollowCylinder): number => {
  const { outerRadiusM, innerRadiusM, lengthM } = cylinder;
  return Math.log1p((outerRadiusM - innerRadiusM) / innerRadiusM) / (2 * Math.PI * lengthM);
};

export const radialInertiaEngelund1953Range = {
  innerRadiusM: { least: 1e-4, most: 10 },
} as const satisfies ValidRange;

/**
 * What a hollow cylinder has in place of depth over area squared, for the part of a bed's resistance that goes with
 * the square of the flow.
 *
 * Δp = quadratic·Q²·∫dr/A² = quadratic·Q²·(1/r₁ − 1/r₂)/(2πL)², A = 2πrL.
 *
 * @returns ∫dr/A² from face to face, 1/m³
 * Accuracy: as `radialPathThiem1906`.
 * @source Engelund 1953, Trans. Danish Acad. Techn. Sci. 3: two-term flow to a well
 */
export const radialInertiaEngelund1953 = (cylinder: HollowCylinder): number => {
  const { outerRadiusM, innerRadiusM, lengthM } = cylinder;
  return (outerRadiusM - innerRadiusM) / (outerRadiusM * innerRadiusM * (2 * Math.PI * lengthM) ** 2);
};
