import { describe, expect, test } from 'vitest';
import { lookedState, statesOf } from './lookedState.ts';

const found = { fettle: 1, packing: {} };
const planned = { ...found, planned: { packing: {} } };
const left = { ...planned, asLeft: { packing: {} } };

describe('the state of the filter that is looked at', () => {
  test('is the one that the work has got to, where none is asked for', () => {
    expect([found, planned, left].map((job) => lookedState(job, null))).toEqual([
      'as-found',
      'planned',
      'as-left',
    ]);
  });

  test('is the one that is asked for, where the job describes it', () => {
    expect(lookedState(left, 'as-found')).toBe('as-found');
    expect(lookedState(left, 'planned')).toBe('planned');
    expect(lookedState(found, 'as-left')).toBe('as-found');
    expect(lookedState(left, 'nothing of the kind')).toBe('as-left');
  });

  test('is chosen among those that the job describes', () => {
    expect(statesOf({ ...found, asLeft: { packing: {} } })).toEqual(['as-found', 'as-left']);
  });
});
