import { describe, expect, it } from 'vitest';
import { media } from '../../catalogue/media.ts';
import { drawnLayout, families } from '../../families/families.ts';
import type { comingNames } from '../../model/medium.ts';
import { exchangeGroups, isMadeFor } from '../../packing/holding.ts';
import { familyModels } from '../testing/familyModels.ts';

/** One of each kind that the hand tells apart. */
const offered = [
  'foam-30ppi',
  'coarse-pad',
  'floss-loose',
  'sock-felt',
  'gravel-4mm',
  'ceramic-rings-12mm',
  'plastic-carrier-10mm-tumbling',
] as const;
type Offered = (typeof offered)[number];

const still: readonly Offered[] = [
  'foam-30ppi',
  'coarse-pad',
  'floss-loose',
  'gravel-4mm',
  'ceramic-rings-12mm',
];

/** Which of them each chamber of each family takes; a number in its name stands for all of its kind. */
const taken: Readonly<Record<string, Readonly<Record<string, readonly Offered[]>>>> = {
  'basket-stack-canister': { 'basket-#': still },
  'split-housing-canister': { 'left-#': still, 'right-#': still },
  'central-tube-canister': { media: still },
  'cartridge-canister': { cartridge: ['foam-30ppi', 'coarse-pad'] },
  'hang-on-back': { 'slot-#': still },
  'internal-box': { 'chamber-#': still },
  sump: { sock: ['sock-felt'], 'tray-#': still },
  'trickle-tower': {
    pad: ['foam-30ppi', 'coarse-pad', 'floss-loose'],
    'layer-#': ['gravel-4mm', 'ceramic-rings-12mm'],
  },
  'sponge-filter': { sponge: ['foam-30ppi'] },
  'mat-filter': { mat: ['foam-30ppi', 'coarse-pad'] },
  undergravel: { gravel: ['gravel-4mm'] },
  'fluidised-bed': { column: ['gravel-4mm'] },
  'moving-bed': { carriers: ['plastic-carrier-10mm-tumbling'] },
};

describe('chambers', () => {
  it('of every family say what they take', () => {
    expect(Object.keys(taken).toSorted()).toEqual(families.map(({ id }) => id).toSorted());
  });

  it.each(familyModels)('of a %s take the media that they are made for, and no others', (_, { filter }) => {
    const expected = taken[filter.family]!;
    const { chambers } = drawnLayout(filter);
    const kindOf = (id: string): string => id.replace(/\d+$/, '#');
    expect(new Set(chambers.map(({ id }) => kindOf(id)))).toEqual(new Set(Object.keys(expected)));
    for (const chamber of chambers) {
      const made = offered.filter((medium) => isMadeFor(chamber, { medium }, media));
      expect(made, chamber.id).toEqual(expected[kindOf(chamber.id)]);
    }
  });

  it('of a well-packed filter of each family hold what they are made for', () => {
    for (const [, { filter, packing }] of familyModels)
      for (const chamber of drawnLayout(filter).chambers)
        for (const bed of packing[chamber.id] ?? [])
          expect(isMadeFor(chamber, bed, media), bed.id).toBe(true);
  });
});

describe('a bed', () => {
  const basket = { holds: ['block', 'pieces', 'bagged'] } as const;
  const bag = { openFraction: 0.4, cornerRadiusM: 0.01 };

  it('in a bag goes where bags go, whatever is in it', () => {
    expect(isMadeFor(basket, { medium: 'gravel-4mm' }, media)).toBe(false);
    expect(isMadeFor(basket, { medium: 'gravel-4mm', laying: { bag } }, media)).toBe(true);
    expect(isMadeFor({ holds: ['grains'] }, { medium: 'gravel-4mm', laying: { bag } }, media)).toBe(false);
  });

  it('of two media mixed goes where both go', () => {
    const mixed = { medium: 'gravel-4mm', share: 0.3 };
    expect(isMadeFor(basket, { medium: 'ceramic-rings-12mm', laying: { mixed } }, media)).toBe(false);
    const both = { holds: ['grains', 'pieces'] } as const;
    expect(isMadeFor(both, { medium: 'ceramic-rings-12mm', laying: { mixed } }, media)).toBe(true);
  });
});

describe('places between which media can change', () => {
  const groupsOf = (family: string): string[][] => {
    const [, { filter }] = familyModels.find(([, model]) => model.filter.family === family)!;
    return exchangeGroups(drawnLayout(filter).chambers).map((group) => group.map(({ id }) => id));
  };

  it('are the trays of a sump without its sock, and the layers of a tower without its pad', () => {
    expect(groupsOf('sump')).toEqual([['sock'], ['tray-1', 'tray-2']]);
    expect(groupsOf('trickle-tower')).toEqual([['pad'], ['layer-1', 'layer-2']]);
  });

  it('are all baskets of a canister', () => {
    expect(groupsOf('basket-stack-canister')).toEqual([['basket-3', 'basket-2', 'basket-1']]);
  });

  it('are joined by a chamber that holds what two others hold apart', () => {
    const [chamber] = drawnLayout(familyModels[0]![1].filter).chambers;
    const made = (id: string, holds: (keyof typeof comingNames)[]) => ({ ...chamber!, id, holds });
    const groups = exchangeGroups([
      made('a', ['block']),
      made('b', ['grains']),
      made('c', ['block', 'grains']),
    ]);
    expect(groups).toHaveLength(1);
  });
});
