import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoDocument, sourceOf } from '../testing/sources.ts';
import { chaptersOf, chaptersVtt, vttTime } from './chapters.ts';

const withChapters = (chapters: readonly { readonly at: string; readonly says: string }[]) =>
  sourceOf({ ...demoDocument('back-hanger'), writeUp: { chapters } }).document;

const secondsOf = (written: string): number => {
  const [hours, minutes, seconds] = written.split(':').map(Number) as [number, number, number];
  return hours * 3600 + minutes * 60 + seconds;
};

/** A WebVTT file of chapters by the standard's grammar; every cue with its times, s. */
const cuesOf = (file: string) => {
  const [head, ...blocks] = file.trimEnd().split('\n\n');
  expect(head).toBe('WEBVTT');
  return blocks.map((block) => {
    const lines = block.split('\n');
    expect(lines).toHaveLength(3);
    const times = /^(\d{2,}:[0-5]\d:[0-5]\d\.\d{3}) --> (\d{2,}:[0-5]\d:[0-5]\d\.\d{3})$/.exec(lines[1]!);
    expect(times, lines[1]).not.toBeNull();
    expect(lines[2]).not.toContain('-->');
    return { from: secondsOf(times![1]!), to: secondsOf(times![2]!), says: lines[2]! };
  });
};

describe('chapters of a recording', () => {
  it('are put in time, and each lasts until the next; the last has an end of its own', () => {
    const document = withChapters([
      { at: '1 min 45 s', says: 'Opened' },
      { at: '0 s', says: 'How it came' },
      { at: '12:30', says: 'As left' },
    ]);
    expect(cuesOf(chaptersVtt(chaptersOf(document))!)).toEqual([
      { from: 0, to: 105, says: 'How it came' },
      { from: 105, to: 750, says: 'Opened' },
      { from: 750, to: 750 + 3600, says: 'As left' },
    ]);
  });

  it('are not written where no times are entered', () => {
    expect(chaptersVtt(chaptersOf(demoDocument('back-hanger')))).toBeUndefined();
    expect(chaptersVtt(chaptersOf(withChapters([])))).toBeUndefined();
  });

  it('keep the last of two that were entered for one time, so that none ends where it begins', () => {
    const document = withChapters([
      { at: '10 s', says: 'First' },
      { at: '10 s', says: 'Mended' },
    ]);
    expect(chaptersOf(document)).toEqual([{ fromS: 10, says: 'Mended' }]);
  });

  it('are valid whatever they are called and whenever they begin, up to a day', () => {
    const chapter = fc.record({
      fromS: fc.integer({ min: 0, max: 86_400_000 }).map((milliseconds) => milliseconds / 1000),
      says: fc
        .string({ unit: fc.constantFrom(...'a<>&-\n é漢א'), minLength: 1, maxLength: 30 })
        .map((text) => `x${text}`),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(chapter, { minLength: 1, maxLength: 12, selector: ({ fromS }) => fromS }),
        (all) => {
          const chapters = all.toSorted((one, other) => one.fromS - other.fromS);
          const cues = cuesOf(chaptersVtt(chapters)!);
          expect(cues).toHaveLength(chapters.length);
          for (const [at, { from, to, says }] of cues.entries()) {
            expect(from).toBeCloseTo(chapters[at]!.fromS, 3);
            expect(to).toBeGreaterThan(from);
            expect(says).not.toMatch(/<|&(?!amp;|lt;|gt;)/);
          }
        },
      ),
    );
  });

  it.each([
    [0, '00:00:00.000'],
    [105.25, '00:01:45.250'],
    [59.9996, '00:01:00.000'],
    [86_400, '24:00:00.000'],
  ])('%d s are written %s', (timeS, written) => {
    expect(vttTime(timeS)).toBe(written);
  });
});
