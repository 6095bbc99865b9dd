import type { Box, Chamber, DimensionLine, Layout, Point } from '@fettle/engine/families/layout.ts';
import { sizes } from './tokens.ts';

/** Where a chamber's tags and shares go when they do not fit inside. */
export type Side = 'left' | 'right' | 'bottom';

/** The tags of a half stand on its own side, those of slots below them. */
export function labelSide(layout: Layout, chamber: Chamber): Side {
  if (chamber.flow === 'left' || chamber.flow === 'right') return 'bottom';
  const columns = new Set(layout.chambers.map((one) => one.box.x));
  return columns.size > 1 && chamber.box.x === Math.min(...columns) ? 'left' : 'right';
}

/** The sides on which tags or shares stand. */
export const labelledSides = (layout: Layout): ReadonlySet<Side> =>
  new Set(layout.chambers.map((chamber) => labelSide(layout, chamber)));

/** A dimension line with the lane that it has to itself, counted from the section outward. */
export interface LanedDimension {
  readonly line: DimensionLine;
  readonly side: Side;
  readonly lane: number;
}

function dimensionSide(layout: Layout, line: DimensionLine): Side {
  if (line.from.y === line.to.y) return 'bottom';
  return line.from.x <= (layout.drawing.housing[0]?.x ?? 0) ? 'left' : 'right';
}

function span(line: DimensionLine): readonly [number, number] {
  const ends = line.from.y === line.to.y ? [line.from.x, line.to.x] : [line.from.y, line.to.y];
  return [Math.min(...ends), Math.max(...ends)];
}

/** Width that lanes and margins may take at most, mm: what is left sets the smallest scale. */
const lanesAtMost = 60;

/** Short lines nearest to the section; lines that run beside each other or whose lengths would meet share no lane. */
function lanedDimensions(layout: Layout): readonly LanedDimension[] {
  const laned: LanedDimension[] = [];
  const extent = extentOf(layout);
  const smallestScale = Math.min(
    (sizes.sheetWidth - lanesAtMost) / (extent.right - extent.left),
    sizes.sectionHeight / (extent.top - extent.bottom),
  );
  const room = (1.6 * sizes.text) / smallestScale;
  const lines = layout.drawing.dimensions.toSorted(
    (one, other) => span(one)[1] - span(one)[0] - (span(other)[1] - span(other)[0]),
  );
  for (const line of lines) {
    const side = dimensionSide(layout, line);
    const taken = laned.filter((other) => other.side === side && meet(line, other.line, room));
    laned.push({ line, side, lane: Math.max(-1, ...taken.map((other) => other.lane)) + 1 });
  }
  return laned;
}

function meet(one: DimensionLine, other: DimensionLine, room: number): boolean {
  const [from, to] = span(one);
  const [start, end] = span(other);
  return (from < end && start < to) || Math.abs(from + to - start - end) / 2 < room;
}

/** The part of the sheet that holds the section, and the way from metres to its millimetres. */
export interface Sheet {
  /** Millimetres of paper per metre. */
  readonly scale: number;
  readonly at: (point: Point) => Point;
  readonly box: (box: Box) => Box;
  /** The housing's parts inside their walls, sheet mm; the walls stand clear of tubes that run along them. */
  readonly housing: readonly Box[];
  /** Edges of the section with its walls and the words at the ends of its path, without lanes, mm. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly dimensions: readonly LanedDimension[];
  /** Lower edge of everything that belongs to the section, mm. */
  readonly end: number;
}

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

