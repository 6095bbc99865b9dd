import { describe, expect, it } from 'vitest';
import { fullJob } from '../testing/fullJob.ts';
import { leastCanister, readWith } from '../testing/readWith.ts';
import { quoteTotals } from './quoteTotals.ts';

function totalsWith(changes: Readonly<Record<string, unknown>>, job: unknown = leastCanister) {
  const reading = readWith(changes, job);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return quoteTotals(reading.document);
}

describe('the totals of a quote', () => {
  it('add up by hand: 1.5 h at 30 an hour and 40; two strips of 2.50 and a bag of 3', () => {
    expect(totalsWith({}, fullJob)).toEqual({
      currency: 'GBP',
      labourLines: [45, 40],
      partLines: [5, 3],
      labour: 85,
      parts: 8,
      total: 93,
      missing: [],
    });
  });

  it('are the sums of rounded lines: three times 20 min at 40 an hour are 3 × 13.33', () => {
    const line = { work: 'Clean', time: '20 min' };
    const totals = totalsWith({ money: { labour: '40 EUR/h' }, quote: { labour: [line, line, line] } });
    expect(totals).toMatchObject({ currency: 'EUR', labourLines: [13.33, 13.33, 13.33], total: 39.99 });
  });

  it('round a half upwards, also where binary fractions lie just below it', () => {
    const parts = [
      { part: 'a', price: '0.145 GBP' },
      { part: 'b', price: '0.285 GBP', count: 10 },
      { part: 'c', price: '0.285 GBP' },
    ];
    expect(totalsWith({ quote: { parts } })).toMatchObject({ partLines: [0.15, 2.85, 0.29], total: 3.29 });
  });

  it('take a price before time and rate, and before the price list', () => {
    const quote = {
      labour: [{ work: 'Tests', time: '10 h', price: '12 GBP' }],
      parts: [{ part: 'seal', price: '1 GBP' }, { part: 'seal' }],
    };
    const money = { labour: '30 GBP/h', parts: { seal: '2 GBP' } };
    expect(totalsWith({ quote, money })).toMatchObject({ labour: 12, parts: 3, total: 15, missing: [] });
  });

  it('name what is missing, and add up the rest', () => {
    const quote = {
      labour: [{ work: 'Tests' }, { work: 'Clean', time: '1 h' }, { work: 'Fetch', price: '5 GBP' }],
      parts: [{ part: 'constructor' }],
    };
    const totals = totalsWith({ quote, money: { parts: { seal: '2 GBP' } } });
    expect(totals).toMatchObject({
      labourLines: [undefined, undefined, 5],
      partLines: [undefined],
      total: 5,
    });
    expect(totals?.missing).toEqual([
      { path: 'quote.labour[0].price', says: 'quote.labour[0] has neither a price nor a time.' },
      {
        path: 'quote.labour[1].price',
        says: 'quote.labour[1] has a time and no price, and money.labour, the rate for it, is absent.',
      },
      {
        path: 'quote.parts[0].price',
        says: 'quote.parts[0] has no price, and money.parts has none for it.',
      },
    ]);
  });

  it('are none where there is no quote, and nothing where it has no lines', () => {
    expect(totalsWith({})).toBeUndefined();
    expect(totalsWith({ quote: { notes: 'later' } })).toMatchObject({ total: 0, missing: [] });
  });
});
