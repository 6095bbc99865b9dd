import { describe, expect, it } from 'vitest';
import { toPdf } from '../forms/pdf/pdf.ts';
import { demoDocument, demoNames, demoSource, sourceOf } from '../testing/sources.ts';
import { type DocumentName, documentMakers, writeUpDocument } from '../writeUp.ts';

const documents = Object.keys(documentMakers) as DocumentName[];
const states = ['found', 'planned', 'left'] as const;

describe('every document', () => {
  it.each(demoNames)('%s: can be set on paper, as found, as planned and as left', (name) => {
    for (const state of states) {
      const source = demoSource(name, state);
      for (const document of documents) {
        const made = writeUpDocument(source, { name: document, theme: 'print' });
        expect(toPdf(made, 'a4').byteLength, `${document} ${state}`).toBeGreaterThan(1000);
      }
    }
  });

  it.each(documents)('%s: goes down in headings by one level at a time', (name) => {
    for (const demo of demoNames)
      for (const state of states) {
        let level = 1;
        for (const block of writeUpDocument(demoSource(demo, state), { name, theme: 'print' }).blocks)
          if (block.kind === 'heading') {
            expect(block.level - level, `${demo} ${state} ${block.id}`).toBeLessThanOrEqual(1);
            level = block.level;
          }
      }
  });

  it.each(documents)(
    '%s: is set of a job without tests, with an empty chamber, and with no media at all',
    (name) => {
      const { tests: _, packing, ...document } = demoDocument('two-halves');
      const emptied = Object.fromEntries(Object.keys(packing ?? {}).map((chamber) => [chamber, []]));
      for (const packed of [packing ?? {}, { ...packing, 'left-1': [] }, emptied]) {
        const made = writeUpDocument(sourceOf({ ...document, packing: packed }), { name, theme: 'print' });
        expect(toPdf(made, 'letter').byteLength).toBeGreaterThan(1000);
      }
    },
  );
});
