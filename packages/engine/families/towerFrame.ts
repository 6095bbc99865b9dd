import { floorM, innerWallM } from './geometry.ts';

type Key =
  | 'boxHeight'
  | 'boxLength'
  | 'returnLevel'
  | 'lift'
  | 'towerLength'
  | 'towerHeight'
  | 'layers'
  | 'padRoom'
  | 'plateRim';

/** Lengths and heights over the floor of the box that both the network's side and the drawing are made from, m. */
export interface TowerFrame {
  readonly box: { readonly width: number; readonly levelY: number };
  readonly tower: {
    readonly x: number;
    readonly width: number;
    readonly footY: number;
    readonly topY: number;
    /** Height of one layer with its grid. */
    readonly step: number;
  };
  /** Upper face of the drip plate, its rim, and the room for a pad on it. */
  readonly plateY: number;
  readonly rimY: number;
  readonly padRoomM: number;
  /** Top of the tower, and the height of the box's walls. */
  readonly topY: number;
  readonly wallY: number;
  readonly floorHeightM: number;
}

/** Free fall under the drip plate, and how far the lowest grid stands over the water, m, for the drawing alone. */
const fallM = 0.03;
const overWaterM = 0.03;
/** Left edge of the tower in the box on the drawing, m. */
const towerX = 0.02;
/** Part of the box that the pump needs beside the tower, and of its wall that water may reach. */
const mostOfBox = 0.7;
const mostOfWall = 0.9;

/** The frame of a trickle tower. */
export const towerFrame = (size: (key: Key) => number): TowerFrame => {
  const wallY = size('boxHeight');
  const levelY = Math.min(size('returnLevel'), mostOfWall * wallY);
  const width = size('boxLength');
  const footY = levelY + overWaterM;
  const height = Math.max(size('towerHeight'), 2 * size('layers') * floorM);
  const topY = footY + height;
  const plateY = topY + fallM + innerWallM;
  const rimY = plateY + size('plateRim');
  const padRoomM = size('padRoom');
  return {
    box: { width, levelY },
    tower: {
      x: towerX,
      width: Math.min(size('towerLength'), mostOfBox * width),
      footY,
      topY,
      step: height / size('layers'),
    },
    plateY,
    rimY,
    padRoomM,
    topY: Math.max(rimY, plateY + padRoomM) + fallM,
    wallY,
    floorHeightM: -(size('lift') + levelY),
  };
};
