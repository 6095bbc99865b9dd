import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { nameIn } from '@fettle/engine/wording/language.ts';
import { spread } from './labels.ts';
import { dimensionRoom, type LanedDimension, type Sheet, type Side } from './sheet.ts';
import { type Speech, spoken, spokenLength, spokenLengths } from './speech.ts';
import { textWidth } from './textWidth.ts';
import { sizes } from './tokens.ts';

/** What stands at a dimension line, and where along it. */
export interface Inscription {
  readonly dimension: LanedDimension;
  /** Words and lengths, one line each beside an upright dimension line, all in one line under a level one. */
  readonly lines: readonly string[];
  /** Whether the words are among them. */
  readonly worded: boolean;
  /** Its middle along the line, sheet mm. */
  readonly middle: number;
}

/** From one line of an inscription to the next, mm. */
export const inscriptionStep = 3.9;

/** Clear between two inscriptions in one lane, mm. */
const between = 1.4;

/** Farthest that an inscription may stand off the middle of its line, mm. */
const farthest = 3;

const softHyphen = '\u00ad';

/** The measurement's name in words: `basketHeight` is `basket height`. A soft hyphen is where a long word may be cut. */
function nameOf({ line }: LanedDimension, { language = engineEnglish }: Speech): string {
  const words = line.measurement.split(/(?=[A-Z])/).map((word) => word.toLowerCase());
  return nameIn(language, words.join(' '));
}

/** The name in lines that are as short as can be. */
function wordsOf(dimension: LanedDimension, speech: Speech): readonly string[] {
  if (dimension.side === 'bottom') return [nameOf(dimension, speech).replaceAll(softHyphen, '')];
  return nameOf(dimension, speech)
    .replaceAll(softHyphen, `-${softHyphen}`)
    .split(new RegExp(`[ ${softHyphen}]`));
}

const sizeOf = ({ line }: LanedDimension): number =>
  Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y);

/** The length in each system of units, the second in brackets. */
function lengthsOf(dimension: LanedDimension, speech: Speech): readonly string[] {
  const [first = '', second] = spokenLengths(sizeOf(dimension), speech);
  return second === undefined ? [first] : [first, `(${second})`];
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
  const { dimension, lines, worded, middle } = inscription;
  const half = extentOf(dimension.side, lines) / 2;
  const ends =
    dimension.side === 'bottom'
      ? { from: sheet.left, to: sheet.right }
      : { from: sheet.top, to: sheet.bottom + 3 };
  const across = dimensionRoom(dimension.side) - 2.5;
  // A length alone has its place whatever its width; words and a second length must fit.
  const checked = worded ? lines.slice(0, -1) : lines.slice(1);
  const narrow = checked.every((line) => textWidth(line, { size: sizes.text }) <= across);
  return (
    (dimension.side === 'bottom' || narrow) &&
    middle - half >= ends.from &&
    middle + half <= ends.to &&
    Math.abs(middle - middleOf(dimension, sheet)) <= farthest
  );
}

/** The lines of one lane, spread so that they do not meet. */
function laneOf(
  sorted: readonly LanedDimension[],
  sheet: Sheet,
  said: { readonly worded: boolean; linesOf(dimension: LanedDimension): readonly string[] },
): readonly Inscription[] {
  const lines = sorted.map(said.linesOf);
  const places = spread(
    sorted.map((one, index) => ({
      at: middleOf(one, sheet),
      extent: extentOf(one.side, lines[index] ?? []),
    })),
  );
  return sorted.map((dimension, index) => ({
    dimension,
    lines: lines[index] ?? [],
    worded: said.worded,
    middle: places[index] ?? 0,
  }));
}

/** The inscriptions of one lane with words where all of them have room, else the lengths alone, else one of them. */
function inscribedLane(
  lane: readonly LanedDimension[],
  sheet: Sheet,
  speech: Speech,
): readonly Inscription[] {
  const sorted = lane.toSorted((one, other) => middleOf(one, sheet) - middleOf(other, sheet));
  const fitting = [
    laneOf(sorted, sheet, {
      worded: true,
      linesOf: (one) => [...wordsOf(one, speech), ...lengthsOf(one, speech)],
    }),
    ...(speech.units === 'both'
      ? [laneOf(sorted, sheet, { worded: false, linesOf: (one) => lengthsOf(one, speech) })]
      : []),
  ].find((inscriptions) => inscriptions.every((one) => fits(one, sheet)));
  return (
    fitting ??
    sorted.map((dimension) => ({
      dimension,
      lines: lengthsOf(dimension, speech).slice(0, 1),
      worded: false,
      middle: middleOf(dimension, sheet),
    }))
  );
}

/** What stands at every dimension line of the sheet. */
export function inscribed(sheet: Sheet, speech: Speech): readonly Inscription[] {
  const lanes = new Map<string, LanedDimension[]>();
  for (const dimension of sheet.dimensions) {
    const key = `${dimension.side} ${dimension.lane}`;
    lanes.set(key, [...(lanes.get(key) ?? []), dimension]);
  }
  return [...lanes.values()].flatMap((lane) => inscribedLane(lane, sheet, speech));
}

/** The lengths whose words have no room at their lines, with their words, for the key. */
export function unwordedLengths(sheet: Sheet, speech: Speech): readonly string[] {
  return inscribed(sheet, speech)
    .filter(({ worded }) => !worded)
    .map(({ dimension }) =>
      spoken(speech, 'section.length', {
        measurement: nameOf(dimension, speech).replaceAll(softHyphen, ''),
        length: spokenLength(sizeOf(dimension), speech),
      }),
    );
}
