import { quoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { describe, expect, test } from 'vitest';
import { edited, historyOf, undone, type Worked } from '../session/history.ts';
import { approving, dayAfter, takingPlanIntoQuote, takingReckonedPrices } from './quoteEdits.ts';
import { missingInWords, pricedLines } from './quoteWords.ts';

const job = (more: object = {}): Worked => ({ fettle: 1, ...more });
const parts = [{ part: '300 mL of loose floss', price: '1.20 GBP' }];

describe('a quote that is begun from the plan', () => {
  test('has its parts, its day, and holds as long as the workshop says', () => {
    const { document } = edited(
      historyOf(job()),
      takingPlanIntoQuote({ parts, today: '2026-12-20', days: 14 }),
    );
    const fromPlan = parts.map((line) => ({ ...line, from: 'plan' }));
    expect(document.quote).toMatchObject({ day: '2026-12-20', validUntil: '2027-01-03', parts: fromPlan });
  });

  test('keeps what was written, and takes nothing twice', () => {
    const quote = {
      day: '2026-11-01',
      validUntil: '2026-11-08',
      labour: [{ work: 'Seal', time: '1 h' }],
      parts,
    };
    const more = [...parts, { part: 'seal strip' }];
    const { document } = edited(
      historyOf(job({ quote })),
      takingPlanIntoQuote({ parts: more, today: '2026-12-20' }),
    );
    expect(document.quote).toEqual({ ...quote, parts: [...parts, { part: 'seal strip', from: 'plan' }] });
  });

  test('replaces the lines of an earlier plan as a set, and keeps prices and what was written by hand', () => {
    const own = { part: 'carriage', price: '5.00 GBP' };
    const strip = { part: 'seal strip', price: '2.75 GBP', from: 'plan' };
    const quote = { parts: [own, { part: '300 mL of loose floss', from: 'plan' }, strip] };
    const next = [{ part: '200 mL of loose floss' }, { part: 'seal strip' }];
    const taken = takingPlanIntoQuote({ parts: next, today: '2026-12-20' });
    const { document } = edited(historyOf(job({ quote })), taken);
    expect(document.quote).toMatchObject({
      parts: [own, { part: '200 mL of loose floss', from: 'plan' }, strip],
    });
    const none = edited(
      historyOf(job({ quote: { parts: [strip] } })),
      takingPlanIntoQuote({ parts: [], today: '2026-12-20' }),
    );
    expect(none.document.quote).not.toHaveProperty('parts');
  });

  test('takes the prices that the plan was reckoned with for its own open lines alone', () => {
    const reckoned = [
      { part: 'floss', price: '1.20 GBP' },
      { part: 'strip', price: '2.50 GBP' },
      { part: 'carriage', price: '9.00 GBP' },
    ];
    const quote = {
      parts: [
        { part: 'floss', from: 'plan' },
        { part: 'strip', price: '3.00 GBP', from: 'plan' },
        { part: 'carriage' },
      ],
    };
    const { document } = edited(historyOf(job({ quote })), takingReckonedPrices(reckoned));
    expect(document.quote).toEqual({
      parts: [{ part: 'floss', price: '1.20 GBP', from: 'plan' }, ...quote.parts.slice(1)],
    });
    // What was there before is what undo goes back to.
    expect(quote.parts[0]).toEqual({ part: 'floss', from: 'plan' });
  });
});

describe('an owner who agrees', () => {
  test.each([
    ['planned', 'approved'],
    [undefined, 'approved'],
    ['built', 'built'],
  ])('takes a job that was %s to %s', (stage, then) => {
    const before = historyOf(job({ job: stage === undefined ? {} : { stage } }));
    const after = edited(before, approving({ today: '2026-11-06', amount: '61.50 GBP' }));
    expect(after.document).toMatchObject({
      job: { stage: then },
      approval: { day: '2026-11-06', amount: '61.50 GBP' },
    });
    expect(undone(after).document).toEqual(before.document);
  });
});

describe('the sum of a quote', () => {
  const document = {
    fettle: 1,
    quote: {
      labour: [{ work: 'Seal', time: '1 h' }, { work: 'Look' }],
      parts: [{ part: 'strip', count: 2, price: '3 GBP' }, { part: 'floss' }],
    },
  } as unknown as JobDocument;

  test('has every line, and says in the words of the form which have no price', () => {
    const totals = quoteTotals(document);
    if (totals === undefined) throw new Error('there is a quote');
    expect(pricedLines(document, totals)).toEqual([
      { says: 'Seal', price: undefined },
      { says: 'Look', price: undefined },
      { says: '2 × strip', price: 6 },
      { says: 'floss', price: undefined },
    ]);
    expect(totals.missing.map((each) => missingInWords(document, each))).toEqual([
      'Work 1 has a time and no price: write its price, or the price of an hour of work.',
      'Work 2 has neither a time nor a price: write one of them.',
      'Part 2 has no price: write the price of one.',
    ]);
  });
});

test('days are counted over the end of a month and of February', () => {
  expect([dayAfter('2026-11-28', 30), dayAfter('2028-02-28', 1)]).toEqual(['2026-12-28', '2028-02-29']);
});
