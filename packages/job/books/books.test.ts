import { describe, expect, it } from 'vitest';
import { readSettings, readSettingsText, reminderDaysOf } from './settings.ts';
import { readShelf, readShelfText } from './shelf.ts';

const fullShelf = {
  media: [
    { medium: 'foam-20ppi', amount: '4 L', price: '3.50 GBP/L', bought: 'market stall', notes: 'black' },
    { medium: 'old-clay' },
  ],
  ownMedia: { 'old-clay': { like: 'expanded-clay-10mm', size: '9 mm' } },
  hoses: [{ bore: '16 mm', length: '3 m', pricePerMetre: '3.20 GBP', priceEach: '5 GBP', notes: 'clear' }],
  parts: [{ part: 'seal-strip', count: 4, price: '2 GBP', bought: 'by post' }],
};

const fullSettings = {
  workshop: 'Workshop at the old harbour',
  units: 'us',
  currency: 'GBP',
  tariff: '0.30 GBP/kWh',
  labour: '28 GBP/h',
  reminderDays: [14, 2, 7],
  quoteDays: 30,
};

function found(reading: ReturnType<typeof readShelf> | ReturnType<typeof readSettings>): readonly string[] {
  if (reading.ok) return [];
  for (const { path, says } of reading.problems) {
    expect(says).toMatch(/^[^\n]*\S\.$/);
    expect(says).toContain(path);
  }
  return reading.problems.map(({ code, path }) => `${code} ${path}`);
}

describe('the shelf', () => {
  it('is kept as it was written, and may be empty', () => {
    expect(readShelf(fullShelf)).toEqual({ ok: true, shelf: fullShelf });
    expect(readShelf({})).toEqual({ ok: true, shelf: {} });
  });

  it.each([
    ['a list', [], ['root-not-fields ']],
    ['nothing', null, ['root-not-fields ']],
    ['a field that is not known', { medias: [] }, ['unknown-field medias']],
    ['a field of the prototype', JSON.parse('{"__proto__": {}}'), ['unknown-field __proto__']],
    ['a medium that nobody knows', { media: [{ medium: 'foam-20pp' }] }, ['unknown-medium media[0].medium']],
    [
      'a medium twice',
      { media: [{ medium: 'floss-loose' }, { medium: 'floss-loose' }] },
      ['listed-twice media[1].medium'],
    ],
    [
      'an own medium under a name of the catalogue, like none',
      { ownMedia: { 'floss-loose': { like: 'floss-lose' } } },
      ['listed-twice ownMedia.floss-loose', 'unknown-medium ownMedia.floss-loose.like'],
    ],
    [
      'less than nothing',
      { media: [{ medium: 'floss-loose', amount: '-1 L' }] },
      ['out-of-bounds media[0].amount'],
    ],
    ['a hose without a bore', { hoses: [{ length: '3 m' }] }, ['missing-field hoses[0].bore']],
    [
      'a price by length',
      { hoses: [{ bore: '9 mm', priceEach: '3 m' }] },
      ['wrong-dimension hoses[0].priceEach'],
    ],
    ['a part twice', { parts: [{ part: 'clip' }, { part: 'clip' }] }, ['listed-twice parts[1].part']],
    ['a part by a long name', { parts: [{ part: 'Seal strip' }] }, ['bad-id parts[0].part']],
    ['half a part', { parts: [{ part: 'clip', count: 0.5 }] }, ['wrong-kind parts[0].count']],
  ])('with %s is refused with the place of it', (_what, value, expected) => {
    expect(found(readShelf(value))).toEqual(expected);
  });
});

