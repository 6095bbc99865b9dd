import { toPage } from '@fettle/writeup/forms/html/page.ts';
import { toPdf } from '@fettle/writeup/forms/pdf/pdf.ts';
import { writeUpDocument } from '@fettle/writeup/writeUp.ts';
import { HtmlValidate } from 'html-validate';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { demoSources, textsOf } from './support/writeUps.ts';

const sheets = demoSources.map(({ name, source }) => ({
  name,
  printed: writeUpDocument(source, { name: 'sheet', theme: 'print' }),
  page: toPage(writeUpDocument(source, { name: 'sheet', theme: 'page' }), { day: '2026-11-02' }),
}));

const opened = (bytes: Uint8Array) => getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;

/** The words of a PDF in the order in which they are read out. */
const wordsOf = async (bytes: Uint8Array): Promise<string> => {
  const pdf = await opened(bytes);
  const pages = Array.from({ length: pdf.numPages }, async (_, at) => {
    const { items } = await (await pdf.getPage(at + 1)).getTextContent();
    return items.map((item) => ('str' in item ? item.str : '')).join(' ');
  });
  return (await Promise.all(pages)).join(' ');
};

const letters = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, '');

interface Tagged {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Tagged[];
}

const rolesOf = (node: Tagged | null): readonly Tagged[] =>
  node === null ? [] : [node, ...(node.children ?? []).flatMap((child) => rolesOf(child))];

describe('the sheet on paper', () => {
  test.each(sheets)('$name: reads out in the order in which it is written', async ({ printed }) => {
    const read = letters(await wordsOf(toPdf(printed, 'a4')));
    let at = 0;
    for (const text of [
      printed.title,
      ...printed.blocks.flatMap((b) => (b.kind === 'heading' ? [b.text] : [])),
    ]) {
      const found = read.indexOf(letters(text), at);
      expect(found, text).toBeGreaterThanOrEqual(0);
      at = found + 1;
    }
    const cautions = printed.blocks.flatMap((b) => (b.kind === 'caution' ? [b.text] : []));
    for (const text of cautions) expect(read).toContain(letters(text));
  });

  test('is tagged: headings, tables with their heads, a drawing with its words, and its language', async () => {
    const { printed } = sheets[0]!;
    const pdf = await opened(toPdf(printed, 'letter'));
    const pages = await Promise.all(Array.from({ length: pdf.numPages }, (_, at) => pdf.getPage(at + 1)));
    const roles = (await Promise.all(pages.map((page) => page.getStructTree()))).flatMap((tree) =>
      rolesOf(tree as Tagged | null),
    );
    const names = new Set(roles.map(({ role }) => role));
    for (const role of ['H1', 'H2', 'P', 'L', 'LI', 'Table', 'TR', 'TH', 'TD', 'Figure'])
      expect([...names]).toContain(role);
    const drawing = printed.blocks.find(({ kind }) => kind === 'drawing');
    const said = roles.flatMap(({ alt }) => alt ?? []).join(' ');
    expect(letters(said)).toContain(letters(drawing?.kind === 'drawing' ? drawing.alternative : 'none'));
    const { info, metadata } = await pdf.getMetadata();
    expect(info).toMatchObject({ Title: printed.title });
    expect(metadata?.get('pdfuaid:part')).toBe('1');
    expect(pages[0]?.view.slice(2).map(Math.round)).toEqual([612, 792]);
  });

  test('is the same to the byte whenever it is made', () => {
    for (const { printed } of sheets.slice(0, 2))
      expect(Buffer.compare(toPdf(printed, 'a4'), toPdf(printed, 'a4'))).toBe(0);
  });
});

describe('the sheet as a page', () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:standard'],
    rules: { 'no-inline-style': 'off', 'long-title': 'off', 'no-trailing-whitespace': 'off' },
  });

  test.each(sheets)('$name: is valid HTML, fetches nothing and runs nothing', async ({ page }) => {
    const report = await validator.validateString(page);
    expect(
      report.results.flatMap(({ messages }) => messages.map(({ message, line }) => `${line}: ${message}`)),
    ).toEqual([]);
    expect(page).not.toMatch(/<script(?! type="application\/ld\+json")/);
    expect(page).not.toMatch(/\s(?:src|href)="(?!#)[^"]*"/);
    expect(page).not.toMatch(/url\((?!#)/);
  });

  test.each(sheets)('$name: describes itself by an open vocabulary', ({ page, printed }) => {
    const written = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(page)?.[1] ?? '';
    expect(JSON.parse(written)).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'TechArticle',
      headline: printed.title,
      datePublished: '2026-11-02',
      inLanguage: 'en',
    });
  });

  test.each(sheets)('$name: holds every text of the sheet', ({ page, printed }) => {
    const shown = letters(
      page
        .replace(/<style>.*?<\/style>|<[^>]+>/gs, ' ')
        .replace(/&amp;/g, '&')
        .replace(/&lt;/g, '<')
        .replace(/&gt;/g, '>')
        .replace(/&quot;/g, '"')
        .replace(/&#39;/g, "'"),
    );
    for (const text of textsOf(printed).filter((each) => !/^[–\d]/.test(each)))
      if (!printed.blocks.some((b) => b.kind === 'drawing' && b.alternative === text))
        for (const part of text.split(/ \(|\)/)) expect(shown).toContain(letters(part));
  });
});
