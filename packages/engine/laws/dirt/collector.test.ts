import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crowdingHappel1958,
  diffusionContactYao1971,
  interceptionLee1982,
  interceptionTufenkjiElimelech2004,
  interceptionYao1971,
  settlingContactYao1971,
  settlingVelocityStokes1851,
  singleCollectorTufenkjiElimelech2004,
} from './collector.ts';

const grain = {
  collectorM: 5e-4,
  voidage: 0.4,
  velocityMPerS: 1e-3,
  viscosityPaS: 8.9e-4,
  temperatureK: 298.15,
  excessDensityKgPerM3: 50,
};

describe('contact with a grain', () => {
  it('of a grain alone knows no crowding', () => {
    expect(crowdingHappel1958({ voidage: 1 - 1e-12 })).toBeCloseTo(1, 3);
    expect(crowdingHappel1958({ voidage: 0.4 })).toBeGreaterThan(30);
  });

  it('is least near a micrometre, where particles are too large to diffuse and too small to settle', () => {
    const at = (sizeM: number): number => {
      const { diffusion, interception, settling } = singleCollectorTufenkjiElimelech2004({ ...grain, sizeM });
      return diffusion + interception + settling;
    };
    expect(at(1e-6)).toBeLessThan(at(5e-8));
    expect(at(1e-6)).toBeLessThan(at(1e-5));
  });

  it('diffuses alike by Yao and by Tufenkji and Elimelech within 2, once the neighbours count', () => {
    const sizeM = 1e-7;
    const yao = diffusionContactYao1971({ ...grain, sizeM }) * Math.cbrt(crowdingHappel1958(grain));
    const { diffusion } = singleCollectorTufenkjiElimelech2004({ ...grain, sizeM });
    // Yao's 0.9 is for a grain alone; Happel's cell has 4·A_s^⅓·N_Pe^−⅔, of which 0.9·(3π)^⅔ = 4.02 is the same.
    expect(diffusion / yao).toBeGreaterThan(0.5);
    expect(diffusion / yao).toBeLessThan(2);
  });

  it('never brings more than what flows within reach', () => {
    const sizes = fc.double({ min: 1e-7, max: 5e-3, noNaN: true });
    fc.assert(
      fc.property(sizes, (sizeM) => {
        const reach = (1 + sizeM / grain.collectorM) ** 2;
        expect(interceptionYao1971({ ...grain, sizeM })).toBeLessThanOrEqual(reach);
        expect(interceptionTufenkjiElimelech2004({ ...grain, sizeM })).toBeLessThanOrEqual(reach);
      }),
    );
  });

  it('by settling is the share of the water that the particle leaves behind', () => {
    const particle = { ...grain, sizeM: 2e-5 };
    expect(settlingContactYao1971(particle) * grain.velocityMPerS).toBeCloseTo(
      settlingVelocityStokes1851(particle),
      15,
    );
  });
});

describe('contact with a fibre', () => {
  it('grows with the particle and with crowding, within reach', () => {
    const at = (sizeM: number, solidFraction: number): number =>
      interceptionLee1982({ sizeM, fibreM: 3e-5, solidFraction });
    expect(at(2e-5, 0.02)).toBeGreaterThan(at(1e-5, 0.02));
    expect(at(1e-5, 0.1)).toBeGreaterThan(at(1e-5, 0.02));
    expect(at(5e-4, 0.2)).toBeLessThanOrEqual(1 + 5e-4 / 3e-5);
  });
});
