import type { Point } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import { arrowedLine } from './arrowedLine.ts';
import { folded } from './folding.ts';
import { hatchId, hatchings, idPrefix } from './hatching.ts';
import { rectangle } from './housing.ts';
import { rulerBar, rulerHeight, underneath } from './rulerBar.ts';
import { framed } from './sectionDrawing.ts';
import { element, text } from './svg.ts';
import { textWidth } from './textWidth.ts';
import { type Palette, palettes, sizes, type Theme } from './tokens.ts';

/** A length that is drawn, with what stands at it. */
export interface DrawnLength {
  readonly lengthM: number;
  /** In both systems of units, `172 mm (6.8 in)`. */
  readonly says: string;
}

/** A piece that is cut, and what is written on its drawing. */
export interface CutToDraw {
  /** Over the drawing: number and name. */
  readonly title: string;
  /** From left to right, above 0. */
  readonly across: DrawnLength;
  /** From bottom to top, above 0. */
  readonly upright: DrawnLength;
  /** Thickness, drawn as a view from the side; absent where it is the stuff's own. */
  readonly thickness?: DrawnLength;
  /** How thick it lies once it is pressed into its room, m; dashed in the view from the side. */
  readonly pressedM?: number;
  /** The clear outline of the chamber where the piece is cut larger or smaller, m, dashed. */
  readonly chamber?: { readonly acrossM: number; readonly uprightM: number };
  /** Whose hatching fills it; none for strips and hoses. */
  readonly medium?: Medium;
  readonly words: {
    /** The scale in words; `ratio` is such as `1:2`. */
    scale(ratio: string): string;
    /** What the bar is: so long on paper where it is printed at full size. */
    readonly bar: string;
    /** What the drawing shows, for who does not see it. */
    readonly says: string;
  };
  /** Most paper that the outline takes, mm. */
  readonly room: { readonly width: number; readonly height: number };
  readonly theme: Theme;
}

/** Scales of ISO 5455, and those beyond that continue its series. */
const scales = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

/** How many times smaller than the piece its drawing is: the largest of the usual scales that fits. */
export const scaleOf = ({ across, upright, room }: Pick<CutToDraw, 'across' | 'upright' | 'room'>): number =>
  scales.find(
    (scale) =>
      (across.lengthM * 1000) / scale <= room.width && (upright.lengthM * 1000) / scale <= room.height,
  ) ?? scales.at(-1)!;

/** Widths of a sheet, mm: that of the text on both papers, and for small pieces one of which two stand side by side. */
const sheetWidths = { narrow: 86, wide: 172 } as const;
const lane = 7.5;
const gap = 9;
/** A lower piece has the heads of its length outside, which want room over it, mm. */
const shortMm = 7;

interface Placed {
  readonly drawn: CutToDraw;
  readonly palette: Palette;
  readonly prefix: string;
  readonly sheetWidth: number;
  readonly titleLines: readonly string[];
  /** Upper left corner of the outline, mm. */
  readonly at: Point;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
}

const isTall = (height: number, says: string): boolean => height >= textWidth(says, { size: sizes.text });

const filling = ({ drawn, palette, prefix }: Placed): string =>
  drawn.medium === undefined ? palette.waterTint : `url(#${hatchId(drawn.medium, prefix)})`;

/** The edge of the room that a piece is cut for. */
const dashedEdge = ({ ink }: Palette) => ({
  fill: 'none',
  stroke: ink,
  'stroke-width': sizes.line,
  'stroke-dasharray': '2.4 1.2',
});

const outline = (placed: Placed): string => {
  const { at, width, height, palette, drawn, scale } = placed;
  const edge = { fill: filling(placed), stroke: palette.ink, 'stroke-width': 2 * sizes.line };
  const inner = drawn.chamber;
  const inside = inner && { width: (inner.acrossM * 1000) / scale, height: (inner.uprightM * 1000) / scale };
  const dashed =
    inside === undefined
      ? ''
      : rectangle(
          {
            x: at.x + (width - inside.width) / 2,
            y: at.y + height - inside.height - (height - inside.height) / 2,
            ...inside,
          },
          dashedEdge(palette),
        );
  return rectangle({ ...at, width, height }, edge) + dashed;
};

const outlineLengths = ({ at, width, height, palette, drawn }: Placed): string => {
  const foot = at.y + height;
  const below = foot + lane - 2;
  return [
    arrowedLine({
      from: { x: at.x, y: below },
      to: { x: at.x + width, y: below },
      foot,
      says: drawn.across.says,
      palette,
    }),
    arrowedLine({
      from: { x: at.x - lane + 2, y: foot },
      to: { x: at.x - lane + 2, y: at.y },
      foot: at.x,
      says: drawn.upright.says,
      palette,
      level: !isTall(height, drawn.upright.says),
    }),
  ].join('');
};

