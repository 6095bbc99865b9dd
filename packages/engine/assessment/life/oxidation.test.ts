import { describe, expect, it } from 'vitest';
import { nitrificationFlux, OXYGEN_HALF_SATURATION_KG_PER_M3 } from '../../laws/life/nitrification.ts';
import type { Compiled } from '../compiled.ts';
import { filterFlow } from '../dirt/transport.ts';
import { solvedClean } from '../testing/compiled.ts';
import { oneBasket, stackCanister, withFilter } from '../testing/models.ts';
import { makePass, type Pass, passThrough, type Rates } from './oxidation.ts';

const PER_DAY = 1 / 86_400;

/** Rates that are alike in all beds; nothing but TAN and nitrite bounds them. */
const rates = (
  compiled: Compiled,
  slopes: { areaPerM: number; ammonia: number; nitrite: number },
  change: Partial<Rates> = {},
): Rates => ({
  areaPerM: Float64Array.from(compiled.beds, () => slopes.areaPerM),
  ammoniaSlopeMPerS: Float64Array.from(compiled.beds, () => slopes.ammonia),
  nitriteSlopeMPerS: Float64Array.from(compiled.beds, () => slopes.nitrite),
  ammoniaCeiling: 1,
  nitriteCeiling: 1,
  kineticSlopeMPerS: 1,
  oxygenHalfSaturationKgPerM3: OXYGEN_HALF_SATURATION_KG_PER_M3,
  dirtOxygenKgPerS: new Float64Array(compiled.beds.length),
  ...change,
});

const run = (
  compiled: Compiled,
  with_: Rates,
  levels: { ammonia: number; nitrite: number; oxygen: number },
): Pass => {
  const pass = makePass(compiled);
  passThrough(
    { compiled, rates: with_, pass },
    {
      ammoniaKgNPerM3: levels.ammonia,
      nitriteKgNPerM3: levels.nitrite,
      oxygenKgPerM3: levels.oxygen,
    },
  );
  return pass;
};

/** No gap: all water meets the bed. */
const tight = (depthMm: number): Compiled =>
  solvedClean(withFilter(oneBasket([['ceramic-rings-15mm', depthMm]]), { chamberGapM: { 'basket-1': 0 } }));

/** So much oxygen that its Monod factor is 1 to a part in a million. */
const plenty = 500;
const traces = { ammonia: 1e-9, nitrite: 0, oxygen: plenty };

describe('one bed at low levels', () => {
  it.each([10, 60, 200])('removes Q·C·(1 − exp(−k·a·V/Q)), %s mm deep', (depthMm) => {
    const compiled = tight(depthMm);
    const flow = filterFlow(compiled);
    const slopes = { areaPerM: 2000, ammonia: 3 * PER_DAY, nitrite: 0 };
    const { ammoniaKgNPerS, byBedKgNPerS } = run(compiled, rates(compiled, slopes), traces);
    const units = (slopes.ammonia * slopes.areaPerM * compiled.beds[0]!.volumeM3) / flow;
    const expected = flow * traces.ammonia * -Math.expm1(-units);
    expect(ammoniaKgNPerS / expected).toBeCloseTo(1, 5);
    expect(byBedKgNPerS[0]! / ammoniaKgNPerS).toBeCloseTo(1, 12);
  });

  it.each([
    ['nitrite slower than ammonia', 3, 1],
    ['nitrite faster than ammonia', 1, 3],
    ['both alike', 2, 2],
  ])('follows the two-step chain of Bateman 1910, %s', (_what, ammonia, nitrite) => {
    const compiled = tight(200);
    const flow = filterFlow(compiled);
    const slopes = { areaPerM: 4000, ammonia: ammonia * PER_DAY, nitrite: nitrite * PER_DAY };
    const levels = { ...traces, nitrite: 4e-10 };
    const { nitriteKgNPerS } = run(compiled, rates(compiled, slopes), levels);
    const contact = (slopes.areaPerM * compiled.beds[0]!.volumeM3) / flow;
    const a = slopes.ammonia * contact;
    const b = slopes.nitrite * contact;
    const chain = a === b ? a * Math.exp(-a) : (a * (Math.exp(-a) - Math.exp(-b))) / (b - a);
    const left = levels.nitrite * Math.exp(-b) + levels.ammonia * chain;
    const expected = flow * (levels.nitrite + levels.ammonia * -Math.expm1(-a) - left);
    expect(nitriteKgNPerS / expected).toBeCloseTo(1, 5);
  });

  it('takes up at the ceiling, and no more, where levels are high', () => {
    const compiled = tight(60);
    const ceiling = 0.75e-3 * PER_DAY;
    const slopes = { areaPerM: 300, ammonia: PER_DAY, nitrite: 0 };
    const { ammoniaKgNPerS } = run(compiled, rates(compiled, slopes, { ammoniaCeiling: ceiling }), {
      ammonia: 1,
      nitrite: 0,
      oxygen: plenty,
    });
    const most = ceiling * 300 * compiled.beds[0]!.volumeM3;
    expect(ammoniaKgNPerS).toBeLessThanOrEqual(most);
    expect(ammoniaKgNPerS / most).toBeGreaterThan(0.99);
  });
});

