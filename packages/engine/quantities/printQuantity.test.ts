import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dimension } from './dimensions.ts';
import { dimensions } from './dimensions.ts';
import type { Printable } from './printQuantity.ts';
import { printBoth, printQuantity } from './printQuantity.ts';
import { readQuantity } from './readQuantity.ts';

const litrePerHour = 1e-3 / 3600;

describe('printing', () => {
  test.each<[Printable, string]>([
    [{ value: 612 * litrePerHour, dimension: 'flow' }, '612 L/h (162 US gal/h)'],
    [
      {
        value: 612 * litrePerHour,
        dimension: 'flow',
        doubt: { kind: 'plus-minus', size: 12 * litrePerHour },
      },
      '612 ± 12 L/h (162 ± 3 US gal/h)',
    ],
    [
      { value: 612 * litrePerHour, dimension: 'flow', low: 590 * litrePerHour, high: 634 * litrePerHour },
      '612 L/h (162 US gal/h), 590 to 634 L/h (156 to 167 US gal/h)',
    ],
    [{ value: 298.15, dimension: 'temperature' }, '25.0 °C (77.0 °F)'],
    [{ value: 5, dimension: 'temperature-difference' }, '5.00 °C (9.00 °F)'],
    [{ value: 0.0004, dimension: 'volume' }, '400 mL (13.5 US fl oz)'],
    [{ value: 0.25, dimension: 'volume' }, '250 L (66.0 US gal)'],
    [{ value: 12, dimension: 'volume' }, '12.0 m3 (3170 US gal)'],
    [{ value: 0.016, dimension: 'length' }, '16.0 mm (0.630 in)'],
    [{ value: 1.3, dimension: 'length' }, '1.30 m (4.27 ft)'],
    [{ value: 0.107088, dimension: 'alkalinity' }, '6.00 dKH (107 ppm CaCO3)'],
    [{ value: 9.5, dimension: 'power' }, '9.50 W'],
    [{ value: 0.35, dimension: 'fraction', low: 0.3, high: 0.4 }, '35 % (30 to 40)'],
    [{ value: 4000, dimension: 'price-per-volume', currency: 'GBP' }, '4.00 GBP/L (15.1 GBP/US gal)'],
    [{ value: 1234.5, dimension: 'money', currency: 'EUR' }, '1234.50 EUR'],
    [{ value: 0, dimension: 'flow' }, '0 L/h (0 US gal/h)'],
  ])('%j', (printable, text) => expect(printBoth(printable)).toBe(text));

  test.each<[Printable, string]>([
    [{ value: 280, dimension: 'specific-area', doubt: { kind: 'factor', size: 2 } }, '280 ×/÷ 2 m2/m3'],
    [{ value: 9.4961, dimension: 'power', doubt: { kind: 'plus-minus', size: 0.52 } }, '9.5 ± 0.5 W'],
    [{ value: 9.4961, dimension: 'power', doubt: { kind: 'plus-minus', size: 0.0996 } }, '9.50 ± 0.10 W'],
    // Not 600 ± 100 beside 168 ± 25 US gal/h: a doubt that rounds up to a power of ten keeps its place.
    [{ value: 1.7667e-4, dimension: 'flow', doubt: { kind: 'plus-minus', size: 2.65e-5 } }, '640 ± 100 L/h'],
    [{ value: 0.35, dimension: 'fraction', doubt: { kind: 'plus-minus', size: 0.05 } }, '35 % ± 5 %'],
    [{ value: 40, dimension: 'power', doubt: { kind: 'plus-minus', size: 2.5 } }, '40.0 ± 2.5 W'],
    [{ value: 4000, dimension: 'price-per-volume' }, '4.00 /L'],
    [{ value: 3, dimension: 'money' }, '3.00'],
    [{ value: 9.996, dimension: 'power' }, '10.0 W'],
    [{ value: 1.234, dimension: 'mass', doubt: { kind: 'plus-minus', size: 0.005 } }, '1.234 ± 0.005 kg'],
    [{ value: 2.5e9, dimension: 'flow-resistance' }, '2.50e9 s2/m5'],
    [
      { value: -0.0001, dimension: 'temperature-difference', doubt: { kind: 'plus-minus', size: 1 } },
      '0.0 ± 1.0 °C',
    ],
  ])('%j in metric units', (printable, text) => {
    expect(printQuantity({ ...printable, system: 'metric' })).toBe(text);
  });

  test('each system is rounded from the value itself, not from the other text', () => {
    // 1.06 L/h prints as 1.06 and is 0.2800 US gal/h; 1.0645 L/h also prints as 1.06 and is 0.281.
    expect(printBoth({ value: 1.0645 * litrePerHour, dimension: 'flow' })).toBe('1.06 L/h (0.281 US gal/h)');
  });
});

const spans: Partial<Record<Dimension, readonly [number, number]>> = {
  temperature: [270, 320],
  fraction: [0.001, 1],
  count: [1, 1e6],
};

describe('what is printed can be read back', () => {
  test.each(dimensions.filter((each) => each !== 'money'))('%s', (dimension) => {
    const [min, max] = spans[dimension] ?? [1e-6, 1e6];
    const currency = dimension.startsWith('price-') ? { currency: 'GBP' } : {};
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }),
        fc.double({ min: -3, max: -0.3, noNaN: true }),
        fc.constantFrom('none', 'plus-minus', 'factor' as const),
        fc.constantFrom('metric', 'us' as const),
        (logarithm, share, kind, system) => {
          const value = Math.exp(logarithm);
          const width = (dimension === 'temperature' ? 10 : value) * 10 ** share;
          const doubt =
            kind === 'factor' && dimension !== 'temperature'
              ? { doubt: { kind, size: 1 + 10 ** share } as const }
              : kind === 'plus-minus'
                ? { doubt: { kind, size: width } as const }
                : {};
          const text = printQuantity({ value, dimension, system, ...doubt, ...currency });
          const reading = readQuantity(text, dimension);
          if (!reading.ok) throw new Error(`${text}: ${reading.says}`);
          const lost = 'doubt' in doubt ? width : value * 0.0051;
          expect(Math.abs(reading.value - value)).toBeLessThanOrEqual(lost);
          expect(reading.doubt?.kind).toBe('doubt' in doubt ? doubt.doubt.kind : undefined);
          if (reading.doubt && 'doubt' in doubt) {
            // The doubt keeps at least one digit: 3.5 may be printed as 4, which is within a sixth.
            expect(reading.doubt.size / doubt.doubt.size).toBeGreaterThan(0.8);
            expect(reading.doubt.size / doubt.doubt.size).toBeLessThan(1.2);
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});
