import { media } from '../../catalogue/media.ts';
import { drawnLayout } from '../../families/families.ts';
import type { Chamber } from '../../families/layout.ts';
import type { Model, Packing } from '../../model/model.ts';
import { seededRandom } from '../../network/testing/randomNetworks.ts';
import { familyModels } from './familyModels.ts';
import { gramsPerDay, type Layer, packed, withTank } from './models.ts';

type Random = () => number;

const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
const oneOf = <Item>(random: Random, items: readonly Item[]): Item =>
  items[Math.floor(random() * items.length)]!;

const THINNEST_MM = 3;
const MOST_LAYERS = 3;

/** Up to three layers that together fit a chamber. */
const layersIn = (random: Random, chamber: Chamber, offered: readonly string[]): Layer[] => {
  const thickestMm = Math.max(THINNEST_MM, (chamber.depthM * 1000) / MOST_LAYERS);
  const count = Math.floor(random() * (MOST_LAYERS + 1));
  return Array.from({ length: count }, () => [
    oneOf(random, offered),
    between(random, THINNEST_MM, thickestMm),
  ]);
};

/** A packing of a filter's chambers with any of the media offered; chambers may stay empty. */
export const randomPacking = (
  random: Random,
  model: Model,
  offered: readonly string[] = Object.keys(media),
): Packing => {
  const { chambers } = drawnLayout(model.filter);
  return packed(
    Object.fromEntries(chambers.map((chamber) => [chamber.id, layersIn(random, chamber, offered)])),
  );
};

/** A job of any family with any packing, fed from nothing to far too much; the same for the same seed. */
export const randomModel = (seed: number, offered?: readonly string[]): Model => {
  const random = seededRandom(seed);
  const [, model] = oneOf(random, familyModels);
  const packing = randomPacking(random, model, offered);
  const water = {
    feedKgPerS: gramsPerDay(random() < 0.1 ? 0 : between(random, 0, 20)),
    temperatureK: between(random, 283.15, 303.15),
    pH: between(random, 6.5, 8.8),
    oxygenFraction: between(random, 0.3, 1),
  };
  return { ...withTank(model, water), packing };
};
