import type { Doubt } from '../model/figure.ts';
import type { Basis } from './basis.ts';
import { convertBasis } from './basis.ts';
import { compoundTime } from './compoundTime.ts';
import type { Dimension } from './dimensions.ts';
import { dimensionFacts, nounOf, usualUnits } from './dimensions.ts';
import { readNumber } from './numberText.ts';
import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import { readDoubt } from './readDoubt.ts';
import { nearestWord } from './spelling.ts';
import type { Unit, UnitReading } from './units.ts';
import { fromSi, knownSpellings, plainNumber, readUnit, toSi, unitFits } from './units.ts';
import { ambiguousIn } from './unitTable.ts';
import type { Written } from './written.ts';
import { takeApart } from './written.ts';

/** A quantity as understood. */
export interface Quantity {
  readonly ok: true;
  /** SI value; money stays in its currency. */
  readonly value: number;
  /** In the SI unit; of a temperature in kelvin of difference. */
  readonly doubt?: Doubt;
  /** The unit as understood, in our spelling; empty for a plain number. */
  readonly unit: string;
  /** The text as it was written. */
  readonly written: string;
  /** ISO 4217 code, where the unit has money in it. */
  readonly currency?: string;
  /** What a concentration is counted as, where the text or the caller says so. */
  readonly basis?: Basis;
}

export type QuantityReading = Quantity | QuantityProblem;

/** What the caller allows. Bounds are SI values. */
export interface Allowed {
  /** Smallest value allowed. */
  readonly least?: number;
  /** Largest value allowed. */
  readonly most?: number;
  /** Every value must be larger than this. */
  readonly above?: number;
  /** What a concentration must be counted as; the reading is converted to it, and a text without it is asked about. */
  readonly basis?: Basis;
  /** The unit in which such a figure is usually written: the first to be asked after where a figure is out of bounds. */
  readonly usualUnit?: string;
  /** Whether `1:02` is a minute and two seconds, as in the time of a filling. */
  readonly clock?: boolean;
}

/** Units to write in place of an unknown one. */
function suggestion(text: string, dimension: Dimension): string {
  const fitting = knownSpellings.filter((spelling) => {
    const reading = readUnit(spelling);
    return reading.ok && unitFits(reading.unit, dimension);
  });
  const near = nearestWord(text, dimensionFacts[dimension].usual) ?? nearestWord(text, fitting);
  return near === undefined ? '' : `, perhaps ${near}`;
}

function unitProblem(
  reading: UnitReading & { ok: false },
  unit: string,
  dimension: Dimension,
): QuantityProblem {
  const { noun } = dimensionFacts[dimension];
  const allowed = `${noun} in ${usualUnits(dimension)}`;
  switch (reading.why) {
    case 'ambiguous': {
      const choices = reading.alternatives.join(' or ');
      return quantityProblem('ambiguous-unit', `${quoted(unit)} may mean more than one unit`, choices);
    }
    case 'not-a-unit':
      return quantityProblem('wrong-dimension', `${quoted(unit)} ${reading.because}`, allowed);
    case 'unknown-basis':
      return quantityProblem(
        'unknown-basis',
        `${quoted(reading.basis)} is not something that we count a concentration as`,
        dimension === 'alkalinity' ? 'CaCO3' : 'N, NH3, NH4, NO2, NO3 or CaCO3',
      );
    case 'unknown': {
      const near = suggestion(unit, dimension);
      return quantityProblem('unknown-unit', `${quoted(unit)} is not a unit that we know${near}`, allowed);
    }
  }
}

function misfit(unit: Unit, dimension: Dimension): QuantityProblem {
  const { noun } = dimensionFacts[dimension];
  const allowed = usualUnits(dimension);
  const asked = ambiguousIn[dimension]?.[unit.spelled];
  if (asked)
    return quantityProblem('ambiguous-unit', `"${unit.spelled}" does not say which`, asked.join(' or '));
  if (unit.form === 'none')
    return quantityProblem('no-unit', `The number has no unit and ${noun} is needed`, allowed);
  const is = unit.form === 'percent' && unit.spelled === '%' ? 'a share' : nounOf(unit.exponents);
  const slip = unit.spelled === '1/h' && dimension === 'flow' ? ', perhaps L/h was meant' : '';
  return quantityProblem(
    'wrong-dimension',
    `${quoted(unit.spelled)} is ${is ?? 'no quantity of ours'} and ${noun} is needed${slip}`,
    allowed,
  );
}

