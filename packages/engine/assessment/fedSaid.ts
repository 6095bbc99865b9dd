import type { Model } from '../model/model.ts';
import { quantity } from '../wording/facts.ts';
import { type Said, said } from '../wording/said.ts';

/**
 * The dry feed that a tank gets, as a part of a sentence: to two figures, for nobody weighs feed better, and with what it
 * is worth where it was assumed from the stock and not stated.
 */
export const fedSaid = ({ tank, givens }: Model): Said => {
  const feed = { ...quantity(tank.feedKgPerS, 'mass-rate'), digits: 2 };
  const given = givens.find(({ modelPath }) => modelPath === 'tank.feedKgPerS');
  if (given?.assumedBecause === undefined) return said('fed.stated', { feed });
  return given.doubt?.kind === 'factor'
    ? said('fed.assumed', { feed, factor: given.doubt.size })
    : said('fed.assumed-roughly', { feed });
};
