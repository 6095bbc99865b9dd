import { families } from '@fettle/engine/families/families.ts';
import { describe, expect, test } from 'vitest';
import { newJob } from './newJob.ts';
import { readDocument, readJob } from './read.ts';
import type { JobDocument } from './schema/job.ts';
import { templateFields } from './templateFields.ts';
import { fullJob } from './testing/fullJob.ts';

const textOf = (family: string): string => {
  const made = newJob(family);
  if (!made.ok) throw new Error(made.problem.says);
  return made.text;
};

const documentOf = (text: string): JobDocument => {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(reading.problems.map(({ says }) => says).join(' '));
  return reading.document;
};

describe('what is left of a new job file', () => {
  test.each(families.map(({ id }) => id))('unfilled, is every example of %s', (family) => {
    const left = templateFields(documentOf(textOf(family)));
    expect(left).toEqual(expect.arrayContaining(['job.title', 'tank.volume']));
    // What drives the water is a pump, or air.
    expect(left.some((path) => ['filter.pump.ratedFlow', 'filter.pump.airFlow'].includes(path))).toBe(true);
    expect(left.some((path) => path.startsWith('filter.measurements.'))).toBe(true);
    expect(left).not.toContain('filter.family');
  });

  test('is not what was filled in, nor what was a comment', () => {
    const text = textOf('basket-stack-canister').replace('volume: 180 L', 'volume: 240 L');
    const left = templateFields(documentOf(text));
    expect(left).not.toContain('tank.volume');
    expect(left).toContain('job.title');
    expect(left.filter((path) => path.startsWith('owner'))).toEqual([]);
  });

  test('is nothing in a job of its own, though a figure is the same', () => {
    const reading = readDocument({ ...structuredClone(fullJob), tank: { ...fullJob.tank, volume: '180 L' } });
    expect(documentOf(textOf('basket-stack-canister')).tank.volume).toBe('180 L');
    expect(reading.ok && templateFields(reading.document)).toEqual([]);
  });
});
