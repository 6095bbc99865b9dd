import type { Chamber } from '../families/layout.ts';
import { inWaterOrder } from '../families/waterOrder.ts';
import { isUsedUp } from '../model/medium.ts';
import type { Bed, Model, Packing } from '../model/model.ts';
import { arrange, type Portion, portionsInWaterOrder } from '../packing/arrange.ts';
import { isMadeFor, isSewn } from '../packing/holding.ts';
import type { Purchase } from './plan.ts';

/** Every different order of the portions; portions of one medium and size count as the same. */
export function* ordersOf(portions: readonly Portion[]): Generator<Portion[]> {
  if (portions.length <= 1) {
    yield [...portions];
    return;
  }
  const tried = new Set<string>();
  for (const [i, first] of portions.entries()) {
    const kind = `${first.medium}:${first.volumeM3}`;
    if (tried.has(kind)) continue;
    tried.add(kind);
    for (const others of ordersOf(portions.toSpliced(i, 1))) yield [first, ...others];
  }
}

/** How many different orders there are. */
export const countOrders = (portions: readonly Portion[]): number => {
  const kinds = new Map<string, number>();
  let orders = 1;
  for (const [i, portion] of portions.entries()) {
    const kind = `${portion.medium}:${portion.volumeM3}`;
    const count = (kinds.get(kind) ?? 0) + 1;
    kinds.set(kind, count);
    orders = (orders * (i + 1)) / count;
  }
  return orders;
};

/** Packings that put what is in the filter into another order; in water order of `chambers`. */
export function* reorderings(
  chambers: readonly Chamber[],
  portions: readonly Portion[],
  media: Model['media'],
): Generator<Packing> {
  for (const order of ordersOf(portions)) {
    const packing = arrange(chambers, order, media);
    if (packing) yield packing;
  }
}

/** The coarse grid: each chamber in so many equal layers, each of one medium or empty. */
export const LAYERS_PER_CHAMBER = 2;

/** One filling of the grid: a medium, or nothing, for every layer in water order. */
export type Grid = readonly (string | undefined)[];

/** How much of each medium can be had, m³; absent where any amount can. */
export type Supplies = ReadonlyMap<string, number>;

/**
 * Whether each layer of a grid lies in a chamber that is made to hold it, or that holds the same medium as found. A
 * chamber that moves its media about takes no others than its own: their size and weight are what it was built for.
 */
export const fitsChambers = (
  chambers: readonly Chamber[],
  grid: Grid,
  { packing, media }: Pick<Model, 'packing' | 'media'>,
): boolean =>
  chambers.every((chamber, place) => {
    const own = (packing[chamber.id] ?? []).map(({ medium }) => medium);
    const layers = grid.slice(place * LAYERS_PER_CHAMBER, (place + 1) * LAYERS_PER_CHAMBER);
    return layers.every(
      (medium) =>
        medium === undefined ||
        own.includes(medium) ||
        (!chamber.moved && isMadeFor(chamber, { medium }, media)),
    );
  });

/** The packing of a filled grid: neighbouring layers of one medium make one bed. */
const bedsOfGrid = (chambers: readonly Chamber[], grid: Grid): Packing =>
  Object.fromEntries(
    chambers.map((chamber, place) => {
      const beds: Bed[] = [];
      const first = grid[place * LAYERS_PER_CHAMBER];
      if (isSewn(chamber)) {
        const whole = { id: `${chamber.id}-bed-1`, depthM: chamber.depthM };
        return [chamber.id, first === undefined ? [] : [{ ...whole, medium: first }]];
      }
      const depthM = chamber.depthM / LAYERS_PER_CHAMBER;
      for (let layer = 0; layer < LAYERS_PER_CHAMBER; layer += 1) {
        const medium = grid[place * LAYERS_PER_CHAMBER + layer];
        if (medium === undefined) continue;
        const last = beds.at(-1);
        if (last?.medium === medium) beds[beds.length - 1] = { ...last, depthM: last.depthM + depthM };
        else beds.push({ id: `${chamber.id}-bed-${beds.length + 1}`, medium, depthM });
      }
      return [chamber.id, inWaterOrder(chamber, beds)];
    }),
  );

/**
 * The packing of a filled grid, with the beds of a medium that cannot be bought in that amount made shallower
 * alike until what can be had is enough.
 */
