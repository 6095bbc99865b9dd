import type { Dimension } from '../quantities/dimensions.ts';
import { numberAtStart } from '../quantities/numberText.ts';
import type { QuantityProblemCode } from '../quantities/problem.ts';
import { readQuantity } from '../quantities/readQuantity.ts';
import type { Unit } from '../quantities/units.ts';
import { readUnit, unitFits } from '../quantities/units.ts';
import { type Said, said } from '../wording/said.ts';
import type { Subject } from './subjects.ts';
import { claimedDimensions, conditionsOf, flowOf, guessSubject } from './subjects.ts';

/** One of two meanings of a figure whose unit does not say which it is. */
export interface Meaning {
  readonly unit: string;
  readonly value: number;
  readonly from?: number;
}

/** One quantity found in a statement. */
export interface ClaimedQuantity {
  /** As the maker wrote it. */
  readonly text: string;
  /** Where it stands in the statement, in UTF-16 units; `end` is behind its last. */
  readonly start: number;
  readonly end: number;
  readonly dimension: Dimension;
  readonly subject: Subject;
  /** True where it says the quantity before it again, in another unit. */
  readonly again: boolean;
  /** The unit in our spelling; of a unit that may mean two, the first. */
  readonly unit: string;
  /** SI value; of a range its upper end; absent where the text may mean two. */
  readonly value?: number;
  /** SI value of the lower end of a range, as 100 L in "100-300 L". */
  readonly from?: number;
  /** What the text may mean, each with its unit, where it may mean two. */
  readonly either?: readonly Meaning[];
  /** Whose flow a flow is, where the words say so. */
  readonly of?: 'pump' | 'filter';
  /** What must be asked where the text may mean two, in English; and the same more shortly, for any language. */
  readonly asks?: string;
  readonly asksSaid?: Said;
}

/** One statement of a maker, verbatim, with what was found in it. */
export interface Claim {
  /** Place in the list, from 0. */
  readonly line: number;
  readonly says: string;
  /** Subject of the first quantity whose subject is known. */
  readonly subject: Subject;
  readonly quantities: readonly ClaimedQuantity[];
  /** Conditions under which it is stated; empty where there are none. */
  readonly conditions: string;
}

interface UnitFound {
  readonly length: number;
  readonly unit: Unit;
  readonly dimension: Dimension;
  /** Where the text may mean two units, all that it may mean. */
  readonly alternatives?: readonly string[];
}

const longestUnit = 24;
const longestStatement = 1000;

function understood(text: string): Pick<UnitFound, 'unit' | 'alternatives'> | undefined {
  const reading = readUnit(text);
  if (reading.ok) return { unit: reading.unit };
  if (reading.why !== 'ambiguous') return undefined;
  const first = readUnit(reading.alternatives[0] ?? '');
  return first.ok ? { unit: first.unit, alternatives: reading.alternatives } : undefined;
}

