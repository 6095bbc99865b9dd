import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dimension } from './dimensions.ts';
import { dimensions } from './dimensions.ts';
import type { Allowed } from './readQuantity.ts';
import { readQuantity, readQuantityValue } from './readQuantity.ts';

const litrePerHour = 1e-3 / 3600;

function siOf(text: string | number, dimension: Dimension, allowed?: Allowed): number {
  const reading = readQuantity(text, dimension, allowed);
  if (!reading.ok) throw new Error(reading.says);
  return reading.value;
}

function problemOf(text: string | number, dimension: Dimension, allowed?: Allowed) {
  const reading = readQuantity(text, dimension, allowed);
  if (reading.ok) throw new Error(`"${text}" was taken as ${reading.value}`);
  return reading;
}

describe('quantities as people write them', () => {
  test.each<[string | number, Dimension, number]>([
    ['620 L/h', 'flow', 620 * litrePerHour],
    ['620l/h', 'flow', 620 * litrePerHour],
    ['1 000 L/h', 'flow', 1000 * litrePerHour],
    ['1,000.5 L/h', 'flow', 1000.5 * litrePerHour],
    ['1.000,5 L/h', 'flow', 1000.5 * litrePerHour],
    ['1,200,000 mm3', 'volume', 1.2e-3],
    ['1,5 L', 'volume', 1.5e-3],
    ['1,50 L', 'volume', 1.5e-3],
    ['0,500 L', 'volume', 0.5e-3],
    ['0.125 L', 'volume', 0.125e-3],
    ['.5 L', 'volume', 0.5e-3],
    ['1234.567 mL', 'volume', 1234.567e-6],
    ['2.5e9 s2/m5', 'flow-resistance', 2.5e9],
    ['1/2 in', 'length', 0.0127],
    ['5/8"', 'length', 0.015875],
    ['1 1/4 in', 'length', 0.03175],
    ['1-1/4 in', 'length', 0.03175],
    ['1½″', 'length', 0.0381],
    ["5'", 'length', 1.524],
    ['−2 °C', 'temperature', 271.15],
    ['25 °C', 'temperature', 298.15],
    ['77 °F', 'temperature', 298.15],
    ['18 °F', 'temperature-difference', 10],
    ['10 °C', 'temperature-difference', 10],
    ['6 dKH', 'alkalinity', 0.107088],
    ['107.0880 mg/L CaCO3', 'alkalinity', 0.107088],
    ['35 %', 'fraction', 0.35],
    [0.35, 'fraction', 0.35],
    ['3', 'count', 3],
    ['25 %/week', 'rate', 0.25 / 604800],
    ['4 1/h', 'rate', 4 / 3600],
    ['3 mg/g', 'mass-ratio', 0.003],
    ['280 ft2/ft3', 'specific-area', 280 / 0.3048],
    ['0.5 m2/L', 'specific-area', 500],
    ['0.27 GBP/kWh', 'price-per-energy', 7.5e-8],
    ['27 p/kWh', 'price-per-energy', 7.5e-8],
    ['£4/L', 'price-per-volume', 4000],
    ['30 GBP/h', 'price-per-time', 30 / 3600],
    ['GBP 12.50', 'money', 12.5],
    ['100 kWh/a', 'power', 3.6e8 / 31557600],
  ])('%s', (text, dimension, expected) => {
    expect(Math.abs(siOf(text, dimension) - expected)).toBeLessThanOrEqual(1e-12 * Math.abs(expected));
  });

  test('the currency, the unit and the words come along', () => {
    expect(readQuantity('£4/L ', 'price-per-volume')).toMatchObject({
      currency: 'GBP',
      unit: 'GBP/L',
      written: '£4/L',
    });
  });
});