/** The piece from its side, as thick as it is. */
const sideView = (placed: Placed): string => {
  const { drawn, at, width, height, palette, scale } = placed;
  const { thickness } = drawn;
  if (thickness === undefined) return '';
  const thick = (thickness.lengthM * 1000) / scale;
  const words = textWidth(thickness.says, { size: sizes.text });
  const x = at.x + width + gap + Math.max(0, words - thick) / 2;
  const foot = at.y + height;
  const edge = { fill: filling(placed), stroke: palette.ink, 'stroke-width': 2 * sizes.line };
  const below = foot + lane - 2;
  const pressed = ((drawn.pressedM ?? 0) * 1000) / scale;
  const dashed =
    drawn.pressedM === undefined
      ? ''
      : rectangle({ x: x + (thick - pressed) / 2, y: at.y, width: pressed, height }, dashedEdge(palette));
  return [
    rectangle({ x, y: at.y, width: thick, height }, edge),
    dashed,
    arrowedLine({
      from: { x, y: below },
      to: { x: x + thick, y: below },
      foot,
      says: thickness.says,
      palette,
    }),
  ].join('');
};

const titleLines = (title: string, most: number): readonly string[] =>
  folded(title, {
    most,
    measure: (line) => textWidth(line, { size: sizes.title, bold: true }),
  });

/** How far views and their words reach to the right of the outline's left edge, mm. */
const reachOf = ({ across, thickness }: CutToDraw, scale: number): number => {
  const words = (says: string): number => textWidth(says, { size: sizes.text });
  const width = (across.lengthM * 1000) / scale;
  if (thickness === undefined) return Math.max(width, (width + words(across.says)) / 2);
  return width + gap + Math.max(words(thickness.says), (thickness.lengthM * 1000) / scale);
};

const place = (drawn: CutToDraw, prefix: string): Placed => {
  const scale = scaleOf(drawn);
  const height = (drawn.upright.lengthM * 1000) / scale;
  const says = drawn.upright.says;
  const beside = isTall(height, says) ? lane + 4 : lane + textWidth(says, { size: sizes.text });
  const isNarrow = beside + reachOf(drawn, scale) <= sheetWidths.narrow;
  const sheetWidth = isNarrow ? sheetWidths.narrow : sheetWidths.wide;
  const lines = titleLines(drawn.title, sheetWidth);
  return {
    drawn,
    prefix,
    palette: palettes[drawn.theme],
    scale,
    height,
    sheetWidth,
    titleLines: lines,
    width: (drawn.across.lengthM * 1000) / scale,
    at: { x: beside, y: lines.length * (sizes.title + 1.4) + (height < shortMm ? 6 : 2) },
  };
};

/** Scale and ruler under the views. */
const footOf = ({ drawn, palette, at, height, scale, sheetWidth }: Placed): string => {
  const y = at.y + height + lane + 5;
  const scaleText = drawn.words.scale(`1:${scale}`);
  const x = textWidth(scaleText, { size: sizes.text, bold: true }) + 6;
  return [
    text(scaleText, { x: 0, y: y + 3.2, 'font-size': sizes.text, 'font-weight': 'bold', fill: palette.ink }),
    rulerBar({ x, y, says: drawn.words.bar, palette, under: sheetWidth === sheetWidths.narrow }),
  ].join('');
};

/**
 * The outline of a piece to cut, to one of the usual scales: seen from above with its lengths, from the side with its
 * thickness, hatched as its medium is, over a ruler that shows whether the printer kept the scale.
 *
 * @returns SVG of 172 mm width in true millimetres, of 86 mm where that is enough, with a title and a text alternative
 */
export function cutOutlineDrawing(drawn: CutToDraw): string {
  const { title, medium, theme, words } = drawn;
  const palette = palettes[theme];
  const prefix = idPrefix(`cut ${title}${words.says}`, theme);
  const placed = place(drawn, prefix);
  const heads = placed.titleLines.map((line, index) =>
    text(line, {
      x: 0,
      y: sizes.title + index * (sizes.title + 1.4),
      'font-size': sizes.title,
      'font-weight': 'bold',
      fill: palette.ink,
    }),
  );
  return framed({
    figure: {
      defs: hatchings(medium === undefined ? [] : [medium], { palette, prefix }),
      height:
        placed.at.y +
        placed.height +
        lane +
        5 +
        rulerHeight +
        (placed.sheetWidth === sheetWidths.narrow ? underneath : 0),
      content: element('g', {}, [
        ...heads,
        outline(placed),
        outlineLengths(placed),
        sideView(placed),
        footOf(placed),
      ]),
    },
    width: placed.sheetWidth,
    title,
    says: words.says,
    prefix,
    palette,
  });
}
