import type { Chamber } from './layout.ts';

/** What a bed is to the water: its two faces and what lies between them. */
export interface BedShape {
  readonly volumeM3: number;
  /** Area by which the water comes in, m². */
  readonly faceAreaM2: number;
  /** Radii and length of a bed that lies about a tube; absent where its faces are plane and alike. */
  readonly ring?: { readonly outerRadiusM: number; readonly innerRadiusM: number; readonly lengthM: number };
}

/**
 * Shape of a layer of a chamber. About a tube, layers lie on the tube: `behindM` is how much media, m, lies between
 * it and the tube.
 */
const layerShape = (
  chamber: Chamber,
  layer: { readonly behindM: number; readonly depthM: number },
): BedShape => {
  const { depthM } = layer;
  if (!chamber.ring) return { volumeM3: chamber.areaM2 * depthM, faceAreaM2: chamber.areaM2 };
  const { lengthM } = chamber.ring;
  const innerRadiusM = chamber.ring.innerRadiusM + layer.behindM;
  const outerRadiusM = innerRadiusM + depthM;
  return {
    volumeM3: Math.PI * lengthM * (outerRadiusM + innerRadiusM) * depthM,
    faceAreaM2: 2 * Math.PI * outerRadiusM * lengthM,
    ring: { outerRadiusM, innerRadiusM, lengthM },
  };
};

/** Shapes of the beds of a chamber, in water order as they are given. */
export const bedShapes = (
  chamber: Chamber,
  inWaterOrder: readonly { readonly depthM: number }[],
): readonly BedShape[] => {
  let behindM = inWaterOrder.reduce((sum, { depthM }) => sum + depthM, 0);
  return inWaterOrder.map(({ depthM }) => {
    behindM = Math.max(0, behindM - depthM);
    return layerShape(chamber, { behindM, depthM });
  });
};

/** Volume of everything that a chamber can hold, m³. */
export const chamberVolume = (chamber: Chamber): number => chamber.areaM2 * chamber.depthM;

/** Depths, m, of layers of these volumes, m³, in water order as they are given. */
export const depthsOfVolumes = (chamber: Chamber, volumesM3: readonly number[]): readonly number[] => {
  const { ring, areaM2 } = chamber;
  if (!ring) return volumesM3.map((volume) => volume / areaM2);
  let innerRadiusM = ring.innerRadiusM;
  const depths = volumesM3.toReversed().map((volume) => {
    const square = volume / (Math.PI * ring.lengthM);
    const outerRadiusM = Math.sqrt(innerRadiusM ** 2 + square);
    const depthM = square / (outerRadiusM + innerRadiusM);
    innerRadiusM = outerRadiusM;
    return depthM;
  });
  return depths.toReversed();
};
