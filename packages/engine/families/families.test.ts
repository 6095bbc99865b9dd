import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Measurements } from '../model/model.ts';
import { families, familyById } from './families.ts';
import type { Box, Family, Layout, Measurement } from './layout.ts';
import { chambersInWaterOrder } from './waterOrder.ts';

function anyValue(measurement: Measurement): fc.Arbitrary<number> {
  if (measurement.kind === 'count' || measurement.kind === 'yes-no') {
    return fc.integer({ min: measurement.least, max: measurement.most });
  }
  return fc.double({ min: measurement.least, max: measurement.most, noNaN: true });
}

function anyMeasurements(family: Family): fc.Arbitrary<Measurements> {
  return fc.record(Object.fromEntries(family.measurements.map((one) => [one.key, anyValue(one)])));
}

/** Everything that a layout names as a place, to be unique and to be found again. */
function idsOf(layout: Layout): readonly string[] {
  const named = [layout.spaces, layout.chambers, layout.openings, layout.leaks, layout.weirs];
  return named.flatMap((things) => things.map((thing) => thing.id));
}

function within(inner: Box, outer: Box): boolean {
  const slack = 1e-9;
  return (
    inner.x >= outer.x - slack &&
    inner.y >= outer.y - slack &&
    inner.x + inner.width <= outer.x + outer.width + slack &&
    inner.y + inner.height <= outer.y + outer.height + slack
  );
}

function overlap(one: Box, other: Box): boolean {
  const slack = 1e-9;
  return (
    one.x + slack < other.x + other.width &&
    other.x + slack < one.x + one.width &&
    one.y + slack < other.y + other.height &&
    other.y + slack < one.y + one.height
  );
}

function reached(layout: Layout): Set<string> {
  const falls = layout.weirs.flatMap(({ from, to, purpose }) =>
    purpose === 'passage' && to !== undefined ? [{ from, to }] : [],
  );
  const ways = [...layout.chambers, ...layout.openings.filter((opening) => !opening.bypass), ...falls];
  const found = new Set([layout.inletSpace]);
  for (let round = 0; round <= ways.length; round++) {
    for (const way of ways) if (found.has(way.from)) found.add(way.to);
  }
  return found;
}

function forAny(family: Family, holds: (layout: Layout, given: Measurements) => void): void {
  fc.assert(fc.property(anyMeasurements(family), (given) => holds(family.layOut(given), given)));
}

