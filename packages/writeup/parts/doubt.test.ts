import { doubtOf } from '@fettle/engine/doubt/doubtOf.ts';
import { describe, expect, test } from 'vitest';
import type { Block, Document } from '../content/document.ts';
import type { WriteUpSource } from '../source.ts';
import { demoSource } from '../testing/sources.ts';
import { languages } from '../texts/languages.ts';
import { writeUpDocument } from '../writeUp.ts';

const bare = demoSource('corner-box', 'planned');

/** The job with what would be published of its ranges, by few draws. */
const drawn: WriteUpSource = {
  ...bare,
  after: { ...bare.after!, doubts: doubtOf(bare.after!.model, { draws: 64 }) },
};

const sheetIn = (code: 'en' | 'de', source = drawn): Document =>
  writeUpDocument(source, { name: 'sheet', theme: 'print', language: languages[code]! });

const textOf = ({ blocks }: Document, id: string): string => {
  const block = blocks.find((one) => one.id === id);
  return block?.kind === 'paragraph' ? block.text.replaceAll(/\s/g, ' ') : '';
};

const tableOf = ({ blocks }: Document, id: string): Extract<Block, { kind: 'table' }> | undefined =>
  blocks.find((one) => one.id === id && one.kind === 'table') as never;

describe('a sheet of which ranges were drawn', () => {
  test.each([
    [
      'en',
      /^At the end of the cleaning interval it serves \d+ L \([\d.]+ US gal\) at a normal stock: \d+ L \(/,
    ],
    ['de', /^Am Ende der Standzeit versorgt er \d+ L \([\d,]+ US gal\) bei normalem Besatz: \d+ L \(/],
  ] as const)('says how sure the served volume is, in %s', (code, says) => {
    expect(textOf(sheetIn(code), 'served-doubt')).toMatch(says);
  });

  test.each(['en', 'de'] as const)('has the ranges and what makes them at its end, in %s', (code) => {
    const sheet = sheetIn(code);
    expect(tableOf(sheet, 'ranges')?.rows).toHaveLength(9);
    const makers = tableOf(sheet, 'range-makers')!.rows;
    expect(makers.length).toBeGreaterThan(1);
    // A field of the job stands there by its name, never by its path.
    for (const [what] of makers) expect(what).not.toMatch(/^(tank|filter|packing)\./);
  });

  test('says what to measure next, and so does the build sheet', () => {
    const limits = sheetIn('en').blocks.find(({ id }) => id === 'limits');
    const says = /What would say most of the tank that it serves: \S.+\./;
    expect(limits?.kind === 'list' && limits.items.some((item) => says.test(item))).toBe(true);
    const build = writeUpDocument(drawn, { name: 'build', theme: 'print' });
    expect(JSON.stringify(build.blocks)).toContain(
      'measure what would say most of the tank that it serves: ',
    );
  });

  test('sends nobody to a table that is not there', () => {
    const before = sheetIn('en', bare);
    expect(textOf(before, 'key-figures-doubt')).not.toContain('in a table at the end');
    expect(textOf(sheetIn('en'), 'key-figures-doubt')).toContain('in a table at the end');
    expect([textOf(before, 'served-doubt'), tableOf(before, 'ranges')]).toEqual(['', undefined]);
  });
});