describe('oxygen', () => {
  it('is used up 4.57 to a gram of nitrogen that goes all the way', () => {
    const compiled = tight(200);
    const slopes = { areaPerM: 50, ammonia: PER_DAY, nitrite: 1e3 * PER_DAY };
    const levels = { ammonia: 1e-4, nitrite: 0, oxygen: 8e-3 };
    const pass = run(compiled, rates(compiled, slopes), levels);
    const used = filterFlow(compiled) * (levels.oxygen - pass.outletOxygenKgPerM3);
    expect(used / (3.43 * pass.ammoniaKgNPerS + 1.14 * pass.nitriteKgNPerS)).toBeCloseTo(1, 9);
  });

  it.each([0, 1e-4, 2e-3, 8e-3])(
    'never falls below nothing, from %s kg/m³ and with much rotting dirt',
    (oxygen) => {
      const compiled = solvedClean(stackCanister());
      const slopes = { areaPerM: 1e5, ammonia: 10 * PER_DAY, nitrite: 10 * PER_DAY };
      const dirty = { dirtOxygenKgPerS: Float64Array.from(compiled.beds, () => 1e-3) };
      const pass = run(compiled, rates(compiled, slopes, dirty), { ammonia: 1e-2, nitrite: 1e-3, oxygen });
      expect(pass.outletOxygenKgPerM3).toBeGreaterThanOrEqual(0);
      expect(pass.ammoniaKgNPerS).toBeGreaterThanOrEqual(0);
    },
  );

  it('bounds what can be oxidised: without any nothing is', () => {
    const compiled = tight(200);
    const slopes = { areaPerM: 1e5, ammonia: PER_DAY, nitrite: PER_DAY };
    const pass = run(compiled, rates(compiled, slopes), { ammonia: 1e-3, nitrite: 1e-4, oxygen: 0 });
    expect(pass.ammoniaKgNPerS).toBe(0);
    expect(pass.nitriteKgNPerS).toBe(0);
  });
});

describe('several beds', () => {
  it('give together what the tank loses', () => {
    const compiled = solvedClean(stackCanister());
    const slopes = { areaPerM: 2000, ammonia: PER_DAY, nitrite: PER_DAY };
    const pass = run(compiled, rates(compiled, slopes), { ammonia: 1e-4, nitrite: 5e-5, oxygen: 8e-3 });
    const sum = pass.byBedKgNPerS.reduce((all, one) => all + one, 0);
    expect(sum / pass.ammoniaKgNPerS).toBeCloseTo(1, 12);
  });

  it('let what goes past them keep its ammonia', () => {
    const past = oneBasket([['ceramic-rings-15mm', 200]]);
    const compiled = solvedClean(withFilter(past, { chamberGapM: { 'basket-1': 0.005 } }));
    const slopes = { areaPerM: 1e6, ammonia: PER_DAY, nitrite: 0 };
    const pass = run(compiled, rates(compiled, slopes), traces);
    const through = compiled.network.flow[compiled.beds[0]!.link]!;
    expect(through).toBeLessThan(filterFlow(compiled));
    expect(pass.ammoniaKgNPerS / (through * traces.ammonia)).toBeCloseTo(1, 6);
  });
});

describe('a thin bed', () => {
  const kinetic = 0.45 * PER_DAY;
  const ceilings = { ammonia: 0.9e-3 * PER_DAY, nitrite: 0.7e-3 * PER_DAY };
  const cases = [
    { short: 'nitrogen', ammonia: 2e-4, nitrite: 3e-4, oxygen: 8e-3 },
    { short: 'oxygen', ammonia: 5e-3, nitrite: 5e-3, oxygen: 4e-4 },
    { short: 'room in the film', ammonia: 5e-3, nitrite: 5e-3, oxygen: 8e-3 },
  ];

  it.each(cases)('oxidises by the published flux where $short is short', ({ ammonia, nitrite, oxygen }) => {
    const compiled = tight(10);
    const slopes = { areaPerM: 1e-3, ammonia: kinetic, nitrite: kinetic };
    const pass = run(
      compiled,
      rates(compiled, slopes, {
        ammoniaCeiling: ceilings.ammonia,
        nitriteCeiling: ceilings.nitrite,
        kineticSlopeMPerS: kinetic,
      }),
      { ammonia, nitrite, oxygen },
    );
    const areaM2 = slopes.areaPerM * compiled.beds[0]!.volumeM3;
    const law = (
      nitrogenKgPerM3: number,
      oxygenPerNitrogenRatio: number,
      ceilingKgNPerM2PerS: number,
    ): number =>
      nitrificationFlux({
        slopeMPerS: kinetic,
        nitrogenKgPerM3,
        oxygenKgPerM3: oxygen,
        oxygenPerNitrogenRatio,
        ceilingKgNPerM2PerS,
      });
    expect(pass.ammoniaKgNPerS / (areaM2 * law(ammonia, 3.43, ceilings.ammonia))).toBeCloseTo(1, 6);
    expect(pass.nitriteKgNPerS / (areaM2 * law(nitrite, 1.14, ceilings.nitrite))).toBeCloseTo(1, 6);
  });
});