/** The unit of a text for a dimension, or why it does not do. */
export function unitFor(text: string, dimension: Dimension): { ok: true; unit: Unit } | QuantityProblem {
  const reading: UnitReading = text === '' ? { ok: true, unit: plainNumber } : readUnit(text);
  if (!reading.ok) return unitProblem(reading, text, dimension);
  return unitFits(reading.unit, dimension) ? reading : misfit(reading.unit, dimension);
}

interface Bounded {
  readonly dimension: Dimension;
  readonly allowed: Allowed;
}

function isWithin(value: number, { least, most, above }: Allowed): boolean {
  return value >= (least ?? -Infinity) && value > (above ?? -Infinity) && value <= (most ?? Infinity);
}

/** Asks after a usual unit in which the same number would be within the bounds. */
function otherUnit(value: number, unit: Unit, { dimension, allowed }: Bounded): string {
  const number = fromSi(value, unit, dimension);
  if (!(number > 0)) return '';
  const { usualUnit } = allowed;
  const usual = [
    ...(usualUnit === undefined ? [] : [usualUnit]),
    ...dimensionFacts[dimension].usual.slice(0, 5),
  ];
  const meant = usual.find((spelled) => {
    const other = readUnit(spelled);
    if (!other.ok || other.unit.spelled === unit.spelled || !unitFits(other.unit, dimension)) return false;
    return isWithin(toSi(number, other.unit, dimension), allowed);
  });
  return meant === undefined ? '' : ` (did you mean ${Number(number.toPrecision(6))} ${meant}?)`;
}

function outOfBounds(value: number, unit: Unit, setting: Bounded): QuantityProblem | undefined {
  const { dimension, allowed } = setting;
  const shown = (si: number) =>
    `${Number(fromSi(si, unit, dimension).toPrecision(6))} ${unit.spelled}`.trim();
  const { least, most, above } = allowed;
  if (dimension === 'temperature' && value < 0)
    return quantityProblem(
      'below-absolute-zero',
      `${shown(value)} is below absolute zero`,
      `above ${shown(0)}`,
    );
  const meant = (): string => otherUnit(value, unit, setting);
  if (least !== undefined && value < least)
    return quantityProblem(
      'below-least',
      `${shown(value)} is too small${meant()}`,
      `${shown(least)} or more`,
    );
  if (above !== undefined && !(value > above))
    return quantityProblem(
      'not-above',
      `${shown(value)} is too small${meant()}`,
      `more than ${shown(above)}`,
    );
  if (most !== undefined && value > most)
    return quantityProblem('above-most', `${shown(value)} is too large${meant()}`, `${shown(most)} or less`);
  return undefined;
}

function rebase(quantity: Quantity, to: Basis): QuantityReading {
  if (quantity.basis === undefined) {
    const choices = to === 'CaCO3' ? [to] : ['N', 'NH3', 'NH4', 'NO2', 'NO3'];
    const allowed = `${choices.map((each) => `${quantity.unit} ${each}`).join(' or ')}`;
    return quantityProblem('ambiguous-unit', `"${quantity.unit}" does not say of what`, allowed);
  }
  const converted = convertBasis({ value: 1, from: quantity.basis, to });
  if (converted === undefined)
    return quantityProblem('unknown-basis', `${quantity.basis} does not convert to ${to}`, to);
  const { doubt } = quantity;
  const size = doubt?.kind === 'plus-minus' ? doubt.size * converted : doubt?.size;
  return {
    ...quantity,
    value: quantity.value * converted,
    basis: to,
    ...(doubt && size !== undefined ? { doubt: { kind: doubt.kind, size } } : {}),
  };
}

/**
 * Fractions belong to inches, feet and measures of volume; hoses are sold by both diameters, as 16/22 mm.
 */
function fractionMisplaced({ number, unit }: Written, text: string): QuantityProblem | undefined {
  const parts = /^(\d+ )?(\d+) ?\/ ?(\d+)$/.exec(number);
  const reading = parts ? readUnit(unit) : undefined;
  if (!parts || !reading?.ok || !/^(?:µ|m|c|k)?m$/.test(reading.unit.spelled)) return undefined;
  const { spelled } = reading.unit;
  const bore = parts[1] === undefined ? Math.min(Number(parts[2]), Number(parts[3])) : 0;
  const advice =
    bore >= 3 ? `; if they are the two diameters of a hose, write the bore alone: ${bore} ${spelled}` : '';
  const wrong = `${quoted(text)} may be a fraction or two diameters${advice}`;
  return quantityProblem('ambiguous-number', wrong, `one decimal number in ${spelled}`);
}

const leastOf = ({ above, least = above ?? -Infinity }: Allowed): 'below-zero' | 'zero' | 'above-zero' => {
  if (least < 0) return 'below-zero';
  return least > 0 || above !== undefined ? 'above-zero' : 'zero';
};

