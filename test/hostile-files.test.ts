import {
  closeSync,
  existsSync,
  ftruncateSync,
  openSync,
  readFileSync,
  symlinkSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { problemsSchema } from '@fettle/workflows/results/problems.ts';
import { describe, expect, test } from 'vitest';
import { demo, fettle, fettleProcess, fileWith, newFolder } from './support/program.ts';

const text = readFileSync(demo('tall-drum'), 'utf8');

const utf16 = (order: 'LE' | 'BE', mark: boolean): Buffer => {
  const bytes = Buffer.from(`${mark ? '\uFEFF' : ''}${text}`, 'utf16le');
  return order === 'LE' ? bytes : bytes.swap16();
};

const bomb = [
  'a: &a [x, x, x, x, x, x, x, x, x]',
  ...[...'bcdefghi'].map((name, place) => {
    const before = [...'abcdefghi'][place];
    return `${name}: &${name} [${Array.from({ length: 9 }, () => `*${before}`).join(', ')}]`;
  }),
].join('\n');

const binary = Buffer.from(Array.from({ length: 4096 }, (_, place) => (place * 197 + 31) % 256));

/** What the files hold, and what has to be said of them. */
const files: readonly (readonly [string, () => string | Uint8Array, RegExp])[] = [
  ['UTF-16, low byte first', () => utf16('LE', true), /UTF-16/],
  ['UTF-16, high byte first', () => utf16('BE', true), /UTF-16/],
  ['UTF-16 without its mark', () => utf16('LE', false), /UTF-16/],
  ['Latin-1', () => Buffer.from(text, 'latin1'), /not text in UTF-8/],
  ['a NUL', () => text.replace('tank:', 'tank\0:'), /control character U\+0000/],
  ['a bell', () => text.replace('Tall', '\u0007Tall'), /control character U\+0007/],
  ['nothing at all', () => '', /empty/],
  ['white space alone', () => ' \n\n  \n', /empty/],
  ['comments alone', () => '# nothing\n# more\n', /empty/],
  ['bytes at random', () => binary, /UTF-8|UTF-16|control/],
  ['a compressed file', () => gzipSync(text), /UTF-8|UTF-16|control/],
  ['a picture', () => Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'), /UTF-8|UTF-16|control/],
  ['a tab for an indent', () => text.replace('  volume', '\tvolume'), /tab/],
  ['an open bracket', () => `${text}\nx: [1, 2`, /does not read as YAML/],
  ['an open quote', () => `${text}\nx: "abc`, /does not read as YAML/],
  ['JSON that is cut off', () => '{ "fettle": 1, "tank": {', /does not read as YAML/],
  ['prose', () => 'This filter hums and leaks a little.', /not the fields of a job/],
  ['a number', () => '42', /not the fields of a job/],
  ['a list', () => '- fettle: 1\n- fettle: 1\n', /not the fields of a job/],
  ['several documents', () => `${text}\n---\n${text}`, /2 documents/],
  ['a bomb of aliases', () => bomb, /alias/],
  ['an alias that bites its tail', () => 'fettle: 1\njob: &a { title: *a }', /alias/],
  ['a tag that makes things', () => 'fettle: !!js/function "return 1"', /tag/],
  ['brackets a hundred thousand deep', () => '['.repeat(100_000), /deeper than/],
  ['braces deep and closed', () => `${'{a: '.repeat(5000)}1${'}'.repeat(5000)}`, /deeper than/],
  ['dashes deep', () => `x:\n${'- '.repeat(5000)}1`, /deeper than/],
  [
    '__proto__ at the root',
    () => `${text}\n__proto__: { polluted: yes }\n`,
    /__proto__ is not a known field/,
  ],
  [
    '__proto__ within',
    () => text.replace('tank:', 'tank:\n  __proto__: { polluted: yes }'),
    /tank\.__proto__/,
  ],
  ['constructor as a field', () => text.replace('tank:', 'tank:\n  constructor: 1'), /tank\.constructor/],
  [
    '__proto__ as a chamber',
    () => text.replace('packing:', 'packing:\n  __proto__: []'),
    /packing\.__proto__/,
  ],
  ['constructor as a chamber', () => text.replace('basket-1:', 'constructor:'), /packing\.constructor/],
  ['toString as a medium', () => text.replace('floss-loose', 'toString'), /toString/],
  ['a huge list', () => `${text}\nx: [${'1,'.repeat(200_000)}1]`, /more than 100000/],
  [
    'a list of very many beds',
    () => text.replace('packing:', `packing:\n  basket-9: [${'{medium: foam-10ppi},'.repeat(5000)}]`),
    /basket-9/,
  ],
  [
    'a value of half a million letters',
    () => text.replace('title: Tall', `title: ${'x'.repeat(500_000)}`),
    /job\.title is longer/,
  ],
  ['a field name of a thousand letters', () => `${text}\n${'x'.repeat(1000)}: 1`, /not a known field/],
  ['an edition of the future', () => text.replace('fettle: 1', 'fettle: 99'), /edition 99/],
  ['no edition', () => text.replace('fettle: 1', ''), /fettle is missing/],
];

/** Exit 2 with sentences, nothing on standard output; and the same as JSON. */
const expectRefused = (file: string, says: RegExp): void => {
  for (const command of ['assess', 'check', 'plan', 'claims']) {
    const ended = fettle(command, file);
    expect([ended.code, ended.out], `${command}: ${ended.err.slice(0, 400)}`).toEqual([2, '']);
    expect(ended.err.replaceAll(/\n {2}/g, ' ')).toMatch(says);
    expect(ended.err).not.toMatch(/\n\s+at |node:|\.ts:\d|\[object/);
    for (const line of ended.err.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  }
  const asJson = fettle('assess', file, '--json');
  expect([asJson.code, asJson.err]).toEqual([2, '']);
  const { problems } = problemsSchema.parse(JSON.parse(asJson.out));
  expect(problems.map((each) => each.says).join('\n')).toMatch(says);
  for (const each of problems) expect(each.says.length).toBeLessThan(1000);
};

describe('a file that is no job is refused in a sentence', () => {
  test.each(files)('%s', (_what, content, says) => {
    expectRefused(fileWith(content()), says);
  });

  test('nothing is left behind on the objects of the language', () => {
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect('polluted' in {}).toBe(false);
  });
});

describe('a file that reads all the same', () => {
  test.each([
    ['with a byte order mark', `\uFEFF${text}`],
    ['with line ends of Windows', text.replaceAll('\n', '\r\n')],
    ['without a last line end', text.trimEnd()],
    ['with a document mark', `---\n${text}`],
  ])('%s', (_what, content) => {
    const { code, out } = fettle('assess', fileWith(content), '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out).dutyPoint).toEqual(
      JSON.parse(fettle('assess', demo('tall-drum'), '--json').out).dutyPoint,
    );
  });
});

describe('a file that is far too large', () => {
  const sized = (bytes: number): string => {
    const path = join(newFolder(), 'large.yaml');
    const file = openSync(path, 'w');
    writeSync(file, text);
    ftruncateSync(file, bytes);
    closeSync(file);
    return path;
  };

  test.each([
    ['just more than is read', 2_000_001],
    ['50 MB', 50e6],
    ['100 MB', 100e6],
    ['a terabyte, which no memory holds', 1e12],
  ])('%s', (_what, bytes) => {
    expectRefused(sized(bytes), /larger than 2 MB/);
  });

  test('100 MB of text', () => {
    const line = `# ${'x'.repeat(997)}\n`;
    expectRefused(fileWith(line.repeat(100_000)), /larger than 2 MB/);
  });

  test('100 MB on standard input are refused before they are read', () => {
    const ended = fettleProcess(['assess', '-'], { input: Buffer.alloc(100e6, 0x20) });
    expect(ended.code).toBe(2);
    expect(ended.err).toMatch(/^Standard input is larger than 2 MB/);
  });

  test.runIf(existsSync('/dev/zero'))('a file without end', () => {
    expectRefused('/dev/zero', /larger than 2 MB/);
  });

  test.runIf(process.platform !== 'win32')('links that lead round in a circle', () => {
    const path = join(newFolder(), 'loop.yaml');
    symlinkSync(path, path);
    expectRefused(path, /circle/);
  });
});

test('the empty standard input is an empty file', () => {
  const ended = fettleProcess(['check', '-'], { input: '' });
  expect(ended.code).toBe(2);
  expect(ended.err).toMatch(/^The file is empty\./);
});
