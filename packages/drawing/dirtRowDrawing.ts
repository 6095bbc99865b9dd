import type { DirtyBed, DirtyTime } from '@fettle/engine/assessment/dirt/dirtTimes.ts';
import type { Box, Layout } from '@fettle/engine/families/layout.ts';
import { waterMeetsFirst } from './firstFace.ts';
import { idPrefix } from './hatching.ts';
import { rectangle } from './housing.ts';
import { printShare } from './lengths.ts';
import { type Packed, type PlacedBed, placedBeds } from './placedBeds.ts';
import { framed } from './sectionDrawing.ts';
import { coordinate, element, text } from './svg.ts';
import { type Palette, palettes, sizes, type Theme } from './tokens.ts';

/** A filter at several times since every bed was cleaned. */
export interface DirtToDraw extends Packed {
  /** Two to eight, in time. */
  readonly times: readonly DirtyTime[];
  readonly theme: Theme;
}

/** Deposit in half of the pores is as full as the model lets a bed get, and drawn black. */
const fullFraction = 0.5;

/** By the root, since the eye tells light greys apart better than dark ones; the key names the shares. */
const darkness = (filledFraction: number): number => Math.sqrt(Math.min(1, filledFraction / fullFraction));

const gapMm = 3;
const tallestMm = 36;
/** Thinnest strip of a bed that is drawn by itself, mm. */
const stripMm = 0.4;

const daySeconds = 86_400;

/** `day 0`, `day 3.5`, `day 140`: in two digits, as intervals are told. */
const dayText = (timeS: number): string => {
  const days = timeS / daySeconds;
  return `day ${days < 1 ? Number(days.toFixed(1)) : Number(days.toPrecision(2))}`;
};

/** A bed's deposit in strips of even thickness, from the face that the water meets inward, as shares of the pores. */
function strips({ layers }: DirtyBed, count: number): readonly number[] {
  const depth = layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
  const filled = Array.from({ length: count }, () => 0);
  let top = 0;
  for (const { thicknessM, filledFraction } of layers) {
    const [from, to] = [(top / depth) * count, ((top + thicknessM) / depth) * count];
    for (let strip = Math.floor(from); strip < Math.min(count, to); strip += 1)
      filled[strip] =
        (filled[strip] ?? 0) + filledFraction * (Math.min(to, strip + 1) - Math.max(from, strip));
    top += thicknessM;
  }
  return filled;
}

interface Panel {
  readonly palette: Palette;
  /** The section's metres on the panel's paper. */
  readonly inMm: (box: Box) => Box;
}

type Face = ReturnType<typeof waterMeetsFirst>;

/** The face that the other half of a bed about a tube turns to the water. */
const acrossTube: Readonly<Record<Face, Face>> = {
  left: 'right',
  right: 'left',
  top: 'top',
  bottom: 'bottom',
};

/** The strip of a bed's box that lies so far behind its first face. */
function stripBox(box: Box, face: Face, at: { readonly strip: number; readonly count: number }): Box {
  const place = face === 'top' || face === 'left' ? at.strip : at.count - 1 - at.strip;
  if (face === 'top' || face === 'bottom') {
    const height = box.height / at.count;
    return { ...box, y: box.y + place * height, height };
  }
  const width = box.width / at.count;
  return { ...box, x: box.x + place * width, width };
}

/** A bed in the section, and beside the tube that it lies about, its other half. */
function dirtyBed(placed: PlacedBed, dirty: DirtyBed | undefined, drawn: Panel): string {
  const face = waterMeetsFirst(placed.chamber);
  const half = dirtyPart({ box: placed.box, face }, dirty, drawn);
  return placed.twin === undefined
    ? half
    : half + dirtyPart({ box: placed.twin, face: acrossTube[face] }, dirty, drawn);
}

function dirtyPart(
  part: { readonly box: Box; readonly face: Face },
  dirty: DirtyBed | undefined,
  { palette, inMm }: Panel,
): string {
  const box = inMm(part.box);
  const along = part.face === 'top' || part.face === 'bottom' ? box.height : box.width;
  const count = Math.max(1, Math.round(along / stripMm));
  const dark = (dirty === undefined ? [] : strips(dirty, count)).map((filled, strip) =>
    rectangle(stripBox(box, part.face, { strip, count }), {
      fill: palette.ink,
      'fill-opacity': darkness(filled),
    }),
  );
  const edge = { fill: 'none', stroke: palette.ink, 'stroke-width': sizes.line };
  return [rectangle(box, { fill: palette.waterTint }), ...dark, rectangle(box, edge)].join('');
}

/** The box round all parts of a housing, m. */
export function housingBounds({ drawing }: Layout): Box {
  const { housing } = drawing;
  const x = Math.min(...housing.map((box) => box.x));
  const y = Math.min(...housing.map((box) => box.y));
  const right = Math.max(...housing.map((box) => box.x + box.width));
  const top = Math.max(...housing.map((box) => box.y + box.height));
  return { x, y, width: right - x, height: top - y };
}

