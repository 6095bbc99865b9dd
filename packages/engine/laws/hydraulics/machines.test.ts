import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  entranceKCrane1988,
  fittingCoefficient,
  fittingKHooper1981,
  hooperFittings,
  suddenContractionKCrane1988,
  suddenContractionKRennels2012,
  suddenExpansionKBorda1766,
  teeKCrane1988,
} from './fittings.ts';
import { jetVelocityHussein1994, velocityHead, velocityInBore } from './jet.ts';
import { dutyAtSpeed, powerFormAtSpeed, pumpHeadPowerForm, pumpHeadTwoPoint, pumpPowerForm } from './pump.ts';
import { weirFlow, weirFlowKindsvaterCarter1957, weirFlowRehbock1929, weirLevel } from './weir.ts';

describe('fittings', () => {
  it('lose more velocity heads in slow water and in small bores', () => {
    for (const fitting of Object.values(hooperFittings)) {
      const at = (reynolds: number, boreM: number): number =>
        fittingKHooper1981({ ...fitting, reynolds, boreM });
      expect(at(500, 0.012)).toBeGreaterThan(at(5000, 0.012));
      expect(at(5000, 0.012)).toBeGreaterThan(at(5000, 0.025));
    }
  });

  it('between equal bores lose nothing', () => {
    const step = { smallBoreM: 0.016, largeBoreM: 0.016 };
    expect(suddenExpansionKBorda1766(step)).toBe(0);
    expect(suddenContractionKCrane1988(step)).toBe(0);
    expect(suddenContractionKRennels2012(step)).toBeCloseTo(0, 12);
  });

  it('into a very wide chamber lose all of the velocity head', () => {
    expect(suddenExpansionKBorda1766({ smallBoreM: 0.001, largeBoreM: 10 })).toBeCloseTo(1, 6);
  });

  it('that narrow from a wide chamber lose what a sharp entrance loses', () => {
    const step = { smallBoreM: 0.001, largeBoreM: 10 };
    expect(suddenContractionKCrane1988(step)).toBeCloseTo(entranceKCrane1988({ shape: 'flush-sharp' }), 6);
    // Rennels' own entrance is 0.57; his contraction tends to 0.57 as well.
    expect(suddenContractionKRennels2012(step)).toBeCloseTo(0.57, 2);
  });

  it('turn into a coefficient of flow that gives the same loss', () => {
    const boreM = 0.012;
    const flowM3PerS = 2e-4;
    const velocity = velocityInBore({ flowM3PerS, boreM });
    expect(fittingCoefficient({ minorK: 3, boreM }) * flowM3PerS ** 2).toBeCloseTo(
      (3 * velocity ** 2) / 2,
      10,
    );
  });

  it('a tee loses three times as much into its branch as straight on', () => {
    const tee = { fullyRoughFrictionFactor: 0.026 };
    expect(teeKCrane1988({ ...tee, way: 'branch' }) / teeKCrane1988({ ...tee, way: 'run' })).toBeCloseTo(
      3,
      12,
    );
  });
});

describe('pumps', () => {
  const curve = {
    shutoffHeadM: 1.8,
    middle: { flowM3PerS: 1.4e-4, headM: 1.35 },
    far: { flowM3PerS: 2.8e-4, headM: 0 },
  };

  it('pass through the three points of their power form', () => {
    const form = pumpPowerForm(curve);
    for (const { flowM3PerS, headM } of [{ flowM3PerS: 0, headM: 1.8 }, curve.middle, curve.far]) {
      expect(pumpHeadPowerForm({ ...form, flowM3PerS })).toBeCloseTo(headM, 10);
    }
  });

  it('have no power form through points that do not fall', () => {
    expect(pumpPowerForm({ ...curve, middle: { flowM3PerS: 1e-4, headM: 1.9 } }).exponent).toBeNaN();
  });

  it('at another speed keep every point by the affinity laws', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1.2, noNaN: true }),
        fc.double({ min: 0, max: 2.8e-4, noNaN: true }),
        (speedRatio, flowM3PerS) => {
          const form = pumpPowerForm(curve);
          const headM = pumpHeadPowerForm({ ...form, flowM3PerS });
          const moved = dutyAtSpeed({ flowM3PerS, headM, powerW: 10, speedRatio });
          const slow = powerFormAtSpeed({ ...form, speedRatio });
          expect(pumpHeadPowerForm({ ...slow, flowM3PerS: moved.flowM3PerS })).toBeCloseTo(moved.headM, 10);
        },
      ),
    );
  });

  it('with two known points give full head at no flow and none at free flow', () => {
    const pump = { shutoffHeadM: 2, freeFlowM3PerS: 3e-4 };
    expect(pumpHeadTwoPoint({ ...pump, flowM3PerS: 0 })).toBe(2);
    expect(pumpHeadTwoPoint({ ...pump, flowM3PerS: 3e-4 })).toBe(0);
  });
});

describe('weirs', () => {
  it('pass the flow that stands at the level', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 0.2, noNaN: true }), (levelM) => {
        const crest = { crestWidthM: 0.08 };
        const flowM3PerS = weirFlow({ ...crest, levelM });
        expect(weirLevel({ ...crest, flowM3PerS }) / levelM).toBeCloseTo(1, 12);
      }),
    );
  });

  it('pass nothing when dry', () => {
    expect(weirFlow({ crestWidthM: 0.08, levelM: -0.01 })).toBe(0);
  });

  it('agree between Rehbock and Kindsvater–Carter within what both claim', () => {
    for (const levelM of [0.03, 0.06, 0.1]) {
      const weir = { crestWidthM: 0.5, crestHeightM: 0.2, levelM };
      expect(Math.abs(weirFlowRehbock1929(weir) / weirFlowKindsvaterCarter1957(weir) - 1)).toBeLessThan(0.03);
    }
  });
});

describe('jets', () => {
  it('keep their velocity near the outlet and lose half of it at sixteen bores', () => {
    const jet = { velocityMPerS: 1.5, boreM: 0.012 };
    expect(jetVelocityHussein1994({ ...jet, distanceM: 0.02 })).toBe(1.5);
    expect(jetVelocityHussein1994({ ...jet, distanceM: 15.6 * 0.012 })).toBeCloseTo(0.75, 10);
  });

  it('carry the head that would lift them', () => {
    expect(velocityHead(Math.sqrt(2 * 9.80665 * 0.2))).toBeCloseTo(0.2, 12);
  });
});
