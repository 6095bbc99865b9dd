import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDocument, readJob } from './read.ts';
import type { JobDocument } from './schema/job.ts';
import { fullJob, jobWithForbidden } from './testing/fullJob.ts';
import { leastCanister, withChanges } from './testing/readWith.ts';
import { writeJob } from './write.ts';

function documentOf(value: unknown): JobDocument {
  const reading = readDocument(value);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.document;
}

function readAgain(text: string): JobDocument {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(`${JSON.stringify(reading.problems)}\n${text}`);
  return reading.document;
}

function expectKept(document: JobDocument): void {
  const text = writeJob(document);
  const again = readAgain(text);
  expect(again).toEqual(document);
  expect(writeJob(again)).toBe(text);
}

/** The lines of a job in which one text was put in the place of its notes. */
function writtenNotes(notes: string): string {
  const text = writeJob(documentOf(withChanges(leastCanister, { job: { notes } })));
  return text.slice(text.indexOf('  notes:'), text.indexOf('\n\ntank:'));
}

const demos = new URL('../../demo/', import.meta.url);

describe('a job written as text', () => {
  for (const name of readdirSync(demos).filter((each) => each.endsWith('.yaml'))) {
    it(`${name} is the same job when it is read again`, () => {
      expectKept(readAgain(readFileSync(new URL(name, demos), 'utf8')));
    });
  }

  it('with every field is the same job when it is read again', () => {
    for (const job of [fullJob, jobWithForbidden, leastCanister]) expectKept(documentOf(job));
  });

  it('keeps quantities as they were written, and stands readable', () => {
    const text = writeJob(documentOf(fullJob));
    expect(text).toContain('\n\ntank:\n  volume: 180 L ± 5 %\n');
    expect(text).toContain('    - { medium: foam-20ppi, depth: 30 ± 2 mm }\n');
    expect(text).toContain('    times: [ 31.2 s, 30.8 s, 31.5 s ]\n');
    expect(text).toContain('  received: 2026-11-02\n');
  });

  it('uses no anchors where two fields share one value', () => {
    const bed = { medium: 'foam-20ppi', depth: '1 cm' };
    const text = writeJob(
      documentOf(withChanges(leastCanister, { packing: { 'basket-1': [bed, bed], 'basket-2': [bed] } })),
    );
    expect(text).not.toMatch(/[&*!]/);
  });

  it('puts text in quotes that could be read as something else', () => {
    const odd = [
      '1e3',
      'no',
      'Yes',
      'null',
      '~',
      '12:30',
      '0x1F',
      '1_000',
      '12',
      'true',
      '',
      '.inf',
      '<<',
      '=',
      '0b1',
    ];
    for (const notes of [
      ...odd,
      ' first',
      'last ',
      '# none',
      '- a',
      'a: b',
      '*a',
      '&a',
      '!a',
      '@a',
      '\u00a0a',
    ]) {
      expect(writtenNotes(notes)).toBe(`  notes: ${JSON.stringify(notes)}`);
    }
    for (const notes of ['Brought in wet.', "the owner's own", 'half past 12:30', '2026-11-02']) {
      expect(writtenNotes(notes)).toBe(`  notes: ${notes}`);
    }
  });

  it('stands notes of several lines as lines', () => {
    expect(writtenNotes('First line.\n\n- second\n# third')).toBe(
      '  notes: |-\n    First line.\n\n    - second\n    # third',
    );
  });

  it('writes what could not be seen as an escape', () => {
    expect(writtenNotes('a\u202eb')).toBe('  notes: "a\\u202eb"');
    expect(writtenNotes('a\u0000\u007f\u0085\u200b\ufeff\u2028b\r\n')).toBe(
      '  notes: "a\\u0000\\u007f\\u0085\\u200b\\ufeff\\u2028b\\r\\n"',
    );
    expect(writtenNotes('\ud83d alone, \ud83d\udc1f whole, \u{e0041} tag')).toBe(
      '  notes: "\\ud83d alone, \ud83d\udc1f whole, \\U000e0041 tag"',
    );
  });

  it('keeps any text, wherever it stands', () => {
    const pieces = fc.constantFrom(
      ...[
        '\n',
        '\n\n',
        '\r\n',
        ' ',
        '  ',
        '\t',
        ': ',
        ' #',
        '- ',
        '? ',
        '| ',
        '> ',
        '{',
        '}',
        '[',
        ']',
        ',',
        '"',
        "'",
      ],
      ...[
        '---',
        '...',
        '%',
        '&a',
        '*a',
        '!t',
        '\\',
        '\\u',
        '\u2029',
        '\u202e',
        '\u0001',
        '\ufeff',
        '\ud800',
        'null',
      ],
      ...['~', '1', '1,5 m', 'yes', 'text', 'é', '\u00a0', '\uffff'],
    );
    const texts = fc.oneof(
      fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
      fc.string({ unit: 'binary', maxLength: 40 }),
    );
    fc.assert(
      fc.property(fc.array(texts, { minLength: 5, maxLength: 5 }), ([title, notes, name, claim, caution]) => {
        const changes = {
          job: { title, notes },
          otherFilters: [{ name, flow: '90 L/h' }],
          'filter.claims': [claim, caution],
          media: { 'my-foam': { like: 'foam-20ppi', cautions: [caution] } },
          tests: [{ kind: 'power', notes, power: '7 W' }],
        };
        expectKept(documentOf(withChanges(leastCanister, changes)));
      }),
      { numRuns: 150 },
    );
  });

  it('is the same job when it is read again, with thousands of readings', () => {
    const readings = Array.from({ length: 490 }, (_reading, second) => ({
      at: `${second} s`,
      strength: second,
    }));
    const tests = Array.from({ length: 12 }, (_test, number) => ({
      kind: 'dye',
      id: `dye-${number}`,
      readings,
    }));
    const document = readAgain(JSON.stringify({ ...leastCanister, tests }));
    expectKept(document);
    expect(writeJob(document)).toMatch(/^\{"fettle":1,/);
  });

  it('keeps fields under names that look like something else', () => {
    const names = ['no', 'null', 'true', 'y', 'e1', 'on'];
    const media = Object.fromEntries(names.map((name) => [name, { like: 'foam-20ppi' }]));
    const document = documentOf(withChanges(leastCanister, { media, shelf: names }));
    expectKept(document);
    expect(writeJob(document)).toContain('  "no":\n    like: foam-20ppi\n');
  });
});
