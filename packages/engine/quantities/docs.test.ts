import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dimensionFacts, dimensions } from './dimensions.ts';
import { readQuantity } from './readQuantity.ts';
import { readUnit, unitFits } from './units.ts';
import { unitTable } from './unitTable.ts';

const page = readFileSync(new URL('../../../docs/quantities.md', import.meta.url), 'utf8');

/** Rows of the table under a heading, as cells. */
function rowsUnder(heading: string): readonly (readonly string[])[] {
  const section = page.split(/^#+ /m).find((each) => each.startsWith(heading)) ?? '';
  const lines = section.split('\n').filter((line) => line.startsWith('| '));
  return lines.slice(2).map((line) => line.slice(2, -2).split(' | '));
}

const inCode = (cell = '') => [...cell.matchAll(/`([^`]+)`/g)].map(([, text = '']) => text);

describe('the page on quantities', () => {
  test('lists the usual units of every kind, all of them understood', () => {
    const rows = rowsUnder('Units by kind');
    expect(rows.map(([kind]) => kind)).toEqual(dimensions);
    for (const dimension of dimensions) {
      const units = inCode(rows.find(([kind]) => kind === dimension)?.[1]);
      expect(units).toEqual(dimensionFacts[dimension].usual);
      for (const unit of units) {
        const reading = readUnit(unit);
        expect(reading.ok && unitFits(reading.unit, dimension), unit).toBe(true);
      }
    }
  });

  test('lists every unit with its spellings', () => {
    const rows = rowsUnder('Units one by one');
    for (const { spelled, aliases } of unitTable)
      expect(inCode(rows.find(([unit]) => unit === `\`${spelled}\``)?.[1]), spelled).toEqual(aliases);
    for (const [unit, others] of rows)
      for (const other of inCode(others)) {
        const [one, two] = [readUnit(inCode(unit)[0] ?? ''), readUnit(other)];
        expect(one.ok && two.ok && one.unit.factor === two.unit.factor, other).toBe(true);
      }
  });

  test('shows only what can be read, and asks where it says so', () => {
    const anyReading = (text: string) =>
      dimensions.map((each) => readQuantity(text, each, each === 'concentration' ? { basis: 'N' } : {}));
    for (const [written] of rowsUnder('How quantities are written'))
      for (const text of inCode(written))
        expect(
          anyReading(text).some(({ ok }) => ok),
          text,
        ).toBe(true);
    const rows = rowsUnder('What is asked about');
    expect(rows.length).toBeGreaterThan(5);
    for (const [, , instead] of rows)
      for (const text of inCode(instead))
        expect(
          anyReading(text).some(({ ok }) => ok),
          text,
        ).toBe(true);
    const asked = new Set(['ambiguous-unit', 'ambiguous-number', 'range']);
    for (const [written] of rows)
      for (const text of inCode(written)) {
        const codes = anyReading(text).map((each) => (each.ok ? 'ok' : each.code));
        expect(
          codes.some((code) => asked.has(code)),
          text,
        ).toBe(true);
      }
  });
});
