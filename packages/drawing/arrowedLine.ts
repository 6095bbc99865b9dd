import type { Point } from '@fettle/engine/families/layout.ts';
import { coordinate, element, text } from './svg.ts';
import { type Palette, sizes } from './tokens.ts';

/** A dimension line, level or upright, and what stands at it. */
export interface LineToDraw {
  /** Left or lower end, sheet mm. */
  readonly from: Point;
  /** Right or upper end. */
  readonly to: Point;
  /** Where the piece ends: extension lines run from there to the line; y for a level line, x for an upright one. */
  readonly foot: number;
  readonly says: string;
  readonly palette: Palette;
  /** Whether the words stand level beside an upright line; else they run along it. */
  readonly level?: boolean;
}

const headLength = 2.2;
const headHalf = 0.6;
/** Shorter lines have their heads outside, mm. */
const headsInside = 7;

const number = coordinate;

const head = (tip: Point, along: Point): string => {
  const back = { x: tip.x - headLength * along.x, y: tip.y - headLength * along.y };
  const side = { x: headHalf * along.y, y: headHalf * along.x };
  return `M${number(tip.x)} ${number(tip.y)}L${number(back.x + side.x)} ${number(back.y + side.y)}L${number(back.x - side.x)} ${number(back.y - side.y)}Z`;
};

const inscription = ({ from, to, says, palette, level }: LineToDraw): string => {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const words = { 'font-size': sizes.text, fill: palette.ink };
  if (from.y === to.y)
    return text(says, { x: middle.x, y: middle.y + sizes.text + 0.6, 'text-anchor': 'middle', ...words });
  if (level)
    return text(says, { x: middle.x - 1.4, y: middle.y + 0.36 * sizes.text, 'text-anchor': 'end', ...words });
  const at = { x: middle.x - 1.2, y: middle.y };
  const transform = `rotate(-90 ${number(at.x)} ${number(at.y)})`;
  return text(says, { ...at, 'text-anchor': 'middle', transform, ...words });
};

/** A dimension line with extension lines, a head at each end, and its words under it or left of it. */
export function arrowedLine(line: LineToDraw): string {
  const { from, to, foot, palette } = line;
  const isLevel = from.y === to.y;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / (length || 1), y: (to.y - from.y) / (length || 1) };
  const inside = length >= headsInside;
  const sign = inside ? 1 : -1;
  const over = inside ? 0 : headLength + 1.4;
  const extension = (end: Point): string =>
    isLevel
      ? `M${number(end.x)} ${number(foot + 0.8)}V${number(end.y + 1)}`
      : `M${number(foot - 0.8)} ${number(end.y)}H${number(end.x - 1)}`;
  const stroke = { stroke: palette.softInk, 'stroke-width': sizes.thinLine, fill: 'none' };
  const bar = `M${number(from.x - over * along.x)} ${number(from.y - over * along.y)}L${number(to.x + over * along.x)} ${number(to.y + over * along.y)}`;
  return element('g', {}, [
    element('path', { d: extension(from) + extension(to) + bar, ...stroke }),
    element('path', {
      d:
        head(from, { x: -sign * along.x, y: -sign * along.y }) +
        head(to, { x: sign * along.x, y: sign * along.y }),
      fill: palette.softInk,
    }),
    inscription(line),
  ]);
}
