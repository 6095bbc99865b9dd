import { describe, expect, it } from 'vitest';
import type { Model } from '../model/model.ts';
import { assess } from './assess.ts';
import type { ChemicalState, CleaningInterval } from './assessment.ts';
import { costOf, powerW } from './cost.ts';
import { replacementsOf } from './replacement.ts';
import { compiledJob } from './testing/compiled.ts';
import { days, oneBasket, stackCanister, withFilter, withTank } from './testing/models.ts';

const YEAR_S = days(365);
const interval = (timeS: number, cleanedEachTime: readonly string[]): CleaningInterval => ({
  timeS,
  beyond: false,
  endedBy: 'bed-flow',
  flowRatio: 1,
  cleanedEachTime,
});
const cost = (model: Model, cleaning: CleaningInterval, chemical: readonly ChemicalState[] = []) => {
  const compiled = compiledJob(model);
  return costOf(compiled, replacementsOf(compiled, cleaning, chemical));
};
const areaM2 = 0.168 ** 2;

describe('running cost', () => {
  it('of electricity is watts times a year times the tariff', () => {
    // 13 W × 8760 h = 113.88 kWh at 0.27
    expect(assess(stackCanister()).cost.energyPerYear).toBeCloseTo(113.88 * 0.27, 9);
    expect(assess(stackCanister()).cost.energyJPerYear).toBeCloseTo(113.88 * 3.6e6, 3);
  });

  it('goes by the watts measured with the least doubt', () => {
    const watts = (power: number, doubtW: number) =>
      ({ kind: 'power', id: `${power}`, state: 'as-found', powerW: power, doubtW }) as const;
    expect(powerW(stackCanister())).toBe(13);
    expect(powerW({ ...stackCanister(), tests: [watts(9, 2), watts(11, 0.5), watts(10, 1)] })).toBe(11);
  });

  it('spreads the price over the years that the filter lasts, and counts none where it is not known', () => {
    const priced = withFilter(stackCanister(), { price: 96, lifeYears: 8 });
    expect(assess(priced).cost.pricePerYear).toBe(12);
    expect(assess(stackCanister()).cost.pricePerYear).toBe(0);
  });

  const floss = oneBasket([['floss-loose', 50]]);
  const flossPrice = floss.media['floss-loose']!.pricePerM3.value;
  const flossLifeS = floss.media['floss-loose']!.lifeS!.value;

  it('replaces floss by the calendar where it does not clog', () => {
    const { media } = cost(floss, interval(days(200), []));
    expect(media).toMatchObject([{ medium: 'floss-loose', because: 'calendar', everyS: flossLifeS }]);
    expect(media[0]!.perYear).toBeCloseTo((YEAR_S / flossLifeS) * areaM2 * 0.05 * flossPrice, 9);
  });

  it('replaces floss as often as it clogs where that is sooner', () => {
    const { media, mediaPerYear } = cost(floss, interval(days(5), ['basket-1/1']));
    expect(media[0]).toMatchObject({ because: 'clogs', everyS: days(5) });
    expect(mediaPerYear).toBeCloseTo(73 * areaM2 * 0.05 * flossPrice, 9);
  });

  it('replaces floss by the calendar where it clogs only after its life', () => {
    const late = cost(floss, interval(flossLifeS + days(1), ['basket-1/1']));
    expect(late.media).toMatchObject([{ because: 'calendar', everyS: flossLifeS }]);
  });

  const carbon = oneBasket([['carbon-granular-2mm', 50]]);
  const fullAfter = (lastsS: number): readonly ChemicalState[] => [
    {
      bed: 'basket-1/1',
      substance: 'dissolved-organics',
      capacityKg: 0.01,
      openFraction: 1,
      takenFraction: 0.5,
      lastsS,
    },
  ];

  it('replaces carbon when it is full, or by the calendar where that is sooner or it never fills', () => {
    const lifeS = carbon.media['carbon-granular-2mm']!.lifeS!.value;
    const replaced = (lastsS: number) => cost(carbon, interval(days(200), []), fullAfter(lastsS)).media;
    expect(replaced(days(3))).toMatchObject([{ because: 'full', everyS: days(3) }]);
    expect(replaced(2 * lifeS)).toMatchObject([{ because: 'calendar', everyS: lifeS }]);
    expect(replaced(Infinity)).toMatchObject([{ because: 'calendar', everyS: lifeS }]);
  });

  it('rinses carbon and zeolite that clog, and replaces them when they are full', () => {
    for (const medium of ['carbon-granular-2mm', 'zeolite-4mm'] as const) {
      const clogged = cost(oneBasket([[medium, 50]]), interval(days(2), ['basket-1/1']), fullAfter(days(9)));
      expect(clogged.media).toMatchObject([{ medium, because: 'full', everyS: days(9) }]);
    }
  });

  it('takes the user’s own price before the placeholder', () => {
    const own = { ...floss, money: { ...floss.money, mediumPricePerM3: { 'floss-loose': 3 * flossPrice } } };
    const cleaning = interval(days(5), ['basket-1/1']);
    expect(cost(own, cleaning).mediaPerYear / cost(floss, cleaning).mediaPerYear).toBeCloseTo(3, 12);
  });

  it('counts nothing for foam and rings, which are rinsed', () => {
    const model = oneBasket([
      ['foam-20ppi', 50],
      ['ceramic-rings-15mm', 50],
    ]);
    expect(cost(model, interval(days(5), ['basket-1/1', 'basket-1/2'])).media).toEqual([]);
  });

  it('has a line for each bed of one medium', () => {
    const twice = oneBasket([
      ['floss-loose', 50],
      ['foam-20ppi', 20],
      ['floss-loose', 50],
    ]);
    const once = cost(floss, interval(days(200), [])).mediaPerYear;
    const { media, mediaPerYear } = cost(twice, interval(days(200), []));
    expect(media.map(({ bed }) => bed)).toEqual(['basket-1/3', 'basket-1/1']);
    expect(mediaPerYear / once).toBeCloseTo(2, 12);
  });

  it('is the sum of its parts, in the job’s currency', () => {
    const fed = withTank(withFilter(stackCanister(), { price: 80 }), { feedKgPerS: 5e-8 });
    const { perYear, energyPerYear, mediaPerYear, pricePerYear, currency, media } = assess(fed).cost;
    expect(perYear).toBeCloseTo(energyPerYear + mediaPerYear + pricePerYear, 12);
    expect(mediaPerYear).toBeCloseTo(
      media.reduce((sum, line) => sum + line.perYear, 0),
      12,
    );
    expect(currency).toBe('GBP');
  });
});