/** True where a text can end as a unit does, with no bracket open or closed for nothing. */
function isWhole(unit: string): boolean {
  return /[\p{L}\d"'″′”’%²³)]$/u.test(unit) && unit.includes('(') === unit.includes(')');
}

/** True where the text behind a unit belongs to it, so that the unit is not whole: the "/s" of "m/s". */
function goesOn(rest: string): boolean {
  return /^(?:[\p{L}\d°²³^%]|[/·][\p{L}])/u.test(rest);
}

/** The preposition "in" is no inch: "2 in 1", "3 in the box". */
function isPreposition(unit: string, rest: string): boolean {
  return unit === 'in' && /^\s+(?:\d|a\b|an\b|one\b|the\b|total\b|all\b|each\b|stock\b)/i.test(rest);
}

/** Longest unit at the start of a text. */
function unitAtStart(text: string): UnitFound | undefined {
  for (let length = Math.min(longestUnit, text.length); length > 0; length--) {
    const candidate = text.slice(0, length);
    const rest = text.slice(length);
    if (!isWhole(candidate) || goesOn(rest) || isPreposition(candidate, rest)) continue;
    const found = understood(candidate);
    const dimension = found && claimedDimensions.find((each) => unitFits(found.unit, each));
    if (found && dimension) return { length, ...found, dimension };
  }
  return undefined;
}

type Found = Omit<ClaimedQuantity, 'subject' | 'again' | 'of'>;

const toHigher = /^\s*(?:-|–|—|to|up to|\.\.\.?|…)\s*$/i;
const lowerEnd = /(?<![\p{L}\d.,/])(\d[\d.,]*)\s*(?:-|–|—|to|\.\.\.?|…)\s*$/iu;

function valueIn(number: string, unit: string, dimension: Dimension): number | undefined {
  const reading = readQuantity(`${number} ${unit}`, dimension);
  return reading.ok ? reading.value : undefined;
}

interface Ends {
  /** The number of the lower end of a range, where one stands before the quantity. */
  readonly lower: string | undefined;
  readonly number: string;
  readonly dimension: Dimension;
}

function meaningIn(unit: string, { lower, number, dimension }: Ends): Meaning | undefined {
  const value = valueIn(number, unit, dimension);
  if (value === undefined) return undefined;
  const from = lower === undefined ? undefined : valueIn(lower, unit, dimension);
  return { unit, value, ...(from !== undefined && from < value ? { from } : {}) };
}

/** What is said of a quantity that cannot be read, by the code of what is wrong with it. */
const askCodes: Partial<Record<QuantityProblemCode, string>> = {
  'ambiguous-unit': 'claim.unit-unclear',
  'ambiguous-number': 'claim.number-unclear',
};

/** Quantity whose number starts at a place of a statement. */
function quantityAt(statement: string, start: number): Found | undefined {
  const number = numberAtStart(statement.slice(start));
  if (number === undefined) return undefined;
  const behind = statement.slice(start + number.length);
  const space = /^\s{0,2}/.exec(behind)?.[0].length ?? 0;
  const found = unitAtStart(behind.slice(space));
  if (!found) return undefined;
  const end = start + number.length + space + found.length;
  const text = statement.slice(start, end);
  const reading = readQuantity(text, found.dimension);
  const base = { text, start, end, dimension: found.dimension, unit: found.unit.spelled };
  const ends = { lower: lowerEnd.exec(statement.slice(0, start))?.[1], number, dimension: found.dimension };
  if (reading.ok) {
    const from = meaningIn(found.unit.spelled, ends)?.from;
    return { ...base, value: reading.value, ...(from === undefined ? {} : { from }) };
  }
  const either = (found.alternatives ?? []).flatMap((unit) => meaningIn(unit, ends) ?? []);
  const asksSaid = said(askCodes[reading.code] ?? 'claim.unclear', { text });
  return { ...base, asks: reading.says, asksSaid, ...(either.length > 1 ? { either } : {}) };
}

/** Makes one range of two quantities in one unit with "to" between them: "60 L to 130 L". */
function withRanges(statement: string, found: readonly Found[]): readonly Found[] {
  const joined: Found[] = [];
  for (const each of found) {
    const last = joined.at(-1);
    const isUpper = last?.unit === each.unit && toHigher.test(statement.slice(last.end, each.start));
    if (!isUpper || last.value === undefined || each.value === undefined || last.value >= each.value)
      joined.push(each);
    else joined.splice(-1, 1, { ...each, from: last.value });
  }
  return joined;
}

function findQuantities(statement: string): readonly Found[] {
  const found: Found[] = [];
  const starts = /(?<![\p{L}\d.,/])(?:\d|\.\d)/gu;
  for (let match = starts.exec(statement); match; match = starts.exec(statement)) {
    const quantity = quantityAt(statement, match.index);
    if (quantity) found.push(quantity);
    const number = numberAtStart(statement.slice(match.index));
    starts.lastIndex = quantity?.end ?? match.index + (number?.length ?? 1);
  }
  return withRanges(statement, found);
}

const joiner =
  /^[\s()[\]/=|,;:~≈–-]*(?:(?:or|about|approx\.?|ca\.?|i\.e\.|equals)[\s(]*)?(?:\d[\d.,]*\s*(?:-|–|to)\s*)?$/i;

function withSubjects(statement: string, found: readonly Found[]): readonly ClaimedQuantity[] {
  const quantities: ClaimedQuantity[] = [];
  for (const [at, each] of found.entries()) {
    const last = quantities.at(-1);
    const before = statement.slice(last?.end ?? 0, each.start);
    const behind = statement.slice(each.end, found[at + 1]?.start ?? statement.length);
    const alike = last?.dimension === each.dimension && last.unit !== each.unit;
    const again = alike && joiner.test(before);
    const subject = again
      ? last.subject
      : guessSubject({ dimension: each.dimension, before, behind, statement });
    const of = subject === 'flow' ? flowOf({ before, behind, statement }) : undefined;
    quantities.push({ ...each, subject, again, ...(of === undefined ? {} : { of }) });
  }
  return quantities;
}

/**
 * Reads a maker's statements: finds the quantities in each, with their places, and guesses what each is about.
 * Never fails: a statement in which nothing is found stays, without quantities.
 *
 * @param lines one statement each, verbatim, as `Pump output 900 L/h (238 US gal/h)`; of a statement over 1000
 *   characters the rest is not searched
 */
export function readClaims(lines: readonly string[]): readonly Claim[] {
  return lines.map((says, line) => {
    const searched = says.slice(0, longestStatement);
    const quantities = withSubjects(searched, findQuantities(searched));
    const subject = quantities.find((each) => each.subject !== 'unknown')?.subject ?? 'unknown';
    return { line, says, subject, quantities, conditions: conditionsOf(searched) };
  });
}
