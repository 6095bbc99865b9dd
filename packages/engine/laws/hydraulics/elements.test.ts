import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airClearingVelocityEscarameia2007, slugBubbleVelocityViana2003 } from './air.ts';
import { coilFrictionLaminarWhite1929, coilFrictionMishraGupta1979 } from './coils.ts';
import { frictionFactorChurchill1977 } from './friction.ts';
import { jetReachHussein1994, jetVelocityHussein1994 } from './jet.ts';
import { narrowingKWeisbach1855, tapKWeisbach1855 } from './restrictions.ts';
import { weirFlow, weirFlowDrownedVillemonte1947 } from './weir.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const RUNS = { seed: 1855 };

describe('what narrows a bore', () => {
  it.each([
    ['a tap', tapKWeisbach1855, 0.09],
    ['a kink', narrowingKWeisbach1855, 0.01],
  ] as const)('%s takes more the less of it is open, and nothing when it is', (_, k, least) => {
    expect(k({ openFraction: 1 })).toBeCloseTo(0, 12);
    fc.assert(
      fc.property(between(least, 1), between(least, 1), (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(k({ openFraction: less })).toBeGreaterThanOrEqual(k({ openFraction: more }));
      }),
      RUNS,
    );
  });

  it('a tap closes before its handle stands across', () => {
    expect(tapKWeisbach1855({ openFraction: 0.08 })).toBe(Number.POSITIVE_INFINITY);
    expect(tapKWeisbach1855({ openFraction: 0.0835 })).toBeGreaterThan(1e6);
  });
});

describe('a coil', () => {
  it('takes more than the straight hose, and the more the tighter, whatever the flow', () => {
    fc.assert(
      fc.property(between(1, 1e5), between(1e-4, 0.15), between(1e-4, 0.15), (reynolds, a, b) => {
        const straightFactor = frictionFactorChurchill1977({ reynolds, relativeRoughness: 0 });
        const at = (curvature: number): number =>
          coilFrictionMishraGupta1979({ reynolds, curvature, straightFactor });
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
        expect(at(a)).toBeGreaterThanOrEqual(straightFactor);
        expect(coilFrictionLaminarWhite1929({ reynolds, curvature: a })).toBeGreaterThanOrEqual(
          64 / reynolds,
        );
      }),
      RUNS,
    );
  });
});

describe('a drowned lip', () => {
  it('passes less the higher the water stands behind it: all when free, none when level', () => {
    const crest = { crestWidthM: 0.1, levelM: 0.02 };
    const at = (tailwaterM: number): number => weirFlowDrownedVillemonte1947({ ...crest, tailwaterM });
    expect(at(-0.05)).toBe(weirFlow(crest));
    expect(at(0.02)).toBe(0);
    expect(at(0.05)).toBe(0);
    const falling = [0, 0.004, 0.008, 0.012, 0.016, 0.0199].map(at);
    expect(falling).toEqual(falling.toSorted((a, b) => b - a));
    expect(new Set(falling).size).toBe(falling.length);
  });
});

describe('air in a falling hose', () => {
  it('rises faster in wider hoses, and stands still in narrow ones where the surface holds it', () => {
    const rise = (boreM: number): number =>
      slugBubbleVelocityViana2003({ boreM, densityKgPerM3: 997, surfaceTensionNPerM: 0.072 });
    const rising = [0.004, 0.006, 0.009, 0.012, 0.016, 0.025, 0.05].map(rise);
    expect(rising).toEqual(rising.toSorted((a, b) => a - b));
    expect(rise(0.004)).toBeLessThan(0.01);
  });

  it('is harder to carry down steeper slopes and in larger pockets', () => {
    const need = (slope: number, pocketSize: number): number =>
      airClearingVelocityEscarameia2007({ boreM: 0.016, slope, pocketSize });
    expect(need(0.3, 0.5)).toBeGreaterThan(need(0.1, 0.5));
    expect(need(0.3, 0.5)).toBeGreaterThan(need(0.3, 0.05));
  });
});

describe('the reach of a jet', () => {
  it('is where its velocity has fallen to the one that was asked for', () => {
    fc.assert(
      fc.property(
        between(0.2, 3),
        between(0.005, 0.03),
        between(0.02, 0.19),
        (velocityMPerS, boreM, slowedMPerS) => {
          const distanceM = jetReachHussein1994({ velocityMPerS, boreM, slowedMPerS });
          expect(jetVelocityHussein1994({ velocityMPerS, boreM, distanceM }) / slowedMPerS).toBeCloseTo(1, 9);
        },
      ),
      RUNS,
    );
    expect(jetReachHussein1994({ velocityMPerS: 0.05, boreM: 0.01, slowedMPerS: 0.1 })).toBe(0);
  });
});
