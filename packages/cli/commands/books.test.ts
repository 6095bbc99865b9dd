import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { commandBench } from '../testing/commandBench.ts';
import { addBooks } from './books.ts';

const shelf = commandBench(addBooks, 'shelf');
const settings = commandBench(addBooks, 'settings');

const stored = (name: 'shelf' | 'settings') =>
  (name === 'shelf' ? shelf : settings).inRecords((store) => store.books.find(name));

/** A file beside the data folder of the shelf's bench. */
const fileWith = (text: string, name = 'in.yaml'): string => {
  writeFileSync(shelf.path(name), text);
  return shelf.path(name);
};

const foam = 'media:\n  - medium: foam-20ppi\n    amount: 4 L\n    price: 3.50 GBP/L\n';

describe('the shelf by command', () => {
  test('is printed as YAML, written out, edited and taken in again, as often as one likes', async () => {
    expect(await shelf.out()).toMatch(/^# Fettle shelf, revision 0\. Edit it .*\n#.*\n\{\}\n$/);
    expect(await shelf.told('--from', fileWith(foam))).toBe(
      'The shelf: now at revision 1, changed in media.',
    );
    expect(parse(await shelf.out())).toEqual(parse(foam));
    const file = shelf.path('mine.yaml');
    for (const [revision, amount] of [
      [1, '5 L'],
      [2, '6 L'],
    ] as const) {
      const out = shelf.path(`${revision}.yaml`);
      expect(await shelf.told('--out', out)).toContain(`Wrote revision ${revision} of the shelf to ${out}.`);
      writeFileSync(file, readFileSync(out, 'utf8').replace(/amount: . L/, `amount: ${amount}`));
      expect(await shelf.told('--from', file)).toContain(`now at revision ${revision + 1}, changed in media`);
    }
    expect(await shelf.told('--from', file)).toContain('nothing was written');
    expect((await stored('shelf')).revision).toBe(3);
    const [deed] = await shelf.inRecords((store) => store.deeds.list({}));
    expect(deed?.what).toBe('shelf-written');
  });

  test('a file that began from an older revision is refused with what differs, until --revise is said', async () => {
    await shelf.told('--from', fileWith(foam));
    await shelf.told('--out', shelf.path('old.yaml'));
    await shelf.told('--from', fileWith(foam.replace('4 L', '9 L')), '--revise');
    writeFileSync(shelf.path('old.yaml'), readFileSync(shelf.path('old.yaml'), 'utf8').replace('4 L', '1 L'));
    const [problem] = await shelf.problems('--from', shelf.path('old.yaml'));
    expect([problem?.code, problem?.says]).toEqual([
      'lost-race',
      expect.stringMatching(
        /began from revision 1 of the shelf, but it stands at revision 2.*nothing was written/,
      ),
    ]);
    expect((await stored('shelf')).body).toEqual(parse(foam.replace('4 L', '9 L')));
    await shelf.told('--from', shelf.path('old.yaml'), '--revise');
    expect((await stored('shelf')).body).toEqual(parse(foam.replace('4 L', '1 L')));
  });

  test('a file that does not say where it began is refused where something would be lost', async () => {
    await shelf.told('--from', fileWith(foam));
    const [problem] = await shelf.problems('--from', fileWith('{}\n'));
    expect([problem?.code, problem?.allowed]).toEqual(['book-differs', expect.stringContaining('--revise')]);
    expect((await stored('shelf')).body).toEqual(parse(foam));
  });

  test.each([
    ['what nobody knows', 'media:\n  - medium: foam-20pp\n', 'unknown-medium', 2],
    ['a field that is not known', 'medias: []\n', 'unknown-field', 1],
    ['no YAML', 'media: [', 'yaml-syntax', 1],
    ['another kind of file in it', '<svg></svg>', 'not-a-book-file', undefined],
    ['nothing in it', '', 'file-empty', undefined],
  ])('a file with %s is refused as by the API, with its line', async (_what, text, code, line) => {
    const [problem] = await shelf.problems('--from', fileWith(text));
    expect([problem?.code, problem?.at?.line]).toEqual([code, line]);
    expect((await stored('shelf')).revision).toBe(0);
  });
});

test('a shelf of which all was sold is written out, emptied and taken in again', async () => {
  await shelf.told('--from', fileWith(foam));
  const out = shelf.path('sold.yaml');
  await shelf.told('--out', out);
  const [head = '', more = ''] = readFileSync(out, 'utf8').split('\n');
  writeFileSync(out, `${head}\n${more}\n`);
  expect(await shelf.told('--from', out)).toBe('The shelf: now at revision 2, changed in media.');
  expect((await stored('shelf')).body).toEqual({});
});

describe('the settings by command', () => {
  test('are printed and replaced; a file of the shelf is not taken for them', async () => {
    const file = settings.path('settings.yaml');
    writeFileSync(file, 'currency: GBP\ntariff: 0.30 GBP/kWh\n');
    expect(await settings.told('--from', file)).toContain('The settings: now at revision 1');
    expect(await settings.json()).toMatchObject({
      name: 'settings',
      revision: 1,
      body: { currency: 'GBP', tariff: '0.30 GBP/kWh' },
    });
    writeFileSync(file, '# Fettle shelf, revision 1 of 2026-11-02T10:00:00.000Z. Edit it\ncurrency: EUR\n');
    expect((await settings.problems('--from', file)).map(({ code }) => code)).toEqual(['other-book']);
    expect((await settings.problems('--revise')).map(({ code }) => code)).toEqual(['command-line-books']);
  });
});

describe('where there are no records yet', () => {
  test('a file that began from a revision of other records is refused, and none are begun', async () => {
    await shelf.told('--from', fileWith(foam));
    await shelf.told('--out', shelf.path('of-others.yaml'));
    rmSync(shelf.path('data'), { recursive: true });
    const [problem] = await shelf.problems('--from', shelf.path('of-others.yaml'));
    expect([problem?.code, problem?.says]).toEqual([
      'lost-race',
      expect.stringMatching(
        /began from revision 1 of the shelf, but it stands at revision 0.*nothing was written/,
      ),
    ]);
    expect(existsSync(shelf.path('data'))).toBe(false);
  });

  test('an empty file has nothing to begin them for, and one with something in it begins them', async () => {
    rmSync(shelf.path('data'), { recursive: true });
    expect(await shelf.told('--from', fileWith('{}\n'))).toContain('nothing was written');
    expect(existsSync(shelf.path('data'))).toBe(false);
    expect(await shelf.told('--from', fileWith(foam))).toContain('now at revision 1');
  });
});