describe.each(families.map((family) => [family.id, family] as const))('%s', (_, family) => {
  it('names every place once', () => {
    forAny(family, (layout) => {
      const ids = idsOf(layout);
      expect(new Set(ids).size).toBe(ids.length);
    });
  });

  it('joins only spaces that exist', () => {
    forAny(family, (layout) => {
      const spaces = layout.spaces.map((space) => space.id);
      const ways = [...layout.chambers, ...layout.openings, ...layout.leaks];
      for (const way of ways) {
        expect(spaces).toContain(way.from);
        expect(spaces).toContain(way.to);
      }
      for (const { from, to } of layout.weirs) {
        expect(spaces).toContain(from);
        if (to !== undefined) expect(spaces).toContain(to);
      }
      for (const { space } of layout.gravityFed?.sections ?? []) expect(spaces).toContain(space);
      expect(spaces).toContain(layout.inletSpace);
      expect(spaces).toContain(layout.outletSpace);
    });
  });

  it('leads the water through every chamber and out', () => {
    forAny(family, (layout) => {
      const spaces = reached(layout);
      for (const chamber of layout.chambers) expect(spaces.has(chamber.from)).toBe(true);
      expect(spaces.has(layout.outletSpace)).toBe(true);
      expect(chambersInWaterOrder(layout).length).toBe(layout.chambers.length);
    });
  });

  it('gives every chamber and gap a size', () => {
    forAny(family, (layout) => {
      for (const chamber of layout.chambers) {
        expect(chamber.areaM2).toBeGreaterThan(0);
        expect(chamber.depthM).toBeGreaterThan(0);
        expect(chamber.widthM).toBeGreaterThan(0);
        expect(chamber.gap.thicknessM).toBeGreaterThanOrEqual(0);
        expect(chamber.gap.widthM).toBeGreaterThan(0);
        expect(chamber.gap.lengthM).toBe(chamber.depthM);
        if (chamber.ring) expect(chamber.ring.innerRadiusM).toBeGreaterThan(0);
      }
      for (const opening of layout.openings) expect(opening.areaM2).toBeGreaterThan(0);
    });
  });

  it('names measurements of its own for leaks and for openings that may be closed', () => {
    const keys = family.measurements.map(({ key }) => key);
    forAny(family, ({ leaks, openings }) => {
      for (const leak of leaks) expect(keys).toContain(leak.measurement);
      for (const { closedBy } of openings) if (closedBy !== undefined) expect(keys).toContain(closedBy);
    });
  });

  it('draws every chamber inside the housing, none over another', () => {
    forAny(family, (layout) => {
      const body = layout.drawing.housing[0];
      expect(body).toBeDefined();
      const boxes = layout.chambers.map((chamber) => chamber.box);
      for (const box of boxes) expect(within(box, body!)).toBe(true);
      boxes.forEach((box, index) => {
        for (const later of boxes.slice(index + 1)) expect(overlap(box, later)).toBe(false);
      });
    });
  });

  it('draws the other cut of a chamber about a tube as its mirror image, inside the housing', () => {
    forAny(family, (layout) => {
      for (const { box, twin, ring } of layout.chambers) {
        expect(twin === undefined).toBe(ring === undefined);
        if (!twin) continue;
        expect(within(twin, layout.drawing.housing[0]!)).toBe(true);
        expect(overlap(box, twin)).toBe(false);
        expect([twin.y, twin.width, twin.height]).toEqual([box.y, box.width, box.height]);
      }
    });
  });

  it('draws chambers as deep along the flow as they are reckoned', () => {
    forAny(family, (layout) => {
      for (const chamber of layout.chambers) {
        const upright = chamber.flow === 'up' || chamber.flow === 'down';
        expect(upright ? chamber.box.height : chamber.box.width).toBeCloseTo(chamber.depthM, 12);
      }
    });
  });

  it('lists upright chambers from the top down', () => {
    forAny(family, (layout) => {
      for (const { box } of layout.chambers) {
        const heights = layout.chambers.filter((one) => one.box.x === box.x).map((one) => one.box.y);
        expect(heights).toEqual(heights.toSorted((one, other) => other - one));
      }
    });
  });

  it('lists beds in water order just where the water falls or crosses', () => {
    forAny(family, (layout) => {
      for (const chamber of layout.chambers) {
        expect(chamber.listedInWaterOrder).toBe(chamber.flow !== 'up');
      }
    });
  });

  it('begins and ends the drawn water path at inlet and outlet', () => {
    forAny(family, (layout) => {
      expect(layout.drawing.mainPath[0]).toEqual(layout.drawing.inlet);
      expect(layout.drawing.mainPath.at(-1)).toEqual(layout.drawing.outlet);
    });
  });

  it('loses no media volume when any length that makes room grows', () => {
    const lengths = family.measurements.filter((one) =>
      [
        'basketWidth',
        'basketDepth',
        'basketHeight',
        'innerWidth',
        'innerDepth',
        'innerHeight',
        'boxWidth',
        'waterDepth',
        'slotThickness',
        'housingBore',
        'boxDepth',
        'mediaSection',
        'mediaHeight',
        'towerLength',
        'towerHeight',
        'mediaDiameter',
        'mediaLength',
        'spongeThickness',
        'spongeHeight',
        'matWidth',
        'matWetHeight',
        'matThickness',
        'plateLength',
        'plateWidth',
        'gravelDepth',
        'columnBore',
        'columnHeight',
      ].includes(one.key),
    );
    expect(lengths.length).toBeGreaterThanOrEqual(2);
    fc.assert(
      fc.property(
        anyMeasurements(family),
        fc.constantFrom(...lengths),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (given, length, share) => {
          const old = given[length.key] ?? 0;
          const grown = { ...given, [length.key]: old + share * (length.most - old) };
          expect(mediaVolume(family.layOut(grown))).toBeGreaterThanOrEqual(
            mediaVolume(family.layOut(given)) * (1 - 1e-12),
          );
        },
      ),
    );
  });

  it('gives the same layout for the same measurements and leaves them alone', () => {
    forAny(family, (layout, given) => {
      const copy = { ...given };
      expect(family.layOut(given)).toEqual(layout);
      expect(given).toEqual(copy);
    });
  });

  it('declares each measurement once, with bounds that hold its assumed value', () => {
    const keys = family.measurements.map((one) => one.key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const one of family.measurements) {
      expect(one.least).toBeLessThan(one.most);
      if (!one.assumed) continue;
      expect(one.assumed.value).toBeGreaterThanOrEqual(one.least);
      expect(one.assumed.value).toBeLessThanOrEqual(one.most);
      expect(one.assumed.because.length).toBeGreaterThan(20);
    }
  });

  it('says which measurement is missing', () => {
    const complete = Object.fromEntries(family.measurements.map((one) => [one.key, one.least]));
    for (const needed of family.measurements.filter((one) => !one.assumed)) {
      const { [needed.key]: _, ...rest } = complete;
      expect(() => family.layOut(rest)).toThrow(`measurement ${needed.key} is missing`);
    }
  });
});

function mediaVolume(layout: Layout): number {
  return layout.chambers.reduce((sum, chamber) => sum + chamber.areaM2 * chamber.depthM, 0);
}

describe('registry', () => {
  it('finds a family by its id and nothing by another', () => {
    expect(familyById('hang-on-back')?.name).toBe('hang-on-back box');
    expect(familyById('bucket')).toBeUndefined();
  });
});
