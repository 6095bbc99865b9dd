import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unionizedAmmoniaFraction, unionizedAmmoniaFractionEmerson1975 } from './ammonia.ts';
import { activityCoefficientDavies, carbonDioxideKgPerM3 } from './carbonate.ts';
import { ammoniaCriteriaEpa2013 } from './criteria.ts';
import { waterDensity, waterDensityIapwsSr6 } from './density.ts';
import { oxygenSaturationBensonKrause1984 } from './oxygen.ts';
import { waterViscosity, waterViscosityIapwsSr6 } from './viscosity.ts';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const temperatures = within(273.2, 313.15);
const salinities = within(0, 40);
const acidities = within(6, 9.5);
const ATMOSPHERE = 101_325;

describe('density', () => {
  it('is that of fresh water where there is no salt, without a step', () => {
    fc.assert(
      fc.property(temperatures, (temperatureK) => {
        const fresh = waterDensityIapwsSr6({ temperatureK });
        expect(waterDensity({ temperatureK, salinity: 0 })).toBe(fresh);
        expect(waterDensity({ temperatureK, salinity: 1e-9 })).toBeCloseTo(fresh, 8);
      }),
    );
  });

  it('grows with salt', () => {
    fc.assert(
      fc.property(temperatures, salinities, (temperatureK, salinity) => {
        const more = waterDensity({ temperatureK, salinity: salinity + 0.1 });
        expect(more).toBeGreaterThan(waterDensity({ temperatureK, salinity }));
      }),
    );
  });

  it('is greatest at 4 °C', () => {
    const tenths = Array.from({ length: 200 }, (_, step) => 273.15 + step / 10);
    const densities = tenths.map((temperatureK) => waterDensityIapwsSr6({ temperatureK }));
    expect(tenths[densities.indexOf(Math.max(...densities))]! - 273.15).toBeCloseTo(4, 5);
  });
});

describe('viscosity', () => {
  it('falls with warmth, grows with salt and has no step at no salt', () => {
    fc.assert(
      fc.property(temperatures, salinities, (temperatureK, salinity) => {
        const here = waterViscosity({ temperatureK, salinity });
        expect(waterViscosity({ temperatureK: temperatureK + 0.1, salinity })).toBeLessThan(here);
        expect(waterViscosity({ temperatureK, salinity: salinity + 0.1 })).toBeGreaterThan(here);
        expect(waterViscosity({ temperatureK, salinity: 0 })).toBe(waterViscosityIapwsSr6({ temperatureK }));
      }),
    );
  });
});

describe('oxygen in balance with air', () => {
  const saturation = (temperatureK: number, salinity: number, pressurePa: number): number =>
    oxygenSaturationBensonKrause1984({ temperatureK, salinity, pressurePa });

  it('falls with warmth and salt and grows with pressure', () => {
    fc.assert(
      fc.property(temperatures, salinities, within(60_000, 110_000), (temperatureK, salinity, pressurePa) => {
        const here = saturation(temperatureK, salinity, pressurePa);
        expect(saturation(temperatureK + 0.1, salinity, pressurePa)).toBeLessThan(here);
        expect(saturation(temperatureK, salinity + 0.1, pressurePa)).toBeLessThan(here);
        expect(saturation(temperatureK, salinity, pressurePa + 10)).toBeGreaterThan(here);
      }),
    );
  });

  it('goes nearly in proportion to the pressure of dry air', () => {
    const high = saturation(293.15, 0, 0.8 * ATMOSPHERE) / saturation(293.15, 0, ATMOSPHERE);
    const vapour = 2339;
    expect(high).toBeCloseTo((0.8 * ATMOSPHERE - vapour) / (ATMOSPHERE - vapour), 3);
  });
});

