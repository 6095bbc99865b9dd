import type { Box, Chamber, Layout, Point } from '@fettle/engine/families/layout.ts';
import type { Pen } from './housing.ts';
import type { Shares } from './shares.ts';
import { coordinate, element, pathThrough } from './svg.ts';
import { type Palette, sizes } from './tokens.ts';

/** A length of the main way that keeps its share of the flow, m. */
interface Reach {
  readonly from: Point;
  readonly to: Point;
  readonly share: number;
}

function inside(point: Point, box: Box): boolean {
  return (
    point.x >= box.x && point.x <= box.x + box.width && point.y >= box.y && point.y <= box.y + box.height
  );
}

function shareAt(point: Point, layout: Layout, shares: Shares | undefined): number {
  if (!shares) return 1;
  const chamber = layout.chambers.find((one) => inside(point, one.box));
  if (chamber) return shares.chamber.get(chamber.id) ?? 1;
  const space = layout.spaces.find((one) => inside(point, one.box));
  return (space && shares.space.get(space.id)) ?? 1;
}

/** Where a straight piece of the way enters or leaves chambers and spaces, as shares of its length. */
function breaks(from: Point, to: Point, boxes: readonly Box[]): readonly number[] {
  const share = (at: number, start: number, end: number): number => (at - start) / (end - start);
  const cuts = boxes.flatMap((box) =>
    from.x === to.x
      ? [box.y, box.y + box.height].map((y) => share(y, from.y, to.y))
      : [box.x, box.x + box.width].map((x) => share(x, from.x, to.x)),
  );
  const within = cuts.filter((cut) => cut > 0 && cut < 1).toSorted((one, other) => one - other);
  return [0, ...within, 1];
}

function reachesOf(layout: Layout, shares: Shares | undefined): readonly Reach[] {
  const boxes = [...layout.chambers, ...layout.spaces].map((one) => one.box);
  const path = layout.drawing.mainPath;
  return path.slice(1).flatMap((to, index) => {
    const from = path[index] ?? to;
    const between = (at: number): Point => ({
      x: from.x + at * (to.x - from.x),
      y: from.y + at * (to.y - from.y),
    });
    const cuts = breaks(from, to, boxes);
    return cuts.slice(1).map((end, place) => {
      const start = cuts[place] ?? 0;
      return {
        from: between(start),
        to: between(end),
        share: shareAt(between((start + end) / 2), layout, shares),
      };
    });
  });
}

/** Reaches of one share joined into lines that can be drawn in one stroke. */
function strokesOf(
  reaches: readonly Reach[],
): readonly { readonly points: readonly Point[]; readonly share: number }[] {
  const strokes: { points: Point[]; share: number }[] = [];
  for (const reach of reaches) {
    const last = strokes.at(-1);
    if (last && Math.abs(last.share - reach.share) < 1e-9) last.points.push(reach.to);
    else strokes.push({ points: [reach.from, reach.to], share: reach.share });
  }
  return strokes;
}

/** Width of a ribbon that carries the whole flow, mm: it fits the narrowest tube. */
function fullWidth(layout: Layout, scale: number): number {
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

/** The water of the main way: a ribbon as wide as its share of the flow, with arrowheads. */
export function mainRibbon(layout: Layout, shares: Shares | undefined, pen: Pen): string {
  const { sheet, palette } = pen;
  const full = fullWidth(layout, sheet.scale);
  const strokes = strokesOf(reachesOf(layout, shares)).map((stroke) => ({
    points: overlapped(stroke.points.map(sheet.at)),
    width: Math.max(leastWidth, stroke.share * full),
  }));
  const line = (stroke: (typeof strokes)[number], colour: string, extra: number): string =>
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

function chevrons(
  stroke: { readonly points: readonly Point[]; readonly width: number },
  onRibbon: string,
  beside: string,
): readonly string[] {
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

/** A thin dashed ribbon through points of the sheet, with a head at its end: water that misses media. */
export function dashed(points: readonly Point[], palette: Palette): string {
  const d = pathThrough(points);
  const tip = points.at(-1) ?? { x: 0, y: 0 };
  const before = points.at(-2) ?? tip;
  const line = { d, fill: 'none', 'stroke-linejoin': 'round' };
  return element('g', {}, [
    element('path', { ...line, stroke: palette.paper, 'stroke-width': 1.7 }),
    element('path', { ...line, stroke: palette.fault, 'stroke-width': 0.7, 'stroke-dasharray': '1.6 0.9' }),
    arrowhead({ at: tip, heading: heading(before, tip), size: 1 }, palette.fault),
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
export function dashedSample(sample: Sample, palette: Palette): string {
  return dashed(ends(sample), palette);
}
