import { describe, expect, test } from 'vitest';
import { convertQuantity } from './convertQuantity.ts';

describe('converting a written quantity', () => {
  test.each([
    ['612 L/h', 'US gal/h', 161.673296],
    ['40 US gal', 'L', 151.41647136],
    ['40 imp gal', 'US gal', 48.037997],
    ['77 °F', '°C', 25],
    ['25 °C', '°F', 77],
    ['2 mg/L NH4', 'mg/L N', 1.5529686],
    ['1 mg/L N', 'mg/L NO3', 4.4266438],
    ['6 dKH', 'mg/L CaCO3', 107.088],
    ['6 dKH', 'ppm', 107.088],
    ['3 mg/g', '%', 0.3],
    ['4 GBP/L', 'GBP/US gal', 15.1416471],
    ['10 psi', 'mH2O', 7.0306958],
  ])('%s in %s', (text, to, expected) => {
    const converted = convertQuantity({ text, to });
    expect(converted.ok && converted.value).toBeCloseTo(expected, 6);
  });

  test('a difference of temperatures, and the doubt', () => {
    expect(convertQuantity({ text: '18 °F', to: '°C', difference: true })).toMatchObject({ value: 10 });
    const converted = convertQuantity({ text: '77 ± 1.8 °F', to: '°C' });
    expect(converted.ok && converted.doubt?.size).toBeCloseTo(1, 12);
    expect(convertQuantity({ text: '5 ×/÷ 2 m2/L', to: 'm2/m3' })).toMatchObject({
      value: 5000,
      doubt: { kind: 'factor', size: 2 },
    });
  });

  test('the unit says what a concentration is counted as', () => {
    expect(convertQuantity({ text: '6 dKH', to: 'mg/L' })).toMatchObject({ unit: 'mg/L CaCO3' });
  });

  test.each([
    ['10 gal', 'L', 'ambiguous-unit'],
    ['10 L', 'gal', 'ambiguous-unit'],
    ['10 L', 'kg', 'wrong-dimension'],
    ['2 mg/L', 'mg/L N', 'ambiguous-unit'],
    ['2 mg/L N', 'mg/L CaCO3', 'unknown-basis'],
    ['4 GBP/L', 'EUR/L', 'wrong-dimension'],
    ['4 L', 'fot', 'unknown-unit'],
    ['4 L', 'x'.repeat(300), 'too-long'],
    ['4 L', 'kg2', 'wrong-dimension'],
  ])('%s in %s is refused', (text, to, code) => {
    expect(convertQuantity({ text, to })).toMatchObject({ ok: false, code });
  });
});
