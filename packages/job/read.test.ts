import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPath, writtenPath } from './fieldPath.ts';
import { newJob } from './newJob.ts';
import { readDocument, readJob } from './read.ts';
import { jobSchema } from './schema/job.ts';
import { isFields, listFields } from './schema/walk.ts';
import { fullJob } from './testing/fullJob.ts';
import { mutated } from './testing/mutate.ts';
import { changed, placesOf } from './testing/places.ts';

const least = `fettle: 1
tank: { volume: 100 L }
filter:
  family: internal-box
  measurements: { innerWidth: 90 mm, innerDepth: 80 mm, innerHeight: 250 mm, chambers: 2, slotArea: 12 cm2 }
  pump: { ratedFlow: 400 L/h }
`;

function codes(text: string | Uint8Array): readonly string[] {
  const reading = readJob(text);
  return reading.ok ? [] : reading.problems.map(({ code, path, at }) => `${code} ${path} ${at?.line ?? '-'}`);
}

describe('a job file', () => {
  it('reads with the least that is needed', () => {
    const reading = readJob(least);
    expect(reading).toMatchObject({
      ok: true,
      model: { tank: { volumeM3: 0.1 }, packing: { 'chamber-1': [] } },
    });
  });

  it('takes the times of a filling in parts and as a stopwatch shows them', () => {
    const tests = 'tests:\n  - { kind: timed-volume, volume: 5 L, times: [1 min 2 s, "1:02", 62 s] }\n';
    const flows = [tests, tests.replace(/times: .*]/, 'times: [62 s, 62 s, 62 s]')].map((lines) => {
      const reading = readJob(least + lines);
      return reading.ok ? reading.model.tests[0] : reading.problems;
    });
    expect(flows[0]).toEqual(flows[1]);
    expect(flows[0]).toMatchObject({ kind: 'timed-volume', repeats: 3 });
  });

  it('is refused where a doubt would leave less than no water, at its field', () => {
    expect(codes(least.replace('100 L', '150 L ± 200 %'))).toEqual(['bad-doubt tank.volume 2']);
  });

  it('reads as JSON, indented with tabs too', () => {
    expect(readJob(JSON.stringify(fullJob, null, '\t'))).toMatchObject({ ok: true });
  });

  it('reads with the line ends of other systems', () => {
    expect(readJob(least.replaceAll('\n', '\r\n'))).toMatchObject({ ok: true });
  });

  it('keeps the document as it was written', () => {
    const reading = readJob(JSON.stringify(fullJob));
    expect(reading.ok && reading.document).toEqual(fullJob);
  });

  it('reads bytes with and without a byte order mark', () => {
    const bytes = new TextEncoder().encode(least);
    expect(readJob(bytes)).toMatchObject({ ok: true });
    expect(readJob(new Uint8Array([0xef, 0xbb, 0xbf, ...bytes]))).toMatchObject({ ok: true });
    expect(readJob(`\uFEFF${least}`)).toMatchObject({ ok: true });
  });

  it('takes no for a word where plants are asked after', () => {
    const reading = readJob(least.replace('100 L', '100 L, planted: no'));
    expect(reading).toMatchObject({
      ok: true,
      document: { tank: { planted: 'no' } },
      model: { tank: { planted: false } },
    });
  });
});

const utf16 = Uint8Array.from(Buffer.from(least, 'utf16le'));

