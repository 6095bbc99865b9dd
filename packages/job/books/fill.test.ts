import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../read.ts';
import type { JobDocument } from '../schema/job.ts';
import { fullJob } from '../testing/fullJob.ts';
import { leastCanister, withChanges } from '../testing/readWith.ts';
import { fillFromBooks } from './fill.ts';
import { readSettings, type Settings } from './settings.ts';
import { readShelf, type Shelf } from './shelf.ts';

const shelf = {
  media: [
    { medium: 'foam-20ppi', amount: '4 L', price: '3.50 GBP/L', bought: 'market stall', notes: 'black' },
    { medium: 'floss-loose' },
    { medium: 'old-clay', price: '1 GBP/L' },
    { medium: 'foam-10ppi', amount: '0 L', price: '3 GBP/L' },
  ],
  ownMedia: { 'old-clay': { like: 'expanded-clay-10mm', size: '9 mm', price: '2 GBP/L' } },
  hoses: [
    { bore: '16 mm', length: '3 m', pricePerMetre: '3.20 GBP' },
    { bore: '12 mm', pricePerMetre: '3.20 GBP', priceEach: '5 GBP' },
  ],
  parts: [{ part: 'seal-strip', count: 4, price: '2 GBP' }, { part: 'clip' }],
};
const settings = { currency: 'GBP', tariff: '0.30 GBP/kWh', labour: '28 GBP/h', workshop: 'Old harbour' };

function shelfOf(value: unknown): Shelf {
  const reading = readShelf(value);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.shelf;
}

function settingsOf(value: unknown): Settings {
  const reading = readSettings(value);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.settings;
}

function documentOf(value: unknown): JobDocument {
  const reading = readDocument(value);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.document;
}

const books = { shelf: shelfOf(shelf), settings: settingsOf(settings) };

const filledWith = (changes: Readonly<Record<string, unknown>>, own = books) =>
  fillFromBooks(documentOf(withChanges(leastCanister, changes)), own);

describe('a job filled from the books', () => {
  it('takes currency, rates, prices, media in hand and own media where it says none', () => {
    const { document, filled } = filledWith({});
    expect(document).toEqual({
      ...leastCanister,
      money: {
        currency: 'GBP',
        tariff: '0.30 GBP/kWh',
        labour: '28 GBP/h',
        media: { 'foam-20ppi': '3.50 GBP/L', 'old-clay': '1 GBP/L', 'foam-10ppi': '3 GBP/L' },
        parts: { 'seal-strip': '2 GBP', 'hose-per-metre': '3.20 GBP' },
      },
      shelf: [{ medium: 'foam-20ppi', amount: '4 L' }, 'floss-loose', 'old-clay'],
      media: { 'old-clay': { like: 'expanded-clay-10mm', size: '9 mm', price: '2 GBP/L' } },
    });
    expect(filled).toEqual([
      'money.currency',
      'money.tariff',
      'money.labour',
      'money.media.foam-20ppi',
      'money.media.old-clay',
      'money.media.foam-10ppi',
      'money.parts.seal-strip',
      'money.parts.hose-per-metre',
      'shelf',
      'media.old-clay',
    ]);
  });

  it('keeps all that it says itself', () => {
    const said = {
      money: { currency: 'GBP', tariff: '0.5 GBP/kWh', media: { 'foam-20ppi': '9 GBP/L' } },
      shelf: [{ medium: 'foam-10ppi', price: '8 GBP/L' }],
      media: { 'old-clay': { like: 'expanded-clay-10mm' } },
    };
    const { document, filled } = filledWith(said);
    expect(document).toMatchObject(said);
    expect(document.shelf).toEqual(said.shelf);
    expect(document.media).toEqual(said.media);
    expect(filled).toEqual(['money.labour', 'money.parts.seal-strip', 'money.parts.hose-per-metre']);
  });

  it('in another currency takes no price', () => {
    const { document, filled } = filledWith({ 'filter.price': '60 EUR' });
    expect(filled).toEqual(['shelf', 'media.old-clay']);
    expect(document.money).toBeUndefined();
    expect(document.media?.['old-clay']?.price).toBeUndefined();
  });

  it('takes the currency of the books where they name none apart', () => {
    const own = { shelf: shelfOf({ parts: [{ part: 'clip', price: '1 EUR' }] }), settings: settingsOf({}) };
    expect(filledWith({}, own)).toMatchObject({
      document: { money: { currency: 'EUR', parts: { clip: '1 EUR' } } },
      filled: ['money.currency', 'money.parts.clip'],
    });
  });

  it('has no price for hose where the shelf knows two, and no shelf where nothing is in hand', () => {
    const own = {
      shelf: shelfOf({
        media: [{ medium: 'foam-20ppi', amount: '0 L' }],
        hoses: [
          { bore: '16 mm', pricePerMetre: '3 GBP' },
          { bore: '12 mm', pricePerMetre: '2 GBP' },
        ],
      }),
      settings: settingsOf({}),
    };
    expect(filledWith({}, own)).toEqual({ document: leastCanister, filled: [] });
  });

  it('from empty books is the same job', () => {
    const document = documentOf(fullJob);
    expect(fillFromBooks(document, { shelf: {}, settings: {} })).toEqual({ document, filled: [] });
  });
});

