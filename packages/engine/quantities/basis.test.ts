import { describe, expect, test } from 'vitest';
import { convertBasis, germanDegreeKgPerM3, molarMass, readBasis } from './basis.ts';

describe('what a concentration is counted as', () => {
  // Ratios as usually printed. For NO2 3.285 is also in print: atomic weights before 2021 to four decimals
  // (N 14.0067, O 15.9994) give 3.2845, which rounds up; today's abridged ones give 3.2844.
  test.each([
    ['NH3', '1.216'],
    ['NH4', '1.288'],
    ['NO2', '3.284'],
    ['NO3', '4.427'],
  ] as const)('1 mg of N is that many mg of %s: %s', (to, printed) => {
    expect(convertBasis({ value: 1, from: 'N', to })!.toFixed(3)).toBe(printed);
  });

  test('one German degree is what 10 mg/L of CaO bind, as CaCO3', () => {
    const calciumOxide = molarMass.CaCO3 - 12.011 - 2 * 15.999;
    expect((0.01 * molarMass.CaCO3) / calciumOxide).toBeCloseTo(germanDegreeKgPerM3, 7);
  });

  test('nitrogen and hardness do not convert into each other', () => {
    expect(convertBasis({ value: 1, from: 'N', to: 'CaCO3' })).toBeUndefined();
    expect(convertBasis({ value: 1, from: 'CaCO3', to: 'NH3' })).toBeUndefined();
    expect(convertBasis({ value: 3, from: 'CaCO3', to: 'CaCO3' })).toBe(3);
  });

  test.each([
    ['NH4-N', 'N'],
    ['TAN', 'N'],
    ['NO3-', 'NO3'],
    ['Ca', undefined],
    ['constructor', undefined],
  ])('%s is %s', (text, basis) => expect(readBasis(text)).toBe(basis));
});