function extentOf(layout: Layout): Extent {
  const { housing, pump, stubs, inlet, outlet, waterLevelY } = layout.drawing;
  const boxes = [...housing, pump];
  const ends = [inlet, outlet];
  const tubes = stubs.flatMap((stub) => stub.along.map((point) => ({ ...point, half: stub.boreM / 2 })));
  const xs = [...boxes.flatMap((box) => [box.x, box.x + box.width]), ...ends.map((end) => end.x)];
  const ys = [...boxes.flatMap((box) => [box.y, box.y + box.height]), ...ends.map((end) => end.y)];
  if (waterLevelY !== undefined) ys.push(waterLevelY);
  return {
    left: Math.min(...xs, ...tubes.map((tube) => tube.x - tube.half)),
    right: Math.max(...xs, ...tubes.map((tube) => tube.x + tube.half)),
    bottom: Math.min(...ys),
    top: Math.max(...ys, ...tubes.map((tube) => tube.y + tube.half)),
  };
}

/** Room for a word at the left end of the water path, mm. */
const endRoom = 7;

function lanesOf(layout: Layout, dimensions: readonly LanedDimension[]): Record<Side, number> {
  const lane = (side: Side): number => {
    const labels = layout.chambers.some((chamber) => labelSide(layout, chamber) === side);
    const count = Math.max(-1, ...dimensions.filter((one) => one.side === side).map((one) => one.lane)) + 1;
    return (labels ? labelRoom(side) : 0) + count * dimensionRoom(side);
  };
  return { left: lane('left'), right: lane('right'), bottom: lane('bottom') };
}

/** Extent of the label lane outward, mm. */
export function labelRoom(side: Side): number {
  return side === 'bottom' ? 2 * sizes.tagHeight + 3 : sizes.labelLane;
}

/** Extent of one lane of dimension lines outward, mm. */
export function dimensionRoom(side: Side): number {
  return side === 'bottom' ? 6.5 : sizes.dimensionLane;
}

/** Clear between a wall and a tube inside it, with the tube's own line, mm. */
const tubeClearance = 1.1 + sizes.thickLine;

/** How far the walls at the housing's left and right are drawn outward to stand clear of tubes inside, mm. */
function tubeRoom(layout: Layout, scale: number): { readonly left: number; readonly right: number } {
  const { housing, stubs } = layout.drawing;
  const left = Math.min(...housing.map((box) => box.x));
  const right = Math.max(...housing.map((box) => box.x + box.width));
  const upright = stubs.flatMap(({ along, boreM }) =>
    along.slice(1).flatMap(({ x }, index) => (x === along[index]?.x ? [{ x, half: boreM / 2 }] : [])),
  );
  const within = upright.filter(({ x }) => x > left && x < right);
  const room = (clear: readonly number[]): number =>
    Math.max(0, ...clear.map((clearM) => tubeClearance - Math.max(0, clearM * scale)));
  return {
    left: room(within.map(({ x, half }) => x - half - left)),
    right: room(within.map(({ x, half }) => right - x - half)),
  };
}

/** The housing's parts on the sheet, moved outward where their edges are the housing's own. */
function housingOnSheet(
  layout: Layout,
  inMm: (box: Box) => Box,
  room: { readonly left: number; readonly right: number },
): readonly Box[] {
  const boxes = layout.drawing.housing.map(inMm);
  const left = Math.min(...boxes.map((box) => box.x));
  const right = Math.max(...boxes.map((box) => box.x + box.width));
  return boxes.map((box) => {
    const before = box.x - left < 0.01 ? room.left : 0;
    const behind = right - box.x - box.width < 0.01 ? room.right : 0;
    return { ...box, x: box.x - before, width: box.width + before + behind };
  });
}

/** Millimetres of paper per metre at which the section fits the sheet. */
export function fittingScale(layout: Layout): number {
  const wide = scaleBeside(layout, 0);
  const room = tubeRoom(layout, wide);
  // A smaller scale may ask for more room beside a tube, never for more than the whole clearance.
  const asked = (room.left > 0 ? tubeClearance : 0) + (room.right > 0 ? tubeClearance : 0);
  return asked > 0 ? scaleBeside(layout, asked) : wide;
}

