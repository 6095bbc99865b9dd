import type { Point } from '@fettle/engine/families/layout.ts';
import type { Form, Medium } from '@fettle/engine/model/medium.ts';
import { element } from './svg.ts';
import type { Palette, Theme } from './tokens.ts';

/** Coarseness in five steps, 0 the finest. */
type Coarseness = 0 | 1 | 2 | 3 | 4;

const steps: readonly Coarseness[] = [0, 1, 2, 3, 4];

/** Sizes of cells, fibres or pieces between which each form goes from the finest to the coarsest hatching, m. */
const span: Readonly<Record<Form, { readonly finest: number; readonly coarsest: number }>> = {
  foam: { finest: 0.0005, coarsest: 0.004 },
  fibre: { finest: 0.00002, coarsest: 0.0004 },
  grains: { finest: 0.001, coarsest: 0.015 },
  rings: { finest: 0.005, coarsest: 0.025 },
  plastic: { finest: 0.007, coarsest: 0.045 },
};

/** How coarse a medium is among those of its form. */
export function coarsenessOf(medium: Medium): Coarseness {
  const { finest, coarsest } = span[medium.form];
  const share = Math.log(sizeM(medium) / finest) / Math.log(coarsest / finest);
  return steps[Math.round(4 * Math.min(1, Math.max(0, share)))] ?? 2;
}

function sizeM(medium: Medium): number {
  const { resistance } = medium;
  if (resistance.law === 'foam') return resistance.cellM.value;
  if (resistance.law === 'fibre') return resistance.fibreM.value;
  return resistance.sizeM.value;
}

/** One repeat of a hatching: its size, and what is drawn in it, mm. */
interface Tile {
  readonly width: number;
  readonly height: number;
  readonly strokes: string;
  readonly strokeWidth: number;
  readonly dots: string;
}

/** Pitch of the finest and the coarsest hatching of a form, mm; between them the steps are of one ratio. */
const pitches: Readonly<Record<Form, { readonly finest: number; readonly coarsest: number }>> = {
  foam: { finest: 1.15, coarsest: 4.6 },
  fibre: { finest: 1.1, coarsest: 2.4 },
  grains: { finest: 1, coarsest: 2.8 },
  rings: { finest: 2.6, coarsest: 5 },
  plastic: { finest: 3.4, coarsest: 6 },
};

function tileOf(form: Form, coarseness: Coarseness): Tile {
  const { finest, coarsest } = pitches[form];
  return tiles[form](finest * (coarsest / finest) ** (coarseness / 4));
}

const tiles: Readonly<Record<Form, (pitch: number) => Tile>> = {
  foam: honeycomb,
  fibre: waves,
  grains: dots,
  rings: hoops,
  plastic: wheels,
};

/** Cells side by side; the struts of coarse foam are stouter. */
function honeycomb(pitch: number): Tile {
  const side = pitch / Math.sqrt(3);
  const half = pitch / 2;
  const upper = `M${half} 0V${side / 2}L${pitch} ${side}M${half} ${side / 2}L0 ${side}V${2 * side}`;
  const lower = `M${pitch} ${side}V${2 * side}L${half} ${2.5 * side}M0 ${2 * side}L${half} ${2.5 * side}V${3 * side}`;
  const strokeWidth = 0.12 + 0.05 * pitch;
  return { width: pitch, height: 3 * side, strokes: upper + lower, strokeWidth, dots: '' };
}

function waves(pitch: number): Tile {
  const width = 2.4 * pitch;
  const middle = pitch / 2;
  const strokes = `M0 ${middle}Q${width / 4} ${-0.35 * pitch} ${width / 2} ${middle}T${width} ${middle}`;
  return { width, height: pitch, strokes, strokeWidth: 0.1 + 0.1 * pitch, dots: '' };
}

function circle(x: number, y: number, radius: number): string {
  return `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`;
}

