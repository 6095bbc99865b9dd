import type { Box, Point } from '@fettle/engine/families/layout.ts';
import { said } from '@fettle/engine/wording/said.ts';
import { folded } from './folding.ts';
import { hatchId } from './hatching.ts';
import { rectangle } from './housing.ts';
import { tagPlate } from './labels.ts';
import { laidLook, laidSaid } from './laidBeds.ts';
import { type PlacedBed, stagesNote } from './placedBeds.ts';
import { dashedSample, mainRibbonSample } from './ribbons.ts';
import { alarmingPercent, type Flows } from './shares.ts';
import { type Speech, spoken, spokenLength } from './speech.ts';
import { coordinate, element, text } from './svg.ts';
import { textWidth } from './textWidth.ts';
import { type Palette, sizes } from './tokens.ts';
import { spreadSample } from './waterInBeds.ts';

/** Lines of drawing text that fit between `from` and the right margin of the sheet, mm. */
export function sheetLines(
  content: string,
  style: { readonly from: number; readonly size: number; readonly bold?: boolean },
): readonly string[] {
  const most = sizes.sheetWidth - sizes.margin - style.from;
  return folded(content, { most, measure: (line) => textWidth(line, style) });
}

/** A block of the sheet: its markup from y 0 down, and its height, mm. */
export interface Block {
  readonly height: number;
  readonly content: string;
}

function keyLines(content: string, from: number): readonly string[] {
  return sheetLines(content, { from, size: sizes.text });
}

interface Row {
  readonly symbol: (middleY: number) => string;
  readonly lines: readonly string[];
  readonly textX: number;
}

function stackRows(rows: readonly Row[], palette: Palette): Block {
  let y = 0;
  const content: string[] = [];
  for (const row of rows) {
    const height = Math.max(6.2, row.lines.length * sizes.lineHeight + 1.6);
    const first = y + height / 2 - ((row.lines.length - 1) * sizes.lineHeight) / 2 + 0.36 * sizes.text;
    content.push(row.symbol(y + height / 2));
    row.lines.forEach((line, index) => {
      content.push(
        text(line, {
          x: row.textX,
          y: first + index * sizes.lineHeight,
          'font-size': sizes.text,
          fill: palette.ink,
        }),
      );
    });
    y += height;
  }
  return { height: y, content: content.join('') };
}

interface KeyInked extends Speech {
  /** Flows from which the shares round pieces are said. */
  readonly assessment?: Flows | undefined;
  readonly palette: Palette;
  readonly prefix: string;
}

/** A piece of hatching that begins at its own corner, so that it looks the same in every row. */
function swatch(at: Point, inked: Readonly<Record<string, string | number>>): string {
  return element('g', { transform: `translate(${coordinate(at.x)} ${coordinate(at.y)})` }, [
    rectangle({ x: 0, y: 0, width: sizes.swatchWidth, height: 5 }, inked),
  ]);
}

function bedRow(placed: PlacedBed, { palette, prefix, ...speech }: KeyInked): Row {
  const textX = sizes.margin + sizes.swatchWidth + sizes.tagWidth + 4;
  const bed = said('section.bed', {
    medium: { name: placed.name },
    depth: spokenLength(placed.bed.depthM, speech),
    chamber: { name: placed.chamber.label },
  });
  const says = spoken(speech, 'section.bed-laid', { bed: laidSaid(bed, placed, speech) });
  const { edge } = laidLook(placed, { x: 0, y: 0, width: sizes.swatchWidth, height: 5 }, 0);
  const fill = placed.medium ? `url(#${hatchId(placed.medium, prefix)})` : 'none';
  return {
    textX,
    lines: keyLines(says, textX),
    symbol: (y) =>
      swatch(
        { x: sizes.margin, y: y - 2.5 },
        { fill, stroke: palette.ink, 'stroke-width': sizes.line, ...edge },
      ) + tagPlate(placed.tag, { x: sizes.margin + sizes.swatchWidth + 2 + sizes.tagWidth / 2, y }, palette),
  };
}

/** What the key says besides the beds. */
interface KeyNotes {
  readonly reckoned: boolean;
  readonly bypass: boolean;
  /** Whether any way past the media takes so much that it is marked as a fault. */
  readonly alarming: boolean;
  /** Lengths whose words have no room at their lines: `basket height 58 mm`. */
  readonly lengths: readonly string[];
}

function waterRows(notes: KeyNotes, { palette, ...speech }: KeyInked, holdsBeds: boolean): readonly Row[] {
  const textX = sizes.margin + sizes.swatchWidth + 2;
  const sample = { x: sizes.margin, width: sizes.swatchWidth };
  const row = (code: string, symbol: Row['symbol']): Row => {
    const says = spoken(speech, `section.${code}`, { percent: alarmingPercent });
    return { textX, lines: keyLines(says, textX), symbol };
  };
  const { reckoned } = notes;
  const rows = [
    row(reckoned ? 'water' : 'water-not-reckoned', (y) => mainRibbonSample({ ...sample, y }, palette)),
  ];
  if (holdsBeds) {
    const box = (y: number): Box => ({ ...sample, y: y - 2.5, height: 5 });
    rows.push(row('water-in-medium', (y) => spreadSample(box(y), palette)));
  }
  if (notes.bypass) {
    rows.push(
      row(reckoned ? 'water-past' : 'way-past', (y) => dashedSample({ ...sample, y }, palette, false)),
    );
  }
  if (notes.alarming) {
    rows.push(row('water-past-much', (y) => dashedSample({ ...sample, y }, palette, true)));
  }
  return rows;
}

function noteRow(note: string): readonly Row[] {
  if (note === '') return [];
  return [{ textX: sizes.margin, lines: keyLines(note, sizes.margin), symbol: () => '' }];
}

/** The key under a section: beds in the water's order, what the letters mean, lengths, and the water. */
export function drawingKey(beds: readonly PlacedBed[], options: KeyInked & KeyNotes): Block {
  const rows = [
    ...beds.map((placed) => bedRow(placed, options)),
    ...noteRow(stagesNote(beds, options)),
    ...noteRow(options.lengths.join('; ')),
    ...waterRows(options, options, beds.length > 0),
  ];
  const block = stackRows(rows, options.palette);
  const rule = element('line', {
    x1: sizes.margin,
    x2: sizes.sheetWidth - sizes.margin,
    y1: 0,
    y2: 0,
    stroke: options.palette.softInk,
    'stroke-width': sizes.thinLine,
  });
  return {
    height: block.height + 2,
    content: rule + element('g', { transform: 'translate(0 1.5)' }, [block.content]),
  };
}
