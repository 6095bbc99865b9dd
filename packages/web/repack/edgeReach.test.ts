import type { BedPlace } from '@fettle/drawing/sectionPlaces.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeReach } from './edgeReach.ts';

const chamberOf = (flow: Chamber['flow']): Chamber => ({
  id: flow,
  label: flow,
  holds: [],
  from: 'a',
  to: 'b',
  areaM2: 0.02,
  depthM: 0.3,
  flow,
  listedInWaterOrder: false,
  gap: { thicknessM: 0.001, widthM: 0.1, lengthM: 0.06 },
  floorOpenFraction: 0.4,
  widthM: 0.16,
  box: { x: 0, y: 0, width: 0.16, height: 0.3 },
});

/** Beds on one another, the first on top at y = 20, each as high as is said; or behind one another from x = 20 on. */
const beds = (flow: 'up' | 'right', heights: readonly number[]): readonly BedPlace[] =>
  heights.map((size, place) => {
    const from = 20 + heights.slice(0, place).reduce((sum, height) => sum + height, 0);
    const box =
      flow === 'up' ? { x: 0, y: from, width: 80, height: size } : { x: from, y: 0, width: size, height: 80 };
    return { chamber: chamberOf(flow), place, tag: '', name: '', medium: '', depthM: 0, box };
  });

const sizes = fc.array(fc.double({ min: 0.5, max: 60, noNaN: true }), { minLength: 1, maxLength: 6 });

describe('the edge of a bed under a finger', () => {
  test('is as wide as the finger where beds are thick', () => {
    const [top, low] = beds('up', [30, 30]) as [BedPlace, BedPlace];
    expect(edgeReach(low, [top, low], 12)).toEqual({ x: 0, y: 44, width: 80, height: 12 });
    expect(edgeReach(top, [top, low], 12)).toEqual({ x: 0, y: 14, width: 80, height: 12 });
  });

  test('of a thin bed reaches as much further beyond it, where nothing lies', () => {
    const [top] = beds('up', [3]) as [BedPlace];
    expect(edgeReach(top, [top], 12)).toEqual({ x: 0, y: 9, width: 80, height: 12 });
  });

  test.each(['up', 'right'] as const)(
    'leaves the middle third of every bed, thin or thick, to be taken hold of, water going %s',
    (flow) => {
      fc.assert(
        fc.property(sizes, fc.double({ min: 1, max: 40, noNaN: true }), (heights, wantedMm) => {
          const all = beds(flow, heights);
          const [start, size] = flow === 'up' ? (['y', 'height'] as const) : (['x', 'width'] as const);
          for (const bed of all)
            for (const edge of all.map((each) => edgeReach(each, all, wantedMm))) {
              expect(edge[size]).toBeLessThanOrEqual(wantedMm + 1e-9);
              const third = bed.box[size] / 3;
              const isClear =
                edge[start] + edge[size] <= bed.box[start] + third + 1e-9 ||
                edge[start] >= bed.box[start] + 2 * third - 1e-9;
              expect(isClear).toBe(true);
            }
        }),
      );
    },
  );
});
