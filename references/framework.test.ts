import { describe, expect, test } from 'vitest';
import { type Case, readFolder } from './cases.ts';
import { compare } from './compare.ts';
import { adapter, type Registry } from './registry/adapter.ts';
import { printedToSi, readPrinted } from './units.ts';

const laws: Registry = {
  double: adapter({
    inputs: { lengthM: 'm', times: '1' },
    defaults: { times: 2 },
    result: 'm',
    compute: ({ lengthM, times }) => lengthM * times,
  }),
};

const plain: Case = {
  id: 'a',
  law: 'double',
  where: 'p. 1',
  kind: 'printed',
  inputs: { lengthM: '12.5 mm' },
  expected: '25.0 mm',
};

const source = { citation: 'A book', seen: 'printed' };

describe('a printed quantity', () => {
  test.each([
    ['0.0172', 0.0172, 0.00005],
    ['96.5 kPa', 96.5, 0.05],
    ['1.903e-5 m3/s', 1.903e-5, 0.5e-8],
    ['17 mg/L', 17, 0.5],
    ['-3 °C', -3, 0.5],
  ])('%s is good for half a unit of its last digit', (text, number, halfDigit) => {
    const printed = readPrinted(text);
    expect(printed.number).toBe(number);
    expect(printed.halfDigit).toBeCloseTo(halfDigit, 15);
  });

  test.each([
    ['20 °C', 'K', 293.15],
    ['50 g', 'kg', 0.05],
    ['45 %', '', 0.45],
    ['1 atm', 'Pa', 101_325],
    ['2.5 mol/L', 'mol/m3', 2500],
  ])('%s is read in SI', (text, unit, value) => {
    expect(printedToSi(text, unit)).toBeCloseTo(value, 12);
  });

  test.each([
    ['1,000 L', 'm3', 'not a printed number'],
    ['5 mm', 'kg', 'does not measure'],
    ['5 parsnips', 'm', 'not a unit'],
  ])('%s is refused', (text, unit, why) => {
    expect(() => printedToSi(text, unit)).toThrow(why);
  });
});

describe('a case', () => {
  test('agrees within half a unit of the last printed digit', () => {
    expect(compare(plain, laws)).toMatchObject({ agrees: true, unit: 'mm' });
    expect(compare({ ...plain, expected: '25.05 mm' }, laws).agrees).toBe(false);
    expect(compare({ ...plain, inputs: { lengthM: '12.53 mm' } }, laws).agrees).toBe(false);
  });

  test('is allowed more where it says so, in per cent of the print or in its unit', () => {
    const wide = { ...plain, expected: '26.0 mm' };
    expect(compare(wide, laws).agrees).toBe(false);
    expect(compare({ ...wide, tolerance: { size: '4 %', reason: 'r' } }, laws).agrees).toBe(true);
    expect(compare({ ...wide, tolerance: { size: '3 %', reason: 'r' } }, laws).agrees).toBe(false);
    expect(compare({ ...wide, tolerance: { size: '1 mm', reason: 'r' } }, laws).agrees).toBe(true);
    expect(() => compare({ ...wide, tolerance: { size: '1 cm', reason: 'r' } }, laws)).toThrow('tolerance');
  });

  test.each([
    ['an unknown law', { law: 'triple' }, 'No law'],
    ['an input that the law does not have', { inputs: { lengthM: '1 m', breadthM: '1 m' } }, 'breadthM'],
    ['an input left out', { inputs: { times: '2' } }, 'lengthM'],
    ['an input of another kind', { inputs: { lengthM: '1 kg' } }, 'does not measure'],
    ['a result of another kind', { expected: '25 kg' }, 'does not give'],
  ])('with %s is a mistake', (_what, change, message) => {
    expect(() => compare({ ...plain, ...change }, laws)).toThrow(message);
  });
});

describe('a folder of a source', () => {
  test('is read', () => {
    expect(readFolder('book', source, [plain])).toEqual([{ ...plain, folder: 'book', source }]);
  });

  test.each([
    ['a source without its citation', { seen: 'printed' }, [plain]],
    ['a source that nobody saw', { ...source, seen: 'guessed' }, [plain]],
    ['a misspelt key', source, [{ ...plain, tolerence: { size: '1 %', reason: 'r' } }]],
    ['a tolerance without its reason', source, [{ ...plain, tolerance: { size: '1 %' } }]],
    ['a tolerance with an empty reason', source, [{ ...plain, tolerance: { size: '1 %', reason: ' ' } }]],
    ['a dispute without its argument', source, [{ ...plain, disputed: '' }]],
    ['a kind of its own', source, [{ ...plain, kind: 'wished' }]],
    ['inputs as bare numbers', source, [{ ...plain, inputs: { lengthM: 3 } }]],
  ])('with %s is refused', (_what, badSource, cases) => {
    expect(() => readFolder('book', badSource, cases)).toThrow('book/');
  });
});
