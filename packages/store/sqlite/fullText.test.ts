import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { migrate } from '../migrations/migrate.ts';
import { type OpenFile, openFile } from './driver.ts';
import { questionOf } from './fullText.ts';

describe('what is typed into the search', () => {
  it.each([
    ['loud', '"loud"*'],
    ['loud night', '"loud" "night"*'],
    ['foam-20ppi', '"foam" "20ppi"*'],
    ['"loud" NEAR night*', '"loud" "NEAR" "night"*'],
    ['words:loud', '"words" "loud"*'],
    ['Überlauf', '"Überlauf"*'],
    ['half \ud800 a fish', '"half" "a" "fish"*'],
  ])('%s becomes words alone: %s', (typed, question) => {
    expect(questionOf(typed)).toBe(question);
  });

  it('is no question where no word is in it', () => {
    for (const typed of ['', ' ', '"', '*', '🐟', '\0', '\ud800', '()'.repeat(2_000)])
      expect(questionOf(typed)).toBeUndefined();
  });

  it('is cut to as many words as somebody might mean', () => {
    expect(questionOf('w '.repeat(500))?.split(' ')).toHaveLength(20);
    expect(questionOf('x'.repeat(10_000))).toHaveLength(2_003);
  });
});

describe('the index', () => {
  let file: OpenFile;

  beforeAll(() => {
    file = openFile(':memory:', 'libsql');
    migrate(file);
    file.exec("insert into job_text (rowid, words) values (1, 'Überlauf, very loud')");
  });

  afterAll(() => file.close());

  it('understands whatever is typed', () => {
    const asked = file.prepare('select rowid from job_text where job_text match ?');
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (typed) => {
        const question = questionOf(typed);
        if (question !== undefined) expect(asked.all([question]).length).toBeLessThanOrEqual(1);
      }),
      { numRuns: 500 },
    );
    expect(asked.all([questionOf('UBERLAUF lo')])).toEqual([{ rowid: 1 }]);
  });
});
