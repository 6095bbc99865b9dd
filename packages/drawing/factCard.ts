import { folded } from './folding.ts';
import { rectangle } from './housing.ts';
import { element, escapeXml, text } from './svg.ts';
import { textWidth } from './textWidth.ts';
import { fontFamily, type Palette, palettes, type Theme } from './tokens.ts';

/** A figure on a card. */
export interface CardFigure {
  /** Of what state, or of what: over the figure. */
  readonly label: string;
  readonly metric: string;
  /** Under it; absent where both systems write it alike. */
  readonly us?: string;
  /** Length of its bar, 0 to 1, beside those of the other figures; no bars where it is absent. */
  readonly bar?: number;
}

/** One idea on a picture: what it is about, one to three figures, and under which conditions. */
export interface CardToDraw {
  /** What the figures are of: small, at the top. */
  readonly name: string;
  readonly headline: string;
  /** One to three; the last is the one that counts. */
  readonly figures: readonly CardFigure[];
  readonly note: string;
  readonly theme: Theme;
}

/** Size of a card, pixels. */
export const cardSize = { width: 1200, height: 675 } as const;

const margin = 72;
const inner = cardSize.width - 2 * margin;
const gap = 48;
/** Feet of the lines, pixels from the top. */
const feet = {
  name: 92,
  headline: 168,
  label: 300,
  figure: 404,
  us: 470,
  bar: 500,
  rule: 566,
  note: 606,
} as const;
const sizes = { name: 28, label: 28, us: 44, note: 24, bar: 26 } as const;

interface Fit {
  readonly width: number;
  readonly largest: number;
  readonly smallest: number;
  readonly bold?: boolean;
  readonly lines: number;
}

/** A text in at most so many lines of so much width, as large as it goes; what is too long ends with an ellipsis. */
export const fitted = (
  content: string,
  { width, largest, smallest, bold = false, lines }: Fit,
): { readonly size: number; readonly lines: readonly string[] } => {
  const wide = (size: number) => (line: string) => textWidth(line, { size, bold });
  for (let size = largest; size >= smallest; size -= 2) {
    const broken = folded(content, { most: width, measure: wide(size) });
    const isWhole = broken.every((line) => content.includes(line));
    if (broken.length <= lines && isWhole) return { size, lines: broken };
  }
  const broken = folded(content, { most: width, measure: wide(smallest) });
  if (broken.length <= lines) return { size: smallest, lines: broken };
  let last = Array.from(broken[lines - 1] ?? '');
  while (last.length > 0 && wide(smallest)(`${last.join('')}…`) > width) last = last.slice(0, -1);
  return { size: smallest, lines: [...broken.slice(0, lines - 1), `${last.join('').trimEnd()}…`] };
};

interface Pen {
  readonly palette: Palette;
  readonly width: number;
  readonly x: number;
}

const written = (
  content: string,
  at: { readonly x: number; readonly y: number },
  style: Readonly<Record<string, string | number>>,
): string => text(content, { ...at, ...style });

const line = (
  content: string,
  y: number,
  pen: Pen & { readonly fit: Omit<Fit, 'width' | 'lines'> },
): string => {
  const { size, lines } = fitted(content, { ...pen.fit, width: pen.width, lines: 1 });
  const weight = pen.fit.bold ? { 'font-weight': 'bold' } : {};
  return lines
    .map((one) => written(one, { x: pen.x, y }, { 'font-size': size, fill: pen.palette.ink, ...weight }))
    .join('');
};

/** The last bar is solid, those before it are outlined: told apart without colour. */
const barOf = (share: number, isLast: boolean, { palette, width, x }: Pen): string => {
  const box = {
    x,
    y: feet.bar,
    width: Math.max(3, width * Math.min(1, Math.max(0, share))),
    height: sizes.bar,
  };
  const solid = { fill: palette.water, stroke: palette.water, 'stroke-width': 3 };
  const outlined = { fill: 'none', stroke: palette.softInk, 'stroke-width': 3 };
  return rectangle(box, isLast ? solid : outlined);
};

