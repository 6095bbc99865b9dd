import type { Measurements } from '../model/model.ts';
import type { Measurement } from './layout.ts';

/**
 * A reader of measurements by key: the given value, else the assumed one, in SI units.
 * Throws a RangeError for a measurement that is missing and has no assumed value.
 */
export function measurementReader<Key extends string>(
  definitions: readonly (Measurement & { readonly key: Key })[],
  given: Measurements,
): (key: Key) => number {
  const values = new Map<string, number>();
  for (const definition of definitions) {
    const value = given[definition.key] ?? definition.assumed?.value;
    if (value !== undefined) values.set(definition.key, value);
  }
  return (key) => {
    const value = values.get(key);
    if (value === undefined) throw new RangeError(`measurement ${key} is missing`);
    return value;
  };
}

/** Clear slot between a basket or tray and the wall, all round. */
export const wallGap = {
  key: 'wallGap',
  label: 'gap between basket and wall',
  kind: 'length',
  assumed: {
    value: 0.0005,
    doubtFactor: 2,
    because: 'loose-fitting baskets leave about half a millimetre all round; from memory',
  },
  least: 0,
  most: 0.01,
  how: 'Push the basket against one wall, feel the other side with a gauge or folded paper of known thickness, and halve it.',
} as const satisfies Measurement;

/** Open share of the grid that carries the media. */
export const floorOpenFraction = {
  key: 'floorOpenFraction',
  label: 'open share of the grid under the media',
  kind: 'fraction',
  assumed: {
    value: 0.4,
    doubtFactor: 1.5,
    because: 'moulded grids are open over about two fifths of their area; from memory',
  },
  least: 0.02,
  most: 1,
  how: 'Count the holes or slots, measure one, multiply, and divide by the area of the whole grid.',
} as const satisfies Measurement;

/** Free height above the uppermost medium, under the head. */
export const headSpace = {
  key: 'headSpace',
  label: 'free height above the top chamber',
  kind: 'length',
  assumed: {
    value: 0.01,
    doubtFactor: 2,
    because: 'about a centimetre stays free under the head; from memory',
  },
  least: 0.001,
  most: 0.03,
  how: 'Lay a ruler across the rim and measure down to the top of the uppermost basket, then take off what the head reaches in.',
} as const satisfies Measurement;

/** Clear width of the screens that hold media which are moved about. */
export const screenSlot = {
  key: 'screenSlot',
  label: 'clear width of the screen',
  kind: 'length',
  least: 0.00002,
  most: 0.05,
  how: 'Measure across a slot or mesh of the screen with a gauge, or find the largest drill that just passes.',
} as const satisfies Measurement;
