import { describe, expect, it } from 'vitest';
import type { Block, Document } from '../content/document.ts';
import { demoDocument, demoSource, sourceOf } from '../testing/sources.ts';
import { writeUpDocument } from '../writeUp.ts';

const quoteOf = (source: Parameters<typeof writeUpDocument>[0]): Document =>
  writeUpDocument(source, { name: 'quote', theme: 'print' });

const block = ({ blocks }: Document, id: string): Block | undefined => blocks.find((one) => one.id === id);

const textOf = (document: Document, id: string): string => {
  const found = block(document, id);
  return found?.kind === 'paragraph' ? found.text : '';
};

const labour = [
  { work: 'Open and clean', time: '1.5 h' },
  { work: 'Carriage', price: '14.50 GBP' },
];
const parts = [
  { part: 'seal-strip', count: 3, price: '2.35 GBP' },
  { part: 'one bag of floss', price: '3 GBP' },
];
const withQuote = (quote: object, more: object = {}) =>
  sourceOf({ ...demoDocument('tall-drum'), quote, ...more });

describe('the quote', () => {
  it('has every line with its price, and totals that are the sums of the lines', () => {
    const document = quoteOf(withQuote({ labour, parts }));
    expect(block(document, 'quote-labour')).toMatchObject({
      rows: [
        ['Open and clean', '90 minutes', '45.00 GBP'],
        ['Carriage', '–', '14.50 GBP'],
      ],
      foot: ['together', '', '59.50 GBP'],
    });
    expect(block(document, 'quote-parts')).toMatchObject({
      rows: [
        [expect.stringContaining('silicone sheet'), '3', '2.35 GBP', '7.05 GBP'],
        ['one bag of floss', '1', '3.00 GBP', '3.00 GBP'],
      ],
      foot: ['together', '', '', '10.05 GBP'],
    });
    expect(textOf(document, 'quote-total')).toBe('In all: 69.55 GBP.');
    expect(textOf(document, 'quote-lead')).toContain('69.55 GBP');
  });

  it('names every line that has no price and then calls the total open', () => {
    const open = { labour: [{ work: 'Look into the hoses' }], parts: [{ part: 'a new barb' }, ...parts] };
    const document = quoteOf(withQuote(open));
    expect(textOf(document, 'quote-missing')).toBe('No price yet for: Look into the hoses; a new barb.');
    expect(textOf(document, 'quote-total')).toContain('without what is open: 10.05 GBP');
    expect(textOf(document, 'quote-lead')).toContain('not priced in full');
  });

  it('says that nothing is priced where nothing is quoted, and what media and parts of a plan cost', () => {
    expect(textOf(quoteOf(demoSource('tall-drum')), 'quote-lead')).toContain('Nothing is priced yet');
    const planned = quoteOf(demoSource('back-hanger', 'planned'));
    expect(textOf(planned, 'quote-lead')).toMatch(
      /Media and parts of the planned re-pack cost \d+\.\d\d EUR/,
    );
    expect(block(planned, 'quote-approval-blanks')).toBeUndefined();
  });

  it('sets leaving, cleaning and re-packing side by side, and makes up no figures of the dirty filter', () => {
    const options = block(quoteOf(demoSource('tall-drum', 'planned')), 'options');
    if (options?.kind !== 'table') throw new Error('no table of choices');
    const [nothing, clean, repack] = options.rows;
    expect(nothing).toEqual(expect.arrayContaining(['not known', '0.00 GBP']));
    expect(nothing?.[1]).toContain(', timed');
    expect(clean?.[1]).not.toBe(repack?.[1]);
    expect(options.rows).toHaveLength(3);
    const bare = block(quoteOf(demoSource('tall-drum')), 'options');
    expect(bare?.kind === 'table' ? bare.rows.length : 0).toBe(2);
  });

  it('keeps to what was quoted where the work is done, and prints no flow that was timed since', () => {
    const document = demoDocument('tall-drum');
    const run = (state: string, time: string) =>
      ({ kind: 'timed-volume', state, volume: '5 L ± 1 %', times: [time, time, time] }) as const;
    const tests = [run('as-found', '60 s'), run('cleaned-original', '36 s'), run('as-left', '30 s')];
    const { planned } = demoSource('tall-drum', 'planned').document;
    const asLeft = { packing: document.packing, day: '2026-11-21' };
    const rowsOf = (more: object) => {
      const options = block(quoteOf(sourceOf({ ...document, tests, ...more })), 'options');
      return options?.kind === 'table' ? options.rows : [];
    };
    const [nothing, clean, repack] = rowsOf({ planned, asLeft });
    expect(nothing?.[1]).toContain(', timed');
    expect(clean?.[1]).not.toContain('timed');
    expect(repack).toEqual(rowsOf({ planned })[2]);
    for (const row of rowsOf({ asLeft }).slice(1)) expect(row[1]).not.toContain('timed');
    expect(textOf(quoteOf(sourceOf({ ...document, planned, asLeft })), 'quote-options-notes')).toContain(
      'before the work',
    );
  });

  it('has room for name, day and signature, or the approval that the job holds', () => {
    expect(block(quoteOf(withQuote({ labour })), 'quote-approval-blanks')).toMatchObject({
      labels: ['Name', 'Day', 'Signature'],
    });
    const approval = { day: '2026-11-06', by: 'the owner', how: 'by telephone', amount: '59.50 GBP' };
    const approved = quoteOf(withQuote({ labour }, { approval }));
    expect(block(approved, 'quote-approval-blanks')).toBeUndefined();
    expect(textOf(approved, 'quote-approved')).toBe(
      'Approved on 6 November 2026 by the owner. Said: by telephone. Agreed to: 59.50 GBP.',
    );
    const other = quoteOf(withQuote({ labour }, { approval: { ...approval, amount: '50 GBP' } }));
    expect(textOf(other, 'quote-approved')).toContain('another sum');
  });

  it('says how long it holds, what is warranted, and that work may end the maker’s warranty', () => {
    const document = quoteOf(withQuote({ labour, validUntil: '2026-12-12', warranty: '6 months on seals' }));
    expect(textOf(document, 'quote-validity')).toBe(
      'It holds until 12 December 2026. Warranty on this work: 6 months on seals.',
    );
    expect(textOf(document, 'quote-maker')).toContain('may end the maker’s warranty');
    expect(textOf(quoteOf(withQuote({ labour })), 'quote-validity')).toContain('No last day is stated');
  });
});