interface Row {
  readonly palette: Palette;
  readonly scale: number;
  readonly bounds: Box;
}

function panel(drawn: DirtToDraw, time: DirtyTime, { palette, scale, bounds }: Row): string {
  const top = sizes.text + 3;
  const inMm = (box: Box): Box => ({
    x: (box.x - bounds.x) * scale,
    y: top + (bounds.y + bounds.height - box.y - box.height) * scale,
    width: box.width * scale,
    height: box.height * scale,
  });
  const middle = (bounds.width * scale) / 2;
  const words = { x: middle, 'text-anchor': 'middle', 'font-size': sizes.text, fill: palette.ink };
  const wall = { fill: palette.paper, stroke: palette.ink, 'stroke-width': sizes.thickLine };
  return [
    text(dayText(time.timeS), { ...words, y: sizes.text }),
    ...drawn.layout.drawing.housing.map((box) => rectangle(inMm(box), wall)),
    ...placedBeds(drawn).map((placed) =>
      dirtyBed(
        placed,
        time.beds.find(({ id }) => id === placed.bed.id),
        { palette, inMm },
      ),
    ),
    text(printShare(time.flowRatio), { ...words, y: top + bounds.height * scale + sizes.lineHeight }),
  ].join('');
}

const keyShares = [0.02, 0.1, 0.25, 0.5];

/** What a grey means, and what the share under a section is. */
function key(palette: Palette): string {
  const step = 17;
  const swatches = keyShares.map((share, index) => {
    const box = { x: index * step, y: 0, width: 5, height: 4 };
    const words = { x: box.x + 6, y: 3.2, 'font-size': sizes.text, fill: palette.ink };
    return [
      rectangle(box, { fill: palette.waterTint }),
      rectangle(box, { fill: palette.ink, 'fill-opacity': darkness(share) }),
      rectangle(box, { fill: 'none', stroke: palette.ink, 'stroke-width': sizes.line }),
      text(printShare(share), words),
    ].join('');
  });
  const lines = ['of a bed’s pores filled with dirt', 'Under each: flow at the tank against clean'];
  const words = lines.map((line, index) =>
    text(line, { x: 0, y: 8.4 + index * sizes.lineHeight, 'font-size': sizes.text, fill: palette.ink }),
  );
  return swatches.join('') + words.join('');
}

const keyHeight = 14.5;

/** Dry dirt in two figures that count: `0.84 g`, `120 g`. */
function gramsText(kg: number): string {
  const grams = kg * 1000;
  return grams > 0 && grams < 0.01 ? 'less than 0.01 g' : `${Number(grams.toPrecision(2))} g`;
}

/** What the row shows in words: the beds at its end, each with its dirt and its water. */
export function describeDirt(drawn: DirtToDraw): string {
  const last = drawn.times.at(-1);
  if (last === undefined) return '';
  const beds = placedBeds(drawn).flatMap(({ bed, tag, name }) => {
    const dirty = last.beds.find(({ id }) => id === bed.id);
    if (dirty === undefined) return [];
    return `${tag} ${name} holds ${gramsText(dirty.dirtKg)} of dry dirt and passes ${printShare(dirty.flowRatio)} of its clean flow`;
  });
  const flow = `the tank gets ${printShare(last.flowRatio)} of the clean flow`;
  return `From clean to ${dayText(last.timeS)}, when ${flow}: ${beds.join('; ')}.`;
}

/**
 * Small sections of one filter in a row, dated in days since every bed was cleaned, each bed darkened by its dirt
 * from the face that the water meets inward.
 *
 * @returns SVG of 100 mm width with a title and a text alternative
 */
export function dirtRowDrawing(drawn: DirtToDraw): string {
  const { layout, times, theme } = drawn;
  const palette = palettes[theme];
  const bounds = housingBounds(layout);
  const width = (sizes.sheetWidth - 2 * sizes.margin - (times.length - 1) * gapMm) / times.length;
  const scale = Math.min(width / bounds.width, tallestMm / bounds.height);
  const height = sizes.text + 3 + bounds.height * scale + sizes.lineHeight + 3;
  const panels = times.map((time, index) => {
    const x = sizes.margin + index * (width + gapMm) + (width - bounds.width * scale) / 2;
    const transform = `translate(${coordinate(x)} ${coordinate(sizes.margin)})`;
    return element('g', { transform }, [panel(drawn, time, { palette, scale, bounds })]);
  });
  const keyAt = `translate(${sizes.margin} ${coordinate(sizes.margin + height)})`;
  const says = describeDirt(drawn);
  return framed({
    figure: {
      defs: '',
      height: sizes.margin + height + keyHeight + sizes.margin,
      content: [...panels, element('g', { transform: keyAt }, [key(palette)])].join(''),
    },
    width: sizes.sheetWidth,
    title: 'Dirt over time',
    says,
    prefix: idPrefix(`dirt ${says}`, theme),
    palette,
  });
}
