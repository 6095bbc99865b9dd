import { describe, expect, it } from 'vitest';
import { safeValue } from './values.ts';

describe('a value for the database', () => {
  it('is taken as it is where every driver takes it', () => {
    for (const value of ['', 'Überlauf 🐟', 0, -1.5, 1e300, Number.POSITIVE_INFINITY, 12n, null])
      expect(safeValue(value)).toBe(value);
  });

  it('is put into a form that every driver takes, where one of them would not', () => {
    expect(safeValue(undefined)).toBeNull();
    expect([safeValue(true), safeValue(false)]).toEqual([1, 0]);
    expect(safeValue('lo\0ud\0')).toBe('lo\ufffdud\ufffd');
  });

  it('is the part of a buffer that was meant, not the memory behind it', () => {
    const whole = Uint8Array.from([1, 2, 3, 4, 5]);
    expect(safeValue(whole.subarray(1, 3))).toEqual(Buffer.from([2, 3]));
    expect(safeValue(Buffer.from('ab'))).toEqual(Buffer.from('ab'));
  });

  it('is refused where it has no place in a database', () => {
    expect(() => safeValue(Number.NaN)).toThrow('NaN cannot be stored');
    for (const value of [new Date(0), {}, [], Symbol('s'), () => 1, new Float64Array(1), new ArrayBuffer(1)])
      expect(() => safeValue(value)).toThrow(/^\[object \w+\] cannot be stored$/);
  });
});
