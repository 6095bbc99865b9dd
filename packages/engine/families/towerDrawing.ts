import { innerWallM } from './geometry.ts';
import type { Box, Layout } from './layout.ts';
import type { TowerFrame } from './towerFrame.ts';

/** How far pipes stand out over the tower on the drawing, m. */
const overTopM = 0.09;
/** Bores of the pipes on the drawing, m: no measurement depends on them. */
const drainBoreM = 0.03;
const returnBoreM = 0.022;

const wallsOf = ({ tower, plateY, rimY }: TowerFrame): readonly Box[] => {
  const upright = (x: number, from: number, to: number): Box => ({
    x,
    y: from,
    width: innerWallM,
    height: to - from,
  });
  const sides = [tower.x - innerWallM, tower.x + tower.width];
  // The drip plate is drawn with its holes.
  const pieces = 9;
  const pitch = tower.width / pieces;
  return [
    ...sides.map((x) => upright(x, tower.footY, Math.max(rimY, plateY))),
    ...Array.from({ length: pieces }, (_, piece) => ({
      x: tower.x + piece * pitch + 0.15 * pitch,
      y: plateY - innerWallM,
      width: 0.7 * pitch,
      height: innerWallM,
    })),
  ];
};

/** The section of a trickle tower along its box. */
export const towerDrawing = (frame: TowerFrame): Layout['drawing'] => {
  const { tower, box, topY, wallY } = frame;
  const middle = tower.x + tower.width / 2;
  const rightRoom = box.width - tower.x - tower.width;
  const width = Math.min(0.5 * rightRoom, 0.09);
  const pump = {
    x: tower.x + tower.width + 0.55 * rightRoom - width / 2,
    y: 0.006,
    width,
    height: Math.min(0.8 * width, 0.07),
  };
  const top = topY + overTopM;
  const inlet = { x: middle, y: top };
  const outlet = { x: pump.x + pump.width / 2, y: top };
  const pumpY = pump.y + pump.height / 2;
  return {
    housing: [{ x: 0, y: 0, width: box.width, height: Math.max(topY, wallY) }],
    pump,
    walls: wallsOf(frame),
    stubs: [
      { side: 'intake', boreM: drainBoreM, along: [inlet, { x: middle, y: topY }] },
      { side: 'outlet', boreM: returnBoreM, along: [{ x: outlet.x, y: pump.y + pump.height }, outlet] },
    ],
    levels: [{ x: 0, y: box.levelY, width: box.width }],
    inlet,
    outlet,
    dimensions: [
      {
        measurement: 'towerHeight',
        from: { x: box.width, y: tower.footY },
        to: { x: box.width, y: tower.topY },
      },
    ],
    mainPath: [inlet, { x: middle, y: pumpY }, { x: outlet.x, y: pumpY }, outlet],
  };
};
