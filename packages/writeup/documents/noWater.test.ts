import { describe, expect, it } from 'vitest';
import { cardsText } from '../cards/cards.ts';
import { newWriter } from '../parts/writer.ts';
import { talkSections } from '../talk/talk.ts';
import { demoDocument, sourceOf } from '../testing/sources.ts';
import { english } from '../texts/english/english.ts';
import { type DocumentName, documentMakers, writeUpDocument } from '../writeUp.ts';

const tall = demoDocument('tall-drum');
const { hoses } = tall.filter;
const lifted = { ...tall.filter, hoses: { ...hoses, outlet: { ...hoses?.outlet, lift: '2 m' } } };
const dry = sourceOf({ ...tall, tests: [], filter: lifted });
const empty = sourceOf({ ...tall, packing: {} });

const everythingOf = (source: typeof dry): string =>
  [
    ...(Object.keys(documentMakers) as DocumentName[]).map((name) =>
      JSON.stringify(writeUpDocument(source, { name, theme: 'print' }).blocks),
    ),
    cardsText(newWriter(source, english)),
    ...talkSections(newWriter(source, english)).flatMap(({ facts }) => facts),
  ].join('\n');

describe('a filter whose pump does not reach the outlet', () => {
  it('is said to give no water, and no figures of flowing water are told of it', () => {
    expect(dry.found.assessment.dutyPoint.flowM3PerS).toBe(0);
    const text = everythingOf(dry);
    expect(text).toContain('By the models no water flows as it is');
    for (const wrong of [
      'should flow;',
      'more than a year',
      '100 % of the water misses',
      'good to a factor of three',
      'The jug decides',
    ])
      expect(text, wrong).not.toContain(wrong);
  });
});

describe('a filter without media', () => {
  it('is told no doubt of a time that nobody names, and no row of beds that is empty', () => {
    const text = everythingOf(empty);
    expect(text).toContain('Nothing asks for cleaning within a year.');
    expect(text).not.toContain('good to a factor of three');
    expect(text).not.toContain('about more than');
    expect(text).not.toContain('. ."');
  });
});
