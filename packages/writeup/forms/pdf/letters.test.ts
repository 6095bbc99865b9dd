import { readFileSync } from 'node:fs';
import { text } from '@fettle/drawing/svg.ts';
import { describe, expect, it } from 'vitest';
import { demoDocument, sourceOf } from '../../testing/sources.ts';
import { type DocumentName, documentMakers, writeUpDocument } from '../../writeUp.ts';
import { fontFiles } from '../fonts.ts';
import { toPage } from '../html/page.ts';
import { toMarkdown } from '../markdown.ts';
import { lettersOf, shownBy } from './coverage.ts';
import { toPdf } from './pdf.ts';

const letters = lettersOf(fontFiles().map((path) => readFileSync(path)));

describe('letters on paper', () => {
  it('knows which letters the fonts have', () => {
    const has = (text: string): boolean => [...text].every((letter) => letters.has(letter.codePointAt(0)!));
    expect(has('Filter ± ×÷ äß ñ ŁΩ Ж م ש \u2060')).toBe(true);
    for (const letter of '濾ไअ🐟') expect(has(letter), letter).toBe(false);
    expect(shownBy(letters)('a濾b🐟\u{e0001} c')).toBe('a\ufffdb\ufffd c');
  });

  it.each([
    ['Chinese', '濾過器'],
    ['Thai and Hindi', 'ตัวกรอง फ़िल्टर'],
    ['pictures', '🐟👨‍👩‍👧🏳️‍🌈'],
    ['control characters', 'a\u0001b\u0000c\u001b[31m'],
    ['half a character', 'fish \ud83d'],
    ['marks that turn the writing round', '\u202Eabc\u2066def'],
  ])('sets every document of a job that is named in %s, down to its drawings', (_, name) => {
    const document = demoDocument('back-hanger');
    const source = sourceOf({
      ...document,
      filter: { ...document.filter, name, claims: [name] },
      writeUp: { by: name, words: { summary: { after: name } } },
      quote: { labour: [{ work: name, price: '3 EUR' }] },
    });
    for (const kind of Object.keys(documentMakers) as DocumentName[]) {
      const made = writeUpDocument(source, { name: kind, theme: 'print' });
      const drawings = Object.fromEntries(
        Object.entries(made.drawings).map(([key, svg]) => [
          key,
          svg.replace('</svg>', `${text(name, { x: 9, y: 9 })}</svg>`),
        ]),
      );
      expect(toPdf({ ...made, drawings }, 'a4').byteLength).toBeGreaterThan(1000);
    }
  });

  it('lets no name turn round the figures behind it, and sends no control characters on', () => {
    const document = demoDocument('back-hanger');
    const source = sourceOf({
      ...document,
      filter: { ...document.filter, name: '\u202Etwo\u2066\u001b[31m' },
    });
    const made = writeUpDocument(source, { name: 'sheet', theme: 'page' });
    for (const text of [toMarkdown(made), toPage(made)]) {
      expect(text).toContain('two');
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must not be there.
      expect(text).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000-\u0008\u001b]/);
    }
  });

  it('takes nothing that somebody wrote for a sign of Markdown', () => {
    const made = {
      ...writeUpDocument(sourceOf(demoDocument('back-hanger')), { name: 'sheet', theme: 'print' }),
      title: '&lt;b&gt; <b>',
    };
    expect(toMarkdown(made)).toContain('# \\&lt;b\\&gt; \\<b\\>');
  });
});
