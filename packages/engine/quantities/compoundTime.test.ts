import { describe, expect, test } from 'vitest';
import { readQuantity } from './readQuantity.ts';

const seconds = (text: string, clock = false): number | string => {
  const reading = readQuantity(text, 'time', clock ? { clock } : {});
  return reading.ok ? reading.value : reading.code;
};

describe('a time in parts', () => {
  test.each([
    ['1 min 2 s', 62],
    ['1min 2s', 62],
    ['1 minute and 2.5 seconds', 62.5],
    ['1 min 2,5 s', 62.5],
    ['1 h 30 min', 5400],
    ['1 hour 0 min', 3600],
    ['2 h 1 min 3 s', 7263],
    ['90 min 5 s', 5405],
  ])('%s is %d s', (text, value) => expect(seconds(text)).toBeCloseTo(value, 9));

  test('keeps its doubt, its own words and the unit of its last part', () => {
    expect(readQuantity('1 min 2 s ± 0.5 s', 'time')).toMatchObject({
      value: 62,
      doubt: { kind: 'plus-minus', size: 0.5 },
      unit: 's',
      written: '1 min 2 s ± 0.5 s',
    });
    expect(readQuantity('1 h 30 min ± 5 %', 'time')).toMatchObject({ value: 5400, doubt: { size: 270 } });
  });

  test.each(['1 min 75 s', '1.5 min 2 s', '1 h 5 s', '2 s 1 min', '1 min 2 min'])(
    '%s does not go together, and says what does',
    (text) => {
      const reading = readQuantity(text, 'time');
      expect(reading).toMatchObject({ ok: false, code: 'ambiguous-number' });
      expect(reading.ok ? '' : reading.says).toContain('1 min 2 s');
    },
  );

  test('in which a number may mean two things is asked about as ever', () => {
    expect(seconds('1 min 2.345 s')).toBe('ambiguous-number');
  });

  test('is none of metres, and is bounded like any other', () => {
    expect(seconds('1 m 2 s')).not.toBe(62);
    expect(readQuantity('1 min 2 s', 'length')).toMatchObject({ ok: false });
    expect(readQuantity('2 min 1 s', 'time', { most: 120 })).toMatchObject({ code: 'above-most' });
  });
});

describe('minutes and seconds as a clock shows them', () => {
  test('are read where only a filling can be meant', () => {
    expect([seconds('1:02', true), seconds('0:31.2', true)]).toEqual([62, 31.2]);
    expect(readQuantity('1:02 ± 0.3 s', 'time', { clock: true })).toMatchObject({ doubt: { size: 0.3 } });
    expect(seconds('1:75', true)).toBe('ambiguous-number');
  });

  test('may be hours elsewhere, and are not read', () => {
    expect(seconds('1:02')).not.toBe(62);
    expect(readQuantity('1:02', 'time').ok).toBe(false);
  });

  test.each([
    ['1:2', true],
    ['1:02 min', true],
    ['1:02:03', true],
    ['1:30', false],
    ['1:02 h', false],
  ])('%s is no unknown unit: it is told how a time is written', (text, clock) => {
    const reading = readQuantity(text, 'time', { clock });
    if (reading.ok) throw new Error('it has a colon');
    expect(reading.says).toContain('colon');
    expect(reading.says).toContain('1 min 2 s');
    expect(reading.says).not.toContain('unit that we know');
    expect(reading.says.includes('1:02 with two figures')).toBe(clock);
  });
});
