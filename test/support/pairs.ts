import { checkPair } from '@fettle/engine/quantities/checkPair.ts';
import { displayUnits } from '@fettle/engine/quantities/displayUnits.ts';

const escaped = (unit: string): string => unit.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const unitsOf = (system: 'metric' | 'us'): readonly string[] =>
  Object.values(displayUnits)
    .filter(({ metric, us }) => metric.map(({ unit }) => unit).join() !== us.map(({ unit }) => unit).join())
    .flatMap((both) => both[system].map(({ unit }) => unit))
    .filter((unit) => unit !== '' && !unit.startsWith('/'))
    .toSorted((one, other) => other.length - one.length);

const number = String.raw`-?\d[\d.,]*(?:e-?\d+)?`;
const anyUnit = (units: readonly string[]): string => `(?:${units.map(escaped).join('|')})`;
const side = (units: readonly string[]): string =>
  String.raw`${number}(?:\s(?:±|×\/÷|to|bis)\s${number})?\s${anyUnit(units)}(?![\p{L}\p{N}_/])`;

const metric = unitsOf('metric');
const us = unitsOf('us');

/** A text with the line ends that typesetting put into it taken out. */
const inOneLine = (text: string): string => text.replace(/[\s\u00a0]+/g, ' ');

/** Every pair of a metric and a US quantity in a text. */
export const pairsIn = (text: string): readonly (readonly [string, string])[] =>
  [...inOneLine(text).matchAll(new RegExp(`(?<![\\w.,])(${side(metric)}) \\((${side(us)})\\)`, 'gu'))].map(
    ([, one = '', other = '']) => [one, other],
  );

/** Zeros at the end of a whole number are not known to count: 630 L/h may be anything from 625 to 635. */
const withZerosOpen = (written: string): string => {
  const zeros = /^(-?\d*[1-9])(0+)(?![\d.,]| (?:±|×))/.exec(written);
  return zeros?.[2] === undefined
    ? written
    : written.replace(/(?<=0) /, ` ± ${5 * 10 ** (zeros[2].length - 1)} `);
};

const ends = (written: string): readonly string[] => {
  const [low, high] = written.split(/ (?:to|bis) /);
  if (high === undefined) return [withZerosOpen(written)];
  const unit = /[^\d.,\s].*$/.exec(high)?.[0] ?? '';
  return [`${low} ${unit}`, high].map(withZerosOpen);
};

/** Pairs of a text whose two sides cannot be one quantity, rounded as they are written. */
export const slipsIn = (text: string): readonly string[] =>
  pairsIn(text).flatMap(([one, other]) => {
    const [ones, others] = [ends(one), ends(other)];
    return ones.flatMap((each, at) => {
      const check = checkPair(each, others[at] ?? '');
      if (check.ok && check.agrees) return [];
      // Nothing can be held against nothing: both sides round to it.
      if (/^0(?:[.,]0+)? /.test(each) && /^0(?:[.,]0+)? /.test(others[at] ?? '')) return [];
      return [`${one} (${other})${check.ok ? `: ${check.likely}` : `: ${check.says}`}`];
    });
  });

/** Metric quantities of a text that have no US quantity beside them. */
export const unpairedIn = (text: string): readonly string[] =>
  [...inOneLine(text).matchAll(new RegExp(`(?<![\\w.,(])(${side(metric)})(?! \\(${number})`, 'gu'))].map(
    ([, one = '']) => one,
  );
