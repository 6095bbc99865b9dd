import { describe, expect, test } from 'vitest';
import { shelves } from './reckon.ts';
import { figure, pairs, problems, worked } from './testing/worked.ts';

describe('outside of a law', () => {
  test.each([
    ['water-density', ['temperature=45 °C']],
    ['oxygen-saturation', ['temperature=20 °C', 'salinity=41']],
    ['un-ionized-ammonia', ['temperature=25 °C', 'pH=10.5']],
    ['ammonia-criteria', ['temperature=25 °C', 'pH=9.5']],
    ['carbon-dioxide', ['pH=9.8', 'alkalinity=4 dKH']],
    ['hose-loss', ['flow=50 L/h', 'bore=12 mm', 'length=1 m', 'law=colebrook']],
    ['orifice-flow', ['diameter=6 mm', 'head=10 cm', 'cd=0.3']],
    ['gap-flow', ['height=20 mm', 'width=100 mm', 'length=5 mm', 'pressure=200 Pa']],
    ['bed-loss', ['size=8 mm', 'voidage=0.7', 'velocity=1 cm/s', 'depth=10 cm']],
    ['foam-loss', ['cell=20 mm', 'voidage=0.97', 'velocity=1 cm/s', 'depth=10 cm']],
    ['feed-load', ['feed=5 g/d', 'protein=80 %']],
  ] as const)('%s gives a value, says so and warns', (name, texts) => {
    const reckoned = worked(name, ...texts);
    expect(reckoned.within).toBe(false);
    expect(reckoned.warnings.join(' ')).toMatch(/is outside of .* to /);
  });

  test('the edge of the range is inside, in any unit', () => {
    for (const edge of ['0 °C', '40 °C', '104 °F', '313.15 K'])
      expect(worked('water-density', `temperature=${edge}`).within, edge).toBe(true);
  });
});

