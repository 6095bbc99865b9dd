import { dimensionFacts, dimensions, nounOf, sameExponents } from './dimensions.ts';
import type { NumberReading } from './numberText.ts';
import { readNumber } from './numberText.ts';
import type { PairSlip, Side } from './pairSlips.ts';
import { findSlip } from './pairSlips.ts';
import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import type { Unit } from './units.ts';
import { plainNumber, readUnit, toSi } from './units.ts';
import type { Written } from './written.ts';
import { takeApart } from './written.ts';

/** How two ways of writing one figure stand to each other. */
export interface PairCheck {
  readonly ok: true;
  /** True where both can be the same figure, rounded as written; never where one may be meant in two ways. */
  readonly agrees: boolean;
  /** First over second, both in SI. */
  readonly ratio: number;
  /** What explains the pair best. */
  readonly likely: 'same' | PairSlip;
  /** Where the text may mean more than one figure: the one that fits, if one does. */
  readonly fits?: string;
}

function endsOf({ number, halfWidth, unit, dimension }: Side): {
  readonly low: number;
  readonly high: number;
} {
  // The half-width is widened by what arithmetic itself loses.
  const width = halfWidth + Math.abs(number) * 1e-12;
  return { low: toSi(number - width, unit, dimension), high: toSi(number + width, unit, dimension) };
}

/** True where the two sides overlap once each is widened by what rounding may have taken. */
function overlap(one: Side, other: Side): boolean {
  const [first, second] = [endsOf(one), endsOf(other)];
  return first.low <= second.high && second.low <= first.high;
}

function unitsOf(text: string): { ok: true; units: readonly Unit[] } | QuantityProblem {
  if (text === '') return { ok: true, units: [plainNumber] };
  const reading = readUnit(text);
  if (reading.ok) return { ok: true, units: [reading.unit] };
  if (reading.why !== 'ambiguous')
    return quantityProblem('unknown-unit', `${quoted(text)} is not a unit that we know`, 'L/h, mm, US gal…');
  const units = reading.alternatives.flatMap((each) => {
    const choice = readUnit(each);
    return choice.ok ? [choice.unit] : [];
  });
  return { ok: true, units };
}

interface Sides {
  readonly ok: true;
  /** One side for each number and unit that the text may mean. */
  readonly sides: readonly Side[];
  readonly asked: boolean;
}

/** The numbers that a text may mean: two where its sign may stand before decimals or between thousands. */
function numbersOf(text: string, sign?: '.' | ','): readonly NumberReading[] | QuantityProblem {
  const number = readNumber(text, sign);
  if (number.ok) return [number];
  const bothWays = ([',', '.'] as const).map((each) => readNumber(text, each));
  const read = bothWays.filter((each) => each.ok);
  return number.code === 'ambiguous-number' && read.length > 0 ? read : number;
}

/** Half-width of the doubt as written, in the number's unit; 0 where there is none. */
function writtenHalfWidth(apart: Written, number: number): number {
  if (apart.doubt?.kind !== 'plus-minus') return 0;
  const doubt = readNumber(apart.doubt.number, apart.decimalSign);
  if (!doubt.ok) return 0;
  return apart.doubt.unit === '%' && apart.unit !== '%'
    ? (Math.abs(number) * doubt.value) / 100
    : doubt.value;
}

function makeSide(apart: Written, number: NumberReading, unit: Unit): Side {
  const dimension = dimensions.find((each) => sameExponents(unit.exponents, dimensionFacts[each].exponents));
  const side = {
    text: `${number.value} ${unit.spelled}`.trim(),
    number: number.value,
    halfWidth: Math.max(number.lastDigit / 2, writtenHalfWidth(apart, number.value)),
    unit,
    dimension: dimension ?? ('count' as const),
  };
  return number.fraction
    ? side
    : { ...side, decimals: Math.max(0, -Math.round(Math.log10(number.lastDigit))) };
}