export const packingOfGrid = (chambers: readonly Chamber[], grid: Grid, supplies: Supplies): Packing => {
  const full = bedsOfGrid(chambers, grid);
  const wanted = volumesOf(chambers, full);
  const share = (medium: string): number =>
    Math.min(1, (supplies.get(medium) ?? Infinity) / wanted.get(medium)!);
  return Object.fromEntries(
    Object.entries(full).map(([chamber, beds]) => [
      chamber,
      beds.map((bed) => ({ ...bed, depthM: bed.depthM * share(bed.medium) })),
    ]),
  );
};

/** What can be had of each medium: what is in the filter and what the shelf adds. */
export const suppliesOf = (model: Model, held: ReadonlyMap<string, number>): Supplies => {
  const supplies = new Map(held);
  for (const { medium, amountM3 } of model.shelf) {
    if (amountM3 === undefined) supplies.delete(medium);
    else supplies.set(medium, (held.get(medium) ?? 0) + amountM3);
  }
  return supplies;
};

/** Media volumes of a packing, m³ by medium: of what is pressed, as much as it is before. */
export const volumesOf = (chambers: readonly Chamber[], packing: Packing): Map<string, number> => {
  const volumes = new Map<string, number>();
  for (const chamber of chambers) {
    for (const { medium, volumeM3, laying } of portionsInWaterOrder([chamber], packing)) {
      const looseM3 = volumeM3 * (laying?.pressedRatio ?? 1);
      volumes.set(medium, (volumes.get(medium) ?? 0) + looseM3);
    }
  }
  return volumes;
};

/** Media are bought by the tenth of a litre, m³ (common practice, no source). */
export const SOLD_BY_M3 = 1e-4;

const priceOf = (model: Model, medium: string): number =>
  model.money.mediumPricePerM3[medium] ?? model.media[medium]!.pricePerM3.value;

/** What has to be bought beyond what is in the filter. */
export const purchasesFor = (
  model: Model,
  wanted: ReadonlyMap<string, number>,
  held: ReadonlyMap<string, number>,
): Purchase[] =>
  [...wanted].flatMap(([medium, volume]) => {
    const short = volume - (held.get(medium) ?? 0);
    if (short <= 1e-9 * volume) return [];
    const amount = model.shelf.find((item) => item.medium === medium)?.amountM3 ?? Number.POSITIVE_INFINITY;
    const bought = Math.max(short, Math.min(amount, Math.ceil(short / SOLD_BY_M3 - 1e-9) * SOLD_BY_M3));
    return [{ medium, volumeM3: bought, price: bought * priceOf(model, medium) }];
  });

/** What of the media in a filter is still good, m³ by medium: all but those that are used up (`isUsedUp`). */
export const stillGood = (model: Model, held: ReadonlyMap<string, number>): ReadonlyMap<string, number> =>
  new Map([...held].filter(([medium]) => !isUsedUp(model.media[medium]!)));

/**
 * Fresh media in place of those in the filter that are used up (`isUsedUp`): what cleaning takes in any case, whatever is
 * planned. With what is bought beyond it comes to whole steps of sale.
 */
export const renewalsFor = (
  model: Model,
  wanted: ReadonlyMap<string, number>,
  held: ReadonlyMap<string, number>,
): Purchase[] =>
  [...wanted].flatMap(([medium, volume]) => {
    if (!isUsedUp(model.media[medium]!) || (held.get(medium) ?? 0) <= 1e-9 * volume) return [];
    const [beyond] = purchasesFor(model, new Map([[medium, volume]]), held);
    const sold = Math.ceil(volume / SOLD_BY_M3 - 1e-9) * SOLD_BY_M3;
    const volumeM3 = Math.max(volume, sold) - (beyond?.volumeM3 ?? 0);
    return volumeM3 > 1e-9 * volume ? [{ medium, volumeM3, price: volumeM3 * priceOf(model, medium) }] : [];
  });

/** Whether the shelf holds enough of everything that is to be bought. */
export const shelfHolds = (model: Model, purchases: readonly Purchase[]): boolean =>
  purchases.every(({ medium, volumeM3 }) => {
    const item = model.shelf.find((one) => one.medium === medium);
    return item !== undefined && (item.amountM3 === undefined || volumeM3 <= item.amountM3 * (1 + 1e-9));
  });
