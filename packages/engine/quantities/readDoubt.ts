import type { Doubt } from '../model/figure.ts';
import type { Dimension } from './dimensions.ts';
import { readNumber } from './numberText.ts';
import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import type { Unit } from './units.ts';
import { readUnit, unitFits } from './units.ts';
import type { Written } from './written.ts';

interface Main {
  /** The number as written, in its unit. */
  readonly number: number;
  readonly unit: Unit;
  readonly dimension: Dimension;
  /** SI value. */
  readonly value: number;
  /** The least that the figure may be: below 0, 0 itself, or always more. */
  readonly least: 'below-zero' | 'zero' | 'above-zero';
}

const halfWidth = 'a half-width above 0 in the same kind of unit, such as ± 0.5 W or ± 5 %';

function factorDoubt(size: number, main: Main): Doubt | QuantityProblem {
  if (main.dimension === 'temperature')
    return quantityProblem(
      'bad-doubt',
      'A temperature has no factor of doubt',
      'a half-width such as ± 1 °C',
    );
  if (!(main.value > 0))
    return quantityProblem('bad-doubt', 'A factor of doubt needs a value above 0', halfWidth);
  if (!(size > 1)) return quantityProblem('bad-doubt', 'The factor is not above 1', 'factors above 1');
  return { kind: 'factor', size };
}

function percentDoubt(size: number, main: Main): Doubt | QuantityProblem {
  if (main.dimension === 'temperature')
    return quantityProblem('bad-doubt', 'A temperature has no share for a doubt', 'degrees such as ± 1 °C');
  if (main.number === 0) return quantityProblem('bad-doubt', 'A share of 0 is no doubt', halfWidth);
  return { kind: 'plus-minus', size: (Math.abs(main.value) * size) / 100 };
}

function isShare(text: string, apart: Written, main: Main): boolean {
  if (text !== '%' && !text.startsWith('% ')) return false;
  // A doubt in % of a figure in % is in points, like any other doubt in the figure's own unit.
  return !(main.dimension === 'fraction' || (apart.unit === '' && main.unit.spelled === '%'));
}

/**
 * Reads the doubt of a quantity taken apart: a half-width in a unit of the same kind, a share in %, or a factor.
 *
 * @returns the doubt in SI, `undefined` where none is written, or a problem
 */
export function readDoubt(apart: Written, main: Main): Doubt | QuantityProblem | undefined {
  if (!apart.doubt) return undefined;
  const read = readWrittenDoubt(apart, apart.doubt, main);
  if (!('kind' in read)) return read;
  if (reachesNothing(read, main)) return belowNothing(main);
  return tooWide(read, main) ? tellingNothing : read;
}

/** Shares of the figure that a half-width may not reach, a shade beside 1 so that arithmetic does not decide. */
const mostShare = { zero: 1 + 1e-12, 'above-zero': 1 - 1e-12 };

/** A half-width that says that there may be less than nothing: a drop test may read 0.25 ± 0.25 mg/L, a tank not. */
function reachesNothing({ kind, size }: Doubt, { value, least, dimension }: Main): boolean {
  if (least === 'below-zero' || dimension === 'temperature' || value <= 0) return false;
  return kind === 'plus-minus' && size >= value * mostShare[least];
}

function belowNothing({ number, unit, least }: Main): QuantityProblem {
  const figure = `${Number(number.toPrecision(6))} ${unit.spelled}`.trim();
  const mayBeZero = least === 'zero';
  return quantityProblem(
    'bad-doubt',
    mayBeZero
      ? `The doubt is larger than the figure, ${figure}, which cannot be below 0`
      : `The doubt is as large as the figure, ${figure}, or larger, which has to be above 0`,
    `a half-width ${mayBeZero ? 'no larger than the figure (100 % of it at most)' : 'smaller than the figure (less than 100 % of it)'}, or a factor such as ×/÷ 2`,
  );
}

/** Doubts beyond these say nothing of a figure. */
const WIDEST_FACTOR = 1000;
const WIDEST_SHARE = 100;

const tellingNothing = quantityProblem(
  'bad-doubt',
  'The doubt is so wide that the figure says nothing',
  `a half-width of at most ${WIDEST_SHARE} times the figure, or a factor of at most ${WIDEST_FACTOR}`,
);

function tooWide({ kind, size }: Doubt, { value }: Main): boolean {
  return kind === 'factor' ? size > WIDEST_FACTOR : value !== 0 && size > WIDEST_SHARE * Math.abs(value);
}

function readWrittenDoubt(
  apart: Written,
  doubt: NonNullable<Written['doubt']>,
  main: Main,
): Doubt | QuantityProblem {
  const factor = doubt.kind === 'factor';
  const number = readNumber(doubt.number, apart.decimalSign ?? (factor ? '.' : undefined));
  if (!number.ok) return number;
  if (factor) {
    if (doubt.unit !== '' && apart.unit !== '')
      return quantityProblem('bad-doubt', 'A factor of doubt has no unit', 'factors above 1, such as ×/÷ 2');
    return factorDoubt(number.value, main);
  }
  if (!(number.value > 0)) return quantityProblem('bad-doubt', 'The doubt is not above 0', halfWidth);
  if (isShare(doubt.unit, apart, main)) return percentDoubt(number.value, main);
  if (main.dimension === 'fraction' && apart.unit === '' && doubt.unit === '%' && main.number <= 1)
    return quantityProblem(
      'ambiguous-number',
      `${quoted(`${apart.number} ± ${doubt.number} %`)} does not say if the first number is in %`,
      `${apart.number} % ± ${doubt.number} %, or both as plain numbers`,
    );
  const reading = doubt.unit === '' || apart.unit === '' ? undefined : readUnit(doubt.unit);
  const unit = reading === undefined ? main.unit : reading.ok ? reading.unit : undefined;
  if (!unit || !unitFits(unit, main.dimension) || unit.basis !== main.unit.basis)
    return quantityProblem('bad-doubt', `The doubt's unit ${quoted(doubt.unit)} does not fit`, halfWidth);
  return { kind: 'plus-minus', size: number.value * unit.factor };
}
