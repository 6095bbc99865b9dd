import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dispersionOfSpread,
  particlePecletChungWen1968,
  spreadOfDispersion,
  spreadOfOpenDispersion,
  tanksOfBed,
} from './dispersion.ts';

const grains = {
  velocityMPerS: 5e-3,
  sizeM: 5e-3,
  voidage: 0.4,
  kinematicViscosityM2PerS: 1e-6,
  depthM: 0.1,
};
const dispersions = fc.double({ min: 1e-4, max: 500, noNaN: true });

describe('a stretch with dispersion', () => {
  it('lies between plug flow and one mixed vessel, and spreads the more the more it mixes', () => {
    expect(spreadOfDispersion(0)).toBe(0);
    expect(spreadOfDispersion(1e6)).toBeCloseTo(1, 5);
    fc.assert(
      fc.property(dispersions, (dispersion) => {
        const spread = spreadOfDispersion(dispersion);
        expect(spread).toBeGreaterThan(0);
        expect(spread).toBeLessThan(1);
        expect(spreadOfDispersion(1.1 * dispersion)).toBeGreaterThan(spread);
      }),
    );
  });

  it('has no step where its formula changes to a series', () => {
    expect(spreadOfDispersion(1000.001) / spreadOfDispersion(999.999)).toBeCloseTo(1, 8);
  });

  it('is found again by its spread', () => {
    fc.assert(
      fc.property(dispersions, (dispersion) => {
        expect(dispersionOfSpread(spreadOfDispersion(dispersion)) / dispersion).toBeCloseTo(1, 5);
      }),
    );
  });

  it('spreads more where dye can run back over its ends', () => {
    fc.assert(
      fc.property(dispersions, (dispersion) => {
        expect(spreadOfOpenDispersion(dispersion)).toBeGreaterThan(spreadOfDispersion(dispersion));
      }),
    );
  });
});

describe('a bed as tanks in series', () => {
  it('of small pieces comes near plug flow, of a few large ones near a mixed vessel', () => {
    expect(tanksOfBed({ ...grains, sizeM: 5e-4 })).toBeGreaterThan(50);
    expect(tanksOfBed({ ...grains, depthM: 5e-3 })).toBeLessThan(1.5);
    expect(tanksOfBed(grains)).toBeGreaterThan(1);
  });

  it('has about two layers of grains to a tank over four', () => {
    const layers = grains.depthM / grains.sizeM;
    expect(tanksOfBed(grains) / layers).toBeCloseTo(particlePecletChungWen1968(grains) / 2, 1);
  });
});
