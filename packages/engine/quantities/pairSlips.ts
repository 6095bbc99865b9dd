import type { Dimension } from './dimensions.ts';
import type { Unit } from './units.ts';
import { toSi, unitOf } from './units.ts';

/** One written side of a pair. */
export interface Side {
  readonly text: string;
  /** Number in its unit. */
  readonly number: number;
  /** Half a unit of the last written digit, or the written doubt where that is larger; in the unit. */
  readonly halfWidth: number;
  /** Decimals that are written; `undefined` for a fraction. */
  readonly decimals?: number;
  readonly unit: Unit;
  readonly dimension: Dimension;
}

/**
 * What may explain a pair that does not agree. `imperial-gallon` and `us-gallon`: the number fits that gallon and
 * not the one written. `rounded-factor`: within 0.5 %, as a rounded conversion factor leaves it.
 * `not-converted`: the same number behind both units. `factor-sixty`: minutes and hours exchanged.
 * `factor-ten`: a power of ten, or a digit lost or added. `digit-slip`: one wrong digit.
 */
export type PairSlip =
  | 'imperial-gallon'
  | 'us-gallon'
  | 'swapped-digits'
  | 'factor-ten'
  | 'factor-sixty'
  | 'not-converted'
  | 'rounded-factor'
  | 'digit-slip'
  | 'unrelated';

type Overlap = (one: Side, other: Side) => boolean;

function asOtherGallon(side: Side): Side | undefined {
  const { spelled } = side.unit;
  if (/^US /.test(spelled)) return { ...side, unit: unitOf(spelled.replace(/^US /, 'imp ')) };
  if (/^imp /.test(spelled)) return { ...side, unit: unitOf(spelled.replace(/^imp /, 'US ')) };
  return undefined;
}

function siOf(side: Side): number {
  return toSi(side.number, side.unit, side.dimension);
}

function within(one: Side, other: Side, share: number): boolean {
  return Math.abs(siOf(one) / siOf(other) - 1) <= share;
}

function gallonSlip(one: Side, other: Side, overlaps: Overlap): PairSlip | undefined {
  for (const [side, against] of [
    [other, one],
    [one, other],
  ] as const) {
    const exchanged = asOtherGallon(side);
    // Half a percent tells the gallons apart and lets a rounded factor pass.
    if (exchanged && (overlaps(exchanged, against) || within(exchanged, against, 0.005)))
      return exchanged.unit.spelled.startsWith('imp ') ? 'imperial-gallon' : 'us-gallon';
  }
  return undefined;
}

function rewritten(side: Side, texts: readonly string[]): readonly Side[] {
  return texts.map((text) => ({ ...side, number: Number(text) }));
}

function swaps(text: string): readonly string[] {
  const digits = [...text.replace('.', '')];
  const point = text.indexOf('.');
  return digits.slice(1).flatMap((digit, at) => {
    // A leading nought is no digit that a hand swaps: 0.6 for 6.0 is a slip of the point.
    if (at === 0 && (digits[0] === '0' || digit === '0')) return [];
    const swapped = digits
      .with(at, digit)
      .with(at + 1, digits[at]!)
      .join('');
    return [point < 0 ? swapped : `${swapped.slice(0, point)}.${swapped.slice(point)}`];
  });
}

const ten = [...'0123456789'];

function replacements(text: string): readonly string[] {
  return [...text].flatMap((sign, at) =>
    sign === '.' ? [] : ten.map((digit) => text.slice(0, at) + digit + text.slice(at + 1)),
  );
}

function lostOrAdded(text: string): readonly string[] {
  const places = [...text, ''].map((_, at) => at);
  const added = places.flatMap((at) => ten.map((digit) => text.slice(0, at) + digit + text.slice(at)));
  const lost = [...text].flatMap((sign, at) =>
    sign === '.' || text.length < 2 ? [] : [text.slice(0, at) + text.slice(at + 1)],
  );
  return [...added, ...lost];
}

/** Nobody's digits slip further behind the point than this. */
const MOST_DECIMALS = 20;

const powersOfTen = [1e-3, 1e-2, 0.1, 10, 100, 1000];

/**
 * Finds the slip that explains two sides that do not agree, the plainest first: gallon, swapped digits, power of
 * ten, sixty, number not converted, rounded factor, one wrong digit, one digit lost or added.
 *
 * @param one @param other sides of one kind, neither of them zero
 * @param overlaps whether two sides agree within what is written
 */
export function findSlip(one: Side, other: Side, overlaps: Overlap): PairSlip {
  const sides = [
    [one, other],
    [other, one],
  ] as const;
  const fitsAny = (change: (text: string) => readonly string[]) =>
    sides.some(([side, against]) => {
      if (side.decimals === undefined || side.decimals > MOST_DECIMALS) return false;
      const text = Math.abs(side.number).toFixed(side.decimals);
      return rewritten({ ...side, number: Math.abs(side.number) }, change(text)).some((each) =>
        overlaps(each, against),
      );
    });
  const byFactor = (factor: number) =>
    overlaps({ ...one, number: one.number * factor, halfWidth: one.halfWidth * factor }, other);
  const gallon = gallonSlip(one, other, overlaps);
  if (gallon) return gallon;
  if (fitsAny(swaps)) return 'swapped-digits';
  if (powersOfTen.some(byFactor)) return 'factor-ten';
  if (one.dimension === 'flow' && (byFactor(60) || byFactor(1 / 60))) return 'factor-sixty';
  if (one.number === other.number && one.unit.spelled !== other.unit.spelled) return 'not-converted';
  if (one.dimension !== 'temperature' && within(one, other, 0.005)) return 'rounded-factor';
  if (fitsAny(replacements)) return 'digit-slip';
  return fitsAny(lostOrAdded) ? 'factor-ten' : 'unrelated';
}
