import type { Box, Chamber, Layout, Point } from '@fettle/engine/families/layout.ts';
import type { Pen } from './housing.ts';
import { lengthOf, type OpenRun } from './reaches.ts';
import { coordinate, element, pathThrough } from './svg.ts';
import { type Palette, sizes } from './tokens.ts';
import { clearOfFace, staysSpread, wedge } from './waterInBeds.ts';

/** A piece of a ribbon of one width, sheet mm. */
interface Stroke {
  readonly points: readonly Point[];
  readonly width: number;
}

/** Width of a ribbon that carries the whole flow, mm: it fits the narrowest tube. */
export function fullWidth(layout: Layout, scale: number): number {
  const bores = layout.drawing.stubs.map((stub) => stub.boreM * scale);
  return Math.max(1.6, Math.min(sizes.ribbon, ...bores.map((bore) => 0.75 * bore)));
}

const leastWidth = 0.7;

/** A line that reaches a little beyond its end, so that no seam shows where the next begins. */
function overlapped(points: readonly Point[]): readonly Point[] {
  const end = points.at(-1);
  const before = points.at(-2);
  if (!end || !before) return points;
  const beyond = { x: 0.1 * Math.sign(end.x - before.x), y: 0.1 * Math.sign(end.y - before.y) };
  return [...points.slice(0, -1), { x: end.x + beyond.x, y: end.y + beyond.y }];
}

/** An end of a run at a bed: where and how the ribbon stands there. */
type FaceEnd = Parameters<typeof wedge>[0];

/** What is drawn of one run: its ribbon, and the wedges at the beds before and behind it. */
interface DrawnRun {
  readonly strokes: readonly Stroke[];
  readonly ends: readonly FaceEnd[];
}

function drawnRun(run: OpenRun, full: number, { sheet }: Pen): DrawnRun {
  const reaches = run.reaches.map((reach) => ({
    from: sheet.at(reach.from),
    to: sheet.at(reach.to),
    width: Math.max(leastWidth, reach.share * full),
  }));
  const [first, last] = [reaches[0], reaches.at(-1)];
  const start = first && run.leaves && faceEnd(first, run.leaves, reaches);
  const end = last && run.meets && faceEnd({ ...last, from: last.to, to: last.from }, run.meets, reaches);
  const box = (one: FaceEnd): FaceEnd => ({ ...one, bed: sheet.box(one.bed) });
  const ends = [start, end].flatMap((one) => (one ? [box(one)] : []));
  if (first && start) reaches[0] = { ...first, from: clearOfFace(start) };
  const nowLast = reaches.at(-1);
  if (nowLast && end) reaches[reaches.length - 1] = { ...nowLast, to: clearOfFace(end) };
  return { strokes: strokesOf(reaches), ends };
}

interface SheetReach {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
}

function faceEnd(reach: SheetReach, bed: Box, reaches: readonly SheetReach[]): FaceEnd {
  const length = lengthOf(reach) || 1;
  const upright = reach.from.x === reach.to.x;
  const along = reaches.filter(({ from, to }) =>
    upright ? from.x === to.x && from.x === reach.from.x : from.y === to.y && from.y === reach.from.y,
  );
  return {
    face: reach.from,
    away: { x: (reach.to.x - reach.from.x) / length, y: (reach.to.y - reach.from.y) / length },
    room: along.reduce((sum, one) => sum + lengthOf(one), 0),
    bed,
    width: reach.width,
  };
}

/** Whether a point lies straight on from the end of a line. */
function goesOn(points: readonly Point[], to: Point): boolean {
  const [before, end] = points.slice(-2);
  if (!before || !end) return false;
  return (before.x === end.x && end.x === to.x) || (before.y === end.y && end.y === to.y);
}

/** Reaches of one width joined into lines that can be drawn in one stroke. */
function strokesOf(reaches: readonly SheetReach[]): readonly Stroke[] {
  const strokes: { points: Point[]; width: number }[] = [];
  for (const { from, to, width } of reaches) {
    const last = strokes.at(-1);
    if (!last || Math.abs(last.width - width) >= 1e-9) strokes.push({ points: [from, to], width });
    else if (goesOn(last.points, to)) last.points[last.points.length - 1] = to;
    else last.points.push(to);
  }
  return strokes.map((stroke) => ({ ...stroke, points: overlapped(stroke.points) }));
}

/**
 * The water of the main way in the open: a ribbon as wide as its share of the flow, with arrowheads. It
 * ends in a wedge at the face of a bed, over whose width it spreads, and begins in one behind it.
 */
