import type { Box, Point } from '@fettle/engine/families/layout.ts';
import type { Pen } from './housing.ts';
import { type Inscription, inscribed, inscriptionStep } from './inscriptions.ts';
import { halo } from './labels.ts';
import { dimensionRoom, type LanedDimension, labelRoom, type Sheet, type Side } from './sheet.ts';
import type { Speech } from './speech.ts';
import { coordinate, element } from './svg.ts';
import { textWidth } from './textWidth.ts';
import { sizes } from './tokens.ts';

/** Every dimension line with its word, its length, extension lines and heads. */
export function dimensionLines(pen: Pen, options: Speech & { readonly labelled: ReadonlySet<Side> }): string {
  const inscriptions = inscribed(pen.sheet, options);
  return inscriptions.map((one) => dimensionLine(one, pen, options.labelled)).join('');
}

/** Where the word and the length of a measurement stand. */
export interface DimensionPlace {
  /** Key of the measurement. */
  readonly measurement: string;
  /** Millimetres of the sheet. */
  readonly box: Box;
}

/** Where every dimension line's inscription stands on the sheet, so that it can be pointed at. */
export function dimensionPlaces(
  sheet: Sheet,
  options: Speech & { readonly labelled: ReadonlySet<Side> },
): readonly DimensionPlace[] {
  return inscribed(sheet, options).map(({ dimension, lines, middle }) => {
    const out = outward(dimension, sheet, options.labelled);
    const width = Math.max(
      ...inscribedLines(dimension, lines).map((line) => textWidth(line, { size: sizes.text })),
    );
    const height = inscribedLines(dimension, lines).length * inscriptionStep + 1;
    const corner = {
      bottom: { x: middle - width / 2, y: out },
      left: { x: out - 1 - width, y: middle - height / 2 },
      right: { x: out + 1, y: middle - height / 2 },
    }[dimension.side];
    return { measurement: dimension.line.measurement, box: { ...corner, width, height } };
  });
}

/** The lines of an inscription as they are written. */
const inscribedLines = ({ side }: LanedDimension, lines: readonly string[]): readonly string[] =>
  side === 'bottom' ? [lines.join(' ')] : lines;

function dimensionLine(inscription: Inscription, pen: Pen, labelled: ReadonlySet<Side>): string {
  const { dimension } = inscription;
  const ends = [dimension.line.from, dimension.line.to].map(pen.sheet.at);
  const out = outward(dimension, pen.sheet, labelled);
  const feet = ends.map((end) => (dimension.side === 'bottom' ? { x: end.x, y: out } : { x: out, y: end.y }));
  const [from, to] = [feet[0] ?? { x: 0, y: 0 }, feet[1] ?? { x: 0, y: 0 }];
  const stroke = { stroke: pen.palette.softInk, 'stroke-width': sizes.thinLine, fill: 'none' };
  return element('g', {}, [
    element('path', { d: ends.map((end, index) => extension(end, feet[index] ?? end)).join(''), ...stroke }),
    heads(from, to, pen),
    inscriptionText(inscription, out, pen),
  ]);
}

/** Coordinate of a dimension line across its lane. */
function outward({ side, lane }: LanedDimension, sheet: Sheet, labelled: ReadonlySet<Side>): number {
  const away = (labelled.has(side) ? labelRoom(side) : 0) + lane * dimensionRoom(side);
  if (side === 'left') return sheet.left - away - 1.5;
  if (side === 'right') return sheet.right + away + 1.5;
  return sheet.bottom + away + 2;
}

/** From the object to a little beyond the dimension line, with a gap at the object. */
function extension(from: Point, to: Point): string {
  const sign = { x: Math.sign(to.x - from.x), y: Math.sign(to.y - from.y) };
  const start = { x: from.x + sign.x, y: from.y + sign.y };
  return `M${coordinate(start.x)} ${coordinate(start.y)}L${coordinate(to.x + sign.x)} ${coordinate(to.y + sign.y)}`;
}

/** The line with a head at each end; heads stand outside where they would meet. */
function heads(from: Point, to: Point, { palette }: Pen): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const inside = length > 5;
  const along = { x: (to.x - from.x) / (length || 1), y: (to.y - from.y) / (length || 1) };
  const head = (tip: Point, sign: number): string => {
    const back = { x: tip.x + sign * 1.8 * along.x, y: tip.y + sign * 1.8 * along.y };
    const half = { x: 0.5 * along.y, y: 0.5 * along.x };
    const corners = [
      `${coordinate(back.x + half.x)} ${coordinate(back.y + half.y)}`,
      `${coordinate(back.x - half.x)} ${coordinate(back.y - half.y)}`,
    ];
    return `M${coordinate(tip.x)} ${coordinate(tip.y)}L${corners.join('L')}Z`;
  };
  const over = inside ? 0 : 3;
  const ends = [
    `M${coordinate(from.x - over * along.x)} ${coordinate(from.y - over * along.y)}`,
    `L${coordinate(to.x + over * along.x)} ${coordinate(to.y + over * along.y)}`,
  ];
  return (
    element('path', { d: ends.join(''), stroke: palette.softInk, 'stroke-width': sizes.thinLine }) +
    element('path', { d: head(from, inside ? 1 : -1) + head(to, inside ? -1 : 1), fill: palette.softInk })
  );
}

/** The words and the length of a line, one under the other beside it, in one line under it. */
function inscriptionText({ dimension, lines, middle }: Inscription, out: number, { palette }: Pen): string {
  const style = { paper: palette.paper, ink: palette.ink, size: sizes.text, weight: 'normal' } as const;
  if (dimension.side === 'bottom') return halo(lines.join(' '), { ...style, x: middle, y: out + 3.6 });
  const right = dimension.side === 'right';
  const first = middle - ((lines.length - 1) * inscriptionStep) / 2 + 0.36 * sizes.text;
  return lines
    .map((line, index) =>
      halo(line, {
        ...style,
        x: out + (right ? 1 : -1),
        y: first + index * inscriptionStep,
        anchor: right ? 'start' : 'end',
      }),
    )
    .join('');
}
