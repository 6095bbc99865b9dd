import { describe, expect, test } from 'vitest';
import { entryOf } from './entryOf.ts';

const asFound = { number: 12, looked: 'as-found' } as const;

describe('a measurement that would narrow the range', () => {
  test('leads to the field of the job', () => {
    expect(entryOf({ kind: 'weigh-the-feed', of: 'tank.feed' }, asFound)).toMatchObject({
      address: '/jobs/12/take-in#tank.feed',
    });
    expect(entryOf({ kind: 'measure-the-part', of: 'filter.hoses.intake.barbBore' }, asFound)).toMatchObject({
      address: '/jobs/12/map#filter.hoses.intake.barbBore',
    });
  });

  test('opens the clock for a flow of clean media, in the packing that is looked at', () => {
    expect(entryOf({ kind: 'time-flow' }, asFound)).toMatchObject({
      address: '/jobs/12/as-found?state=cleaned-original&bench=',
    });
    expect(entryOf({ kind: 'time-flow' }, { number: 3, looked: 'planned' })).toMatchObject({
      address: '/jobs/3/as-found?state=as-left&bench=',
    });
  });

  test('adds a bench test where it is one', () => {
    expect(entryOf({ kind: 'challenge-with-ammonia' }, asFound)).toMatchObject({ test: 'ammonia-challenge' });
    expect(entryOf({ kind: 'measure-shutoff-head' }, asFound)).toMatchObject({ test: 'shutoff-head' });
  });

  test('leads to the shelf for a medium', () => {
    expect(entryOf({ kind: 'find-pore-space', of: 'foam-20ppi' }, asFound)).toMatchObject({
      address: '/shelf',
    });
  });
});
