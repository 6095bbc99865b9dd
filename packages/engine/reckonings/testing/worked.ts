import { type Pair, type Reckoned, reckon } from '../reckon.ts';
import type { ReckoningProblem } from '../reckoning.ts';

/** Pairs from texts such as `flow=600 L/h`. */
export const pairs = (...texts: readonly string[]): Pair[] =>
  texts.map((text) => ({ key: text.slice(0, text.indexOf('=')), text: text.slice(text.indexOf('=') + 1) }));

export const worked = (name: string, ...texts: readonly string[]): Reckoned => {
  const reckoned = reckon(name, pairs(...texts));
  if (!reckoned.ok) throw new Error(JSON.stringify(reckoned.problems));
  return reckoned;
};

/** The number of one result. */
export const figure = (name: string, key: string, ...texts: readonly string[]): number => {
  const result = worked(name, ...texts).results[key];
  if (typeof result !== 'object') throw new Error(`${key} is no figure`);
  return result.value;
};

export const problems = (name: string, given: readonly Pair[]): readonly ReckoningProblem[] => {
  const reckoned = reckon(name, given);
  return reckoned.ok ? [] : reckoned.problems;
};