describe.each<readonly [what: string, text: string | Uint8Array, expected: readonly string[]]>([
  ['an empty file', '', ['file-empty  -']],
  ['only comments', '# nothing\n', ['file-empty  -']],
  ['more than two megabytes', 'x'.repeat(2_000_001), ['file-too-large  -']],
  ['more than two megabytes in bytes only', 'é'.repeat(1_500_000), ['file-too-large  -']],
  ['UTF-16 with a mark', new Uint8Array([0xff, 0xfe, ...utf16]), ['file-utf16  -']],
  ['UTF-16 without a mark', utf16, ['file-utf16  -']],
  ['Latin-1', Uint8Array.from(Buffer.from('fettle: 1 # über', 'latin1')), ['file-not-utf8  -']],
  ['a program', Uint8Array.from([0x7f, 0x45, 0x4c, 0x46, 2, 1, 1, 0, 0, 0, 0, 0]), ['not-a-job-file  -']],
  [
    'a PNG picture',
    Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
    ['not-a-job-file  -'],
  ],
  ['a PDF', new TextEncoder().encode('%PDF-1.7 \n'), ['not-a-job-file  -']],
  ['any other binary file', Uint8Array.from([1, 0, 0, 0xfe, 7, 0, 0, 0]), ['not-a-job-file  -']],
  [
    'an SVG drawing',
    '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>',
    ['not-a-job-file  -'],
  ],
  ['a web page', '<!DOCTYPE html><html></html>', ['not-a-job-file  -']],
  ['a NUL', 'fettle: 1\na: \0', ['file-control-character  2']],
  ['half of a surrogate pair', 'fettle: "\uD800"', ['file-control-character  1']],
  ['a tab for indenting', 'fettle: 1\ntank:\n\tvolume: 1 L', ['yaml-syntax  3']],
  ['a missing bracket', 'fettle: 1\ntank: { volume: 1 L', ['yaml-syntax  2']],
  ['brackets broken off, told once', 'a: [1,\n b: {', ['yaml-syntax  2']],
  ['two documents', 'fettle: 1\n---\nfettle: 1\n', ['yaml-several-documents  -']],
  ['YAML 1.1', '%YAML 1.1\n---\nfettle: 1\n', ['yaml-version  -']],
  ['an anchor and its alias', 'a: &x 1\nb: *x\n', ['yaml-alias  1', 'yaml-alias  2']],
  ['a tag', 'fettle: !!str 1\n', ['yaml-tag  1']],
  ['a list', '- 1\n', ['root-not-fields  -']],
  ['a word', 'hello', ['root-not-fields  -']],
  ['brackets in brackets without end', '['.repeat(100_000), ['nested-too-deep  1']],
  ['lists in lists without end', '- '.repeat(100_000), ['nested-too-deep  1']],
  [
    'a very deep mapping',
    Array.from({ length: 500 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'),
    ['nested-too-deep  25'],
  ],
  [
    'a hundred thousand fields',
    Array.from({ length: 150_000 }, (_, index) => `k${index}: 1`).join('\n'),
    ['too-many-parts  20001'],
  ],
])('%s', (_what, text, expected) => {
  it('is refused in one sentence', () => {
    expect(codes(text)).toEqual(expected);
    const reading = readJob(text);
    for (const { says } of reading.ok ? [] : reading.problems) expect(says).toMatch(/^[^\n]*\S\.$/);
  });
});

describe('the edition', () => {
  it.each([
    ['missing', least.replace('fettle: 1\n', ''), 'edition-missing', 'write fettle: 1'],
    [
      'newer than this version',
      least.replace('fettle: 1', 'fettle: 2'),
      'edition-newer',
      'newer than edition 1',
    ],
    ['a word', least.replace('fettle: 1', 'fettle: one'), 'edition-wrong', 'no edition'],
    ['0', least.replace('fettle: 1', 'fettle: 0'), 'edition-wrong', 'no edition'],
    ['text', least.replace('fettle: 1', 'fettle: "1"'), 'edition-wrong', 'no edition'],
  ])('%s is said', (_what, text, code, words) => {
    const reading = readJob(text);
    expect(reading.ok ? [] : reading.problems).toMatchObject([{ code, path: 'fettle' }]);
    expect(reading.ok ? '' : reading.problems[0]?.says).toContain(words);
  });
});

describe('fields that are not what they seem', () => {
  it('a field named __proto__ is unknown and changes nothing', () => {
    expect(codes(`${least}__proto__: { tank: 1 }\n`)).toEqual(['unknown-field __proto__ 7']);
    expect(codes(`${least}packing: { __proto__: [] }\n`)).toEqual(['unknown-field packing.__proto__ 7']);
    expect(codes(least.replace('pump: {', 'pump: { constructor: 1, '))).toEqual([
      'unknown-field filter.pump.constructor 6',
    ]);
  });

  it('a field without a name is told as that', () => {
    const reading = readJob(`${least.replace('pump: {', 'pump: { "": 1, ')}"": 3\n`);
    const says = reading.ok ? [] : reading.problems.map((each) => each.says);
    expect(says).toEqual(['A field of filter.pump has no name.', 'A field of the job has no name.']);
    const blank = readJob(`${least}" tank": 3\n`);
    expect(blank.ok ? '' : blank.problems[0]?.says).toMatch(/^" tank" is not a known field/);
  });

  it('not-a-number and infinity are no amounts', () => {
    expect(codes(least.replace('100 L', '.nan'))).toEqual(['not-a-quantity tank.volume 2']);
    expect(codes(least.replace('100 L', '.inf'))).toEqual(['not-a-quantity tank.volume 2']);
    expect(codes(least.replace('100 L', '100 L, pH: .inf'))).toEqual(['not-a-quantity tank.pH 2']);
  });

  it('a field written twice is one problem beside all others', () => {
    const text = least.replace('100 L }', '100 L, volume: 90 L, pHH: 7 }');
    expect(codes(text)).toEqual(['duplicate-field tank.volume 2', 'unknown-field tank.pHH 2']);
  });

  it('everything that is wrong is told at once, in the order of the text', () => {
    const text = least
      .replace('100 L', '100, stock: hevy')
      .replace('90 mm', '90 kg')
      .replace('400 L/h', '-400 L/h');
    expect(codes(`${text}packing: { chamber-9: [{ medium: foam-20pi }] }\n`)).toEqual([
      'no-unit tank.volume 2',
      'not-among tank.stock 2',
      'wrong-dimension filter.measurements.innerWidth 5',
      'out-of-bounds filter.pump.ratedFlow 6',
      'unknown-chamber packing.chamber-9 7',
      'one-of-fields packing.chamber-9[0] 7',
      'unknown-medium packing.chamber-9[0].medium 7',
    ]);
  });
});

/** The same document with the fields of every mapping in another order. */
function shuffled(value: unknown, seed: number): unknown {
  if (Array.isArray(value)) return value.map((entry: unknown) => shuffled(entry, seed));
  if (!isFields(value)) return value;
  const weight = (key: string) =>
    [...key].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0) * seed) % 9973, seed);
  const entries = Object.entries(value).toSorted(([one], [other]) => weight(one) - weight(other));
  return Object.fromEntries(entries.map(([key, inside]) => [key, shuffled(inside, seed)]));
}

