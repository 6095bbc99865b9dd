import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../assessment/assess.ts';
import { stackCanister } from '../assessment/testing/models.ts';
import type { Portion } from '../packing/arrange.ts';
import {
  countOrders,
  LAYERS_PER_CHAMBER,
  ordersOf,
  packingOfGrid,
  purchasesFor,
  shelfHolds,
  suppliesOf,
  volumesOf,
} from './candidates.ts';

const portion = (medium: string, litres: number, place: number): Portion => ({
  id: `bed-${place}`,
  medium,
  volumeM3: litres / 1000,
});

const anyPortions = fc
  .array(fc.tuple(fc.constantFrom('foam-20ppi', 'gravel-4mm', 'lava-15mm'), fc.constantFrom(1, 2)), {
    maxLength: 6,
  })
  .map((kinds) => kinds.map(([medium, litres], place) => portion(medium, litres, place)));

const permutations = <Item>(items: readonly Item[]): Item[][] =>
  items.length === 0
    ? [[]]
    : items.flatMap((one, place) => permutations(items.toSpliced(place, 1)).map((rest) => [one, ...rest]));

const kinds = (order: readonly Portion[]): string =>
  order.map(({ medium, volumeM3 }) => `${medium}:${volumeM3}`).join();

describe('orders of what is in the filter', () => {
  it('are every different one, once, and as many as are counted', () => {
    fc.assert(
      fc.property(anyPortions, (portions) => {
        const orders = [...ordersOf(portions)];
        const expected = new Set(permutations(portions).map(kinds));
        expect(new Set(orders.map(kinds))).toEqual(expected);
        expect(orders).toHaveLength(expected.size);
        expect(countOrders(portions)).toBe(expected.size);
      }),
      { numRuns: 60 },
    );
  });
});

const model = stackCanister();
const { chambers } = assess(model).layout;
const held = volumesOf(chambers, model.packing);
const empty: readonly (string | undefined)[] = Array.from(
  { length: LAYERS_PER_CHAMBER * 3 },
  () => undefined,
);

describe('a filled grid', () => {
  it('makes one bed of neighbouring layers of one medium', () => {
    const packing = packingOfGrid(chambers, empty.with(0, 'lava-15mm').with(1, 'lava-15mm'), new Map());
    expect(packing['basket-1']).toHaveLength(1);
    expect(packing['basket-1']![0]!.depthM).toBeCloseTo(0.058, 12);
    expect(packing['basket-2']).toEqual([]);
  });

  it('lists the layer that the water meets first at the bottom of a basket', () => {
    const packing = packingOfGrid(chambers, empty.with(0, 'foam-20ppi').with(1, 'lava-15mm'), new Map());
    expect(packing['basket-1']!.map(({ medium }) => medium)).toEqual(['lava-15mm', 'foam-20ppi']);
  });

  it('takes no more of a medium than can be had', () => {
    const most = 1e-3;
    const all = empty.map(() => 'lava-15mm');
    const packing = packingOfGrid(chambers, all, new Map([['lava-15mm', most]]));
    expect(volumesOf(chambers, packing).get('lava-15mm')! / most).toBeCloseTo(1, 9);
  });
});

describe('what a packing takes', () => {
  it('is of pressed foam as much as there was before', () => {
    const basket = { id: 'a', medium: 'foam-20ppi', depthM: 0.04 };
    const plain = volumesOf(chambers, { 'basket-1': [basket] });
    const pressed = volumesOf(chambers, { 'basket-1': [{ ...basket, laying: { pressedRatio: 1.5 } }] });
    expect(pressed.get('foam-20ppi')! / plain.get('foam-20ppi')!).toBeCloseTo(1.5, 12);
  });
});

describe('what can be had', () => {
  it('is what is in the filter and on the shelf together, without end where the shelf has no end', () => {
    const shelf = [
      { medium: 'foam-20ppi', amountM3: 1e-3 },
      { medium: 'lava-15mm' },
      { medium: 'zeolite-4mm', amountM3: 2e-3 },
    ];
    const supplies = suppliesOf({ ...model, shelf }, held);
    expect(supplies.get('foam-20ppi')).toBeCloseTo(held.get('foam-20ppi')! + 1e-3, 12);
    expect(supplies.get('zeolite-4mm')).toBe(2e-3);
    expect(supplies.has('lava-15mm')).toBe(false);
    expect(supplies.get('floss-loose')).toBe(held.get('floss-loose'));
  });

  it('is bought only beyond what is there, at the user’s price where there is one', () => {
    const priced = { ...model, money: { ...model.money, mediumPricePerM3: { 'foam-20ppi': 5000 } } };
    const wanted = new Map([
      ['foam-20ppi', held.get('foam-20ppi')! + 1e-3],
      ['lava-15mm', 2e-3],
      ['floss-loose', held.get('floss-loose')!],
    ]);
    const purchases = purchasesFor(priced, wanted, held);
    expect(purchases.map(({ medium }) => medium)).toEqual(['foam-20ppi', 'lava-15mm']);
    expect(purchases[0]!.price).toBeCloseTo(5, 9);
    expect(purchases[1]!.price).toBeCloseTo(2e-3 * model.media['lava-15mm']!.pricePerM3.value, 9);
  });

  it('is not on the shelf where the shelf does not list it or holds too little', () => {
    const shelf = [{ medium: 'foam-20ppi', amountM3: 1e-3 }, { medium: 'lava-15mm' }];
    const holds = (medium: string, volumeM3: number): boolean =>
      shelfHolds({ ...model, shelf }, [{ medium, volumeM3, price: 0 }]);
    expect(holds('foam-20ppi', 1e-3)).toBe(true);
    expect(holds('foam-20ppi', 1.1e-3)).toBe(false);
    expect(holds('lava-15mm', 1)).toBe(true);
    expect(holds('gravel-4mm', 1e-6)).toBe(false);
  });
});
