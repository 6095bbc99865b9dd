import { solidsMade } from '../laws/dirt/production.ts';
import type { Compiled } from './compiled.ts';

/** Solids that the tank's feed makes, kg/s. */
export const solidsMadeIn = ({ model, constants }: Pick<Compiled, 'model' | 'constants'>): number =>
  solidsMade({ ...model.tank, solidsPerFeedRatio: constants.solidsPerFeedRatio });

/** Ammonia nitrogen that a feed of 1 with a share of protein makes, kg/kg. */
export const ammoniaPerFeed = ({ constants }: Pick<Compiled, 'constants'>, proteinFraction: number): number =>
  proteinFraction * constants.tanPerProteinRatio;

/** Ammonia nitrogen that the tank's feed makes, kg N/s. */
export const ammoniaMadeIn = (compiled: Pick<Compiled, 'model' | 'constants'>): number => {
  const { feedKgPerS, feedProteinFraction } = compiled.model.tank;
  return feedKgPerS * ammoniaPerFeed(compiled, feedProteinFraction);
};
