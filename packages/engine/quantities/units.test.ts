import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dimensionFacts, dimensions } from './dimensions.ts';
import { fromSi, readUnit, toSi, unitFits, unitOf } from './units.ts';
import { unitTable } from './unitTable.ts';

const unitMath: (text: string) => { to(unit: string): { value: number } } = createRequire(import.meta.url)(
  'unitmath/dist/UnitMath.js',
);

const usual = dimensions.flatMap((dimension) =>
  dimensionFacts[dimension].usual.map((spelled) => ({ dimension, spelled })),
);

function relative(value: number, expected: number): number {
  return Math.abs(value / expected - 1);
}

describe('factors against NIST SP 811 (2008), appendix B.8, seven digits, from memory', () => {
  test.each([
    ['US gal', '3.785412e-3'],
    ['imp gal', '4.54609e-3'],
    ['US fl oz', '2.957353e-5'],
    ['imp fl oz', '2.841306e-5'],
    ['US pt', '4.731765e-4'],
    ['US qt', '9.463529e-4'],
    ['US cup', '2.365882e-4'],
    ['ft3', '2.831685e-2'],
    ['in3', '1.638706e-5'],
    ['ft3/min', '4.719474e-4'],
    ['US gal/min', '6.309020e-5'],
    ['psi', '6.894757e3'],
    ['inH2O', '2.490889e2'],
    ['ftH2O', '2.989067e3'],
    ['mmH2O', '9.80665'],
    ['lb', '4.535924e-1'],
    ['oz', '2.834952e-2'],
    ['lb/ft3', '1.601846e1'],
    ['lb/US gal', '1.198264e2'],
    ['oz/US gal', '7.489152'],
    ['ft/s', '3.048e-1'],
    ['kWh', '3.6e6'],
    ['cP', '1e-3'],
  ])('%s is %s in SI', (spelled, printed) => {
    const digits = printed.split('e')[0]!.replace('.', '').length;
    const half = (0.5 * 10 ** (1 - digits)) / Number(printed.split('e')[0]);
    expect(relative(unitOf(spelled).factor, Number(printed))).toBeLessThanOrEqual(Math.max(half, 1e-15));
  });
});

describe('factors against an independent library', () => {
  test.each([
    ['US gal', 'gal', 'm^3'],
    ['US fl oz', 'floz', 'm^3'],
    ['US pt', 'pint', 'm^3'],
    ['US qt', 'quart', 'm^3'],
    ['US cup', 'cup', 'm^3'],
    ['mL', 'mL', 'm^3'],
    ['L/h', 'L/hr', 'm^3/s'],
    ['US gal/h', 'gal/hr', 'm^3/s'],
    ['ft3/min', 'ft^3/minute', 'm^3/s'],
    ['in', 'in', 'm'],
    ['ft', 'ft', 'm'],
    ['ft2', 'ft^2', 'm^2'],
    ['in3', 'in^3', 'm^3'],
    ['lb', 'lbm', 'kg'],
    ['oz', 'oz', 'kg'],
    ['psi', 'psi', 'Pa'],
    ['bar', 'bar', 'Pa'],
    ['atm', 'atm', 'Pa'],
    ['kWh', 'kWh', 'J'],
    ['lb/ft3', 'lbm/ft^3', 'kg/m^3'],
    ['week', 'week', 's'],
    ['month', 'month', 's'],
    ['a', 'year', 's'],
    ['mPa.s', 'mPa s', 'Pa s'],
    ['cm/min', 'cm/minute', 'm/s'],
    ['m2/US gal', 'm^2/gal', 'm^-1'],
  ])('%s', (ours, theirs, si) => {
    expect(relative(unitOf(ours).factor, unitMath(`1 ${theirs}`).to(si).value)).toBeLessThan(1e-14);
  });

  test.each([-40, 0, 32, 77, 98.6])('%s °F', (number) => {
    const ours = toSi(number, unitOf('°F'), 'temperature');
    expect(relative(ours, unitMath(`${number} degF`).to('K').value)).toBeLessThan(1e-14);
  });
});

describe('every usual unit', () => {
  test('there are many of them', () => expect(usual.length).toBeGreaterThan(120));

  test.each(usual)('$spelled measures $dimension', ({ dimension, spelled }) => {
    const reading = readUnit(spelled);
    expect(reading.ok && unitFits(reading.unit, dimension)).toBe(true);
  });

  test.each(usual)('$spelled ($dimension) goes to SI and back', ({ dimension, spelled }) => {
    const unit = unitOf(spelled);
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
        fc.constantFrom(1, -1),
        (magnitude, sign) => {
          const number = sign * magnitude;
          const back = fromSi(toSi(number, unit, dimension), unit, dimension);
          const size = dimension === 'temperature' ? Math.abs(number) + 500 : Math.abs(number);
          expect(Math.abs(back - number)).toBeLessThanOrEqual(1e-12 * size);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('spellings', () => {
  test('no spelling stands for two units', () => {
    const all = unitTable.flatMap(({ spelled, aliases }) => [spelled, ...aliases]);
    expect(new Set(all).size).toBe(all.length);
  });

  test.each([
    ['lph', 'L/h'],
    ['l/hr', 'L/h'],
    ['Litres per hour', 'L/h'],
    ['L·h⁻¹', 'L.h-1'],
    ['m³/h', 'm3/h'],
    ['m^3/h', 'm3/h'],
    ['US gph', 'US gal/h'],
    ['GPH (US)', 'US gal/h'],
    ['gph us', 'US gal/h'],
    ['GPH (UK)', 'imp gal/h'],
    ['gpm (imp)', 'imp gal/min'],
    ['U.S. gal./hr', 'US gal/h'],
    ['gal (US) / h', 'US gal/h'],
    ['Imp. gal/h', 'imp gal/h'],
    ['UK gallons', 'imp gal'],
    ['“', 'in'],
    ['″', 'in'],
    ['′', 'ft'],
    ['℃', '°C'],
    ['deg C', '°C'],
    ['KG', 'kg'],
    ['mPa·s', 'mPa.s'],
    ['Pa s', 'Pa.s'],
    ['h-1', 'h-1'],
    ['per hour', '1/h'],
    ['/h', '1/h'],
    ['ppm CaCO3', 'ppm CaCO3'],
    ['mg/L as CaCO3', 'mg/L CaCO3'],
    ['mg N/L', 'mg/L N'],
    ['mg/l NO3-N', 'mg/L N'],
    ['£/kWh', 'GBP/kWh'],
  ])('%s is read as %s', (typed, spelled) => {
    const reading = readUnit(typed);
    expect(reading.ok && reading.unit.spelled).toBe(spelled);
  });

  test.each(['MW', 'MG/L', 'ML', 'furlong', 'L//h', 'm-', 'constructor', '__proto__', 'toString/h'])(
    '%s is not guessed at',
    (typed) => {
      expect(readUnit(typed)).toMatchObject({ ok: false, why: 'unknown' });
    },
  );
});
