import { readDocument } from '@fettle/job/read.ts';
import { describe, expect, test } from 'vitest';
import { fieldsToLeaveOut, problemsIn, withoutFields } from './readablePart.ts';

const job = (more: object) => ({
  fettle: 1,
  tank: { volume: '180 L' },
  filter: {
    family: 'basket-stack-canister',
    measurements: { baskets: 1, basketWidth: '160 mm', basketDepth: '150 mm', basketHeight: '60 mm' },
    pump: { ratedFlow: '850 L/h' },
  },
  packing: { 'basket-1': [{ medium: 'foam-20ppi', depth: '40 mm' }] },
  ...more,
});

const tooMuch = { packing: { 'basket-1': [{ medium: 'foam-20ppi', depth: '80 mm' }] } };

const problemsOf = (document: unknown) => {
  const reading = readDocument(document);
  return reading.ok ? [] : reading.problems;
};

describe('a job whose plan is too much for a chamber', () => {
  test('reads without it, and the chamber is named with the room that it has', () => {
    const document = job({ planned: tooMuch });
    const problems = problemsOf(document);
    expect(problemsIn('planned', problems)).toMatchObject([
      { path: 'planned.packing.basket-1', allowed: 'at most 60.0 mm in all' },
    ]);
    const left = fieldsToLeaveOut(problems);
    expect(left).toEqual(['planned']);
    expect(problemsOf(withoutFields(document, left))).toEqual([]);
    expect(withoutFields(document, left).packing).toEqual(document.packing);
  });

  test('keeps the state as left, where that one reads', () => {
    const document = job({ planned: tooMuch, asLeft: { packing: {} } });
    expect(withoutFields(document, fieldsToLeaveOut(problemsOf(document))).asLeft).toEqual({ packing: {} });
  });

  test('is not helped so where something else is wrong as well', () => {
    expect(fieldsToLeaveOut(problemsOf(job({ planned: tooMuch, tank: { volume: '180' } })))).toEqual([]);
  });
});

test('a quote with a price still open does not take the drawing away', () => {
  const document = job({ quote: { work: [{ what: 'clean and test', hours: 'soon' }] } });
  const problems = problemsOf(document);
  expect(problems).not.toEqual([]);
  expect(fieldsToLeaveOut(problems)).toEqual(['quote']);
  expect(problemsOf(withoutFields(document, ['quote']))).toEqual([]);
});

test('nothing is left out of a job that reads', () => {
  expect(fieldsToLeaveOut([])).toEqual([]);
});
