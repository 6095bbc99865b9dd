import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressedFoam } from './compression.ts';
import { cornerWay } from './corner.ts';
import { foamAreaDietrich2012 } from './foam.ts';
import { type Mixture, sizeOfMixtureSauter1928, voidageOfMixtureWestman1936 } from './mixture.ts';

const voidages = fc.double({ min: 0.32, max: 0.55, noNaN: true });
const mixtures = fc.record({
  coarse: fc.record({ sizeM: fc.double({ min: 5e-3, max: 2e-2, noNaN: true }), voidage: voidages }),
  fine: fc.record({ sizeM: fc.double({ min: 5e-4, max: 5e-3, noNaN: true }), voidage: voidages }),
  coarseShare: fc.double({ min: 0, max: 1, noNaN: true }),
});

/** Voidage where the fine fills the gaps of the coarse without pushing it apart, or the coarse floats in the fine. */
const idealFilling = ({ coarse, fine, coarseShare }: Mixture): number => {
  const room = Math.max(
    coarseShare / (1 - coarse.voidage),
    coarseShare + (1 - coarseShare) / (1 - fine.voidage),
  );
  return 1 - 1 / room;
};

describe('two sizes of pieces mixed', () => {
  it('leave no less open than ideal filling does, and no more than both apart', () => {
    fc.assert(
      fc.property(mixtures, (mixture) => {
        const voidage = voidageOfMixtureWestman1936(mixture);
        const apart =
          1 -
          1 /
            (mixture.coarseShare / (1 - mixture.coarse.voidage) +
              (1 - mixture.coarseShare) / (1 - mixture.fine.voidage));
        expect(voidage).toBeGreaterThanOrEqual(idealFilling(mixture) - 1e-9);
        expect(voidage).toBeLessThanOrEqual(apart + 1e-9);
      }),
    );
  });

  it('are the one or the other alone where there is nothing of the other', () => {
    fc.assert(
      fc.property(mixtures, (mixture) => {
        const { coarse, fine } = mixture;
        expect(voidageOfMixtureWestman1936({ ...mixture, coarseShare: 1 })).toBeCloseTo(coarse.voidage, 9);
        expect(voidageOfMixtureWestman1936({ ...mixture, coarseShare: 0 })).toBeCloseTo(fine.voidage, 9);
        expect(sizeOfMixtureSauter1928({ ...mixture, coarseShare: 1 })).toBeCloseTo(coarse.sizeM, 12);
        const size = sizeOfMixtureSauter1928(mixture);
        expect(size).toBeGreaterThanOrEqual(fine.sizeM - 1e-12);
        expect(size).toBeLessThanOrEqual(coarse.sizeM + 1e-12);
      }),
    );
  });

  it('lie the denser the more their sizes differ', () => {
    const voidageAt = (ratio: number): number =>
      voidageOfMixtureWestman1936({
        coarse: { sizeM: 0.02, voidage: 0.4 },
        fine: { sizeM: 0.02 * ratio, voidage: 0.4 },
        coarseShare: 0.7,
      });
    const voidages = [1, 0.6, 0.4, 0.25, 0.15, 0.1].map(voidageAt);
    expect(voidages).toEqual(voidages.toSorted((a, b) => b - a));
    expect(voidages[0]).toBeCloseTo(0.4, 9);
  });
});

describe('foam that is pressed', () => {
  it('keeps its solid and the surface of its struts', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 4, noNaN: true }), (pressedRatio) => {
        const free = { cellM: 2e-3, voidage: 0.97 };
        const foam = pressedFoam({ ...free, pressedRatio });
        expect(1 - foam.voidage).toBeCloseTo(0.03 * pressedRatio, 12);
        expect(foamAreaDietrich2012(foam) / foamAreaDietrich2012(free)).toBeCloseTo(pressedRatio, 9);
      }),
    );
  });
});

describe('the corner of a chamber beside a round bag', () => {
  it('is what a square has beyond its circle', () => {
    expect(4 * cornerWay({ radiusM: 0.5 }).areaM2).toBeCloseTo(1 - Math.PI / 4, 12);
    expect(cornerWay({ radiusM: 0 }).areaM2).toBe(0);
  });
});
