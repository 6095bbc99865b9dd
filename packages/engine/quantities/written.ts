import { decimalSignOf, numberAtStart } from './numberText.ts';
import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import { plainText } from './spelling.ts';

/** A written quantity taken apart, nothing read yet. Units may be empty. */
export interface Written {
  readonly number: string;
  readonly unit: string;
  readonly doubt?: { readonly kind: 'plus-minus' | 'factor'; readonly number: string; readonly unit: string };
  /** The decimal sign, where one of the numbers makes it certain. */
  readonly decimalSign?: '.' | ',';
}

const plusMinus = /±|\+ ?\/ ?-|\+-/;
const factor = /× ?\/? ?÷|[*x×] ?\/ ?÷?(?= ?[\d.])|÷ ?\/? ?×/;
const numberAllowed = 'a number with its unit, such as 12.5 mm or 9.5 ± 0.5 W';

function half(text: string): { readonly number: string; readonly unit: string } | undefined {
  // A sign of money may stand first: £4/L, GBP 12.
  const moneyFirst = /^([£€$¥]|[A-Z]{3}(?= ?\d)) ?(?=[\d.])/.exec(text);
  const rest = moneyFirst ? text.slice(moneyFirst[0].length) : text;
  const number = numberAtStart(rest);
  if (number === undefined) return undefined;
  const unit = rest.slice(number.length).trim();
  return { number, unit: moneyFirst ? `${moneyFirst[1]}${unit}` : unit };
}

function splitDoubt(text: string) {
  for (const [kind, pattern] of [
    ['factor', factor],
    ['plus-minus', plusMinus],
  ] as const) {
    const match = pattern.exec(text);
    if (match) {
      const behind = text.slice(match.index + match[0].length).trim();
      return { kind, before: text.slice(0, match.index).trim(), behind };
    }
  }
  return undefined;
}

function notANumber(text: string): QuantityProblem {
  return quantityProblem('not-a-number', `${quoted(text)} does not start with a number`, numberAllowed);
}

/**
 * Takes a written quantity apart into number, unit and doubt. The doubt stands behind `±` (also `+/-`) or
 * `×/÷` (also `x/`, `*\/`), before or behind the unit.
 */
export function takeApart(text: string): Written | QuantityProblem {
  if (text.length > 200) return quantityProblem('too-long', 'The text is too long', 'up to 200 characters');
  const plain = plainText(text);
  if (plain === '') return quantityProblem('empty', 'Nothing is written', numberAllowed);
  const doubtful = splitDoubt(plain);
  const main = half(doubtful ? doubtful.before : plain);
  if (!main) return notANumber(plain);
  if (/^(?:-|–|to\b|\.\.)\s*\d/.test(main.unit))
    return quantityProblem(
      'range',
      `${quoted(plain)} is a range`,
      'the middle with its doubt, such as 11 ± 1 mm',
    );
  if (!doubtful) return main;
  const doubt = half(doubtful.behind);
  if (!doubt)
    return quantityProblem('bad-doubt', `${quoted(plain)} has a doubt without a number`, numberAllowed);
  // No factor of doubt runs to thousands, so a sign in it stands before decimals.
  const inFactor = doubtful.kind === 'factor' ? /[.,]/.exec(doubt.number)?.[0] : undefined;
  const certain = inFactor === '.' || inFactor === ',' ? inFactor : undefined;
  const decimalSign = decimalSignOf(main.number) ?? decimalSignOf(doubt.number) ?? certain;
  const apart = { ...main, doubt: { kind: doubtful.kind, ...doubt } };
  return decimalSign === undefined ? apart : { ...apart, decimalSign };
}
