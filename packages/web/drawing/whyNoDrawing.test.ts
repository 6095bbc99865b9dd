import { describe, expect, test } from 'vitest';
import { whyNoDrawing } from './whyNoDrawing.ts';

describe('where there is no drawing yet', () => {
  test('a job that was just opened is being drawn: nobody is sent to fill in what is there', () => {
    expect(whyNoDrawing({ problems: [] })).toBe('Drawing it…');
  });

  test('a job that lacks measurements says what the drawing waits for', () => {
    const problems = [
      {
        path: 'filter.measurements.innerWidth',
        says: 'innerWidth is missing',
        code: 'measurement-missing' as const,
      },
    ];
    expect(whyNoDrawing({ problems }, 'the measurements are')).toBe(
      'The drawing comes when the measurements are filled in.',
    );
  });
});
