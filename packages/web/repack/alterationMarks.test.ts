import { sectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { assess } from '@fettle/engine/assessment/assess.ts';
import { familyModels } from '@fettle/engine/assessment/testing/familyModels.ts';
import { familyById } from '@fettle/engine/families/families.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { describe, expect, test } from 'vitest';
import { alterationMarks, reachMm } from './alterationMarks.ts';

describe('alterations marked on the drawing', () => {
  test.each(familyModels)('%s: each that there is something to do of has a mark of its own', (_, model) => {
    const { layout } = assess(model);
    const places = sectionPlaces({ layout, packing: model.packing, media: model.media, units: 'metric' });
    const ids = (familyById(model.filter.family)?.alterations ?? []).filter((id) => id !== 'move-trays');
    const marks = alterationMarks(ids, { layout, places });
    const toMake = ids.filter((id) => (alterationKinds[id]?.where(layout).length ?? 0) > 0);
    expect(toMake.length).toBeGreaterThan(0);
    expect(marks.map(({ id }) => id)).toEqual(toMake);
    for (const { at } of marks) {
      expect(at.x).toBeGreaterThanOrEqual(reachMm);
      expect(at.x).toBeLessThanOrEqual(100 - reachMm);
    }
    for (const [index, { at }] of marks.entries())
      for (const other of marks.slice(index + 1))
        expect(Math.hypot(other.at.x - at.x, other.at.y - at.y)).toBeGreaterThanOrEqual(2 * reachMm);
  });
});
