import { readDocument } from '@fettle/job/read.ts';
import { describe, expect, test } from 'vitest';
import { emptyDraft, shownProblems } from './draft.ts';

const problems = (): readonly { readonly code: string; readonly path: string }[] => {
  const reading = readDocument(emptyDraft('2026-11-02'));
  return reading.ok ? [] : reading.problems;
};

describe('a filter that is being taken in', () => {
  test('is not scolded for what is not filled in yet, and is told of it once it is sent', () => {
    expect(shownProblems(problems(), false)).toEqual([]);
    expect(shownProblems(problems(), true).map(({ path }) => path)).toEqual(
      expect.arrayContaining(['tank.volume', 'filter.family']),
    );
  });

  test('is told at once of what is wrong', () => {
    const wrong = [...problems(), { code: 'no-unit', path: 'tank.volume' }];
    expect(shownProblems(wrong, false)).toEqual([{ code: 'no-unit', path: 'tank.volume' }]);
  });
});
