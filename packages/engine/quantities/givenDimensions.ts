import type { Dimension } from './dimensions.ts';

/** Dimensions of the units in which assumed values of a model stand, for printing them. */
export const givenDimensions: Readonly<Record<string, Dimension>> = {
  m: 'length',
  m2: 'area',
  m3: 'volume',
  'm3/s': 'flow',
  'm/s': 'velocity',
  'kg/s': 'mass-rate',
  'kg/m3': 'alkalinity',
  K: 'temperature',
  W: 'power',
  Pa: 'pressure',
};