/** A label in two lines at most, the last of them over the figure. */
const labelLines = (label: string, { palette, width, x }: Pen): string => {
  const { size, lines } = fitted(label, { width, largest: sizes.label, smallest: 20, lines: 2 });
  return lines
    .map((one, at) =>
      text(one, {
        x,
        y: feet.label - (lines.length - 1 - at) * size * 1.2,
        'font-size': size,
        fill: palette.ink,
      }),
    )
    .join('');
};

const figureColumn = (figure: CardFigure, isLast: boolean, pen: Pen & { readonly size: number }): string => {
  const soft: Pen = { ...pen, palette: { ...pen.palette, ink: pen.palette.softInk } };
  return [
    labelLines(figure.label, soft),
    line(figure.metric, feet.figure, { ...pen, fit: { largest: pen.size, smallest: 24, bold: true } }),
    figure.us === undefined
      ? ''
      : line(figure.us, feet.us, { ...soft, fit: { largest: sizes.us, smallest: 20 } }),
    figure.bar === undefined ? '' : barOf(figure.bar, isLast, pen),
  ].join('');
};

/** Size at which every figure of a card fits its column, so that they stand in one size. */
const figureSize = (figures: readonly CardFigure[], width: number): number =>
  Math.min(
    ...figures.map(
      ({ metric }) => fitted(metric, { width, largest: 96, smallest: 24, bold: true, lines: 1 }).size,
    ),
  );

const headlineLines = (headline: string, palette: Palette): string => {
  const { size, lines } = fitted(headline, { width: inner, largest: 54, smallest: 34, bold: true, lines: 2 });
  return lines
    .map((one, at) =>
      written(
        one,
        { x: margin, y: feet.headline + at * size * 1.15 },
        { 'font-size': size, 'font-weight': 'bold', fill: palette.ink },
      ),
    )
    .join('');
};

const noteLines = (note: string, palette: Palette): string => {
  const { size, lines } = fitted(note, { width: inner, largest: sizes.note, smallest: 16, lines: 2 });
  return lines
    .map((one, at) =>
      written(
        one,
        { x: margin, y: feet.note + at * size * 1.35 },
        { 'font-size': size, fill: palette.softInk },
      ),
    )
    .join('');
};

/**
 * A card of 1200 by 675 pixels that says one thing in large figures, in both systems of units. Every text is made
 * smaller until it fits, and cut where it does not even then.
 *
 * @returns SVG with a title and a text alternative
 */
export function factCard({ name, headline, figures, note, theme }: CardToDraw): string {
  const palette = palettes[theme];
  const width = (inner - (figures.length - 1) * gap) / Math.max(1, figures.length);
  const size = figureSize(figures, width);
  const columns = figures.map((figure, at) =>
    figureColumn(figure, at === figures.length - 1, { palette, width, x: margin + at * (width + gap), size }),
  );
  const says = figures.map(
    ({ label, metric, us }) => `${label}: ${metric}${us === undefined ? '' : ` (${us})`}`,
  );
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      'aria-label': `${headline}. ${says.join('; ')}. ${note}`,
      viewBox: `0 0 ${cardSize.width} ${cardSize.height}`,
      width: cardSize.width,
      height: cardSize.height,
      'font-family': fontFamily,
    },
    [
      element('title', {}, [escapeXml(headline)]),
      rectangle({ x: 0, y: 0, ...cardSize }, { fill: palette.paper }),
      rectangle({ x: 0, y: 0, width: cardSize.width, height: 14 }, { fill: palette.water }),
      line(name, feet.name, {
        palette: { ...palette, ink: palette.softInk },
        width: inner,
        x: margin,
        fit: { largest: sizes.name, smallest: 20 },
      }),
      headlineLines(headline, palette),
      ...columns,
      rectangle({ x: margin, y: feet.rule, width: inner, height: 2 }, { fill: palette.ink }),
      noteLines(note, palette),
    ],
  );
}
