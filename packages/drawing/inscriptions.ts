import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { spread } from './labels.ts';
import { printLength } from './lengths.ts';
import { dimensionRoom, type LanedDimension, type Sheet, type Side } from './sheet.ts';
import { textWidth } from './textWidth.ts';
import { sizes } from './tokens.ts';

/** What stands at a dimension line, and where along it. */
export interface Inscription {
  readonly dimension: LanedDimension;
  /** Words and length, one line each beside an upright dimension line, all in one line under a level one. */
  readonly lines: readonly string[];
  /** Its middle along the line, sheet mm. */
  readonly middle: number;
}

/** From one line of an inscription to the next, mm. */
export const inscriptionStep = 3.9;

/** Clear between two inscriptions in one lane, mm. */
const between = 1.4;

/** Farthest that an inscription may stand off the middle of its line, mm. */
const farthest = 3;

/** The measurement's name in words: `basketHeight` is `basket height`. */
function wordsOf({ line }: LanedDimension): readonly string[] {
  return line.measurement.split(/(?=[A-Z])/).map((word) => word.toLowerCase());
}

function lengthOf({ line }: LanedDimension, units: System): string {
  return printLength({ lengthM: Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y), units });
}

function middleOf({ line, side }: LanedDimension, sheet: Sheet): number {
  const middle = sheet.at({ x: (line.from.x + line.to.x) / 2, y: (line.from.y + line.to.y) / 2 });
  return side === 'bottom' ? middle.x : middle.y;
}

/** Extent of an inscription along its line, mm. */
function extentOf(side: Side, lines: readonly string[]): number {
  if (side === 'bottom') return textWidth(lines.join(' '), { size: sizes.text }) + 2;
  return lines.length * inscriptionStep + between;
}

/** The words fit across the lane, and along it between the ends of the section: beyond stand other labels. */
function fits(inscription: Inscription, sheet: Sheet): boolean {
  const { dimension, lines, middle } = inscription;
  const half = extentOf(dimension.side, lines) / 2;
  const ends =
    dimension.side === 'bottom'
      ? { from: sheet.left, to: sheet.right }
      : { from: sheet.top, to: sheet.bottom + 3 };
  const across = dimensionRoom(dimension.side) - 2.5;
  const words = lines.slice(0, -1);
  const narrow = words.every((word) => textWidth(word, { size: sizes.text }) <= across);
  return (
    (dimension.side === 'bottom' || narrow) &&
    middle - half >= ends.from &&
    middle + half <= ends.to &&
    Math.abs(middle - middleOf(dimension, sheet)) <= farthest
  );
}

/** The inscriptions of one lane with words where all of them have room, else the lengths alone. */
function inscribedLane(lane: readonly LanedDimension[], sheet: Sheet, units: System): readonly Inscription[] {
  const sorted = lane.toSorted((one, other) => middleOf(one, sheet) - middleOf(other, sheet));
  const worded = sorted.map((one) => [...wordsOf(one), lengthOf(one, units)]);
  const places = spread(
    sorted.map((one, index) => ({
      at: middleOf(one, sheet),
      extent: extentOf(one.side, worded[index] ?? []),
    })),
  );
  const inscriptions = sorted.map((dimension, index) => ({
    dimension,
    lines: worded[index] ?? [],
    middle: places[index] ?? 0,
  }));
  if (inscriptions.every((one) => fits(one, sheet))) return inscriptions;
  return sorted.map((dimension) => ({
    dimension,
    lines: [lengthOf(dimension, units)],
    middle: middleOf(dimension, sheet),
  }));
}

/** What stands at every dimension line of the sheet. */
export function inscribed(sheet: Sheet, units: System): readonly Inscription[] {
  const lanes = new Map<string, LanedDimension[]>();
  for (const dimension of sheet.dimensions) {
    const key = `${dimension.side} ${dimension.lane}`;
    lanes.set(key, [...(lanes.get(key) ?? []), dimension]);
  }
  return [...lanes.values()].flatMap((lane) => inscribedLane(lane, sheet, units));
}

/** The lengths whose words have no room at their lines, with their words, for the key. */
export function unwordedLengths(sheet: Sheet, units: System): readonly string[] {
  return inscribed(sheet, units)
    .filter(({ lines }) => lines.length === 1)
    .map(({ dimension, lines }) => `${wordsOf(dimension).join(' ')} ${lines[0]}`);
}
