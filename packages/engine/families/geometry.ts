import type { Box, Gap, Point } from './layout.ts';

/** Thickness of partitions and inner tubes on the drawing and along a leak's flow, m; from memory. */
export const innerWallM = 0.002;

/** Height that a moulded basket floor takes, m; from memory. */
export const floorM = 0.003;

/** Area of a round bore, m², from its diameter in m. */
export function roundArea(boreM: number): number {
  return (Math.PI / 4) * boreM * boreM;
}

export function centreOf(box: Box): Point {
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The slot all round a rectangular basket or tray; all lengths in m. */
export function gapAllRound(basket: {
  readonly widthM: number;
  readonly depthM: number;
  readonly heightM: number;
  readonly thicknessM: number;
}): Gap {
  return {
    thicknessM: basket.thicknessM,
    widthM: 2 * (basket.widthM + basket.depthM),
    lengthM: basket.heightM,
  };
}

/** Height of the head on the drawing, m, from the housing's inner width in m: no measurement depends on it. */
export function headHeight(innerWidthM: number): number {
  return Math.min(0.1, Math.max(0.045, 0.4 * innerWidthM));
}

/** Numbers 1 to `count`. */
export function upTo(count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => index + 1);
}

/** Bore of the hose ends on the drawing, m: the usual 16 mm of medium canisters; from memory. */
export const portBoreM = 0.016;

/** The floor between housing and head with its holes, as the pieces of wall that stay. */
export function floorWithHoles(floor: {
  readonly y: number;
  readonly widthM: number;
  readonly holes: readonly { readonly x: number; readonly width: number }[];
}): readonly Box[] {
  const pieces: Box[] = [];
  let x = 0;
  for (const hole of floor.holes.toSorted((one, other) => one.x - other.x)) {
    if (hole.x > x) pieces.push({ x, y: floor.y, width: hole.x - x, height: innerWallM });
    x = Math.max(x, hole.x + hole.width);
  }
  if (floor.widthM > x) pieces.push({ x, y: floor.y, width: floor.widthM - x, height: innerWallM });
  return pieces;
}
