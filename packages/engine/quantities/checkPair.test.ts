import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPair } from './checkPair.ts';
import { unitOf } from './units.ts';

describe('two ways of writing one figure', () => {
  test.each([
    ['620 L/h', '164 US gal/h', true, 'same'],
    ['740 L/h', '163 imp gal/h', true, 'same'],
    ['1.3 m', '4.3 ft', true, 'same'],
    ['3.1 kg', '6.8 lb', true, 'same'],
    ['5/8 in', '16 mm', true, 'same'],
    ['1/2 in', '12 mm', false, 'digit-slip'],
    ['25 °C', '77 °F', true, 'same'],
    ['9.5 ± 0.5 W', '10.0 W', true, 'same'],
    ['600 L/h', '10 L/min', true, 'same'],
    ['0 L', '0 US gal', true, 'same'],
    ['620 L/h', '136 US gal/h', false, 'imperial-gallon'],
    ['136 US gal/h', '620 L/h', false, 'imperial-gallon'],
    ['620 L/h', '164 imp gal/h', false, 'us-gallon'],
    ['310 L', '68 US gal', false, 'imperial-gallon'],
    ['620 L/h', '146 US gal/h', false, 'swapped-digits'],
    ['260 L/h', '164 US gal/h', false, 'swapped-digits'],
    ['1.83 m', '0.6 ft', false, 'factor-ten'],
    ['620 L/h', '1640 US gal/h', false, 'factor-ten'],
    ['62 L/h', '164 US gal/h', false, 'factor-ten'],
    ['1475 L/h', '390 US gal/h', true, 'same'],
    ['145 L/h', '390 US gal/h', false, 'factor-ten'],
    ['620 L/h', '174 US gal/h', false, 'digit-slip'],
    ['600 L/h', '600 L/min', false, 'factor-sixty'],
    ['1.3 m', '1.3 ft', false, 'not-converted'],
    ['5000 L', '1325 US gal', false, 'rounded-factor'],
    ['620 L/h', '155 US gal/h', false, 'unrelated'],
  ])('%s and %s', (a, b, agrees, likely) => {
    expect(checkPair(a, b)).toMatchObject({ ok: true, agrees, likely });
  });

  test.each([
    ['620 L/h', '164 gal/h', 'us-gallon', '164 US gal/h'],
    ['620 L/h', '136 gph', 'imperial-gallon', '136 imp gal/h'],
    ['40 gal', '151 L', 'us-gallon', '40 US gal'],
    ['1,000 L/h', '264 US gal/h', 'same', '1000 L/h'],
    ['1.000 L/h', '220 gph', 'imperial-gallon', '1000 L/h and 220 imp gal/h'],
  ])('%s and %s: what fits is said and not taken for agreement', (a, b, likely, fits) => {
    expect(checkPair(a, b)).toMatchObject({ ok: true, agrees: false, likely, fits });
  });

  test('where no gallon fits, neither is named', () => {
    const check = checkPair('620 L/h', '155 gal/h');
    expect(check).toMatchObject({ ok: true, agrees: false, likely: 'unrelated' });
    expect(check).not.toHaveProperty('fits');
  });

  test('the ratio is that of the two in SI', () => {
    const check = checkPair('620 L/h', '136 US gal/h');
    expect(check.ok && check.ratio).toBeCloseTo(620 / (136 * 3.785411784), 12);
  });

  test.each([
    ['620 L/h', '12 W', 'wrong-dimension'],
    ['2 mg/L N', '2 mg/L NH4', 'wrong-dimension'],
    ['4 GBP/L', '4 EUR/L', 'wrong-dimension'],
    ['x', '1 L', 'not-a-number'],
    ['1 L', '1 quux', 'unknown-unit'],
    ['1 L', '0 US gal', 'below-least'],
  ])('%s and %s cannot be held against each other', (a, b, code) => {
    expect(checkPair(a, b)).toMatchObject({ ok: false, code });
  });

  test('a figure converted and rounded to whole numbers agrees, either way round', () => {
    const pairs = fc.constantFrom(
      ['L/h', 'US gal/h'],
      ['L', 'imp gal'],
      ['mm', 'in'],
      ['kg', 'lb'],
      ['m', 'ft'],
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), pairs, (number, [from = '', to = '']) => {
        const converted = (number * unitOf(from).factor) / unitOf(to).factor;
        const [a, b] = [`${number} ${from}`, `${converted.toFixed(2)} ${to}`];
        expect(checkPair(a, b)).toMatchObject({ agrees: true, likely: 'same' });
        expect(checkPair(b, a)).toMatchObject({ agrees: true, likely: 'same' });
      }),
    );
  });

  test('a pair more than the rounding apart never agrees', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 9999 }),
        fc.double({ min: 1.03, max: 9, noNaN: true }),
        (n, off) => {
          const gallons = Math.round((n * off) / 3.785411784);
          expect(checkPair(`${n} L`, `${gallons} US gal`)).toMatchObject({ agrees: false });
        },
      ),
    );
  });

  test('a figure with more decimals than anybody writes is held all the same', () => {
    expect(checkPair('1 L/h', '1e-308 US gal/h')).toMatchObject({ ok: true, agrees: false });
  });
});
