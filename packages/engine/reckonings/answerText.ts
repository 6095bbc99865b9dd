import type { System } from '../quantities/displayUnits.ts';
import { printQuantity } from '../quantities/printQuantity.ts';
import type { Answer, ResultFacts } from './reckoning.ts';

/** Digits of a figure that brings its own unit. */
const FREE_DIGITS = 6;

/**
 * An answer as people read it: figures with their units, `yes` or `no`, or the word itself.
 *
 * @param answer of a reckoning, in SI where it is a number
 * @param facts how that result is shown
 */
export function answerText(answer: Exclude<Answer, undefined>, facts: ResultFacts, system: System): string {
  if (typeof answer === 'boolean') return answer ? 'yes' : 'no';
  if (typeof answer === 'string') return answer;
  if (typeof answer === 'object') {
    const { value, unit } = answer;
    const money = /^[A-Z]{3}$/.test(unit);
    return `${money ? value.toFixed(2) : Number(value.toPrecision(FREE_DIGITS))} ${unit}`;
  }
  const { dimension = 'count', digits = 4 } = facts;
  return printQuantity({ value: answer, dimension, system, digits });
}
