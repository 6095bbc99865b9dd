import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { media } from '../catalogue/media.ts';
import { throatM } from '../catalogue/throat.ts';
import type { Portion } from './arrange.ts';
import {
  chemicalLast,
  coarseFirst,
  fineBeforeCoarse,
  mechanicalFirst,
  stageBefore,
  tradeOrder,
} from './order.ts';

const portion = (medium: string, place: number): Portion => ({ id: `bed-${place}`, medium, volumeM3: 1e-3 });
const portionsOf = (...ids: readonly string[]): Portion[] => ids.map(portion);
const anyPortions = fc
  .array(fc.constantFrom(...Object.keys(media)), { maxLength: 9 })
  .map((ids) => portionsOf(...ids));
const stageOf = ({ medium }: Portion) => media[medium]!.stage;
const names = (portions: readonly Portion[]): string[] => portions.map(({ medium }) => medium);
const sameBeds = (one: readonly Portion[], other: readonly Portion[]): void => {
  const ids = (all: readonly Portion[]): string[] => all.map(({ id }) => id).toSorted();
  expect(ids(one)).toEqual(ids(other));
};

const ranks = { mechanical: 0, biological: 1, chemical: 2 };

describe('trade order', () => {
  it('is mechanical, biological, chemical, coarse before fine, and loses no bed', () => {
    fc.assert(
      fc.property(anyPortions, (portions) => {
        const ordered = tradeOrder(portions, media);
        sameBeds(ordered, portions);
        const stages = ordered.map((one) => ranks[stageOf(one)]);
        expect(stages).toEqual(stages.toSorted((a, b) => a - b));
        const throats = ordered
          .filter((one) => stageOf(one) === 'mechanical')
          .map(({ medium }) => throatM(media[medium]!));
        expect(throats).toEqual(throats.toSorted((a, b) => b - a));
        expect(fineBeforeCoarse(ordered, media)).toBeUndefined();
        expect(tradeOrder(ordered, media)).toEqual(ordered);
      }),
    );
  });

  it('leaves beds of one stage that are not mechanical in the order in which they were', () => {
    const ordered = tradeOrder(portionsOf('zeolite-4mm', 'gravel-4mm', 'lava-15mm', 'foam-20ppi'), media);
    expect(names(ordered)).toEqual(['foam-20ppi', 'gravel-4mm', 'lava-15mm', 'zeolite-4mm']);
  });
});

describe('moves of one kind', () => {
  it('lose no bed', () => {
    fc.assert(
      fc.property(anyPortions, (portions) => {
        for (const move of [coarseFirst, mechanicalFirst, chemicalLast])
          sameBeds(move(portions, media), portions);
      }),
    );
  });

  it('coarse first: only mechanical beds change places', () => {
    const moved = coarseFirst(portionsOf('floss-packed', 'gravel-4mm', 'foam-10ppi'), media);
    expect(names(moved)).toEqual(['foam-10ppi', 'gravel-4mm', 'floss-packed']);
  });

  it('mechanical first: what is mechanical goes ahead in its own order', () => {
    const moved = mechanicalFirst(
      portionsOf('gravel-4mm', 'floss-packed', 'zeolite-4mm', 'foam-10ppi'),
      media,
    );
    expect(names(moved)).toEqual(['floss-packed', 'foam-10ppi', 'gravel-4mm', 'zeolite-4mm']);
  });

  it('chemical last: what is chemical goes behind', () => {
    const moved = chemicalLast(portionsOf('zeolite-4mm', 'gravel-4mm', 'foam-10ppi'), media);
    expect(names(moved)).toEqual(['gravel-4mm', 'foam-10ppi', 'zeolite-4mm']);
  });
});

describe('faults of order', () => {
  it('fine before coarse is seen among mechanical beds only', () => {
    const found = fineBeforeCoarse(portionsOf('floss-packed', 'gravel-4mm', 'foam-10ppi'), media);
    expect([found?.fine.medium, found?.coarse.medium]).toEqual(['floss-packed', 'foam-10ppi']);
    expect(fineBeforeCoarse(portionsOf('foam-10ppi', 'floss-packed'), media)).toBeUndefined();
    expect(fineBeforeCoarse(portionsOf('sand-coarse', 'lava-15mm'), media)).toBeUndefined();
  });

  it('beds about equally fine are no fault', () => {
    expect(fineBeforeCoarse(portionsOf('floss-loose', 'foam-60ppi'), media)).toBeUndefined();
  });

  it.each([
    ['biological', 'mechanical', ['gravel-4mm', 'foam-20ppi'], true],
    ['biological', 'mechanical', ['foam-20ppi', 'gravel-4mm'], false],
    ['chemical', 'biological', ['zeolite-4mm', 'foam-20ppi', 'gravel-4mm'], true],
    ['chemical', 'biological', ['gravel-4mm', 'zeolite-4mm'], false],
    ['chemical', 'mechanical', ['foam-20ppi', 'gravel-4mm'], false],
  ] as const)('%s before %s in %j: %s', (early, late, ids, expected) => {
    const found = stageBefore(portionsOf(...ids), media, { early, late });
    expect(found !== undefined).toBe(expected);
    if (found) expect([stageOf(found.early), stageOf(found.late)]).toEqual([early, late]);
  });
});
