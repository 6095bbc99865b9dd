import type { Given, Model } from '@fettle/engine/model/model.ts';
import { givenDimensions } from '@fettle/engine/quantities/givenDimensions.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import type { Print } from '../printing.ts';

const printValue = ({ value, unit }: Given, print: Print): string => {
  const dimension = givenDimensions[unit];
  if (dimension) return unit === 'Pa' ? `${print(value, dimension)} of air` : print(value, dimension);
  const money = /^([A-Z]{3})\/(s|J)$/.exec(unit);
  if (money?.[1]) return print(value, money[2] === 's' ? 'price-per-time' : 'price-per-energy', money[1]);
  if (unit === 'yes or no') return value === 0 ? 'no' : 'yes';
  if (unit === '1/s') return `${Number((100 * value * 7 * 86_400).toPrecision(3))} % a week`;
  return `${Number(value.toPrecision(3))}${unit === '1' ? '' : ` ${unit}`}`;
};

/** What was taken where the job did not state it, and why: `1.20 m: usual for this kind`. */
export const assumedText = (given: Given, print: Print): string =>
  `${printValue(given, print)}: ${inTradeWords(given.assumedBecause?.replace(/^not stated: /, '') ?? '')}`;

/** What was not stated, what was taken instead, and why. */
export const assumedLines = ({ givens }: Model, print: Print): readonly string[] =>
  givens
    .filter((given) => given.assumedBecause !== undefined)
    .map((given) => `${given.path} ${assumedText(given, print)}`);
