import type { Basis } from './basis.ts';
import { germanDegreeKgPerM3, milliequivalentKgPerM3, readBasis } from './basis.ts';
import { currencyCodes, currencySigns } from './currencies.ts';
import type { Dimension, Exponents } from './dimensions.ts';
import { dimensionFacts, sameExponents } from './dimensions.ts';
import { plainText } from './spelling.ts';
import { ambiguousUnits, compoundAliases, notUnits, unitTable } from './unitTable.ts';

/** A unit as understood: `si = (number + offset) × factor`. */
export interface Unit {
  readonly spelled: string;
  readonly factor: number;
  readonly offset: number;
  readonly exponents: Exponents;
  /** How a number without dimension was written; `none` for a plain number. */
  readonly form: 'none' | 'percent' | 'units';
  /** ISO 4217 code where the unit has money in it. */
  readonly currency?: string;
  /** What a concentration is counted as, where the text says so. */
  readonly basis?: Basis;
}

/** What became of a unit's text. `alternatives` are whole spellings to choose from. */
export type UnitReading =
  | { readonly ok: true; readonly unit: Unit }
  | { readonly ok: false; readonly why: 'ambiguous'; readonly alternatives: readonly string[] }
  | { readonly ok: false; readonly why: 'not-a-unit'; readonly because: string }
  | { readonly ok: false; readonly why: 'unknown-basis'; readonly basis: string }
  | { readonly ok: false; readonly why: 'unknown'; readonly part: string };

const concentration: Exponents = [-3, 1, 0, 0, 0];
const none: Exponents = [0, 0, 0, 0, 0];
const money: Exponents = [0, 0, 0, 0, 1];

/** The unit of a plain number. */
export const plainNumber: Unit = { spelled: '', factor: 1, offset: 0, exponents: none, form: 'none' };

const percent: Unit = { spelled: '%', factor: 0.01, offset: 0, exponents: none, form: 'percent' };

function alkalinityUnit(spelled: string, factor: number): Unit {
  return { spelled, factor, offset: 0, exponents: concentration, form: 'units', basis: 'CaCO3' };
}

function buildSpellings(): ReadonlyMap<string, Unit> {
  const known = new Map<string, Unit>();
  for (const { spelled, factor, offset, exponents, aliases } of unitTable) {
    const unit: Unit = { spelled, factor, offset: offset ?? 0, exponents, form: 'units' };
    for (const spelling of [spelled, ...aliases]) known.set(spelling, unit);
  }
  for (const spelling of ['%', 'percent', 'per cent', 'pct']) known.set(spelling, percent);
  for (const spelling of ['dKH', '°dKH', '°KH', 'dH', '°dH', 'degree KH'])
    known.set(spelling, alkalinityUnit('dKH', germanDegreeKgPerM3));
  known.set('meq/L', alkalinityUnit('meq/L', milliequivalentKgPerM3));
  for (const [sign, { code, share }] of Object.entries(currencySigns)) {
    const spelled = share === 1 ? code : sign;
    known.set(sign, { spelled, factor: share, offset: 0, exponents: money, form: 'units', currency: code });
  }
  for (const code of currencyCodes)
    known.set(code, { spelled: code, factor: 1, offset: 0, exponents: money, form: 'units', currency: code });
  return known;
}

const spellings = buildSpellings();

// Letter case is free save where it tells milli from mega.
const anyCase = new Map(
  [...spellings]
    .filter(([spelling]) => !currencyCodes.has(spelling))
    .map(([spelling, unit]) => [spelling.toLowerCase(), unit] as const),
);

/** Every spelling of a single unit, for suggestions. */
export const knownSpellings: readonly string[] = [
  ...spellings.keys(),
  ...Object.keys(compoundAliases),
].filter((spelling) => !currencyCodes.has(spelling));

function findAtom(text: string): Unit | undefined {
  return spellings.get(text) ?? (/^M(?!M$)/.test(text) ? undefined : anyCase.get(text.toLowerCase()));
}

function raised(unit: Unit, power: number): Unit {
  if (power === 1) return unit;
  const [l, m, t, k, c] = unit.exponents;
  const shown = /\d$/.test(unit.spelled) ? `(${unit.spelled})` : unit.spelled;
  return {
    ...unit,
    spelled: `${shown}${power}`,
    factor: unit.factor ** power,
    offset: 0,
    exponents: [l * power, m * power, t * power, k * power, c * power],
  };
}

function times(one: Unit, other: Unit): Unit {
  const sum = (at: 0 | 1 | 2 | 3 | 4) => one.exponents[at] + other.exponents[at];
  const currency = one.currency ?? other.currency;
  const basis = one.basis ?? other.basis;
  return {
    spelled: '',
    factor: one.factor * other.factor,
    offset: 0,
    exponents: [sum(0), sum(1), sum(2), sum(3), sum(4)],
    form: one.form === 'none' ? other.form : one.form,
    ...(currency === undefined ? {} : { currency }),
    ...(basis === undefined ? {} : { basis }),
  };
}

function readFactor(text: string): Unit | undefined {
  const atom = findAtom(text);
  if (atom) return atom;
  const match = /^(.*[^\s^+-])\^?([+-]?[1-9])$/.exec(text);
  const base = match && findAtom(match[1]!);
  return base ? raised(base, Number(match[2])) : undefined;
}