function readApart(apart: Written, setting: { text: string; dimension: Dimension; allowed: Allowed }) {
  const { dimension, allowed, text } = setting;
  const misplaced = dimension === 'length' ? fractionMisplaced(apart, text) : undefined;
  if (misplaced) return misplaced;
  const number = readNumber(apart.number, apart.decimalSign);
  if (!number.ok) return number;
  const doubtUnit = apart.doubt?.kind === 'plus-minus' && apart.doubt.unit !== '%' ? apart.doubt.unit : '';
  const behind = apart.doubt?.kind === 'factor' ? apart.doubt.unit : doubtUnit;
  const percentOfBare = apart.unit === '' && apart.doubt?.unit === '%' && dimension === 'fraction';
  const reading = unitFor(percentOfBare ? '%' : apart.unit || behind.replace(/^% /, ''), dimension);
  if (!reading.ok) return reading;
  const { unit } = reading;
  const value = toSi(number.value, unit, dimension);
  const wrong = outOfBounds(value, unit, setting);
  if (wrong) return wrong;
  const least = leastOf(allowed);
  const doubt = readDoubt(apart, { number: number.value, unit, dimension, value, least });
  if (doubt && 'ok' in doubt) return doubt;
  const quantity: Quantity = {
    ok: true,
    value,
    ...(doubt ? { doubt } : {}),
    unit: unit.spelled,
    written: text.trim(),
    ...(unit.currency === undefined ? {} : { currency: unit.currency }),
    ...(unit.basis === undefined ? {} : { basis: unit.basis }),
  };
  return allowed.basis === undefined ? quantity : rebase(quantity, allowed.basis);
}

/**
 * Reads a quantity as people write it: `12 mm`, `9.5 ± 0.5 W`, `280 ×/÷ 2 m2/m3`, `600 L/h ± 5 %`, `5/8"`.
 * What can be meant in two ways (a bare gallon, `1.000 L/h`) is a problem that says which to write.
 *
 * @param text the text, up to 200 characters; a bare number serves for counts and fractions
 * @param dimension what is needed
 * @param allowed bounds in SI, and what a concentration is counted as; none unless given
 * @returns the SI value with its doubt, or one coded problem
 */
export function readQuantity(
  text: string | number,
  dimension: Dimension,
  allowed: Allowed = {},
): QuantityReading {
  if (typeof text === 'number' && !Number.isFinite(text))
    return quantityProblem('not-a-number', `${text} is not a number`, usualUnits(dimension));
  const written = String(text);
  const parts = dimension === 'time' ? compoundTime(written, { clock: allowed.clock ?? false }) : undefined;
  if (typeof parts === 'object') return parts;
  const apart = takeApart(parts ?? written);
  if ('ok' in apart) return apart;
  // A number of the file's own is not typed text: its point is a decimal point.
  const certain: Written = typeof text === 'number' ? { ...apart, decimalSign: '.' } : apart;
  return readApart(certain, { text: written, dimension, allowed });
}

const shapes = 'text such as "9.5 ± 0.5 W", or { value: "9.5 W", doubt: "0.5 W" }';

/**
 * Reads a quantity of a document: text or number as `readQuantity`, or an object `{ value, doubt }` whose doubt
 * is a half-width (`0.5 W`, `5 %`) or a factor (`×/÷ 2`).
 */
export function readQuantityValue(
  given: unknown,
  dimension: Dimension,
  allowed: Allowed = {},
): QuantityReading {
  if (typeof given === 'string' || typeof given === 'number') return readQuantity(given, dimension, allowed);
  if (typeof given !== 'object' || given === null || !('value' in given))
    return quantityProblem('not-text', 'This is not a quantity', shapes);
  const stray = Object.keys(given).find((key) => key !== 'value' && key !== 'doubt');
  const { value } = given;
  const doubt = 'doubt' in given ? given.doubt : undefined;
  if (stray !== undefined) return quantityProblem('not-text', `"${stray}" is not known here`, shapes);
  if (typeof value !== 'string' && typeof value !== 'number')
    return quantityProblem('not-text', 'The value is not a quantity', shapes);
  if (doubt === undefined) return readQuantity(value, dimension, allowed);
  if (typeof doubt !== 'string' && typeof doubt !== 'number')
    return quantityProblem('bad-doubt', 'The doubt is not a quantity', shapes);
  const sign = /^\s*(?:±|\+|×|÷|[x*]\s*\/)/.test(String(doubt)) ? '' : '± ';
  return readQuantity(`${value} ${sign}${doubt}`, dimension, allowed);
}
