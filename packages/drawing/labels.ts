import type { Point } from '@fettle/engine/families/layout.ts';
import type { Pen } from './housing.ts';
import { rectangle } from './housing.ts';
import { labelRoom, type Side } from './sheet.ts';
import { element, pathThrough, text } from './svg.ts';
import { textWidth } from './textWidth.ts';
import { type Palette, sizes } from './tokens.ts';

/** A word on the drawing with paper round its letters, so that lines behind it do not disturb. */
export function halo(
  content: string,
  style: {
    readonly x: number;
    readonly y: number;
    readonly paper: string;
    readonly ink: string;
    readonly size: number;
    readonly anchor?: 'start' | 'middle' | 'end';
    readonly weight?: 'normal' | 'bold';
  },
): string {
  return text(content, {
    x: style.x,
    y: style.y,
    'font-size': style.size,
    'font-weight': style.weight ?? 'bold',
    'text-anchor': style.anchor ?? 'middle',
    fill: style.ink,
    stroke: style.paper,
    'stroke-width': 1,
    'stroke-linejoin': 'round',
    'paint-order': 'stroke',
  });
}

/** A bed's tag: stage letter and number on a plate, centred on a point. */
export function tagPlate(tag: string, at: Point, palette: Palette): string {
  const { tagWidth: width, tagHeight: height } = sizes;
  const plate = { x: at.x - width / 2, y: at.y - height / 2, width, height };
  return element('g', {}, [
    rectangle(plate, { rx: 1.2, fill: palette.paper, stroke: palette.ink, 'stroke-width': sizes.line }),
    text(tag, {
      x: at.x,
      y: at.y + 0.36 * sizes.text,
      'font-size': sizes.text,
      'font-weight': 'bold',
      'text-anchor': 'middle',
      fill: palette.ink,
    }),
  ]);
}

/** Something that stands in a lane beside the section, tied to its place by a leader line. */
export interface LaneLabel {
  readonly kind: 'tag' | 'share';
  readonly content: string;
  readonly ink: string;
  readonly weight: 'normal' | 'bold';
  readonly side: Side;
  /** Where its leader line ends, sheet mm. */
  readonly anchor: Point;
}

/**
 * Places along a lane as near as can be to those wished for, in the given order, none nearer to the next
 * than half of both extents: least squares by pooling neighbours that would overlap.
 */
export function spread(
  wished: readonly { readonly at: number; readonly extent: number }[],
): readonly number[] {
  let offset = 0;
  const offsets = wished.map((one, index) => {
    offset += index === 0 ? 0 : (one.extent + (wished[index - 1]?.extent ?? 0)) / 2;
    return offset;
  });
  const pools: { sum: number; count: number }[] = [];
  wished.forEach((one, index) => {
    let pool = { sum: one.at - (offsets[index] ?? 0), count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum / last.count > pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  });
  const starts = pools.flatMap((pool) => Array.from({ length: pool.count }, () => pool.sum / pool.count));
  return starts.map((start, index) => start + (offsets[index] ?? 0));
}

/** Shifts places that reach beyond the ends of their lane back into it as one. */
function heldBetween(
  places: readonly number[],
  ends: { readonly from: number; readonly to: number },
): readonly number[] {
  const below = Math.max(0, (places.at(-1) ?? 0) - ends.to);
  const above = Math.max(0, ends.from - ((places[0] ?? 0) - below));
  return places.map((place) => place - below + above);
}

/** What stands in a lane, and how far down it reaches, mm. */
export interface Lane {
  readonly content: string;
  readonly end: number;
}

/** The labels of one lane with their leader lines. Under slots the tags stand over the shares. */
export function lane(labels: readonly LaneLabel[], side: Side, pen: Pen): Lane {
  const here = labels.filter((label) => label.side === side);
  if (side !== 'bottom') return rowOf(here, { side, row: 0 }, pen);
  const row = (kind: LaneLabel['kind'], index: number): Lane =>
    rowOf(
      here.filter((label) => label.kind === kind),
      { side, row: index },
      pen,
    );
  // Shares are drawn first: their leader lines run behind the plates of the tags.
  const rows = [row('share', 1), row('tag', 0)];
  return { content: rows.map((one) => one.content).join(''), end: Math.max(...rows.map((one) => one.end)) };
}

interface LanePlace {
  readonly side: Side;
  readonly row: number;
}

function rowOf(labels: readonly LaneLabel[], place: LanePlace, pen: Pen): Lane {
  const along = (point: Point): number => (place.side === 'bottom' ? point.x : point.y);
  const sorted = labels.toSorted((one, other) => along(one.anchor) - along(other.anchor));
  const extent =
    place.side === 'bottom' ? sizes.tagWidth + (place.row === 0 ? 1 : 2.5) : sizes.tagHeight + 0.6;
  const { sheet } = pen;
  const ends =
    place.side === 'bottom' ? rowEnds(labels.length * extent, pen) : { from: sheet.top, to: sheet.bottom };
  const places = heldBetween(spread(sorted.map((label) => ({ at: along(label.anchor), extent }))), ends);
  const middles = places.map((at) => standing(place, at, pen));
  return {
    content: sorted.map((label, index) => laneLabel(label, middles[index] ?? label.anchor, pen)).join(''),
    end: Math.max(sheet.top, ...middles.map((middle) => middle.y + sizes.tagHeight / 2)),
  };
}

/** Ends for the middles of a row under the section: as wide as the section, or as the row needs. */
function rowEnds(needed: number, { sheet }: Pen): { readonly from: number; readonly to: number } {
  const over = Math.max(0, needed - (sheet.right - sheet.left)) / 2;
  const edge = sizes.tagWidth / 2 + 0.5;
  const shift = Math.max(0, sheet.right + over - (sizes.sheetWidth - edge));
  return { from: Math.max(edge, sheet.left - over - shift), to: sheet.right + over - shift };
}

/** Middle of a label in its lane. */
function standing(place: LanePlace, along: number, { sheet }: Pen): Point {
  const out = labelRoom(place.side);
  if (place.side === 'left') return { x: sheet.left - out / 2, y: along };
  if (place.side === 'right') return { x: sheet.right + out / 2, y: along };
  return { x: along, y: sheet.bottom + 3.6 + place.row * (sizes.tagHeight + 0.8) };
}

/** Where a leader line meets its label: never inside it. */
function nearEdge(label: LaneLabel, at: Point): Point {
  if (label.side === 'bottom') return { x: at.x, y: at.y - sizes.tagHeight / 2 };
  const half =
    label.kind === 'tag'
      ? sizes.tagWidth / 2
      : textWidth(label.content, { size: sizes.text, bold: true }) / 2 + 0.3;
  return { x: at.x + (label.side === 'left' ? half : -half), y: at.y };
}

function laneLabel(label: LaneLabel, at: Point, pen: Pen): string {
  const { palette } = pen;
  const { ink, weight } = label;
  const end = nearEdge(label, at);
  const leader = element('path', {
    d: pathThrough([label.anchor, end]),
    stroke: ink,
    'stroke-width': sizes.thinLine,
  });
  const dot = element('circle', { cx: label.anchor.x, cy: label.anchor.y, r: 0.5, fill: ink });
  const content =
    label.kind === 'tag'
      ? tagPlate(label.content, at, palette)
      : halo(label.content, {
          x: at.x,
          y: at.y + 0.36 * sizes.text,
          paper: palette.paper,
          ink,
          weight,
          size: sizes.text,
        });
  return element('g', {}, [leader, dot, content]);
}
