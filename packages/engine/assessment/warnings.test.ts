import { describe, expect, it } from 'vitest';
import type { Model } from '../model/model.ts';
import { assess } from './assess.ts';
import {
  gramsPerDay,
  litresPerHour,
  oneBasket,
  stackCanister,
  withFilter,
  withTank,
} from './testing/models.ts';

const codes = (model: Model): string[] => assess(model).warnings.map(({ code }) => code);
const good = stackCanister();
const { pump } = good.filter;

/** Points that end while the pump still has head to give. */
const shortCurve = {
  ...pump,
  ratedFlowM3PerS: litresPerHour(300),
  curve: {
    kind: 'points' as const,
    points: [
      { flowM3PerS: 0, headM: 1.35 },
      { flowM3PerS: litresPerHour(200), headM: 1.3 },
      { flowM3PerS: litresPerHour(300), headM: 1.25 },
    ],
  },
};

/** All water through a narrow basket that stays clean. */
const narrow = withFilter(withTank(oneBasket([['ceramic-rings-15mm', 50]]), { feedKgPerS: 0 }), {
  measurements: { ...oneBasket([]).filter.measurements, basketWidth: 0.03, basketDepth: 0.03 },
  chamberGapM: { 'basket-1': 0 },
});

/** A foam that has taken far more dirt than it can hold. */
const overloaded = withTank(oneBasket([['foam-45ppi', 20]]), { feedKgPerS: gramsPerDay(60) });

const cases: readonly (readonly [code: string, place: string, outside: Model, inside: Model])[] = [
  ['temperature-outside-kinetics', 'tank', withTank(good, { temperatureK: 309 }), good],
  [
    'temperature-outside-kinetics',
    'tank',
    withTank(good, { temperatureK: 276 }),
    withTank(good, { temperatureK: 279.5 }),
  ],
  ['pH-outside-kinetics', 'tank', withTank(good, { pH: 6.3 }), withTank(good, { pH: 6.8 })],
  ['pH-outside-kinetics', 'tank', withTank(good, { pH: 9 }), withTank(good, { pH: 8.4 })],
  ['no-feed-no-dirt', 'tank', withTank(good, { feedKgPerS: 0 }), good],
  ['kinetics-are-fresh-water', 'tank', withTank(good, { salinity: 35 }), withTank(good, { salinity: 0.5 })],
  ['soft-acid-water', 'tank', withTank(good, { pH: 6.3 }), withTank(good, { pH: 6.6 })],
  [
    'soft-acid-water',
    'tank',
    withTank(good, { alkalinityKgPerM3: 0.01 }),
    withTank(good, { alkalinityKgPerM3: 0.03 }),
  ],
  ['cold-water', 'tank', withTank(good, { temperatureK: 281 }), withTank(good, { temperatureK: 284 })],
  ['sea-water-not-counted', 'tank', withTank(good, { salinity: 33 }), withTank(good, { salinity: 10 })],
  [
    'few-pieces-across',
    'basket-1/1',
    oneBasket([['plastic-balls-35mm', 100]]),
    oneBasket([['gravel-4mm', 100]]),
  ],
  ['bed-outside-law', 'basket-1/1', narrow, oneBasket([['gravel-4mm', 50]])],
  ['dirt-outside-law', 'basket-1/1', overloaded, oneBasket([['gravel-4mm', 50]])],
  [
    'interval-below-practice',
    'basket-1/1',
    withTank(oneBasket([['floss-loose', 20]]), { feedKgPerS: gramsPerDay(6) }),
    oneBasket([['foam-20ppi', 100]]),
  ],
  [
    'interval-beyond-practice',
    'tank',
    withTank(oneBasket([['foam-10ppi', 100]]), { feedKgPerS: gramsPerDay(0.05) }),
    withTank(oneBasket([['foam-10ppi', 100]]), { feedKgPerS: 0 }),
  ],
  [
    'pump-speed-outside-affinity',
    'pump',
    withFilter(good, { pump: { ...pump, speedRatio: 0.3 } }),
    withFilter(good, { pump: { ...pump, speedRatio: 0.4 } }),
  ],
  ['flow-beyond-pump-curve', 'pump', withFilter(good, { pump: shortCurve }), good],
];

describe('warnings', () => {
  it.each(cases)('%s names %s, and is not there where the law holds', (code, place, outside, inside) => {
    expect(assess(outside).warnings).toContainEqual(expect.objectContaining({ code, place }));
    expect(codes(inside)).not.toContain(code);
  });

  it('are none for a usual canister in a tropical tank', () => {
    expect(codes(good)).toEqual([]);
  });
});
