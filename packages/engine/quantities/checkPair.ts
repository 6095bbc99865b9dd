import { dimensionFacts, dimensions, nounOf, sameExponents } from './dimensions.ts';
import { readNumber } from './numberText.ts';
import type { PairSlip, Side } from './pairSlips.ts';
import { findSlip } from './pairSlips.ts';
import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import type { Unit } from './units.ts';
import { plainNumber, readUnit, toSi } from './units.ts';
import { takeApart } from './written.ts';

/** How two ways of writing one figure stand to each other. */
export interface PairCheck {
  readonly ok: true;
  /** True where both can be the same figure, rounded as written. Never true with a gallon that is not labelled. */
  readonly agrees: boolean;
  /** First over second, both in SI. */
  readonly ratio: number;
  /** What explains the pair best. */
  readonly likely: 'same' | PairSlip;
  /** With a unit that is not labelled: the unit that the numbers fit, if one does. */
  readonly fits?: string;
}

/** True where the two sides overlap once each is widened by what rounding may have taken. */
export function overlap(one: Side, other: Side): boolean {
  const ends = [one, other].map(({ number, halfWidth, unit, dimension }) => {
    // The half-width is widened by what arithmetic itself loses.
    const width = halfWidth + Math.abs(number) * 1e-12;
    return [toSi(number - width, unit, dimension), toSi(number + width, unit, dimension)] as const;
  });
  const [[low, high], [otherLow, otherHigh]] = ends as [readonly [number, number], readonly [number, number]];
  return low <= otherHigh && otherLow <= high;
}

function unitsOf(text: string): { ok: true; units: readonly Unit[]; asked: boolean } | QuantityProblem {
  if (text === '') return { ok: true, units: [plainNumber], asked: false };
  const reading = readUnit(text);
  if (reading.ok) return { ok: true, units: [reading.unit], asked: false };
  if (reading.why !== 'ambiguous')
    return quantityProblem('unknown-unit', `${quoted(text)} is not a unit that we know`, 'L/h, mm, US gal…');
  const units = reading.alternatives.flatMap((each) => {
    const choice = readUnit(each);
    return choice.ok ? [choice.unit] : [];
  });
  return { ok: true, units, asked: true };
}

interface Sides {
  readonly ok: true;
  /** One side for each unit that the text may mean. */
  readonly sides: readonly Side[];
  readonly asked: boolean;
}

function readSides(text: string): Sides | QuantityProblem {
  const apart = takeApart(text);
  if ('ok' in apart) return apart;
  const number = readNumber(apart.number, apart.decimalSign);
  if (!number.ok) return number;
  const units = unitsOf(apart.unit || (apart.doubt?.unit ?? ''));
  if (!units.ok) return units;
  const doubt =
    apart.doubt?.kind === 'plus-minus' ? readNumber(apart.doubt.number, apart.decimalSign) : undefined;
  if (doubt && !doubt.ok) return doubt;
  const share = apart.doubt?.unit === '%' && apart.unit !== '%' ? Math.abs(number.value) / 100 : 1;
  const halfWidth = Math.max(number.lastDigit / 2, doubt ? doubt.value * share : 0);
  const decimals = Math.max(0, -Math.round(Math.log10(number.lastDigit)));
  const sides = units.units.map((unit): Side => {
    const dimension = dimensions.find((each) =>
      sameExponents(unit.exponents, dimensionFacts[each].exponents),
    );
    const side = { text, number: number.value, halfWidth, unit, dimension: dimension ?? ('count' as const) };
    return number.fraction ? side : { ...side, decimals };
  });
  return { ok: true, sides, asked: units.asked };
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

const gallon = (side: Side) =>
  side.unit.spelled.includes('imp ') ? ('imperial-gallon' as const) : ('us-gallon' as const);

function holdAsked(pairs: readonly (readonly [Side, Side])[]): PairCheck {
  const held = pairs.map(([one, other]) => ({ one, other, check: holdSides(one, other) }));
  const fitting = held.find(({ check }) => check.agrees);
  if (!fitting) {
    // Whatever is meant, it does not fit: a slip in the digits under either gallon is the best that can be said.
    const digits = held.find(({ check }) => !/gallon$|unrelated/.test(check.likely)) ?? held[0]!;
    const likely = /gallon$/.test(digits.check.likely) ? 'unrelated' : digits.check.likely;
    return { ...digits.check, likely };
  }
  const { one, other, check } = fitting;
  const side = /US |imp /.test(other.unit.spelled) ? other : one;
  return { ok: true, agrees: false, ratio: check.ratio, likely: gallon(side), fits: side.unit.spelled };
}

/**
 * Holds two ways of writing one figure against each other, as `620 L/h` and `164 US gal/h`.
 *
 * They agree where they overlap within the rounding of what is written: half a unit of the last written digit on
 * each side (a fraction such as 5/8 in is taken as exact), or the written doubt. Where they do not, `likely`
 * names the slip that explains them best. A gallon without a label is tried as both; `fits` says which the
 * numbers fit, and `agrees` stays false, because the text does not say so.
 *
 * @returns the verdict, or a problem where a side cannot be read or the two measure different things
 */
export function checkPair(a: string, b: string): PairCheck | QuantityProblem {
  const first = readSides(a);
  if (!first.ok) return first;
  const second = readSides(b);
  if (!second.ok) return second;
  const pairs = first.sides.flatMap((one) => second.sides.map((other) => [one, other] as const));
  const [one, other] = pairs[0]!;
  const wrong = differentKinds(one, other);
  if (wrong) return wrong;
  return first.asked || second.asked ? holdAsked(pairs) : holdSides(one, other);
}
