import { describe, expect, it } from 'vitest';
import type { Language } from './language.ts';
import { said } from './said.ts';
import { word } from './word.ts';

const language: Language = {
  code: 'xx',
  itself: 'test',
  direction: 'ltr',
  sentences: {
    flow: '{flow} flows past {place}.',
    both: 'First {one}; then {media}.',
    lasts: '{time}',
  },
  names: { 'basket # (lowest)': 'Korb # (unterster)', foam: 'Schaum' },
  marks: {
    decimal: ',',
    to: 'bis',
    and: 'und',
    beyond: 'mehr als ein Jahr',
    times: {
      year: ['Jahr', 'Jahre'],
      day: ['Tag', 'Tage'],
      hour: ['Stunde', 'Stunden'],
      minute: ['Minute', 'Minuten'],
      second: ['Sekunde', 'Sekunden'],
    },
  },
};
const both = { language, units: 'both' } as const;

describe('a sentence in a language', () => {
  it('has each quantity in both systems, from one value, with the language’s decimal sign', () => {
    const flow = { value: 612.4 / 3.6e6, dimension: 'flow', digits: 4 } as const;
    const facts = { flow, place: { name: 'basket 1 (lowest)' } };
    expect(word(said('flow', facts), both)).toBe('612,4 L/h (161,8 US gal/h) flows past Korb 1 (unterster).');
    expect(word(said('flow', facts), { language, units: 'us' })).toBe(
      '161,8 US gal/h flows past Korb 1 (unterster).',
    );
  });

  it('keeps names that it has no word for, and says others in a row', () => {
    const one = said('flow', { flow: 3, place: 'here' });
    const facts = { one, media: { all: [{ name: 'foam' }, { name: 'lava' }, 'rings'] } };
    expect(word(said('both', facts), both)).toBe('First 3 flows past here.; then Schaum, lava und rings.');
  });

  it('keeps a name that every object of the program has something under', () => {
    for (const name of ['constructor', 'toString', '__proto__'])
      expect(word(said('lasts', { time: { name } }), both)).toBe(name);
  });

  it.each([
    [1, '1 Sekunde'],
    [95, '95 Sekunden'],
    [3600, '60 Minuten'],
    [12.34 * 3600, '12 Stunden'],
    [86_400, '1 Tag'],
    [2 * 86_400, '2 Tage'],
    [3.46 * 86_400, '3,5 Tage'],
    [400 * 86_400, '400 Tage'],
    [3 * 365 * 86_400, '3 Jahre'],
  ])('says %d s as %s', (durationS, says) => {
    expect(word(said('lasts', { time: { durationS } }), both)).toBe(says);
  });

  it.each([
    [{ spanS: 12.34 * 3600 }, '12 Stunden'],
    [{ spanS: 1.5 * 86_400 }, '1,5 Tage'],
    [{ spanS: 900 * 86_400 }, '900 Tage'],
    [{ spanS: 900 * 86_400, beyond: true }, 'mehr als ein Jahr'],
  ])('says the span %j in days or hours as %s', (time, says) => {
    expect(word(said('lasts', { time }), both)).toBe(says);
  });

  it('puts between several things what is asked for', () => {
    expect(word(said('lasts', { time: { all: ['a', { name: 'foam' }], by: '; ' } }), both)).toBe('a; Schaum');
  });

  it('throws on a sentence that it has not, and on a hole that nothing fills', () => {
    expect(() => word(said('nothing'), both)).toThrow('no sentence “nothing”');
    expect(() => word(said('flow', { place: 'here' }), both)).toThrow('nothing for {flow} of “flow”');
  });
});
