import fc from 'fast-check';
import { expect, it } from 'vitest';
import { adsorbedFreundlich1906, adsorbedLangmuir1918, exhaustionTime } from './adsorption.ts';

const levels = fc.double({ min: 1e-6, max: 0.2, noNaN: true });
const carbon = { capacityRatio: 0.4, affinityM3PerKg: 50 };

it('Langmuir fills up: never beyond the capacity, more at a higher level, half at one over the affinity', () => {
  fc.assert(
    fc.property(levels, (concentrationKgPerM3) => {
      const held = adsorbedLangmuir1918({ ...carbon, concentrationKgPerM3 });
      expect(held).toBeLessThan(carbon.capacityRatio);
      expect(
        adsorbedLangmuir1918({ ...carbon, concentrationKgPerM3: 2 * concentrationKgPerM3 }),
      ).toBeGreaterThan(held);
    }),
  );
  expect(adsorbedLangmuir1918({ ...carbon, concentrationKgPerM3: 0.02 })).toBeCloseTo(0.2, 12);
});

it('Freundlich grows less than the level does', () => {
  fc.assert(
    fc.property(levels, (concentrationKgPerM3) => {
      const grains = { capacityAtUnit: 0.5, intensity: 0.25 };
      const held = adsorbedFreundlich1906({ ...grains, concentrationKgPerM3 });
      const more = adsorbedFreundlich1906({ ...grains, concentrationKgPerM3: 16 * concentrationKgPerM3 });
      expect(more / held).toBeCloseTo(2, 10);
    }),
  );
});

it('an adsorbent lasts twice as long for twice the mass, and for ever without load', () => {
  const one = { massKg: 0.1, capacityRatio: 0.02, loadKgPerS: 1e-9 };
  expect(exhaustionTime({ ...one, massKg: 0.2 })).toBe(2 * exhaustionTime(one));
  expect(exhaustionTime({ ...one, loadKgPerS: 0 })).toBe(Number.POSITIVE_INFINITY);
});
