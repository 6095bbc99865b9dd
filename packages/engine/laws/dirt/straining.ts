/** Narrowest way between three touching spheres over their diameter: 2/√3 − 1 = 0.1547. Source: geometry. */
export const GRAIN_THROAT_RATIO = 2 / Math.sqrt(3) - 1;

/** Window between two cells of foam over the cell; 0.45. From memory: 0.35–0.55 for reticulated foam. */
export const FOAM_WINDOW_RATIO = 0.45;

/** One layer can never be sure to catch what fits its throat: the most that is taken. Ours. */
export const MOST_STRAINED = 0.95;

/**
 * Narrowest way between grains, 0.155 of their size.
 *
 * @param bed.sizeM size of a grain, m; above 0
 * @returns throat, m
 * Accuracy: exact for spheres in the closest packing; real beds have throats up to 0.4 of the size.
 * @source geometry of three touching spheres
 */
export const throatOfGrains = (bed: { readonly sizeM: number }): number => GRAIN_THROAT_RATIO * bed.sizeM;

/**
 * Narrowest way through rings and hollow pieces.
 *
 * The throat of grains on the same hydraulic diameter 4ε/a: 0.348 of it, which is 0.155 of the size for spheres
 * at a voidage of 0.4.
 *
 * @param bed.surfacePerM outer surface per volume of bed, m²/m³; above 0
 * @param bed.voidage share of the bed between and through the pieces, 1; above 0, below 1
 * @returns throat, m
 * Accuracy: ×/÷ 2; ours.
 * @source geometry of three touching spheres, scaled
 */
export const throatOfHollowPieces = (bed: {
  readonly surfacePerM: number;
  readonly voidage: number;
}): number => {
  const spheresAt40 = (4 * 0.4) / (6 * 0.6);
  return (GRAIN_THROAT_RATIO / spheresAt40) * ((4 * bed.voidage) / bed.surfacePerM);
};

/**
 * Window between cells of foam.
 *
 * @param foam.cellM cell diameter, m; above 0
 * @returns throat, m
 * Accuracy: ±20 % for reticulated foam; far smaller where membranes are left.
 * @source from memory
 */
export const throatOfFoam = (foam: { readonly cellM: number }): number => FOAM_WINDOW_RATIO * foam.cellM;

/**
 * Mean spacing of fibres that lie at random: twice the mean distance from a point to the nearest axis.
 *
 * Lines of length L per volume hit a ball of radius r πr²L times on average, so that P(none) = exp(−πLr²) and the
 * mean distance is 1/(2√L); with L = 4c/(πd²) the spacing is d√π/(2√c).
 *
 * @param pad.fibreM d, m; above 0
 * @param pad.solidFraction c, 1; above 0, below 0.5
 * @returns spacing from axis to axis, m
 * Accuracy: exact for straight fibres at random; clumps leave wider ways.
 * @source Poisson line process; "Poresizes in random line networks", arXiv 1110.1803 (2011)
 */
export const fibreSpacing = (pad: { readonly fibreM: number; readonly solidFraction: number }): number =>
  (pad.fibreM * Math.sqrt(Math.PI)) / (2 * Math.sqrt(pad.solidFraction));

/**
 * Clear way between fibres: their spacing less one fibre.
 *
 * @param pad.fibreM fibre diameter, m; above 0
 * @param pad.solidFraction share of fibre in the pad, 1; above 0, below 0.5
 * @returns throat, m
 * Accuracy: ×/÷ 2.
 * @source as `fibreSpacing`
 */
export const throatOfFibres = (pad: { readonly fibreM: number; readonly solidFraction: number }): number =>
  fibreSpacing(pad) - pad.fibreM;

/**
 * Share of a size of solids that one layer of pieces, cells or fibres strains out.
 *
 * p = min(0.95, (d/throat)³).
 *
 * @param layer.sizeM d, m; 0 or more
 * @param layer.throatM narrowest way through the layer, m; above 0
 * @returns share, 1; 0 to 0.95
 * Accuracy: a first form, to be fitted from bench records; the catch of foam by cell size is not published.
 * @source ours; the cube stands for the share of water within reach of a throat's rim
 */
export const strainedFraction = (layer: { readonly sizeM: number; readonly throatM: number }): number =>
  Math.min(MOST_STRAINED, (layer.sizeM / layer.throatM) ** 3);

/**
 * Straining as a filter coefficient, λ = −ln(1 − p)/layer.
 *
 * @param layer.sizeM d, m; 0 or more
 * @param layer.throatM narrowest way through the layer, m; above 0
 * @param layer.layerM depth of one layer, m; above 0
 * @returns λ, 1/m
 * Accuracy: as `strainedFraction`.
 * @source Iwasaki 1937 for a pile of equal layers
 */
export const strainingCoefficient = (layer: {
  readonly sizeM: number;
  readonly throatM: number;
  readonly layerM: number;
}): number => -Math.log1p(-strainedFraction(layer)) / layer.layerM;
