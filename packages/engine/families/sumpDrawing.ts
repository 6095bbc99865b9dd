import { innerWallM } from './geometry.ts';
import type { Box, DimensionLine, Layout, Point } from './layout.ts';
import type { SumpFrame } from './sumpFrame.ts';

/** How far pipes stand out over the rim on the drawing, m. */
const overRimM = 0.09;
/** Height at which water runs over an edge on the drawing, m. */
const overEdgeM = 0.012;
/** Bores of the pipes on the drawing, m: no measurement depends on them. */
const drainBoreM = 0.03;
const returnBoreM = 0.022;

const pumpOf = ({ last }: SumpFrame): Box => {
  const width = Math.min(0.5 * last.width, 0.09);
  return { x: last.x + 0.55 * last.width - width / 2, y: 0.01, width, height: Math.min(0.8 * width, 0.07) };
};

const wallsOf = ({ sock, media, trap }: SumpFrame): readonly Box[] => {
  const upright = (x: number, y: number, top: number): Box => ({
    x,
    y,
    width: innerWallM,
    height: Math.max(top - y, innerWallM),
  });
  const half = sock.diameterM / 2;
  return [
    upright(media.x - innerWallM, 0, sock.edgeY),
    upright(trap.x - innerWallM, media.openingM, media.edgeY),
    upright(trap.x + trap.width, 0, trap.edgeY),
    ...[sock.middleX - half - innerWallM, sock.middleX + half].map((x) =>
      upright(x, sock.bottomY, sock.rimY),
    ),
  ];
};

const mainPath = (frame: SumpFrame, ends: { inlet: Point; outlet: Point }): readonly Point[] => {
  const { sock, media, trap, last } = frame;
  const pump = pumpOf(frame);
  const beforeBaffle =
    sock.middleX + sock.diameterM / 2 + (sock.sectionWidth - sock.middleX - sock.diameterM / 2) / 2;
  const middle = media.x + media.width / 2;
  const inTrap = trap.x + trap.width / 2;
  const inLast = last.x + 0.12 * last.width;
  const [overFirst, overLast] = [sock.edgeY + overEdgeM, trap.edgeY + overEdgeM];
  return [
    ends.inlet,
    { x: ends.inlet.x, y: sock.bottomY / 2 },
    { x: beforeBaffle, y: sock.bottomY / 2 },
    { x: beforeBaffle, y: overFirst },
    { x: middle, y: overFirst },
    { x: middle, y: media.footY / 2 },
    { x: inTrap, y: media.footY / 2 },
    { x: inTrap, y: overLast },
    { x: inLast, y: overLast },
    { x: inLast, y: pump.y + pump.height / 2 },
    { x: ends.outlet.x, y: pump.y + pump.height / 2 },
    ends.outlet,
  ];
};

const dimensionsOf = ({ media, trap, lengthM, wallY }: SumpFrame): readonly DimensionLine[] => [
  { measurement: 'boxHeight', from: { x: lengthM, y: 0 }, to: { x: lengthM, y: wallY } },
  { measurement: 'mediaSection', from: { x: media.x, y: 0 }, to: { x: trap.x - innerWallM, y: 0 } },
];

const levelsOf = ({ sock, media, trap, last }: SumpFrame) => [
  { x: 0, y: sock.edgeY + overEdgeM / 2, width: sock.sectionWidth },
  { x: media.x, y: trap.edgeY + overEdgeM / 2, width: media.width },
  { x: last.x, y: last.levelY, width: last.width },
];

/** The section of a sump along its length. */
export const sumpDrawing = (frame: SumpFrame): Layout['drawing'] => {
  const { sock, wallY, lengthM } = frame;
  const pump = pumpOf(frame);
  const top = wallY + overRimM;
  const inlet = { x: sock.middleX, y: top };
  const outlet = { x: pump.x + pump.width / 2, y: top };
  return {
    housing: [{ x: 0, y: 0, width: lengthM, height: wallY }],
    pump,
    walls: wallsOf(frame),
    stubs: [
      { side: 'intake', boreM: drainBoreM, along: [inlet, { x: inlet.x, y: Math.min(sock.rimY, wallY) }] },
      { side: 'outlet', boreM: returnBoreM, along: [{ x: outlet.x, y: pump.y + pump.height }, outlet] },
    ],
    levels: levelsOf(frame),
    inlet,
    outlet,
    dimensions: dimensionsOf(frame),
    mainPath: mainPath(frame, { inlet, outlet }),
  };
};
