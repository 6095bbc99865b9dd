import type { Box, Chamber, Point } from '@fettle/engine/families/layout.ts';
import { type Pen, rectangle } from './housing.ts';
import type { PlacedBed } from './placedBeds.ts';
import { courseOf, type OpenRun } from './reaches.ts';
import { coordinate, element, pathThrough } from './svg.ts';
import { type Palette, sizes } from './tokens.ts';

/** The packed part of every chamber that holds beds, m. */
export function packedBoxes(beds: readonly PlacedBed[]): readonly Box[] {
  const cuts = new Map<string, Box>();
  const add = (key: string, box: Box): void => {
    const sofar = cuts.get(key);
    cuts.set(key, sofar ? bounding(sofar, box) : box);
  };
  for (const { chamber, box, twin } of beds) {
    add(chamber.id, box);
    if (twin) add(`${chamber.id}:twin`, twin);
  }
  return [...cuts.values()];
}

function bounding(one: Box, other: Box): Box {
  const x = Math.min(one.x, other.x);
  const y = Math.min(one.y, other.y);
  return {
    x,
    y,
    width: Math.max(one.x + one.width, other.x + other.width) - x,
    height: Math.max(one.y + one.height, other.y + other.height) - y,
  };
}

/** Clear of the grid that a bed lies on, mm. */
const faceClearance = 0.6;

/** Height of the wedge in which a ribbon spreads over a bed's face, mm. */
const wedgeHeight = 1.8;

/** Between beds nearer to each other than this the water stays spread over their width, mm. */
const gatheringLength = 2 * (faceClearance + wedgeHeight) + 2;

/** Whether the water of a run has no room to gather between two beds. */
export function staysSpread(run: OpenRun, scale: number): boolean {
  const { lengthM, straight } = courseOf(run);
  return run.leaves !== undefined && run.meets !== undefined && straight && lengthM * scale < gatheringLength;
}

/** The tint of water that is spread over the width of the media: under their hatching and between near beds. */
export function spreadWater(
  water: { readonly packed: readonly Box[]; readonly runs: readonly OpenRun[] },
  pen: Pen,
): string {
  const between = water.runs.flatMap((run) =>
    run.leaves && run.meets && staysSpread(run, pen.sheet.scale) ? [boxBetween(run.leaves, run.meets)] : [],
  );
  return [...water.packed, ...between]
    .map((box) => rectangle(pen.sheet.box(box), { fill: pen.palette.waterTint }))
    .join('');
}

/** The water between two beds that face each other. */
function boxBetween(one: Box, other: Box): Box {
  const x = facing([one.x, one.x + one.width], [other.x, other.x + other.width]);
  const y = facing([one.y, one.y + one.height], [other.y, other.y + other.height]);
  return { x: x.from, y: y.from, width: x.to - x.from, height: y.to - y.from };
}

/** What two extents have in common, or where they have nothing in common what lies between them. */
function facing(
  one: readonly [number, number],
  other: readonly [number, number],
): { readonly from: number; readonly to: number } {
  const ends = [Math.max(one[0], other[0]), Math.min(one[1], other[1])] as const;
  return { from: Math.min(...ends), to: Math.max(...ends) };
}

/** An end of a ribbon at a bed's face, sheet mm. */
interface FaceEnd {
  readonly face: Point;
  /** Straight away from the bed. */
  readonly away: Point;
  /** Straight length of the ribbon before it turns, mm. */
  readonly room: number;
  readonly bed: Box;
  readonly width: number;
}

/** Where a ribbon ends before a bed, so that the grid stays in sight. */
export function clearOfFace({ face, away, room }: FaceEnd): Point {
  const by = Math.min(faceClearance, room / 2);
  return { x: face.x + by * away.x, y: face.y + by * away.y };
}

/** The wedge in which a ribbon spreads over the width of a bed, or gathers behind it. */
export function wedge(end: FaceEnd, palette: Palette): string {
  const { away, bed, width } = end;
  const foot = clearOfFace(end);
  const height = Math.max(0.4, Math.min(wedgeHeight, end.room - faceClearance));
  const upright = away.x === 0;
  const [from, to] = upright ? [bed.x, bed.x + bed.width] : [bed.y, bed.y + bed.height];
  const middle = upright ? foot.x : foot.y;
  const at = (across: number, off: number): Point =>
    upright ? { x: across, y: foot.y + off * away.y } : { x: foot.x + off * away.x, y: across };
  const half = width / 2;
  const corners = [at(from, 0), at(to, 0), at(middle + half, height), at(middle - half, height)];
  return element('path', {
    d: `${pathThrough(corners)}Z`,
    fill: palette.water,
    stroke: palette.water,
    'stroke-width': 0.25,
    'stroke-linejoin': 'round',
  });
}