describe('doubt', () => {
  test.each<[string, Dimension, 'plus-minus' | 'factor', number]>([
    ['9.5 ± 0.5 W', 'power', 'plus-minus', 0.5],
    ['9.5 W ± 0.5 W', 'power', 'plus-minus', 0.5],
    ['9.5 W ± 500 mW', 'power', 'plus-minus', 0.5],
    ['9.5 W +/- 0.5', 'power', 'plus-minus', 0.5],
    ['9.5 +- 0.5 W', 'power', 'plus-minus', 0.5],
    ['200 W ± 5 %', 'power', 'plus-minus', 10],
    ['200 ± 5 % W', 'power', 'plus-minus', 10],
    ['50 ± 5 %', 'fraction', 'plus-minus', 0.05],
    ['77 ± 1.8 °F', 'temperature', 'plus-minus', 1],
    ['1.234 ± 0.005 kg', 'mass', 'plus-minus', 0.005],
    ['280 ×/÷ 2 m2/m3', 'specific-area', 'factor', 2],
    ['280 m2/m3 ×/÷ 2', 'specific-area', 'factor', 2],
    ['280 */ 2 m2/m3', 'specific-area', 'factor', 2],
    ['280 x/ 1.25 m2/m3', 'specific-area', 'factor', 1.25],
  ])('%s', (text, dimension, kind, size) => {
    const reading = readQuantity(text, dimension);
    expect(reading).toMatchObject({ ok: true, doubt: { kind } });
    expect(reading.ok && reading.doubt?.size).toBeCloseTo(size, 12);
  });

  test.each<[string, Dimension]>([
    ['9.5 ± 0 W', 'power'],
    ['9.5 ± -1 W', 'power'],
    ['9.5 W ± 3 mm', 'power'],
    ['9.5 ±', 'power'],
    ['9.5 ×/÷ 1 W', 'power'],
    ['9.5 W ×/÷ 2 W', 'power'],
    ['0 W ± 5 %', 'power'],
    ['9.5 ×/÷ 0.5 W', 'power'],
    ['-3 ×/÷ 2 °C', 'temperature-difference'],
    ['25 °C ×/÷ 2', 'temperature'],
    ['25 °C ± 5 %', 'temperature'],
  ])('%s is refused', (text, dimension) => expect(problemOf(text, dimension).code).toBe('bad-doubt'));

  test.each([
    [
      { value: '9.5 W', doubt: '0.5 W' },
      { kind: 'plus-minus', size: 0.5 },
    ],
    [
      { value: '9.5 W', doubt: 0.5 },
      { kind: 'plus-minus', size: 0.5 },
    ],
    [
      { value: '10 W', doubt: '5 %' },
      { kind: 'plus-minus', size: 0.5 },
    ],
    [
      { value: '9.5 W', doubt: '×/÷ 2' },
      { kind: 'factor', size: 2 },
    ],
    ['9.5 ± 0.5 W', { kind: 'plus-minus', size: 0.5 }],
  ])('%j in a document', (given, doubt) => {
    expect(readQuantityValue(given, 'power')).toMatchObject({ ok: true, doubt });
  });

  test.each([null, undefined, [], {}, true, { value: null }, { value: '1 W', dout: '1 W' }, { value: [] }])(
    '%j in a document is refused',
    (given) => expect(readQuantityValue(given, 'power')).toMatchObject({ ok: false, code: 'not-text' }),
  );
});

describe('traps are asked about and never guessed', () => {
  test.each<[string, Dimension, string, string]>([
    ['40 gal', 'volume', 'ambiguous-unit', 'US gal or imp gal'],
    ['210 gph', 'flow', 'ambiguous-unit', 'US gal/h or imp gal/h'],
    ['210 gal/h', 'flow', 'ambiguous-unit', 'US gal/h or imp gal/h'],
    ['3.5 GPM', 'flow', 'ambiguous-unit', 'US gal/min or imp gal/min'],
    ['6 oz', 'volume', 'ambiguous-unit', 'US fl oz or imp fl oz'],
    ['6 fl. oz.', 'volume', 'ambiguous-unit', 'US fl oz or imp fl oz'],
    ['1.250 L/h', 'flow', 'ambiguous-number', '1250 for the large number, 1.2500 for the small one'],
    ['1,250 L/h', 'flow', 'ambiguous-number', '1250 for the large number, 1.2500 for the small one'],
    ['16/22 mm', 'length', 'ambiguous-number', 'decimal'],
    ['12/16 mm', 'length', 'ambiguous-number', 'one decimal number in mm'],
    ['1 1/2 mm', 'length', 'ambiguous-number', 'one decimal number in mm'],
    ['80 mg/L', 'alkalinity', 'ambiguous-unit', 'mg/L CaCO3 or dKH'],
    ['80 mg/L Ca', 'alkalinity', 'unknown-basis', 'CaCO3'],
    ['0.35 ± 5 %', 'fraction', 'ambiguous-number', '0.35 % ± 5 %'],
    ['$12', 'money', 'ambiguous-unit', 'USD'],
    ['78 °', 'temperature', 'ambiguous-unit', '°C or °F'],
    ['5 m', 'time', 'ambiguous-unit', 'min or month'],
    ['10-12 mm', 'length', 'range', '11 ± 1 mm'],
    ['20 ppi', 'length', 'wrong-dimension', 'a length in mm'],
    ['11 VA', 'power', 'wrong-dimension', 'a power in W'],
    ['700 1/h', 'flow', 'wrong-dimension', 'L/h'],
    ['300 m2/g', 'specific-area', 'wrong-dimension', 'm2/m3'],
    ['4 L', 'mass', 'wrong-dimension', 'mg, g, kg'],
  ])('%s as %s', (text, dimension, code, allowed) => {
    const problem = problemOf(text, dimension);
    expect(problem.code).toBe(code);
    expect(problem.allowed).toContain(allowed);
    expect(problem.says).toContain(problem.allowed);
  });

  test('ammonium counted as NH4 or as N is not the same', () => {
    expect(siOf('2 mg/L NH4', 'concentration', { basis: 'N' })).toBeCloseTo(0.002 / 1.288, 6);
    expect(siOf('2 mg/L NH4-N', 'concentration', { basis: 'N' })).toBe(0.002);
    expect(problemOf('2 mg/L', 'concentration', { basis: 'N' }).code).toBe('ambiguous-unit');
  });

  test('a difference of 9 °F is 5 K, a temperature of 9 °F is not', () => {
    expect(siOf('9 °F', 'temperature-difference')).toBeCloseTo(5, 12);
    expect(siOf('9 °F', 'temperature')).toBeCloseTo(260.372, 3);
  });

  test('a fluid ounce is not an ounce', () => {
    expect(problemOf('4 US fl oz', 'mass').code).toBe('wrong-dimension');
    expect(siOf('4 oz', 'mass')).toBeCloseTo(0.1134, 4);
  });
});

