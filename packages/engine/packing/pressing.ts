import type { Chamber } from '../families/layout.ts';
import type { Bed } from '../model/model.ts';

/** How many times the area of its chamber a piece has that was cut larger, 1. */
export const sidewaysRatio = ({ areaM2, widthM }: Chamber, cutLargerM: number): number => {
  const [width, across] = [widthM, areaM2 / widthM];
  return ((width + 2 * cutLargerM) * (across + 2 * cutLargerM)) / (width * across);
};

/** Depth of a bed before it was pressed into its room, m: what of the pressing its larger cut does not make up. */
export const looseDepthM = (chamber: Chamber, { depthM, laying }: Bed): number => {
  const { pressedRatio = 1, cutLargerM = 0 } = laying ?? {};
  return (depthM * pressedRatio) / sidewaysRatio(chamber, cutLargerM);
};
