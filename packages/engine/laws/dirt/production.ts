import { dirtFigures } from './constants.ts';

/** Suspended solids made per dry feed given, kg/kg. */
export const SOLIDS_PER_FEED_RATIO = dirtFigures.solidsPerFeedRatio.value;

/**
 * Suspended solids that feeding makes.
 *
 * @param tank.feedKgPerS dry feed given, kg/s; 0 or more
 * @param tank.solidsPerFeedRatio kg dry solids per kg dry feed; 0.25 when left out, 0.2–0.4 measured
 * @returns dry solids made, kg/s; litter of plants comes on top
 * Accuracy: ×/÷ 1.5.
 * @source Timmons & Ebeling, Recirculating Aquaculture, seen quoted
 */
export const solidsMade = (tank: {
  readonly feedKgPerS: number;
  readonly solidsPerFeedRatio?: number;
}): number => tank.feedKgPerS * (tank.solidsPerFeedRatio ?? SOLIDS_PER_FEED_RATIO);
