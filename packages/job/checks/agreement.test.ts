import { describe, expect, it } from 'vitest';
import { newJob } from '../newJob.ts';
import { readJob } from '../read.ts';
import { readWith } from '../testing/readWith.ts';

interface Case {
  readonly what: string;
  readonly changes: Readonly<Record<string, unknown>>;
  /** `code path`, in the order in which they are found. */
  readonly expected: readonly string[];
  /** Words that one of the sentences holds. */
  readonly words?: string;
}

const cases: readonly Case[] = [
  {
    what: 'days of consent, quote and approval before the days that they follow',
    changes: {
      'consent.withdrawn': '2026-11-17',
      'quote.validUntil': '2026-11-04',
      'approval.day': '2026-11-04',
    },
    expected: [
      'dates-reversed consent.withdrawn',
      'dates-reversed quote.validUntil',
      'dates-reversed approval.day',
    ],
    words: 'approval.day is before the day of the quote.',
  },
  {
    what: 'a tag twice, whatever its capitals',
    changes: { 'job.tags': ['Hall', 'tank', 'hall'] },
    expected: ['listed-twice job.tags[2]'],
  },
  {
    what: 'tags that would be read as two, or as none',
    changes: { 'job.tags': ['a, b', '', ' a', 'a\nb', 'x'.repeat(41), 'a\u202eb', 'fine'] },
    expected: [0, 1, 2, 3, 4, 5].map((place) => `bad-tag job.tags[${place}]`),
    words: 'which cannot be a tag',
  },
  {
    what: 'a stage that is none',
    changes: { 'job.stage': 'taken in hand' },
    expected: ['not-among job.stage'],
  },
  {
    what: 'consent in words where yes or no is to be said',
    changes: { 'consent.photographs': 'yes' },
    expected: ['wrong-kind consent.photographs'],
    words: 'true or false',
  },
  {
    what: 'a quote in another currency than the job',
    changes: {
      'quote.labour[0].price': '30 EUR',
      'quote.parts[0].price': '2 EUR',
      'approval.amount': '90 EUR',
    },
    expected: [
      'currency-mismatch quote.labour[0].price',
      'currency-mismatch quote.parts[0].price',
      'currency-mismatch approval.amount',
    ],
  },
];

describe('stage, tags, consent, quote and approval', () => {
  it.each(cases)('$what', ({ changes, expected, words = '' }) => {
    const reading = readWith(changes);
    const problems = reading.ok ? [] : reading.problems;
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual(expected);
    expect(problems.map(({ says }) => says).join(' ')).toContain(words);
  });
});

describe('what a new job offers of these, taken from behind its comment signs,', () => {
  it('reads without a problem', () => {
    const started = newJob('hang-on-back');
    const text = started.ok ? started.text : '';
    const from = text.indexOf('# owner:');
    const people = text.slice(from).replaceAll(/^# (?=\S+:| )/gm, '');
    const reading = readJob(
      text.slice(0, from).replaceAll(/# (?=(?:received|promised|stage|tags):)/g, '') + people,
    );
    expect(reading.ok ? [] : reading.problems).toEqual([]);
    expect(reading.ok && Object.keys(reading.document)).toEqual(
      expect.arrayContaining(['owner', 'consent', 'quote', 'approval']),
    );
    expect(reading.ok && reading.document.job).toMatchObject({
      stage: 'taken-in',
      tags: ['canister', 'hall tank'],
    });
    expect(reading.ok && reading.document.consent).toMatchObject({ name: false, photographs: false });
  });
});
