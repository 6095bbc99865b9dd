import { describe, expect, it } from 'vitest';
import { familyModels } from '../assessment/testing/familyModels.ts';
import { sump, trickleTower } from '../assessment/testing/models.ts';
import { drawnLayout } from '../families/families.ts';
import type { Model } from '../model/model.ts';
import { isMadeFor } from '../packing/holding.ts';
import { searchPlans } from './search.ts';

/** One of each kind that the hand tells apart, as much as is wanted. */
const shelf: Model['shelf'] = [
  'foam-30ppi',
  'coarse-pad',
  'floss-loose',
  'sock-felt',
  'gravel-4mm',
  'plastic-balls-35mm',
  'plastic-carrier-10mm-tumbling',
].map((medium) => ({ medium }));

const plansOf = (model: Model) =>
  searchPlans({ ...model, shelf }, { budget: 100, cap: 80, count: 20 }).plans.map(({ packing }) => packing);

describe('plans with everything on the shelf', () => {
  it.each(familyModels)('put into a %s nothing where it does not belong', (_, model) => {
    const { chambers } = drawnLayout(model.filter);
    for (const packing of plansOf(model))
      for (const chamber of chambers)
        for (const bed of packing[chamber.id] ?? [])
          expect(isMadeFor(chamber, bed, model.media), `${bed.medium} in ${chamber.id}`).toBe(true);
  });

  it('are found for a sump and for a tower, and hang the sock whole or not at all', () => {
    const packings = [...plansOf(sump()), ...plansOf(trickleTower())];
    expect(packings.length).toBeGreaterThan(3);
    const socks = packings.flatMap(({ sock = [] }) => sock);
    for (const { medium, depthM } of socks) {
      expect(medium).toBe('sock-felt');
      expect(depthM).toBeCloseTo(0.003, 12);
    }
  });

  it('keep what a technician laid in an odd place knowingly, and add none of it there', () => {
    const odd = trickleTower({
      pad: [['coarse-pad', 20]],
      'layer-1': [['foam-30ppi', 100]],
      'layer-2': [['plastic-balls-35mm', 200]],
    });
    const { chambers } = drawnLayout(odd.filter);
    const packings = plansOf(odd);
    expect(packings.length).toBeGreaterThan(0);
    for (const packing of packings) {
      const second = chambers.find(({ id }) => id === 'layer-2')!;
      for (const bed of packing['layer-2'] ?? []) expect(isMadeFor(second, bed, odd.media)).toBe(true);
    }
  });
});