describe('properties', () => {
  it('any value in the place of any field is read or refused, and never throws', () => {
    const paths = listFields(jobSchema).flatMap(({ path }) => placesOf(fullJob, path));
    fc.assert(
      fc.property(fc.nat({ max: paths.length - 1 }), fc.jsonValue({ maxDepth: 3 }), (which, value) => {
        const path = paths[which] ?? [];
        const reading = readDocument(changed(fullJob, path, value));
        for (const { says } of reading.ok ? [] : reading.problems) expect(says).toMatch(/^[^\n]*\S\.$/);
      }),
      { numRuns: 200 },
    );
  });

  it.each(['0', '1.5', '', 'a.b', 'x[0]'])('a chamber called “%s” is refused by its name', (name) => {
    const reading = readDocument(changed(fullJob, ['packing'], { [name]: '' }));
    expect(reading.ok ? [] : reading.problems.map(({ code }) => code)).toContain('bad-id');
  });

  it('the order of fields changes nothing in the model', () => {
    const straight = readDocument(structuredClone(fullJob));
    expect(straight.ok).toBe(true);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), (seed) => {
        const other = readDocument(shuffled(fullJob, seed));
        expect(other.ok && other.model).toEqual(straight.ok && straight.model);
      }),
      { numRuns: 40 },
    );
  });

  it('mutated text never throws, and every problem is one sentence', () => {
    const texts = [
      least,
      JSON.stringify(fullJob, null, 1),
      ...['hang-on-back', 'split-housing-canister'].map(newText),
    ];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 31 - 1 }), (seed) => {
        const reading = readJob(mutated(texts[seed % texts.length] ?? '', seed));
        for (const { says } of reading.ok ? [] : reading.problems) expect(says).toMatch(/^[^\n]*\S\.$/);
      }),
      { numRuns: 200 },
    );
  });

  it('a written path reads back', () => {
    const step = fc.oneof(
      fc.integer({ min: 0, max: 999 }),
      fc.stringMatching(/^[a-z][a-z0-9-]{0,9}$/),
      fc.constant('sand-1.5mm'),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 6 }), (rest) => {
        const path = ['packing', ...rest];
        expect(readPath(writtenPath(path))).toEqual(path);
      }),
    );
  });
});

function newText(family: string): string {
  const started = newJob(family);
  return started.ok ? started.text : '';
}