describe('what comes out', () => {
  test('temperature is 25 °C where it is left out', () => {
    expect(worked('water-viscosity').results).toEqual(worked('water-viscosity', 'temperature=25 °C').results);
  });

  test('ammonia is counted as N unless something else is said', () => {
    const asN = figure('un-ionized-ammonia', 'concentration', 'pH=8', 'tan=1 mg/L');
    expect(asN).toBeCloseTo(0.05366, 5);
    expect(figure('un-ionized-ammonia', 'concentration', 'pH=8', 'tan=1.2159 mg/L NH3')).toBeCloseTo(asN, 5);
    expect(figure('un-ionized-ammonia', 'concentration', 'pH=8', 'tan=1 mg/L', 'basis=NH3')).toBeCloseTo(
      asN,
      5,
    );
    expect(worked('un-ionized-ammonia', 'pH=8').results).not.toHaveProperty('concentration');
  });

  test('nitrite in the chloride rule is NO2 unless something else is said', () => {
    const asN = figure('nitrite-chloride', 'chloride', 'nitrite=1 mg/L N', 'chloride=0 mg/L');
    expect(asN).toBeCloseTo(32.84, 2);
    expect(
      figure('nitrite-chloride', 'chloride', 'nitrite=1 mg/L', 'chloride=0 mg/L', 'basis=N'),
    ).toBeCloseTo(asN, 9);
    expect(
      figure('nitrite-chloride', 'chloride', 'nitrite=1 mg/L', 'chloride=4 mg/L', 'ratio=6'),
    ).toBeCloseTo(2, 9);
  });

  test('still water loses nothing', () => {
    const hose = worked('hose-loss', 'flow=0 L/h', 'bore=12 mm', 'length=1 m');
    expect(hose.results).toEqual({
      head: { value: 0, unit: 'm' },
      reynolds: { value: 0, unit: '1' },
      velocity: { value: 0, unit: 'm/s' },
    });
    expect(figure('fitting-loss', 'head', 'fitting=exit', 'bore=12 mm', 'flow=0 L/h')).toBe(0);
    expect(figure('gap-flow', 'flow', 'height=1 mm', 'width=10 cm', 'length=1 cm', 'pressure=0 Pa')).toBe(0);
  });

  test('fittings in a hose count on top of its friction', () => {
    const run = ['flow=600 L/h', 'bore=12 mm', 'length=1 m'];
    const velocity = figure('hose-loss', 'velocity', ...run);
    const more = figure('hose-loss', 'head', ...run, 'minor=2') - figure('hose-loss', 'head', ...run);
    expect(more).toBeCloseTo((2 * velocity ** 2) / (2 * 9.80665), 12);
  });

  test('an open end under water loses all of its velocity head', () => {
    expect(figure('fitting-loss', 'k', 'fitting=exit', 'bore=12 mm', 'flow=600 L/h')).toBe(1);
  });

  test('a pump that cannot lift gives no flow', () => {
    const pump = ['shutoff=1.2 m', 'maxFlow=1000 L/h', 'resistance=1.2e7 s2/m5'];
    const reckoned = worked('pump-duty', ...pump, 'lift=1.3 m');
    expect(reckoned.results).toEqual({ flow: { value: 0, unit: 'L/h' }, head: { value: 1.2, unit: 'm' } });
    expect(reckoned.warnings).toHaveLength(1);
    expect(figure('pump-duty', 'flow', ...pump.slice(0, 2), 'resistance=0 s2/m5')).toBeCloseTo(1000, 9);
  });

  test('doubts of volume and watch add to the scatter of the runs', () => {
    const runs = ['time=31.2 s', 'time=30.8 s', 'time=31.0 s'];
    const bare = figure('timed-flow', 'doubt', 'volume=10 L', ...runs);
    const doubtful = figure('timed-flow', 'doubt', 'volume=10 ± 0.15 L', ...runs);
    expect(doubtful).toBeGreaterThan(bare);
    const alike = ['time=31 ± 0.3 s', 'time=31 ± 0.3 s'];
    const flow = 36000 / 31;
    expect(figure('timed-flow', 'doubt', 'volume=10 ± 0.15 L', ...alike)).toBeCloseTo(
      flow * Math.hypot(0.015, 0.3 / 31),
      6,
    );
    expect(worked('timed-flow', 'volume=10 L', 'time=31 s').warnings.join()).toMatch(/1.3 %/);
  });

  test('money comes in the currency of the tariff', () => {
    expect(worked('power-cost', 'power=10 W', 'tariff=0.29 EUR/kWh').results.cost).toEqual({
      value: expect.closeTo(25.404, 9),
      unit: 'EUR',
    });
    expect(figure('power-cost', 'cost', 'power=10 W', 'tariff=27 p/kWh')).toBeCloseTo(23.652, 9);
  });

  test('a conversion keeps the doubt and the unit as it was asked for', () => {
    expect(worked('convert', 'from=12 ± 1 mm', 'to=inches').results).toEqual({
      value: { value: expect.closeTo(0.472441, 6), unit: 'inches' },
      doubt: { value: expect.closeTo(0.03937, 5), unit: 'inches' },
    });
    expect(figure('convert', 'doubtFactor', 'from=280 ×/÷ 2 m2/m3', 'to=ft2/ft3')).toBe(2);
    expect(problems('convert', pairs('from=12 mm', 'to=humbug'))[0]?.path).toBe('to');
    expect(problems('convert', pairs('from=humbug', 'to=mm'))[0]?.path).toBe('from');
  });

  test('only seven verdicts on a pair leave, the finer reason in words', () => {
    const likely = (a: string, b: string) => worked('pair-check', `a=${a}`, `b=${b}`).results;
    expect(likely('600 L/h', '10 L/min')).toMatchObject({ agrees: true, likely: 'same' });
    expect(likely('620 L/h', '620 US gal/h')).toMatchObject({ agrees: false, likely: 'unrelated' });
    expect(likely('620 L/h', '620 US gal/h').says).toMatch(/not converted/);
    expect(likely('1000 L/h', '263 US gal/h')).toMatchObject({ agrees: false, likely: 'same' });
    expect(likely('1000 L/h', '263 US gal/h').says).toMatch(/rounded factor/);
    expect(likely('7 L/h', '7 L/min')).toMatchObject({ likely: 'unrelated' });
    expect(likely('100 L', '22 gal')).toMatchObject({ agrees: false, likely: 'imperial-gallon' });
  });

  test('a bed in a narrow vessel says that the wall counts', () => {
    const bed = ['size=8 mm', 'voidage=0.4', 'velocity=1 cm/s', 'depth=10 cm', 'vessel=10 cm'];
    expect(worked('bed-loss', ...bed).warnings.join()).toMatch(/law=eisfeld/);
    expect(worked('bed-loss', ...bed, 'law=eisfeld').warnings).toEqual([]);
  });

  test('the area of a medium stands between the ends of its doubt', () => {
    const area = (key: string) => figure('bed-area', key, 'medium=foam-20ppi', 'volume=1.5 L');
    expect(area('low')).toBeLessThan(area('area'));
    expect(area('high')).toBeGreaterThan(area('area'));
  });

  test('the shelves name what can be asked for', () => {
    for (const { id } of shelves.fittings)
      expect(figure('fitting-loss', 'head', `fitting=${id}`, 'bore=12 mm', 'flow=600 L/h')).toBeGreaterThan(
        0,
      );
    for (const { id } of shelves.media)
      expect(figure('bed-area', 'area', `medium=${id}`, 'volume=1 L')).toBeGreaterThanOrEqual(0);
  });
});
