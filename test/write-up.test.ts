import { toPage } from '@fettle/writeup/forms/html/page.ts';
import { toMarkdown } from '@fettle/writeup/forms/markdown.ts';
import { languages } from '@fettle/writeup/texts/languages.ts';
import type { DocumentName } from '@fettle/writeup/writeUp.ts';
import { documentMakers, writeUpDocument } from '@fettle/writeup/writeUp.ts';
import { describe, expect, test } from 'vitest';
import { pairsIn, slipsIn, unpairedIn } from './support/pairs.ts';
import { demoSources, textsOf } from './support/writeUps.ts';

const names = Object.keys(documentMakers) as DocumentName[];

/** Every document of every demo job, as found and with its re-pack, in every language. */
const documents = demoSources.flatMap(({ name: of, source }) =>
  Object.values(languages).flatMap((language) =>
    names.map((name) => ({
      what: `${name} of ${of}, ${language.itself}`,
      name,
      document: writeUpDocument(source, { name, theme: 'print', language }),
    })),
  ),
);

/** What makers say stands verbatim, in whatever units they like. */
const withoutClaims = (text: string): string => text.replace(/[“"„][^”"“]*[”"“]/g, '');

describe('units without slips', () => {
  test.each(documents)('$what: both sides of every pair are one quantity', ({ document }) => {
    const texts = textsOf(document);
    expect(texts.flatMap((text) => slipsIn(withoutClaims(text)))).toEqual([]);
    expect(slipsIn(withoutClaims(toMarkdown(document).replace(/\\/g, '')))).toEqual([]);
    const page = toPage(document).replace(/<style>.*?<\/style>|<svg.*?<\/svg>|<[^>]+>/gs, ' ');
    expect(slipsIn(withoutClaims(page.replace(/\u2060/g, '')))).toEqual([]);
  });

  test.each(documents)('$what: no metric quantity stands without its US one', ({ document }) => {
    expect(textsOf(document).flatMap((text) => unpairedIn(withoutClaims(text)))).toEqual([]);
  });

  test('the sheets hold enough pairs for these tests to mean something', () => {
    for (const { document, name, what } of documents)
      if (name === 'sheet') expect(pairsIn(textsOf(document).join('\n')).length, what).toBeGreaterThan(25);
  });

  test('a pair that slipped would be told', () => {
    expect(slipsIn('it gives 620 L/h (146 US gal/h)')).toEqual(['620 L/h (146 US gal/h): swapped-digits']);
    expect(slipsIn('310 ± 11 L/h (81.8 ± 3.0 US gal/h) and 1,5 L (0,40 US gal)')).toEqual([]);
    expect(unpairedIn('a gap of 1.1 mm beside it, 48 mm (1.9 in) deep')).toEqual(['1.1 mm']);
  });
});

test.each(documents)(
  '$what: no two blocks have one name, so that own words have one place',
  ({ document }) => {
    const ids = document.blocks.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9-]{0,59}$/);
  },
);
