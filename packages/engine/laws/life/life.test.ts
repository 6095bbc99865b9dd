import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nitriteChlorideDose } from './dosing.ts';
import { OXYGEN_PER_NITROGEN_RATIO } from './feed.ts';
import { filmTransferWilsonGeankoplis1966 } from './filmTransfer.ts';
import {
  AMMONIUM_SLOPE_M_PER_S,
  FLUX_CEILING_KG_N_PER_M2_PER_S,
  FLUX_OXYGEN_PER_AMMONIA,
  FLUX_OXYGEN_PER_NITRITE,
  nitrificationFlux,
  organicCarbonFactor,
  oxygenFactor,
  pHFactor,
  temperatureFactor,
} from './nitrification.ts';
import { fishRespirationClarkeJohnston1999, oxygenLasts } from './respiration.ts';
import { fishFeed } from './stock.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('factors of the rate of bacteria', () => {
  it('are shares that grow with pH and oxygen and fall with carbon', () => {
    fc.assert(
      fc.property(
        within(0, 14),
        within(0, 0.02),
        within(0, 10),
        (pH, oxygenKgPerM3, carbonToNitrogenRatio) => {
          const shares = [
            pHFactor({ pH }),
            oxygenFactor({ oxygenKgPerM3 }),
            organicCarbonFactor({ carbonToNitrogenRatio }),
          ];
          for (const share of shares) {
            expect(share).toBeGreaterThanOrEqual(0);
            expect(share).toBeLessThanOrEqual(1);
          }
          expect(pHFactor({ pH: pH + 0.1 })).toBeGreaterThanOrEqual(shares[0]!);
          expect(oxygenFactor({ oxygenKgPerM3: oxygenKgPerM3 + 1e-3 })).toBeGreaterThan(shares[1]!);
          expect(organicCarbonFactor({ carbonToNitrogenRatio: carbonToNitrogenRatio + 0.1 })).toBeLessThan(
            shares[2]!,
          );
        },
      ),
    );
  });

  it.each([
    [6.1, 0],
    [5, 0],
    [7.3, 1],
    [8.4, 1],
  ])('take the whole line of pH: %s gives %s', (pH, share) => {
    expect(pHFactor({ pH })).toBeCloseTo(share, 12);
  });

  it('leave clean water alone', () => {
    expect(organicCarbonFactor({ carbonToNitrogenRatio: 0 })).toBe(1);
  });

  it('cancel when the water warms and cools again', () => {
    const up = temperatureFactor({ temperatureK: 299.15, theta: 1.079, referenceK: 292.15 });
    const down = temperatureFactor({ temperatureK: 292.15, theta: 1.079, referenceK: 299.15 });
    expect(up * down).toBeCloseTo(1, 12);
  });
});

describe('flux into a biofilm', () => {
  const film = {
    slopeMPerS: AMMONIUM_SLOPE_M_PER_S,
    oxygenPerNitrogenRatio: FLUX_OXYGEN_PER_AMMONIA,
    ceilingKgNPerM2PerS: FLUX_CEILING_KG_N_PER_M2_PER_S,
  };
  const flux = (nitrogenKgPerM3: number, oxygenKgPerM3: number): number =>
    nitrificationFlux({ ...film, nitrogenKgPerM3, oxygenKgPerM3 });

  it('never falls with more nitrogen or more oxygen and never passes the ceiling', () => {
    fc.assert(
      fc.property(within(0, 0.01), within(0, 0.01), (nitrogen, oxygen) => {
        const here = flux(nitrogen, oxygen);
        expect(here).toBeLessThanOrEqual(FLUX_CEILING_KG_N_PER_M2_PER_S);
        expect(flux(nitrogen + 1e-4, oxygen)).toBeGreaterThanOrEqual(here);
        expect(flux(nitrogen, oxygen + 1e-4)).toBeGreaterThanOrEqual(here);
      }),
    );
  });

  it('stops without nitrogen and without oxygen', () => {
    expect(flux(0, 0.008)).toBe(0);
    expect(flux(0.001, 0)).toBe(0);
  });

  it('uses in two steps what the whole way to nitrate uses', () => {
    expect(FLUX_OXYGEN_PER_AMMONIA + FLUX_OXYGEN_PER_NITRITE).toBeCloseTo(OXYGEN_PER_NITROGEN_RATIO, 12);
  });
});

describe('transfer through the film', () => {
  const flow = {
    sizeM: 0.006,
    voidage: 0.45,
    densityKgPerM3: 997,
    viscosityPaS: 8.9e-4,
    diffusivityM2PerS: 1.96e-9,
  };

  it('doubles when the water moves eight times as fast', () => {
    fc.assert(
      fc.property(within(1e-5, 1e-2), (velocityMPerS) => {
        const slow = filmTransferWilsonGeankoplis1966({ ...flow, velocityMPerS });
        const fast = filmTransferWilsonGeankoplis1966({ ...flow, velocityMPerS: 8 * velocityMPerS });
        expect(fast / slow).toBeCloseTo(2, 10);
      }),
    );
  });
});

describe('fish', () => {
  const masses = within(1e-4, 1);
  const temperatures = within(283.15, 303.15);

  it('use more oxygen and eat more as they grow, but less for their mass', () => {
    fc.assert(
      fc.property(masses, temperatures, (massKg, temperatureK) => {
        for (const law of [fishRespirationClarkeJohnston1999, fishFeed]) {
          const ratio = law({ massKg: 2 * massKg, temperatureK }) / law({ massKg, temperatureK });
          expect(ratio).toBeGreaterThan(1);
          expect(ratio).toBeLessThan(2);
        }
      }),
    );
  });

  it('use more oxygen and eat more in warm water', () => {
    fc.assert(
      fc.property(masses, temperatures, (massKg, temperatureK) => {
        for (const law of [fishRespirationClarkeJohnston1999, fishFeed]) {
          expect(law({ massKg, temperatureK: temperatureK + 1 })).toBeGreaterThan(
            law({ massKg, temperatureK }),
          );
        }
      }),
    );
  });

  it('need no salt where the water has enough chloride', () => {
    expect(nitriteChlorideDose({ volumeM3: 0.1, nitriteKgNPerM3: 1e-3, chlorideKgPerM3: 0.02 })).toBe(0);
  });
});

describe('shut-in water', () => {
  it('keeps its oxygen for ever where nothing lives', () => {
    const water = { volumeM3: 0.006, startKgPerM3: 0.008, endKgPerM3: 0.002 };
    expect(oxygenLasts({ ...water, respirationKgPerS: 0 })).toBe(Number.POSITIVE_INFINITY);
  });
});