describe('un-ionized ammonia', () => {
  it('grows with pH and warmth, falls with salt and stays a share', () => {
    fc.assert(
      fc.property(temperatures, acidities, salinities, (temperatureK, pH, salinity) => {
        const here = unionizedAmmoniaFraction({ temperatureK, pH, salinity });
        expect(here).toBeGreaterThan(0);
        expect(here).toBeLessThan(1);
        expect(unionizedAmmoniaFraction({ temperatureK, pH: pH + 0.01, salinity })).toBeGreaterThan(here);
        expect(unionizedAmmoniaFraction({ temperatureK: temperatureK + 0.1, pH, salinity })).toBeGreaterThan(
          here,
        );
        expect(unionizedAmmoniaFraction({ temperatureK, pH, salinity: salinity + 0.1 })).toBeLessThan(here);
      }),
    );
  });

  it('is that of fresh water where there is no salt', () => {
    const water = { temperatureK: 297.15, pH: 7.8 };
    expect(unionizedAmmoniaFraction({ ...water, salinity: 0 })).toBe(
      unionizedAmmoniaFractionEmerson1975(water),
    );
  });
});

describe('criteria for ammonia', () => {
  it('allow less in warm or alkaline water, and less for long than for an hour', () => {
    fc.assert(
      fc.property(within(281, 302), within(6.5, 8.9), (temperatureK, pH) => {
        const here = ammoniaCriteriaEpa2013({ temperatureK, pH });
        const warmer = ammoniaCriteriaEpa2013({ temperatureK: temperatureK + 1, pH });
        const harder = ammoniaCriteriaEpa2013({ temperatureK, pH: pH + 0.1 });
        expect(here.chronicKgNPerM3).toBeLessThan(here.acuteKgNPerM3);
        expect(warmer.chronicKgNPerM3).toBeLessThan(here.chronicKgNPerM3);
        expect(warmer.acuteKgNPerM3).toBeLessThanOrEqual(here.acuteKgNPerM3);
        expect(harder.chronicKgNPerM3).toBeLessThan(here.chronicKgNPerM3);
        expect(harder.acuteKgNPerM3).toBeLessThan(here.acuteKgNPerM3);
      }),
    );
  });

  it('stop rising in the cold', () => {
    const cold = ammoniaCriteriaEpa2013({ temperatureK: 276.15, pH: 7.5 });
    expect(ammoniaCriteriaEpa2013({ temperatureK: 274.15, pH: 7.5 })).toEqual(cold);
  });
});

describe('carbon dioxide', () => {
  it('falls with pH and grows with alkalinity', () => {
    fc.assert(
      fc.property(temperatures, within(6, 8.5), within(0.01, 0.4), (temperatureK, pH, alkalinityKgPerM3) => {
        const here = carbonDioxideKgPerM3({ temperatureK, pH, alkalinityKgPerM3 });
        expect(carbonDioxideKgPerM3({ temperatureK, pH: pH + 0.1, alkalinityKgPerM3 })).toBeLessThan(here);
        expect(
          carbonDioxideKgPerM3({ temperatureK, pH, alkalinityKgPerM3: alkalinityKgPerM3 * 1.01 }),
        ).toBeGreaterThan(here);
      }),
    );
  });

  it('is none where hydroxide alone makes up the alkalinity', () => {
    expect(carbonDioxideKgPerM3({ temperatureK: 298.15, pH: 11.5, alkalinityKgPerM3: 0.05 })).toBe(0);
  });

  it('is less in salty than in soft water of one alkalinity', () => {
    const water = { temperatureK: 298.15, pH: 7, alkalinityKgPerM3: 0.1 };
    const salty = carbonDioxideKgPerM3({ ...water, ionicStrengthMolPerM3: 50 });
    expect(salty).toBeLessThan(carbonDioxideKgPerM3({ ...water, ionicStrengthMolPerM3: 1 }));
  });

  it('takes ions as ideal where there are none', () => {
    expect(activityCoefficientDavies({ temperatureK: 298.15, charge: 2, ionicStrengthMolPerM3: 0 })).toBe(1);
  });
});
