import { describe, expect, test } from 'vitest';
import { edited, historyOf } from '../../session/history.ts';
import { builtAsBefore } from './builtEdits.ts';

const found = { fettle: 1, packing: { 'basket-1': [{ medium: 'foam-20ppi', depth: '20 mm' }] } };
const planned = { packing: { 'basket-1': [] }, made: ['seal-gaps'], notes: 'Look at the seal.' };

const built = (job: { fettle: number } & Record<string, unknown>) =>
  edited(historyOf(job), builtAsBefore('built as planned', '2026-11-12')).document;

describe('a filter that was built as planned', () => {
  test('is left on the day on which that is said, with packing and alterations of the plan, not with its notes', () => {
    expect(built({ ...found, planned }).asLeft).toEqual({
      packing: planned.packing,
      made: planned.made,
      day: '2026-11-12',
    });
  });

  test('is left as it was found where nothing was planned', () => {
    expect(built(found).asLeft).toEqual({ packing: found.packing, day: '2026-11-12' });
  });

  test.each([
    ['approved', 'built'],
    ['proven', 'proven'],
  ])('takes a job that was %s to %s', (stage, then) => {
    expect(built({ ...found, planned, job: { stage } }).job).toEqual({ stage: then });
  });
});