function readSides(text: string): Sides | QuantityProblem {
  const apart = takeApart(text);
  if ('ok' in apart) return apart;
  const numbers = numbersOf(apart.number, apart.decimalSign);
  if ('ok' in numbers) return numbers;
  const units = unitsOf(apart.unit || (apart.doubt?.unit ?? ''));
  if (!units.ok) return units;
  const sides = numbers.flatMap((number) => units.units.map((unit) => makeSide(apart, number, unit)));
  return { ok: true, sides, asked: sides.length > 1 };
}

function differentKinds(one: Side, other: Side): QuantityProblem | undefined {
  const alike = sameExponents(one.unit.exponents, other.unit.exponents);
  if (!alike || one.unit.basis !== other.unit.basis || one.unit.currency !== other.unit.currency) {
    const is = (side: Side) => `${quoted(side.text)} is ${nounOf(side.unit.exponents) ?? 'something else'}`;
    return quantityProblem('wrong-dimension', `${is(one)} and ${is(other)}`, 'two figures of one kind');
  }
  const zeros = [one, other].filter(({ number, unit, dimension }) => toSi(number, unit, dimension) === 0);
  if (zeros.length === 1)
    return quantityProblem('below-least', 'Nothing can be held against 0', 'figures other than 0');
  return undefined;
}

function holdSides(one: Side, other: Side): PairCheck {
  const [first, second] = [one, other].map(({ number, unit, dimension }) => toSi(number, unit, dimension));
  const ratio = second === 0 ? 1 : first! / second!;
  const agrees = overlap(one, other);
  return { ok: true, agrees, ratio, likely: agrees ? 'same' : findSlip(one, other, overlap) };
}

const unlabelled = (sides: Sides) => new Set(sides.sides.map(({ unit }) => unit.spelled)).size > 1;

function holdAsked(first: Sides, second: Sides): PairCheck {
  const held = first.sides.flatMap((one) =>
    second.sides.map((other) => ({ one, other, check: holdSides(one, other) })),
  );
  const fitting = held.find(({ check }) => check.agrees);
  if (!fitting) {
    // Neither meaning fits, so the gallons explain nothing; a slip in the digits may.
    const explains = ({ check }: { check: PairCheck }) => !/gallon$|unrelated/.test(check.likely);
    const { check } = held.find(explains) ?? held[0]!;
    return { ...check, likely: /gallon$/.test(check.likely) ? 'unrelated' : check.likely };
  }
  const { one, other, check } = fitting;
  const fits = [first.asked ? [one.text] : [], second.asked ? [other.text] : []].flat().join(' and ');
  const gallon = unlabelled(second) ? other : unlabelled(first) ? one : undefined;
  const likely =
    gallon === undefined ? 'same' : gallon.unit.spelled.includes('imp ') ? 'imperial-gallon' : 'us-gallon';
  return { ok: true, agrees: false, ratio: check.ratio, likely, fits };
}

/**
 * Holds two ways of writing one figure against each other, as `620 L/h` and `164 US gal/h`.
 *
 * They agree where they overlap within the rounding of what is written: half a unit of the last written digit on
 * each side (a fraction such as 5/8 in is taken as exact), or the written doubt. Where they do not, `likely`
 * names the slip that explains them best. A gallon without a label, or a sign that may stand before decimals or
 * between thousands, is tried in every meaning; `fits` says which one fits, and `agrees` stays false, because the
 * text does not say so.
 *
 * @returns the verdict, or a problem where a side cannot be read or the two measure different things
 */
export function checkPair(a: string, b: string): PairCheck | QuantityProblem {
  const first = readSides(a);
  if (!first.ok) return first;
  const second = readSides(b);
  if (!second.ok) return second;
  const [one, other] = [first.sides[0]!, second.sides[0]!];
  const wrong = differentKinds(one, other);
  if (wrong) return wrong;
  return first.asked || second.asked ? holdAsked(first, second) : holdSides(one, other);
}