describe('the settings', () => {
  it('are kept as they were written, and may be empty', () => {
    expect(readSettings(fullSettings)).toEqual({ ok: true, settings: fullSettings });
    expect(readSettings({})).toEqual({ ok: true, settings: {} });
  });

  it('remind after 1, 3, 5, 7, 14 and 28 days unless they say otherwise, soonest first', () => {
    expect(reminderDaysOf({})).toEqual([1, 3, 5, 7, 14, 28]);
    expect(reminderDaysOf({ reminderDays: [14, 2, 7] })).toEqual([2, 7, 14]);
    expect(reminderDaysOf({ reminderDays: [] })).toEqual([]);
  });

  it.each([
    ['words', 'metric', ['root-not-fields ']],
    ['a currency that is none', { currency: 'XXQ' }, ['bad-currency currency']],
    ['rates in two currencies', { tariff: '1 GBP/kWh', labour: '30 EUR/h' }, ['currency-mismatch labour']],
    ['a rate in another currency', { currency: 'EUR', tariff: '1 GBP/kWh' }, ['currency-mismatch tariff']],
    ['units that are none', { units: 'imperial' }, ['not-among units']],
    ['a day twice', { reminderDays: [1, 3, 1] }, ['listed-twice reminderDays[2]']],
    ['the day of hand-back itself', { reminderDays: [0] }, ['number-out-of-range reminderDays[0]']],
    ['a quote that holds for words', { quoteDays: 'a month' }, ['wrong-kind quoteDays']],
    ['several slips', { units: 1, quoteDays: null }, ['not-among units', 'empty-field quoteDays']],
  ])('with %s are refused with the place of it', (_what, value, expected) => {
    expect(found(readSettings(value))).toEqual(expected);
  });
});

describe('everything that is wrong with a book is told at once', () => {
  /** Line, code and place of each problem. */
  const told = (reading: ReturnType<typeof readShelfText> | ReturnType<typeof readSettingsText>) =>
    reading.ok ? [] : reading.problems.map(({ at, code, path }) => `${at?.line} ${code} ${path}`);

  it('what has the wrong shape, what does not fit together and what is written twice, by its line', () => {
    const text = [
      'media:',
      '  - { medium: foam-20pp, amount: 4 }',
      '  - medium: floss-loose',
      '  - medium: floss-loose',
      '  - medium: old-clay',
      'ownMedia:',
      '  old-clay: { like: no-such-clay, size: 3 L }',
      'parts:',
      '  - { part: clip, count: 0.5 }',
      '  - { part: clip }',
      'parts: []',
    ].join('\n');
    expect(told(readShelfText(text))).toEqual([
      '2 unknown-medium media[0].medium',
      '2 no-unit media[0].amount',
      '4 listed-twice media[2].medium',
      '7 unknown-medium ownMedia.old-clay.like',
      '7 wrong-dimension ownMedia.old-clay.size',
      '9 wrong-kind parts[0].count',
      '10 listed-twice parts[1].part',
      '11 duplicate-field parts',
    ]);
    expect(
      told(readSettingsText('currency: XXQ\ntariff: 1 GBP/kWh\nlabour: 2 EUR/h\nreminderDays: [0, 3, 3]')),
    ).toEqual([
      '1 bad-currency currency',
      '3 currency-mismatch labour',
      '4 number-out-of-range reminderDays[0]',
      '4 listed-twice reminderDays[2]',
    ]);
  });

  it.each([
    ['reminderDays: 5', 'a list of whole numbers from 1 to 3650, such as [7]'],
    ['reminderDays: [0]', 'a whole number from 1 to 3650'],
    ['reminderDays: [9999]', 'a whole number from 1 to 3650'],
    ['reminderDays: [1, 1]', 'each once'],
    ['quoteDays: [1, 3]', 'a whole number from 1 to 3650, such as 30'],
    ['quoteDays: 4000', 'a whole number from 1 to 3650'],
  ])('all that is allowed in place of %s', (text, allowed) => {
    const reading = readSettingsText(text);
    expect(reading.ok ? [] : reading.problems.map((each) => each.allowed)).toEqual([allowed]);
  });

  it('a picture is told not to be a file of the book', () => {
    const picture = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const reading = readShelfText(picture);
    expect(reading.ok ? [] : reading.problems).toEqual([
      {
        code: 'not-a-book-file',
        path: '',
        says: 'This is not a file of the shelf: it looks like a PNG picture, and a file of the shelf is YAML text.',
        allowed: 'a file such as fettle shelf --out writes',
      },
    ]);
  });

  it('comments alone are an empty book; no text at all is more often a slip, and refused', () => {
    expect(readShelfText('# all sold\n')).toEqual({ ok: true, shelf: {} });
    expect(readSettingsText('{}')).toEqual({ ok: true, settings: {} });
    for (const text of ['', ' \n']) {
      const reading = readShelfText(text);
      expect(reading.ok ? [] : reading.problems.map(({ code, allowed }) => [code, allowed])).toEqual([
        ['file-empty', '{} where nothing is to stand in the shelf'],
      ]);
    }
  });
});
