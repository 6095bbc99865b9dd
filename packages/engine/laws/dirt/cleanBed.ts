/** A bed that catches at one rate all through. */
export interface EvenBed {
  /** λ, 1/m; 0 or more. */
  readonly filterCoefficientPerM: number;
  /** Depth passed, m; 0 or more. */
  readonly depthM: number;
}

/**
 * Share of the solids that a clean bed keeps in one pass.
 *
 * 1 − C/C₀ = 1 − e^(−λL), from ∂C/∂z = −λC.
 *
 * @returns share kept, 1; 0 to 1
 * Accuracy: exact for one size and a clean, even bed.
 * @source Iwasaki 1937, J. AWWA 29, 1591–1602
 * @example caughtFractionIwasaki1937({ filterCoefficientPerM: 3, depthM: 0.6 }) // 0.8347
 */
export const caughtFractionIwasaki1937 = (bed: EvenBed): number =>
  -Math.expm1(-bed.filterCoefficientPerM * bed.depthM);

/**
 * Dry solids held at a depth of a bed that still catches as when clean.
 *
 * σ = λ U C₀ t e^(−λz), from ∂σ/∂t = −U ∂C/∂z.
 *
 * @param bed.depthM z, m; 0 or more
 * @param bed.velocityMPerS superficial velocity U, m/s; above 0
 * @param bed.inletKgPerM3 solids in the water that comes in, kg/m³; 0 or more
 * @param bed.timeS time since clean, s; 0 or more
 * @returns dry solids per volume of bed, kg/m³
 * Accuracy: exact while the catch has not changed.
 * @source Iwasaki 1937, J. AWWA 29, 1591–1602
 */
export const depositIwasaki1937 = (
  bed: EvenBed & { readonly velocityMPerS: number; readonly inletKgPerM3: number; readonly timeS: number },
): number =>
  bed.filterCoefficientPerM *
  bed.velocityMPerS *
  bed.inletKgPerM3 *
  bed.timeS *
  Math.exp(-bed.filterCoefficientPerM * bed.depthM);

/**
 * Bed whose catch falls evenly with its deposit, λ = λ₀(1 − σ/σ_full): what comes through, and how full it is.
 *
 * With a = λ₀ U C₀ t/σ_full: C/C₀ = e^a/(e^a + e^(λ₀z) − 1), σ/σ_full = (e^a − 1)/(e^a + e^(λ₀z) − 1).
 *
 * @param bed.depthM z, m; 0 or more
 * @param bed.suppliedOverFull a, 1; 0 or more: deposit that the face would have taken, over a full one
 * @returns share let through and share filled at that depth, 1
 * Accuracy: exact for one size in an even bed; water between the pieces neglected.
 * @source Bohart & Adams 1920, J. Am. Chem. Soc. 42, 523–544
 */
export const fillingBedBohartAdams1920 = (
  bed: EvenBed & { readonly suppliedOverFull: number },
): { readonly passedFraction: number; readonly filledFraction: number } => {
  const a = bed.suppliedOverFull;
  // Divided through by e^a, so that nothing overflows however full the bed is.
  const rest = Math.expm1(bed.filterCoefficientPerM * bed.depthM) * Math.exp(-a);
  return { passedFraction: 1 / (1 + rest), filledFraction: -Math.expm1(-a) / (1 + rest) };
};