/** Text of a unit in one spelling: no stops after shortenings, no brackets, `/` for "per". */
function tidy(text: string): string {
  return plainText(text)
    .replace(/\bU\.\s?S\.?(?=\s|g|$)/gi, 'US')
    .replace(/\bU\.\s?K\.?(?=\s|g|$)/gi, 'UK')
    .replace(/[()]/g, ' ')
    .replace(/\.(?=\s|\/|$)/g, '')
    .replace(/(^|\s)per\s(?!cent)/gi, '/')
    .replace(/\s*([/*·])\s*/g, '$1')
    .replace(/·/g, '.')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Splits what a concentration is counted as from its unit: `mg/L NH4-N`, `mg/L as CaCO3`, `mg N/L`. */
function splitBasis(text: string): { readonly rest: string; readonly basis?: string } {
  const behind = /^(.*(?:\/(?:L|l|m3|mL|ml|litre|liter)|ppm|ppb))(?: as)? ([A-Z][A-Za-z0-9+-]*)$/.exec(text);
  if (behind) return { rest: behind[1]!, basis: behind[2]! };
  const inside = /^(mg|g|µg|μg|ug|kg) ?((?:NH|NO|CaCO)\d(?:-N)?|TAN|N)\/(.+)$/.exec(text);
  return inside ? { rest: `${inside[1]}/${inside[3]}`, basis: inside[2]! } : { rest: text };
}

function isWord(text: string): boolean {
  return !spellings.has(text) && Object.hasOwn(ambiguousUnits, text);
}

function readProduct(text: string): UnitReading {
  const parts = text.split('/');
  let unit = plainNumber;
  const spelledParts: string[] = [];
  for (const [at, part] of parts.entries()) {
    if (at === 0 && (part === '' || part === '1')) {
      spelledParts.push('1');
      continue;
    }
    const words: string[] = [];
    for (const word of part.split(/[.*]/)) {
      const lower = word.toLowerCase();
      const asked = isWord(word) ? word : isWord(lower) ? lower : undefined;
      if (asked !== undefined) {
        const alternatives = ambiguousUnits[asked]!.map((choice) => text.replace(word, choice));
        return { ok: false, why: 'ambiguous', alternatives };
      }
      if (Object.hasOwn(notUnits, word)) return { ok: false, why: 'not-a-unit', because: notUnits[word]! };
      const factor = readFactor(word);
      if (!factor) return { ok: false, why: 'unknown', part: word };
      unit = times(unit, at === 0 ? factor : raised(factor, -1));
      words.push(factor.spelled);
    }
    spelledParts.push(words.join('.'));
  }
  return { ok: true, unit: { ...unit, spelled: spelledParts.join('/') } };
}

const aliasAnyCase = new Map(
  Object.entries(compoundAliases).map(([alias, unit]) => [alias.toLowerCase(), unit] as const),
);

function compoundAlias(text: string): string {
  return aliasAnyCase.get(text.toLowerCase()) ?? text;
}

/**
 * Reads a unit as people write it: single (`mm`, `US gal`, `°C`), compound (`L/min`, `GBP/kWh`, `Pa.s`, `h-1`)
 * or with what a concentration is counted as (`mg/L CaCO3`).
 *
 * @param text the unit alone, at most some dozens of characters
 * @returns the unit with its exact factor to SI, or why it is not one
 */
export function readUnit(text: string): UnitReading {
  const { rest, basis } = splitBasis(tidy(text));
  const alone = compoundAlias(rest);
  const atom = findAtom(alone);
  const reading: UnitReading = atom ? { ok: true, unit: atom } : readProduct(alone);
  if (basis === undefined || !reading.ok) return reading;
  const known = readBasis(basis);
  if (!known) return { ok: false, why: 'unknown-basis', basis };
  const spelled = `${reading.unit.spelled} ${known}`;
  return { ok: true, unit: { ...reading.unit, spelled, basis: known } };
}

function formFits(unit: Unit, dimension: Dimension): boolean {
  switch (dimension) {
    case 'fraction':
      return unit.form !== 'units';
    case 'count':
      return unit.form === 'none';
    case 'mass-ratio':
      return unit.form !== 'none';
    case 'density':
      return unit.basis === undefined && !unit.spelled.startsWith('ppm');
    case 'alkalinity':
      return unit.basis === 'CaCO3';
    default:
      return true;
  }
}

/** True where a unit measures a dimension. */
export function unitFits(unit: Unit, dimension: Dimension): boolean {
  return sameExponents(unit.exponents, dimensionFacts[dimension].exponents) && formFits(unit, dimension);
}

// Dividing by a whole number loses less than multiplying by its rounded inverse: 35 % is 0.35.
function scaled(number: number, factor: number): number {
  const inverse = 1 / factor;
  return Number.isInteger(inverse) ? number / inverse : number * factor;
}

/** SI value of a number in a unit; only a temperature, not a difference of two, counts from the unit's own zero. */
export function toSi(number: number, unit: Unit, dimension: Dimension): number {
  return scaled(number + (dimension === 'temperature' ? unit.offset : 0), unit.factor);
}

/** Number in a unit of an SI value: the inverse of `toSi`. */
export function fromSi(value: number, unit: Unit, dimension: Dimension): number {
  const inverse = 1 / unit.factor;
  const number = Number.isInteger(inverse) ? value * inverse : value / unit.factor;
  return number - (dimension === 'temperature' ? unit.offset : 0);
}

/** The unit of a spelling that the program itself chose. */
export function unitOf(spelled: string): Unit {
  const reading = readUnit(spelled);
  if (!reading.ok) throw new Error(`The program names a unit that it does not know: ${spelled}`);
  return reading.unit;
}
