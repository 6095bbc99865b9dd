import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unionizedAmmoniaFraction } from '../../laws/water/ammonia.ts';
import type { Model } from '../../model/model.ts';
import { assess } from '../assess.ts';
import type { BindingLimit, Carries } from '../assessment.ts';
import {
  gramsPerDay,
  hangOnBack,
  oneBasket,
  stackCanister,
  withFilter,
  withTank,
} from '../testing/models.ts';
import { randomModel } from '../testing/randomModels.ts';

const day = (model: Model): Carries => assess(model).carries.day;

describe('what a filter carries', () => {
  it('is nothing without media', () => {
    const { carries } = assess(stackCanister({}));
    for (const state of [carries.clean, carries.day, carries.intervalEnd]) {
      expect(state).toMatchObject({ feedKgPerS: 0, oxidisedKgNPerS: 0, nitriteKgNPerM3: 0 });
      expect(state.servedM3).toEqual({ light: 0, normal: 0, heavy: 0 });
    }
  });

  it('is nothing where floss that never ripens is all there is, and no figure is lost', () => {
    const { carries } = assess(oneBasket([['floss-packed', 50]]));
    expect(carries.day).toMatchObject({ feedKgPerS: 0, nitriteKgNPerM3: 0 });
    expect(carries.day.outletOxygenKgPerM3).toBeGreaterThan(0);
  });

  it('serves half the volume of heavily stocked tank that it serves of normally stocked', () => {
    const { servedM3 } = day(stackCanister());
    expect(servedM3.heavy / servedM3.normal).toBeCloseTo(0.5, 12);
    expect(servedM3.light / servedM3.normal).toBeCloseTo(2, 12);
  });

  it.each([20, 40, 80])('never falls when the area of the rings doubles, %s mm deep', (depthMm) => {
    const model = oneBasket([['ceramic-rings-15mm', depthMm]]);
    const rings = model.media['ceramic-rings-15mm']!;
    const areaPerM = { ...rings.areaPerM, value: 2 * rings.areaPerM.value };
    const doubled = { ...model, media: { ...model.media, [rings.id]: { ...rings, areaPerM } } };
    expect(day(doubled).feedKgPerS).toBeGreaterThan(day(model).feedKgPerS);
  });

  it('falls with cold water and rises with warm, as long as area binds', () => {
    const at = (temperatureK: number): number =>
      assess(withTank(stackCanister(), { temperatureK })).carries.clean.oxidisedKgNPerS;
    expect(at(288.15)).toBeLessThan(at(298.15));
    expect(at(298.15)).toBeLessThan(at(303.15));
  });
});

describe('targets are kept at the load that is carried', () => {
  it('for any packing of any family in any water', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const { carries } = assess(randomModel(seed));
        for (const state of [carries.clean, carries.day, carries.intervalEnd]) {
          expect(Number.isFinite(state.feedKgPerS)).toBe(true);
          expect(state.feedKgPerS).toBeGreaterThanOrEqual(0);
          expect(state.nitriteKgNPerM3).toBeLessThanOrEqual(1e-4 * (1 + 1e-9));
          if (state.feedKgPerS > 0)
            expect(state.outletOxygenKgPerM3).toBeGreaterThanOrEqual(2e-3 * (1 - 1e-9));
          expect(state.outletOxygenKgPerM3).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** A basket of foam behind a pump that barely turns. */
const slow = withFilter(oneBasket([['foam-30ppi', 200]]), {
  pump: { ...oneBasket([]).filter.pump, speedRatio: 0.1 },
});

/** Ways to be bound: the job and what binds it. */
const bound: readonly (readonly [limit: BindingLimit, why: string, model: Model])[] = [
  ['nitrite', 'in a usual canister', stackCanister()],
  ['area', 'in cold water', withTank(oneBasket([['ceramic-rings-15mm', 60]]), { temperatureK: 284.15 })],
  ['flow', 'with much area and a slow pump', slow],
  ['flow', 'with an outlet that the pump does not reach', withFilter(stackCanister(), { outletLiftM: 3 })],
  ['oxygen', 'with much area and little oxygen', withTank(slow, { oxygenFraction: 0.3 })],
  ['alkalinity', 'in acid water', withTank(stackCanister(), { pH: 6.6 })],
  ['alkalinity', 'in very soft water', withTank(stackCanister(), { alkalinityKgPerM3: 0.005 })],
  ['ammonia-toxicity', 'in warm alkaline water', withTank(hangOnBack(), { pH: 9.2, temperatureK: 303.15 })],
];

describe('what binds', () => {
  it.each(bound)('is %s %s', (limit, _why, model) => {
    expect(day(model).bindingLimit).toBe(limit);
  });

  it('keeps un-ionized ammonia at its limit where the water is warm and alkaline', () => {
    const water = { pH: 9.2, temperatureK: 303.15, salinity: 0 };
    const fraction = unionizedAmmoniaFraction(water);
    expect(2e-5 / fraction).toBeLessThan(1e-4);
    const alkaline = day(withTank(hangOnBack(), { ...water, feedKgPerS: gramsPerDay(0.5) }));
    const usual = day(withTank(hangOnBack(), { ...water, pH: 7.4, feedKgPerS: gramsPerDay(0.5) }));
    expect(alkaline.feedKgPerS).toBeLessThan(usual.feedKgPerS);
  });
});