/** How the arrows of a bed stand, mm: `across` from the middle of the bed. */
interface ArrowRow {
  readonly length: number;
  readonly shaft: number;
  readonly across: readonly number[];
}

const opposite: Readonly<Record<Chamber['flow'], Chamber['flow']>> = {
  up: 'down',
  down: 'up',
  right: 'left',
  left: 'right',
};

const headings: Readonly<Record<Chamber['flow'], number>> = { up: -90, down: 90, right: 0, left: 180 };

/** Distance between the arrows of a row, about, mm. */
const arrowPitch = 11;

/** Middles of arrows spread evenly over a breadth, from its beginning, mm. */
function spreadOver(breadth: number): readonly number[] {
  const count = breadth < 7 ? 1 : Math.max(2, Math.round(breadth / arrowPitch));
  return Array.from({ length: count }, (_, index) => ((index + 0.5) / count) * breadth);
}

/**
 * Arrows through each bed, spread over its width: their shafts together are as wide as a ribbon of the
 * chamber's share would be.
 */
export function bedArrows(
  beds: readonly PlacedBed[],
  water: {
    /** Width of a ribbon of the whole flow, mm. */
    readonly fullWidth: number;
    readonly shareOf: (chamber: Chamber) => number;
    /** What is kept free for tags at the left of upright chambers and the foot of slots, mm. */
    readonly keptFor: (chamber: Chamber) => number;
  },
  pen: Pen,
): string {
  const cuts = beds.flatMap(({ box, twin, chamber }) => [
    { box, chamber, flow: chamber.flow },
    ...(twin ? [{ box: twin, chamber, flow: opposite[chamber.flow] }] : []),
  ]);
  return cuts
    .map(({ box, chamber, flow }) => {
      const { x, y, width, height } = pen.sheet.box(box);
      const upright = flow === 'up' || flow === 'down';
      const [depth, breadth] = upright ? [height, width] : [width, height];
      const kept = water.keptFor(chamber);
      const lanes = spreadOver(breadth - kept).map((at) => (upright ? kept + at : at) - breadth / 2);
      const turned = flow === 'down' || flow === 'left';
      const row = {
        length: Math.min(8, 0.76 * depth),
        shaft: (water.shareOf(chamber) * water.fullWidth) / lanes.length,
        across: turned ? lanes.map((lane) => -lane) : lanes,
      };
      const middle = { x: x + width / 2, y: y + height / 2 };
      return row.length < 1.2 ? '' : arrowRow(row, { at: middle, heading: headings[flow] }, pen.palette);
    })
    .join('');
}

function arrowRow(
  { length, shaft, across }: ArrowRow,
  place: { readonly at: Point; readonly heading: number },
  palette: Palette,
): string {
  const half = Math.min(Math.max(0.9, shaft / 2 + 0.6), 0.6 * length);
  const head = Math.min(1.5 * half, 0.6 * length);
  const tail = coordinate(-length / 2);
  const neck = coordinate(length / 2 - head);
  const shafts = across.map((at) => `M${tail} ${coordinate(at)}H${neck}`).join('');
  const heads = across.map((at) => {
    const corners = [at - half, at + half].map((side) => `${neck} ${coordinate(side)}`);
    return `M${corners[0]}L${coordinate(length / 2)} ${coordinate(at)}L${corners[1]}Z`;
  });
  const shaftWidth = Math.max(sizes.line, shaft);
  const around = { stroke: palette.waterTint, 'stroke-linejoin': 'round' };
  const transform = `translate(${coordinate(place.at.x)} ${coordinate(place.at.y)}) rotate(${place.heading})`;
  return element('g', { transform }, [
    element('path', { d: shafts, ...around, 'stroke-width': shaftWidth + 1 }),
    element('path', {
      d: heads.join(''),
      fill: palette.water,
      ...around,
      'stroke-width': 1,
      'paint-order': 'stroke',
    }),
    element('path', { d: shafts, stroke: palette.water, 'stroke-width': shaftWidth }),
  ]);
}

/** Water through a piece of a medium for the key. */
export function spreadSample(box: Box, palette: Palette): string {
  const row = { length: 0.8 * box.height, shaft: 0.7, across: [-0.25 * box.width, 0.25 * box.width] };
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const edge = { stroke: palette.ink, 'stroke-width': sizes.line };
  return rectangle(box, { fill: palette.waterTint, ...edge }) + arrowRow(row, { at, heading: -90 }, palette);
}
