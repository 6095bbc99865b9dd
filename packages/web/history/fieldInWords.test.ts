import { describe, expect, test } from 'vitest';
import { fieldInWords, valueInWords } from './fieldInWords.ts';

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

describe('a value in words', () => {
  test('of a bed and of a list names each part once, without brackets', () => {
    expect(valueInWords(job.packing['basket-1'])).toBe('medium floss, depth 20 mm');
    expect(valueInWords(['31 s', '32 s'])).toBe('31 s; 32 s');
  });

  test('that the history has cut short is not shown as the machine writes it', () => {
    expect(valueInWords('{"packing":{"basket-1":[{"medium":"flo…')).toMatch(/look at the revision/);
    expect(valueInWords('[owner] rang twice…')).toBe('[owner] rang twice…');
  });

  test('that is long ends with a whole word', () => {
    const words =
      'the gap over the second basket is wide enough for a thumb and was stuffed with floss that has come loose '.repeat(
        2,
      );
    const said = valueInWords(words);
    expect(said).toMatch(/ …$/);
    expect(said.length).toBeLessThanOrEqual(121);
    expect(words.startsWith(`${said.slice(0, -2)} `)).toBe(true);
  });

  test('says so where there was nothing, and yes or no', () => {
    expect([valueInWords(undefined), valueInWords([]), valueInWords(true)]).toEqual([
      'nothing',
      'empty',
      'yes',
    ]);
  });
});
