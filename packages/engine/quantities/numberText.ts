import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';

/** Matches the number at the start of a text: sign, digits with any separators, exponent, or a fraction. */
const numberPattern =
  /^[+-]?\s?(?:\d+[ -]\d+\/\d+(?![\d.,])|\d+\/\d+(?![\d.,])|(?:\d{1,3}(?: \d{3})+(?!\d)[\d.,]*|\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+(?![\d.,]))?)/;

/** A number as it was written. */
export interface NumberReading {
  readonly ok: true;
  readonly value: number;
  /** One unit of the last written digit; 0 for a fraction, which is taken as exact. */
  readonly lastDigit: number;
  readonly fraction: boolean;
}

/** The number at the start of a text, as written; `undefined` where there is none. */
export function numberAtStart(text: string): string | undefined {
  const found = numberPattern.exec(text)?.[0];
  return found?.replace(/[.,]+$/, '') || undefined;
}

const workshopDenominators = new Set([2, 3, 4, 5, 8, 10, 16, 32, 64]);

function readFraction(text: string): NumberReading | QuantityProblem | undefined {
  const match = /^([+-]?)\s?(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (!match) return undefined;
  const whole = Number(match[2] ?? 0);
  const top = Number(match[3]);
  const bottom = Number(match[4]);
  if (!workshopDenominators.has(bottom) || top >= bottom) {
    const allowed = 'proper fractions in 2, 3, 4, 5, 8, 10, 16, 32 or 64 parts, or a decimal number';
    return quantityProblem('ambiguous-number', `${quoted(text)} may be a fraction or two sizes`, allowed);
  }
  const value = (match[1] === '-' ? -1 : 1) * (whole + top / bottom);
  return { ok: true, value, lastDigit: 0, fraction: true };
}

function groupsOfThree(digits: string, separator: string): boolean {
  const groups = digits.split(separator);
  const first = groups[0] ?? '';
  return /^[1-9]\d{0,2}$/.test(first) && groups.slice(1).every((group) => /^\d{3}$/.test(group));
}

type Plain = { readonly digits: string } | 'ambiguous' | 'bad';

function withoutSeparators(digits: string, decimalKnown: string | undefined): Plain {
  const separators = [...digits].filter((sign) => sign === '.' || sign === ',');
  const last = separators.at(-1);
  if (last === undefined) return { digits };
  const other = last === '.' ? ',' : '.';
  const lastCount = separators.filter((sign) => sign === last).length;
  if (separators.includes(other)) {
    const [whole = '', decimals = ''] = digits.split(last);
    if (lastCount > 1 || decimals.includes(other) || !groupsOfThree(whole, other)) return 'bad';
    return { digits: `${whole.replaceAll(other, '')}.${decimals}` };
  }
  if (lastCount > 1) return groupsOfThree(digits, last) ? { digits: digits.replaceAll(last, '') } : 'bad';
  if (decimalKnown !== undefined && decimalKnown !== last)
    return groupsOfThree(digits, last) ? { digits: digits.replace(last, '') } : 'bad';
  if (decimalKnown === undefined && groupsOfThree(digits, last)) return 'ambiguous';
  return { digits: digits.replace(last, '.') };
}

/** The sign that certainly stands before decimals in a number, if one does: the point of 0.05, the comma of 1,5. */
export function decimalSignOf(text: string): '.' | ',' | undefined {
  const match = /^[+-]?\s?(\d*)([.,])(\d+)$/.exec(text);
  if (!match || groupsOfThree(`${match[1]}.${match[3]}`, '.')) return undefined;
  return match[2] === '.' ? '.' : ',';
}

function askAboutSeparator(text: string): QuantityProblem {
  const bare = text.replace(/[.,]/, '');
  const point = text.replace(',', '.');
  const allowed = `${bare} for the large number, ${point}0 for the small one`;
  return quantityProblem(
    'ambiguous-number',
    `${quoted(text)} may have a decimal sign or a sign for thousands`,
    allowed,
  );
}

/**
 * Reads a number as people write it: `12.5`, `1,5`, `1 000`, `1,000.5`, `3e-4`, `1/2`, `1 1/4`.
 *
 * @param text the number alone
 * @param decimalKnown the decimal sign, where the rest of the text has made it certain
 * @returns the number, or a problem where it may be read in two ways or is none
 */
export function readNumber(text: string, decimalKnown?: '.' | ','): NumberReading | QuantityProblem {
  const fraction = readFraction(text);
  if (fraction) return fraction;
  const match = /^([+-]?)\s?([\d., ]+)(?:[eE]([+-]?\d+))?$/.exec(text);
  // Thousands are not written in powers of ten: in 1.000e6 the point is a decimal point.
  const scientific = match?.[3] === undefined ? undefined : /[.,]/.exec(text)?.[0];
  const plain = match ? withoutSeparators(match[2]!.replaceAll(' ', ''), decimalKnown ?? scientific) : 'bad';
  if (plain === 'ambiguous') return askAboutSeparator(text);
  if (plain === 'bad' || !match)
    return quantityProblem('not-a-number', `${quoted(text)} is not a number`, 'numbers such as 12.5 or 1/2');
  const exponent = Number(match[3] ?? 0);
  const decimals = plain.digits.split('.')[1]?.length ?? 0;
  const value = Number(`${match[1]}${plain.digits}e${exponent}`);
  if (!(Math.abs(value) <= 1e30))
    return quantityProblem('too-large', `${quoted(text)} is too large`, 'numbers up to 1e30');
  return { ok: true, value, lastDigit: Number(`1e${exponent - decimals}`), fraction: false };
}
