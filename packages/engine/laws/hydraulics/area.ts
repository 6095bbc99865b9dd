/**
 * Outer surface of a bed of spheres, a = 6(1−ε)/d.
 *
 * @param bed.sizeM diameter, m; above 0
 * @param bed.voidage ε, 1; 0 to 1
 * @param bed.sphericity surface of the sphere of the same volume over the piece's own, 1; above 0, up to 1, 1 when left out
 * @returns surface per volume of bed, m²/m³
 * Accuracy: exact for spheres.
 * @source geometry
 * @example areaOfSpheres({ sizeM: 0.01, voidage: 0.4 }) // 360
 */
export const areaOfSpheres = (bed: {
  readonly sizeM: number;
  readonly voidage: number;
  readonly sphericity?: number;
}): number => (6 * (1 - bed.voidage)) / (bed.sizeM * (bed.sphericity ?? 1));

/**
 * Surface of a pad of round fibres, a = 4c/d_f.
 *
 * @param pad.fibreM fibre diameter, m; above 0
 * @param pad.solidFraction c, 1; 0 to 1
 * @returns surface per volume of pad, m²/m³
 * Accuracy: exact for round fibres.
 * @source geometry
 */
export const areaOfFibres = (pad: { readonly fibreM: number; readonly solidFraction: number }): number =>
  (4 * pad.solidFraction) / pad.fibreM;
