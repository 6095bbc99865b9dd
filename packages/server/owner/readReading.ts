import type { Basis } from '@fettle/engine/quantities/basis.ts';
import { type Dimension, dimensionFacts } from '@fettle/engine/quantities/dimensions.ts';
import { type Allowed, type Quantity, readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { type Reading, type ReadingKind, readingKinds } from '@fettle/store/contract/readings.ts';
import { dayMs } from '../durations.ts';
import type { FieldCode } from '../problemCodes.ts';
import type { FieldProblem } from '../problems.ts';

/**
 * What each reading is, its bounds and what a person calls it. The bounds are of our own and wide; a flow may be 0,
 * as a filter gives that is blocked or stands still.
 */
export const readingFacts: Readonly<
  Record<
    ReadingKind,
    {
      readonly label: string;
      readonly dimension: Dimension;
      readonly allowed: Allowed;
      /** What it may be counted as; empty where that is no question. */
      readonly countedAs: readonly Basis[];
      readonly example: string;
    }
  >
> = {
  'jug-flow': {
    label: 'Flow by the jug',
    dimension: 'flow',
    allowed: { least: 0, most: 0.03, usualUnit: 'L/h' },
    countedAs: [],
    example: '8 L/min',
  },
  ammonia: {
    label: 'Ammonia',
    dimension: 'concentration',
    allowed: { least: 0, most: 0.1, usualUnit: 'mg/L' },
    countedAs: ['N', 'NH3', 'NH4'],
    example: '0.25 mg/L as N',
  },
  nitrite: {
    label: 'Nitrite',
    dimension: 'concentration',
    allowed: { least: 0, most: 0.1, usualUnit: 'mg/L' },
    countedAs: ['N', 'NO2'],
    example: '0.1 mg/L as N',
  },
};

/** Longest value and longest note of a reading, characters, whichever way it comes in. */
export const mostIn = { value: 200, note: 500 } as const;

const firstDay = '2000-01-01';

/** A reading as somebody wrote it down. */
export interface WrittenReading {
  readonly kind: string;
  readonly value: string;
  readonly day: string;
  readonly note: string;
}

export type ReadingRead =
  | { readonly ok: true; readonly reading: Pick<Reading, 'kind' | 'day' | 'value' | 'note'> }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] };

/** What a person sees of a problem: the name of the field and what is wrong. */
const fault = (path: string, code: FieldCode, says: string): FieldProblem => ({ code, path, says });

/** Whether a text is a day of the calendar, as `2026-11-02`; 30 February is none. */
export const isDay = (text: string): boolean => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const read = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(read.getTime()) && read.toISOString().startsWith(text);
};

/** Why a day cannot be one on which something was measured; a day ahead is already today east of here. */
const dayFault = (day: string, now: Date): FieldProblem[] => {
  const last = new Date(now.getTime() + dayMs / 2).toISOString().slice(0, 10);
  if (isDay(day) && day >= firstDay && day <= last) return [];
  const says = `The day must be written as ${now.toISOString().slice(0, 10)}, and be from ${firstDay} to ${last}.`;
  return [fault('day', 'day-not-allowed', says)];
};

/** One line without characters that only steer a screen. */
const oneLine = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ').trim();

const lengthFault = (field: keyof typeof mostIn, text: string): FieldProblem[] => {
  const { length } = [...text];
  const most = mostIn[field];
  if (length <= most) return [];
  return [fault(field, 'too-long', `The ${field} has ${length} characters; at most ${most} are allowed.`)];
};

/** `as N, as NH3 or as NH4`: the words that say what a reading of a kind is counted as. */
export const basisForms = (kind: ReadingKind): string =>
  readingFacts[kind].countedAs
    .map((basis) => `as ${basis}`)
    .join(', ')
    .replace(/, (?=[^,]+$)/, ' or ');

/** Faults of which the cure is another unit. */
const unitCodes: readonly string[] = ['no-unit', 'unknown-unit', 'wrong-dimension', 'unknown-basis'];

const valueWrong = (
  kind: ReadingKind,
  code: FieldCode,
  told: { readonly wrong: string; readonly allowed: string },
) => ({
  ...fault('value', code, `${readingFacts[kind].label}: ${told.wrong}; allowed: ${told.allowed}.`),
  allowed: told.allowed,
});

/** Units of a kind with what it may be counted as behind them. */
const unitsAllowed = (kind: ReadingKind): string => {
  const { dimension, example } = readingFacts[kind];
  const units = dimensionFacts[dimension].usual.slice(0, 4).join(', ');
  return `${units}, each followed by ${basisForms(kind)}, such as ${example}`;
};

const basisFault = (kind: ReadingKind, { basis }: Quantity): FieldProblem[] => {
  const { countedAs } = readingFacts[kind];
  if (basis === undefined || countedAs.length === 0 || countedAs.includes(basis)) return [];
  const wrong = `it is not counted as ${basis}`;
  return [valueWrong(kind, 'unknown-basis', { wrong, allowed: basisForms(kind) })];
};

const valueFault = (kind: ReadingKind, written: string): FieldProblem[] => {
  const tooLong = lengthFault('value', written);
  if (tooLong.length > 0) return tooLong;
  const { dimension, allowed, countedAs } = readingFacts[kind];
  const value = readQuantity(written, dimension, allowed);
  if (value.ok) return basisFault(kind, value);
  const [wrong = ''] = value.says.split('; allowed: ');
  const isOfUnit = countedAs.length > 0 && unitCodes.includes(value.code);
  return [valueWrong(kind, value.code, { wrong, allowed: isOfUnit ? unitsAllowed(kind) : value.allowed })];
};

const isKind = (text: string): text is ReadingKind => readingKinds.some((kind) => kind === text);

/** Reads what was written down: the value stays as it was written, once it is known to mean something. */
export function readReading(written: WrittenReading, now: Date): ReadingRead {
  const { kind, day } = written;
  const note = oneLine(written.note);
  if (!isKind(kind)) {
    const says = `The kind of reading must be one of ${readingKinds.join(', ')}.`;
    return { ok: false, problems: [fault('kind', 'kind-not-known', says)] };
  }
  const problems = [...valueFault(kind, written.value), ...dayFault(day, now), ...lengthFault('note', note)];
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, reading: { kind, day, value: oneLine(written.value), note } };
}
