import type { Figure } from '../../model/figure.ts';

/** What a tank makes for chemical media to take out, with doubt and source. */
export const chemicalLoadFigures = {
  phosphorusPerFeedRatio: {
    value: 0.006,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'dry feeds hold about 1.2 % of phosphorus, half of it comes out dissolved',
    },
  },
  organicCarbonPerFeedRatio: {
    value: 0.02,
    doubt: { kind: 'factor', size: 3 },
    source: {
      kind: 'memory',
      text: 'dry feeds hold about 45 % of carbon, a few per cent of it stay dissolved and are not broken down',
    },
  },
} as const satisfies Readonly<Record<string, Figure>>;

/** Phosphorus that comes out dissolved for each dry feed given, kg/kg. */
export const PHOSPHORUS_PER_FEED_RATIO = chemicalLoadFigures.phosphorusPerFeedRatio.value;
/** Dissolved organic carbon that bacteria leave, for each dry feed given, kg/kg. */
export const ORGANIC_CARBON_PER_FEED_RATIO = chemicalLoadFigures.organicCarbonPerFeedRatio.value;