export function mainRibbon(layout: Layout, runs: readonly OpenRun[], pen: Pen): string {
  const { sheet, palette } = pen;
  const full = fullWidth(layout, sheet.scale);
  const drawn = runs.filter((run) => !staysSpread(run, sheet.scale)).map((run) => drawnRun(run, full, pen));
  const strokes = drawn.flatMap((run) => run.strokes);
  const line = (stroke: Stroke, colour: string, extra: number): string =>
    element('path', {
      d: pathThrough(stroke.points),
      fill: 'none',
      stroke: colour,
      'stroke-width': stroke.width + extra,
      'stroke-linejoin': 'round',
    });
  const end = layout.drawing.mainPath.slice(-2).map(sheet.at);
  const tip = end[1] ?? { x: 0, y: 0 };
  return element('g', {}, [
    ...strokes.map((stroke) => line(stroke, palette.paper, 1)),
    ...drawn.flatMap((run) => run.ends).map((one) => wedge(one, palette)),
    ...strokes.map((stroke) => line(stroke, palette.water, 0)),
    ...strokes.flatMap((stroke) => chevrons(stroke, palette.paper, palette.water)),
    arrowhead({ at: tip, heading: heading(end[0] ?? tip, tip), size: 0.9 * full }, palette.water),
  ]);
}

/** Angle in degrees of the way from one point of the sheet to another; 0 to the right, clockwise. */
function heading(from: Point, to: Point): number {
  return (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
}

interface Arrow {
  readonly at: Point;
  readonly heading: number;
  readonly size: number;
}

function placed(arrow: Arrow): string {
  return `translate(${coordinate(arrow.at.x)} ${coordinate(arrow.at.y)}) rotate(${coordinate(arrow.heading)})`;
}

/** A filled head whose tip stands a little beyond its point. */
export function arrowhead(arrow: Arrow, fill: string): string {
  const half = coordinate(arrow.size);
  const length = coordinate(1.5 * arrow.size);
  return element('path', { d: `M0 -${half}L${length} 0L0 ${half}Z`, fill, transform: placed(arrow) });
}

/** Distance between arrowheads along a ribbon, mm. */
const arrowSpacing = 11;

function chevrons(stroke: Stroke, onRibbon: string, beside: string): readonly string[] {
  return stroke.points.slice(1).flatMap((to, index) => {
    const from = stroke.points[index] ?? to;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const count = Math.floor(length / arrowSpacing + 0.55);
    return Array.from({ length: count }, (_, place) => {
      const share = (place + 0.5) / count;
      const at = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
      const arrow = { at, heading: heading(from, to), size: 0.36 * stroke.width };
      if (stroke.width < 1.5) return arrowhead({ ...arrow, size: 1.1 }, beside);
      return element('path', {
        d: `M${coordinate(-arrow.size)} ${coordinate(-arrow.size)}L0 0L${coordinate(-arrow.size)} ${coordinate(arrow.size)}`,
        fill: 'none',
        stroke: onRibbon,
        'stroke-width': 0.5,
        transform: placed(arrow),
      });
    });
  });
}

/**
 * A thin dashed ribbon through points of the sheet, with a head at its end: water that misses media. It is
 * heavier and in the ink of faults where so much misses them that it matters.
 */
export function dashed(points: readonly Point[], palette: Palette, alarming: boolean): string {
  const d = pathThrough(points);
  const tip = points.at(-1) ?? { x: 0, y: 0 };
  const before = points.at(-2) ?? tip;
  const line = { d, fill: 'none', 'stroke-linejoin': 'round' };
  const ink = alarming ? palette.fault : palette.water;
  const width = alarming ? 0.9 : 0.6;
  return element('g', {}, [
    element('path', { ...line, stroke: palette.paper, 'stroke-width': 1.7 }),
    element('path', { ...line, stroke: ink, 'stroke-width': width, 'stroke-dasharray': '1.6 0.9' }),
    arrowhead({ at: tip, heading: heading(before, tip), size: 1 }, ink),
  ]);
}

/** The way past a chamber: along the edge of it that lies towards its labels, sheet mm. */
export function gapPath(chamber: Chamber, side: 'left' | 'right' | 'bottom', pen: Pen): readonly Point[] {
  const box = pen.sheet.box(chamber.box);
  const edge = { left: box.x, right: box.x + box.width, bottom: box.y + box.height }[side];
  const over = 0.8;
  const ends = {
    up: [box.y + box.height + over, box.y - over + 1.2],
    down: [box.y - over, box.y + box.height + over - 1.2],
    right: [box.x - over, box.x + box.width + over - 1.2],
    left: [box.x + box.width + over, box.x - over + 1.2],
  }[chamber.flow];
  return side === 'bottom' ? ends.map((x) => ({ x, y: edge })) : ends.map((y) => ({ x: edge, y }));
}

interface Sample {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

function ends({ x, y, width }: Sample): readonly Point[] {
  return [
    { x, y },
    { x: x + width - 1.5, y },
  ];
}

/** A short piece of the main ribbon for the key. */
export function mainRibbonSample(sample: Sample, palette: Palette): string {
  const line = { d: pathThrough(ends(sample)), stroke: palette.water, 'stroke-width': 2.4 };
  const tip = { at: { x: sample.x + sample.width - 2.2, y: sample.y }, heading: 0, size: 1.8 };
  return element('path', line) + arrowhead(tip, palette.water);
}

/** A short piece of a bypass ribbon for the key. */
export function dashedSample(sample: Sample, palette: Palette, alarming: boolean): string {
  return dashed(ends(sample), palette, alarming);
}
