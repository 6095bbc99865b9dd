import { escapeXml } from '@fettle/drawing/svg.ts';
import { describe, expect, it } from 'vitest';
import { newWriter } from '../parts/writer.ts';
import { demoDocument, demoNames, demoSource, sourceOf } from '../testing/sources.ts';
import { english } from '../texts/english/english.ts';
import { writeUpDocument } from '../writeUp.ts';
import { cardFiles } from './cardFiles.ts';
import { cardsText, factCards } from './cards.ts';

const cardsOf = (source: Parameters<typeof newWriter>[0]) => factCards(newWriter(source, english));

describe('the fact cards', () => {
  it.each(demoNames)('%s: are six at most, each of one idea with one to three figures', (name) => {
    for (const state of ['found', 'planned', 'left'] as const) {
      const cards = cardsOf(demoSource(name, state));
      expect(cards.length).toBeLessThanOrEqual(6);
      expect(new Set(cards.map(({ id }) => id)).size).toBe(cards.length);
      for (const { figures } of cards) {
        expect(figures.length).toBeGreaterThanOrEqual(1);
        expect(figures.length).toBeLessThanOrEqual(3);
      }
    }
  });

  it('credit cleaning by itself where it was timed by itself', () => {
    const document = demoDocument('tall-drum');
    const run = (state: string, time: string) => ({
      kind: 'timed-volume',
      state,
      volume: '5 L ± 1 %',
      times: [time],
    });
    const tests = [run('as-found', '60 s'), run('cleaned-original', '36 s'), run('as-left', '30 s')];
    const source = sourceOf({ ...document, tests, asLeft: { packing: document.packing } });
    const flow = cardsOf(source).find(({ id }) => id === 'flow');
    expect(flow?.figures.map(({ label }) => label)).toEqual([
      'as found, timed',
      'cleaned, packed as before, timed',
      'as left, timed',
    ]);
    expect(flow?.figures.map(({ bar }) => Number(bar?.toFixed(3)))).toEqual([0.5, 0.833, 1]);
    expect(flow?.figures[2]?.us).toContain('US gal/h');
  });

  it('say that a flow is computed where none was timed', () => {
    const { tests: _, ...document } = demoDocument('corner-box');
    const flow = cardsOf(sourceOf(document)).find(({ id }) => id === 'flow');
    expect(flow?.figures.map(({ label }) => label)).toEqual(['clean, computed']);
    expect(flow?.note).toContain('no flow was timed');
  });

  it('have a price of the change only where something is changed', () => {
    expect(cardsOf(demoSource('back-hanger')).map(({ id }) => id)).not.toContain('change');
    expect(cardsOf(demoSource('back-hanger', 'planned')).map(({ id }) => id)).toContain('change');
  });

  it('stand in one document, each drawn and said with every figure of it', () => {
    const source = demoSource('tall-drum', 'planned');
    const { blocks, drawings } = writeUpDocument(source, { name: 'cards', theme: 'print' });
    const cards = cardsOf(source);
    expect(blocks.map(({ id }) => id)).toEqual(cards.map(({ id }) => `card-${id}`));
    for (const [at, { figures }] of cards.entries()) {
      const block = blocks[at]!;
      if (block.kind !== 'drawing') throw new Error(`${block.id} is no drawing`);
      expect(drawings[block.drawing]).toContain(escapeXml(figures[0]!.metric));
      for (const { metric, us } of figures)
        expect(block.alternative).toContain(us === undefined ? metric : `${metric} (${us})`);
    }
  });

  it('come as drawings, as pictures of 1200 by 675 pixels, and as a text to read out', () => {
    const writer = newWriter(demoSource('back-hanger', 'planned'), english);
    const files = cardFiles(writer);
    const picture = Buffer.from(files.find(({ path }) => path.endsWith('.png'))!.content);
    expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([1200, 675]);
    expect(files.map(({ path }) => path)).toContain('cards/cards.txt');
    for (const { headline } of factCards(writer)) expect(cardsText(writer)).toContain(headline);
  });
});
