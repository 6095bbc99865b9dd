import { describe, expect, it } from 'vitest';
import { compiledJob } from '../testing/compiled.ts';
import { stackCanister } from '../testing/models.ts';
import { bedsNamed, patternText, readPattern, unknownPlaces } from './pattern.ts';

describe('a pattern of cleaning', () => {
  it.each([
    ['never', 'never'],
    [' usual ', 'usual'],
    ['all/90', 'all/90'],
    ['mechanical/30,all/90', 'mechanical/30, all/90'],
    ['basket-1/30 , foam-20ppi/7', 'basket-1/30, foam-20ppi/7'],
    ['basket-1/2/30', 'basket-1/2/30'],
    ['flow 25 %', 'flow 25 %'],
    ['flow 12.5%', 'flow 12.5 %'],
  ])('%j is read, and written as it is read again', (text, written) => {
    const reading = readPattern(text);
    expect(reading.ok && patternText(reading.pattern)).toBe(written);
  });

  it.each([
    ['', ''],
    ['sometimes', 'sometimes'],
    ['all', 'all'],
    ['all/0', 'all/0'],
    ['all/731', 'all/731'],
    ['all/1.5', 'all/1.5'],
    ['all/90, /30', '/30'],
    ['flow', ''],
    ['flow 0 %', '0 %'],
    ['flow 100 %', '100 %'],
    [
      Array.from({ length: 21 }, () => 'all/9').join(','),
      Array.from({ length: 21 }, () => 'all/9').join(','),
    ],
  ])('%j is none, and what of it says nothing is told', (text, found) => {
    expect(readPattern(text)).toEqual({ ok: false, found });
  });

  const canister = compiledJob(stackCanister());

  it.each([
    ['all', ['basket-1/1', 'basket-2/1', 'basket-3/1']],
    ['mechanical', ['basket-1/1', 'basket-3/1']],
    ['basket-2', ['basket-2/1']],
    ['foam-20ppi', ['basket-1/1']],
    ['basket-3/1', ['basket-3/1']],
    ['chemical', []],
  ])('that names %s means these beds', (what, ids) => {
    expect(bedsNamed(canister, what).map((place) => canister.beds[place]!.id)).toEqual(ids);
  });

  it('that names what the filter does not have is told', () => {
    const rules = ['all', 'basket-9', 'chemical'].map((what) => ({ what, everyDays: 30 }));
    expect(unknownPlaces(canister, { kind: 'parts', rules })).toEqual(['basket-9', 'chemical']);
    expect(unknownPlaces(canister, { kind: 'usual' })).toEqual([]);
  });
});