/** Full dots of two sizes, clear of each other. */
function dots(pitch: number): Tile {
  const places = [
    [0.5, 0.5, 0.34],
    [1.55, 0.4, 0.22],
    [0.45, 1.5, 0.22],
    [1.5, 1.45, 0.34],
  ] as const;
  const content = places.map(([x, y, radius]) => circle(x * pitch, y * pitch, radius * pitch)).join('');
  return { width: 2 * pitch, height: 2 * pitch, strokes: '', strokeWidth: 0, dots: content };
}

/** Centres of pieces in two rows that stand off each other, as one repeat holds them. */
function packing(pitch: number): {
  readonly width: number;
  readonly height: number;
  readonly centres: readonly Point[];
} {
  const height = 1.8 * pitch;
  const centres = [
    { x: pitch / 2, y: height / 4 },
    { x: 0, y: (3 * height) / 4 },
    { x: pitch, y: (3 * height) / 4 },
  ];
  return { width: pitch, height, centres };
}

/** Stout rings, each by itself. */
function hoops(pitch: number): Tile {
  const { centres, ...size } = packing(pitch);
  const strokes = centres.map(({ x, y }) => circle(x, y, 0.27 * pitch)).join('');
  return { ...size, strokes, strokeWidth: 0.15 * pitch, dots: '' };
}

/** Thin wheels with spokes. */
function wheels(pitch: number): Tile {
  const radius = 0.37 * pitch;
  const { centres, ...size } = packing(pitch);
  const wheel = ({ x, y }: Point): string =>
    `${circle(x, y, radius)}M${x - radius} ${y}h${2 * radius}M${x} ${y - radius}v${2 * radius}`;
  return { ...size, strokes: centres.map(wheel).join(''), strokeWidth: 0.22, dots: '' };
}

/** Id of the pattern of a medium, the same wherever it is drawn in this theme. */
export function hatchId(medium: Medium, prefix: string): string {
  return `${prefix}-${medium.form}-${coarsenessOf(medium)}`;
}

/** Id of the hatching of walls in section. */
export function wallHatchId(prefix: string): string {
  return `${prefix}-wall`;
}

interface Pattern {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}

function pattern({ id, width, height }: Pattern, content: readonly string[]): string {
  return element(
    'pattern',
    { id, width: width.toFixed(3), height: height.toFixed(3), patternUnits: 'userSpaceOnUse' },
    content,
  );
}

function mediumPattern(
  medium: Medium,
  inked: { readonly palette: Palette; readonly prefix: string },
): string {
  const tile = tileOf(medium.form, coarsenessOf(medium));
  const paths = [
    tile.strokes &&
      element('path', {
        d: rounded(tile.strokes),
        fill: 'none',
        stroke: inked.palette.hatch,
        'stroke-width': tile.strokeWidth,
      }),
    tile.dots && element('path', { d: rounded(tile.dots), fill: inked.palette.hatch }),
  ];
  return pattern(
    { ...tile, id: hatchId(medium, inked.prefix) },
    paths.filter((path) => path !== ''),
  );
}

/** Path data with three decimals at most. */
function rounded(data: string): string {
  return data.replace(/-?\d+\.\d+(e-?\d+)?/g, (number) => String(Number(Number(number).toFixed(3))));
}

/** The patterns that these media and the walls need, each once. */
export function hatchings(
  media: readonly Medium[],
  inked: { readonly palette: Palette; readonly prefix: string },
): string {
  const wall = element('path', {
    d: 'M-0.3 0.3L0.3 -0.3M0 1.2L1.2 0M0.9 1.5L1.5 0.9',
    stroke: inked.palette.ink,
    'stroke-width': 0.25,
  });
  const unique = new Map(media.map((medium) => [hatchId(medium, inked.prefix), medium]));
  return element('defs', {}, [
    pattern({ id: wallHatchId(inked.prefix), width: 1.2, height: 1.2 }, [wall]),
    ...[...unique.values()].map((medium) => mediumPattern(medium, inked)),
  ]);
}

/** Prefix of ids that no drawing with other content shares. */
export function idPrefix(content: string, theme: Theme): string {
  let hash = 0x811c9dc5;
  for (const sign of content) hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return `f${hash.toString(36)}-${theme}`;
}