/** The largest scale that leaves a breadth of the sheet free, mm. */
function scaleBeside(layout: Layout, free: number): number {
  const extent = extentOf(layout);
  const lanes = lanesOf(layout, lanedDimensions(layout));
  const beside = besideOf(layout);
  const taken = lanes.left + lanes.right + beside.left + beside.right;
  const width = sizes.sheetWidth - 2 * (sizes.margin + sizes.wall) - taken - free;
  return Math.min(width / (extent.right - extent.left), sizes.sectionHeight / (extent.top - extent.bottom));
}

/** Room for `in` on the left and `out` on the right where the path begins and ends level, mm. */
function besideOf(layout: Layout): { readonly left: number; readonly right: number } {
  const { inlet, mainPath } = layout.drawing;
  return mainPath[1]?.y === inlet.y ? { left: endRoom, right: 13 } : { left: 0, right: 0 };
}

/** A word at an end of the water path. */
interface PathWord {
  readonly says: 'in' | 'out';
  readonly x: number;
  /** Foot of its letters. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** `in` and `out` beyond the ends of the water path and the arrowhead, sheet mm. */
export function pathWords(layout: Layout, at: (point: Point) => Point): readonly PathWord[] {
  const path = layout.drawing.mainPath.map(at);
  const word = (says: PathWord['says'], tip: Point | undefined, before: Point | undefined): PathWord => {
    const end = tip ?? { x: 0, y: 0 };
    const next = before ?? end;
    const away = { x: Math.sign(end.x - next.x), y: Math.sign(end.y - next.y) };
    const far = says === 'out' ? 7 : 2;
    const drop = away.y === 0 ? 0.36 : away.y > 0 ? 0.75 : 0;
    return {
      says,
      x: end.x + away.x * far,
      y: end.y + away.y * far + drop * sizes.text,
      anchor: away.x === 0 ? 'middle' : away.x < 0 ? 'end' : 'start',
    };
  };
  return [word('in', path[0], path[1]), word('out', path.at(-1), path.at(-2))];
}

/** Room for arrowheads and words over a section whose path begins or ends at its top, mm. */
function roomAbove(layout: Layout): number {
  const [start, next] = layout.drawing.mainPath;
  const [before, end] = layout.drawing.mainPath.slice(-2);
  const upward = (start && next && start.y > next.y) || (before && end && end.y > before.y);
  return upward ? 9 : 2;
}

/** Lays the section out on the sheet from `top` downwards, mm, at a scale in mm per m. */
export function sheetFor(layout: Layout, place: { readonly top: number; readonly scale: number }): Sheet {
  const { scale } = place;
  const extent = extentOf(layout);
  const dimensions = lanedDimensions(layout);
  const lanes = lanesOf(layout, dimensions);
  const beside = besideOf(layout);
  const room = tubeRoom(layout, scale);
  const walls = 2 * sizes.wall + room.left + room.right;
  const width = (extent.right - extent.left) * scale + walls + beside.left + beside.right;
  const free = sizes.sheetWidth - width - lanes.left - lanes.right;
  const left = Math.max(0, free / 2) + lanes.left;
  const top = place.top + roomAbove(layout);
  const floor = top + (extent.top - extent.bottom) * scale + 2 * sizes.wall;
  const at = (point: Point): Point => ({
    x: left + beside.left + room.left + sizes.wall + (point.x - extent.left) * scale,
    y: floor - sizes.wall - (point.y - extent.bottom) * scale,
  });
  const bottom = Math.max(floor, ...pathWords(layout, at).map((word) => word.y + 1));
  const inMm = (box: Box): Box => {
    const corner = at({ x: box.x, y: box.y + box.height });
    return { ...corner, width: box.width * scale, height: box.height * scale };
  };
  return {
    scale,
    at,
    box: inMm,
    housing: housingOnSheet(layout, inMm, room),
    left,
    right: left + width,
    top,
    bottom,
    dimensions,
    end: bottom + lanes.bottom,
  };
}
