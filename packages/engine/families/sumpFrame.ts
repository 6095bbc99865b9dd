import { floorM, innerWallM } from './geometry.ts';
import type { SumpKey } from './sumpMeasurements.ts';

/** Lengths and heights over the floor of the box that both the network's side and the drawing are made from, m. */
export interface SumpFrame {
  readonly sock: {
    readonly sectionWidth: number;
    readonly middleX: number;
    readonly diameterM: number;
    readonly bottomY: number;
    readonly rimY: number;
    /** Height of the cloth that stands in water. */
    readonly wettedM: number;
    /** Edge of the first baffle. */
    readonly edgeY: number;
  };
  readonly media: {
    readonly x: number;
    readonly width: number;
    readonly footY: number;
    readonly topY: number;
    /** Height of one layer with its grid. */
    readonly step: number;
    /** Edge of the baffle behind the media, and the opening under it. */
    readonly edgeY: number;
    readonly openingM: number;
  };
  readonly trap: { readonly x: number; readonly width: number; readonly edgeY: number };
  readonly last: { readonly x: number; readonly width: number; readonly levelY: number };
  readonly wallY: number;
  readonly lengthM: number;
  /** Height of the floor over the tank's surface; below 0. */
  readonly floorHeightM: number;
}

/** Heights that were written beyond the box are taken down to this share of its walls. */
const mostOfWall = 0.97;
/** Least part of a sock that is taken to stand in water. */
const leastWetted = 0.2;
/** Clear height under the lowest grid, m, where the baffle leaves less. */
const gridFootM = 0.02;

const sockOf = (size: (key: SumpKey) => number, within: (height: number) => number): SumpFrame['sock'] => {
  const sectionWidth = size('sockSection');
  const rimY = within(size('sockRim'));
  const bottomY = Math.max(0.005, rimY - size('sockLength'));
  const edgeY = within(size('firstBaffle'));
  const standing = Math.min(edgeY, rimY) - bottomY;
  return {
    sectionWidth,
    middleX: sectionWidth / 2,
    diameterM: Math.min(size('sockDiameter'), 0.9 * sectionWidth, 0.95 * size('boxDepth')),
    bottomY,
    rimY,
    wettedM: Math.max(standing, leastWetted * (rimY - bottomY)),
    edgeY,
  };
};

/** The frame of a sump, with what was written beyond the walls held inside them. */
export const sumpFrame = (size: (key: SumpKey) => number): SumpFrame => {
  const wallY = size('boxHeight');
  const within = (height: number): number => Math.min(height, mostOfWall * wallY);
  const sock = sockOf(size, within);
  const mediaX = sock.sectionWidth + innerWallM;
  const width = size('mediaSection');
  const edgeY = within(size('mediaBaffle'));
  const openingM = Math.min(size('baffleFoot'), 0.5 * edgeY);
  const footY = Math.max(openingM, gridFootM);
  const count = size('trays');
  const mediaHeightM = Math.max(
    Math.min(size('mediaHeight'), mostOfWall * wallY - footY),
    2 * count * floorM,
  );
  const trapX = mediaX + width + innerWallM;
  const lastX = trapX + size('trapSection') + innerWallM;
  const levelY = within(size('returnLevel'));
  return {
    sock,
    media: {
      x: mediaX,
      width,
      footY,
      topY: footY + mediaHeightM,
      step: mediaHeightM / count,
      edgeY,
      openingM,
    },
    trap: { x: trapX, width: size('trapSection'), edgeY: within(size('lastBaffle')) },
    last: { x: lastX, width: size('returnSection'), levelY },
    wallY,
    lengthM: lastX + size('returnSection'),
    floorHeightM: -(size('lift') + levelY),
  };
};
