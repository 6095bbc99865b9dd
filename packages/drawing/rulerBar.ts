import { coordinate, element, text } from './svg.ts';
import { type Palette, sizes } from './tokens.ts';

/** Height that a ruler takes, mm. */
export const rulerHeight = 9;
/** What its words take more where they stand under it, mm. */
export const underneath = 3.5;

const centimetres = 5;
const inchMm = 25.4;
const inches = 2;

const tick = (x: number, from: number, to: number): string =>
  `M${coordinate(x)} ${coordinate(from)}V${coordinate(to)}`;

/** A ruler on paper, 5 cm over 2 in, by which it is seen whether a printer kept the size. */
export function rulerBar({
  x,
  y,
  says,
  palette,
  under = false,
}: {
  readonly x: number;
  /** Upper edge, mm. */
  readonly y: number;
  readonly says: string;
  readonly palette: Palette;
  /** Whether its words stand under it; else beside it. */
  readonly under?: boolean;
}): string {
  const middle = y + 3;
  const metric = Array.from({ length: centimetres + 1 }, (_, at) => tick(x + 10 * at, middle, middle - 2));
  const halves = Array.from({ length: 2 * inches + 1 }, (_, at) =>
    tick(x + (inchMm / 2) * at, middle, middle + (at % 2 === 0 ? 2 : 1.2)),
  );
  const line = `M${coordinate(x)} ${coordinate(middle)}H${coordinate(x + inches * inchMm)}`;
  return element('g', {}, [
    element('path', {
      d: [line, ...metric, ...halves].join(''),
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': sizes.line,
    }),
    text(says, {
      x: under ? x : x + inches * inchMm + 3,
      y: under ? middle + 3 + sizes.text : middle + 0.36 * sizes.text,
      'font-size': sizes.text,
      fill: palette.softInk,
    }),
  ]);
}
