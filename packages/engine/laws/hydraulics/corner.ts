/** A way along the corner of a chamber that a round bag leaves open. */
export interface CornerWay {
  readonly areaM2: number;
  /** Four times the area over the wetted edge, m. */
  readonly hydraulicDiameterM: number;
}

/** Darcy factor times Reynolds number of slow water in that way, 1: found by differences on a grid, to 2 %. */
export const CORNER_LAMINAR_CONSTANT = 28.4;

/**
 * What lies between a square corner and a bag that rounds it off.
 *
 * A = (1 − π/4)r², D_h = 4A/((2 + π/2)r).
 *
 * @param bag.radiusM radius r of the bag's edge, m; above 0
 * @returns area, m², and hydraulic diameter, m, of one corner
 * Accuracy: exact for a round edge that touches both walls; a real bag folds.
 * @source geometry
 */
export const cornerWay = (bag: { readonly radiusM: number }): CornerWay => {
  const areaM2 = (1 - Math.PI / 4) * bag.radiusM ** 2;
  return { areaM2, hydraulicDiameterM: (4 * areaM2) / ((2 + Math.PI / 2) * bag.radiusM) };
};
