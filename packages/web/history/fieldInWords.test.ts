import { describe, expect, test } from 'vitest';
import { fieldInWords } from './fieldInWords.ts';

const job = {
  fettle: 1,
  tank: { volume: '180 L' },
  filter: { family: 'basket-stack-canister', measurements: { wallGap: '2 mm' } },
  packing: { 'basket-1': [{ medium: 'floss', depth: '20 mm' }] },
  tests: [{ kind: 'timed-volume', volume: '5 L', times: ['31 s'] }],
};

describe('a field in words', () => {
  test.each([
    ['tank.volume', 'Tank: net water volume'],
    ['filter.measurements.wallGap', 'Filter: measurements, '],
    ['filter.hoses.intake.barbBore', 'Filter: hoses, intake, inner diameter of the barbs at its ends'],
    ['packing.basket-1[0].depth', 'Packing: basket 1, bed 1, extent along the chamber'],
    ['packing.basket-1', 'Packing: basket 1$'],
    ['planned.packing.basket-1[1]', 'Planned: basket 1, bed 2'],
    ['tests[0].times[2]', 'Bench test 1: run 3'],
    ['', 'The whole record'],
    ['asLeft', 'As left'],
  ])('%s is “%s”', (path, says) => {
    expect(fieldInWords(job, path)).toMatch(new RegExp(`^${says}`));
  });
});