describe('text that is no quantity', () => {
  test.each<[string | number, Dimension, string]>([
    ['', 'flow', 'empty'],
    ['  ', 'flow', 'empty'],
    ['many', 'flow', 'not-a-number'],
    ['NaN L', 'volume', 'not-a-number'],
    ['Infinity L', 'volume', 'not-a-number'],
    ['1.2.3 L', 'volume', 'not-a-number'],
    ['1,00,000 L', 'volume', 'not-a-number'],
    [Number.NaN, 'count', 'not-a-number'],
    [Number.POSITIVE_INFINITY, 'count', 'not-a-number'],
    ['1e31 L', 'volume', 'too-large'],
    ['1e999 L', 'volume', 'too-large'],
    [1e31, 'count', 'too-large'],
    ['600', 'flow', 'no-unit'],
    [600, 'flow', 'no-unit'],
    ['12 furlongs', 'length', 'unknown-unit'],
    ['12 mm', 'flow', 'wrong-dimension'],
    ['-300 °C', 'temperature', 'below-absolute-zero'],
    [`1${' '.repeat(300)}L`, 'volume', 'too-long'],
  ])('%s as %s', (text, dimension, code) => expect(problemOf(text, dimension).code).toBe(code));

  test('the nearest known unit is offered', () => {
    expect(problemOf('12 mn', 'length').says).toContain('perhaps mm');
    expect(problemOf('12 L/hh', 'flow').says).toContain('perhaps L/h');
  });

  test.each<[string, Dimension]>([
    ['1 pinch', 'mass-rate'],
    ['1 pinch', 'mass'],
    ['3 cups', 'length'],
  ])('no unit of another kind is offered for %s as %s', (text, dimension) =>
    expect(problemOf(text, dimension).says).not.toContain('perhaps'),
  );

  test.each<[string, Dimension, Allowed, string]>([
    ['12 m', 'length', { least: 0.002, most: 0.15 }, '(did you mean 12 mm?)'],
    ['180 m3', 'volume', { above: 0, most: 100, usualUnit: 'L' }, '(did you mean 180 L?)'],
    ['0.5 mm', 'length', { least: 0.002, most: 0.15 }, '(did you mean 0.5 cm?)'],
  ])('a unit in which %s would be within the bounds is asked after', (text, dimension, allowed, says) =>
    expect(problemOf(text, dimension, allowed).says).toContain(says),
  );

  test('no unit is asked after where none would do', () => {
    expect(problemOf('-12 mm', 'length', { least: 0 }).says).not.toContain('did you mean');
    expect(problemOf('900 km', 'length', { most: 0.15 }).says).not.toContain('did you mean');
  });

  test('of two diameters the bore is to be written', () => {
    expect(problemOf('16/22 mm', 'length').says).toContain('write the bore alone: 16 mm');
    expect(problemOf('1/2 mm', 'length').says).not.toContain('bore');
  });

  test('the message names both kinds', () => {
    expect(problemOf('12 mm', 'flow').says).toMatch(/is a length and a flow is needed/);
  });

  test.each<[string, Allowed, string, string]>([
    ['0.5 in', { least: 0.0254 }, 'below-least', '1 in or more'],
    ['20 in', { most: 0.254 }, 'above-most', '10 in or less'],
    ['0 in', { above: 0 }, 'not-above', 'more than 0 in'],
  ])('bounds are told in the unit written: %s', (text, allowed, code, says) => {
    const problem = problemOf(text, 'length', allowed);
    expect(problem.code).toBe(code);
    expect(problem.says).toContain(says);
  });

  test('a doubt that is no text is refused', () => {
    expect(readQuantityValue({ value: '1 W', doubt: [] }, 'power')).toMatchObject({ code: 'bad-doubt' });
  });

  test('bounds themselves are allowed', () => {
    expect(siOf('1 in', 'length', { least: 0.0254, most: 0.0254 })).toBe(0.0254);
  });

  test('no text makes it throw, and every problem is one sentence with a code', () => {
    const signs = fc.string({
      unit: fc.constantFrom(...'0123456789.,+-±×÷x*/ eE%"\'°CFLlhmgUSimpkW£$()½²µ'),
      maxLength: 30,
    });
    fc.assert(
      fc.property(fc.oneof(signs, fc.string()), fc.constantFrom(...dimensions), (text, dimension) => {
        const reading = readQuantity(text, dimension);
        if (reading.ok) {
          expect(Number.isFinite(reading.value)).toBe(true);
          expect(reading.doubt === undefined || reading.doubt.size > 0).toBe(true);
        } else {
          expect(reading.says.endsWith(`; allowed: ${reading.allowed}.`)).toBe(true);
        }
      }),
      { numRuns: 3000 },
    );
  });
});