const price = (unit: string) =>
  fc.option(
    fc
      .tuple(fc.integer({ min: 0, max: 50 }), fc.constantFrom('GBP', 'EUR', '£'))
      .map(([sum, code]) => `${sum} ${code}${unit}`),
    { nil: undefined },
  );

const present = (group: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(group).filter(([, value]) => value !== undefined));

const anySettings = fc
  .record({ currency: fc.constantFrom(undefined, 'GBP', 'EUR'), tariff: price('/kWh'), labour: price('/h') })
  .map(present)
  .filter((value) => readSettings(value).ok);

const anyShelf = fc
  .record({
    media: fc.uniqueArray(
      fc
        .record({
          medium: fc.constantFrom('foam-20ppi', 'my-rings', 'old-clay', 'floss-loose'),
          amount: fc.constantFrom(undefined, '0 L', '2 L'),
          price: price('/L'),
        })
        .map(present),
      { selector: ({ medium }) => medium },
    ),
    own: fc.record({ 'my-rings': price('/L'), 'old-clay': price('/L') }),
    parts: fc.uniqueArray(
      fc
        .record({ part: fc.constantFrom('seal-strip', 'clip', 'hose-per-metre'), price: price('') })
        .map(present),
      { selector: ({ part }) => part },
    ),
    hoses: fc.array(fc.record({ bore: fc.constant('16 mm'), pricePerMetre: price('') }).map(present), {
      maxLength: 2,
    }),
  })
  .map(({ own, ...rest }) => ({
    ...rest,
    ownMedia: Object.fromEntries(
      Object.entries(own).map(([id, cost]) => [id, present({ like: 'expanded-clay-10mm', price: cost })]),
    ),
  }));

const anyJob = fc
  .record({
    job: fc.constantFrom<unknown>(fullJob, leastCanister),
    money: fc.constantFrom<unknown>(undefined, {}, { currency: 'EUR' }, { labour: '30 GBP/h' }),
    shelf: fc.constantFrom<unknown>(undefined, [], ['foam-20ppi']),
    cost: price(''),
  })
  .map(({ job, money, shelf: list, cost }) =>
    withChanges(job, { money, shelf: list, 'filter.price': cost, quote: undefined, approval: undefined }),
  )
  .filter((job) => readDocument(job).ok);

describe('whatever job and books', () => {
  it('a job that reads still does, keeps what it said, and has nothing more to take', () => {
    fc.assert(
      fc.property(anyJob, anySettings, anyShelf, (job, ofSettings, ofShelf) => {
        const own = { shelf: shelfOf(ofShelf), settings: settingsOf(ofSettings) };
        const before = documentOf(job);
        const kept = structuredClone(before);
        const { document, filled } = fillFromBooks(before, own);
        expect(before).toEqual(kept);
        expect(documentOf(document)).toEqual(document);
        expect(document).toMatchObject(before);
        expect(fillFromBooks(document, own)).toEqual({ document, filled: [] });
        expect(new Set(filled).size).toBe(filled.length);
        if (filled.length === 0) expect(document).toEqual(before);
      }),
      { numRuns: 100 },
    );
  });
});
