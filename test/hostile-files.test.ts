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

/** What the files hold, and the problem that has to be told: its code, and its field where it has one. */
const files: readonly (readonly [string, () => string | Uint8Array, RegExp])[] = [
  ['UTF-16, low byte first', () => utf16('LE', true), /file-utf16/],
  ['UTF-16, high byte first', () => utf16('BE', true), /file-utf16/],
  ['UTF-16 without its mark', () => utf16('LE', false), /file-utf16/],
  ['Latin-1', () => Buffer.from(text, 'latin1'), /file-not-utf8/],
  ['a NUL', () => text.replace('tank:', 'tank\0:'), /file-control-character/],
  ['a bell', () => text.replace('Tall', '\u0007Tall'), /file-control-character/],
  ['nothing at all', () => '', /file-empty/],
  ['white space alone', () => ' \n\n  \n', /file-empty/],
  ['comments alone', () => '# nothing\n# more\n', /file-empty/],
  ['bytes at random', () => binary, /not-a-job-file/],
  ['a compressed file', () => gzipSync(text), /not-a-job-file/],
  ['a picture', () => Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'), /not-a-job-file/],
  ['a tab for an indent', () => text.replace('  volume', '\tvolume'), /yaml-syntax/],
  ['an open bracket', () => `${text}\nx: [1, 2`, /yaml-syntax/],
  ['an open quote', () => `${text}\nx: "abc`, /yaml-syntax/],
  ['JSON that is cut off', () => '{ "fettle": 1, "tank": {', /yaml-syntax/],
  ['prose', () => 'This filter hums and leaks a little.', /root-not-fields/],
  ['a number', () => '42', /root-not-fields/],
  ['a list', () => '- fettle: 1\n- fettle: 1\n', /root-not-fields/],
  ['several documents', () => `${text}\n---\n${text}`, /yaml-several-documents/],
  ['a bomb of aliases', () => bomb, /yaml-alias/],
  ['an alias that bites its tail', () => 'fettle: 1\njob: &a { title: *a }', /yaml-alias/],
  ['a tag that makes things', () => 'fettle: !!js/function "return 1"', /yaml-tag/],
  ['brackets a hundred thousand deep', () => '['.repeat(100_000), /nested-too-deep/],
  ['braces deep and closed', () => `${'{a: '.repeat(5000)}1${'}'.repeat(5000)}`, /nested-too-deep/],
  ['dashes deep', () => `x:\n${'- '.repeat(5000)}1`, /nested-too-deep/],
  ['__proto__ at the root', () => `${text}\n__proto__: { polluted: yes }\n`, /unknown-field __proto__/],
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
  ['a huge list', () => `${text}\nx: [${'1,'.repeat(200_000)}1]`, /too-many-parts/],
  [
    'a list of very many beds',
    () => text.replace('packing:', `packing:\n  basket-9: [${'{medium: foam-10ppi},'.repeat(5000)}]`),
    /basket-9/,
  ],
  [
    'a value of half a million letters',
    () => text.replace('title: Tall', `title: ${'x'.repeat(500_000)}`),
    /text-too-long job\.title/,
  ],
  ['a field name of a thousand letters', () => `${text}\n${'x'.repeat(1000)}: 1`, /unknown-field x/],
  ['an edition of the future', () => text.replace('fettle: 1', 'fettle: 99'), /edition-newer/],
  ['no edition', () => text.replace('fettle: 1', ''), /edition-missing/],
];

/** Exit 2 with sentences, which are the output of check and errors elsewhere; and the same as JSON. */
const expectRefused = async (file: string, problem: RegExp): Promise<void> => {
  for (const command of ['assess', 'check', 'plan', 'claims']) {
    const { code, out, err } = await fettle(command, file);
    const [told, silent] = command === 'check' ? [out, err] : [err, out];
    expect([code, silent], `${command}: ${told.slice(0, 400)}`).toEqual([2, '']);
    expect(told.length).toBeGreaterThan(10);
    expect(told).toMatch(/\.\n$/);
    expect(told).not.toMatch(/\n\s+at |node:|\.ts:\d|\[object/);
    for (const line of told.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  }
  const asJson = await fettle('assess', file, '--json');
  expect([asJson.code, asJson.err]).toEqual([2, '']);
  const { problems } = problemsSchema.parse(JSON.parse(asJson.out));
  expect(problems.map(({ code, path, says }) => `${code} ${path} ${says}`).join('\n')).toMatch(problem);
  for (const each of problems) expect(each.says.length).toBeLessThan(1000);
};

describe('a file that is no job is refused in a sentence', () => {
  test.each(files)('%s', async (_what, content, problem) => {
    await expectRefused(fileWith(content()), problem);
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
  ])('%s', async (_what, content) => {
    const { code, out } = await fettle('assess', fileWith(content), '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out).dutyPoint).toEqual(
      JSON.parse((await fettle('assess', demo('tall-drum'), '--json')).out).dutyPoint,
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
  ])('%s', async (_what, bytes) => {
    await expectRefused(sized(bytes), /file-too-large/);
  });

  test('100 MB of text', async () => {
    const line = `# ${'x'.repeat(997)}\n`;
    await expectRefused(fileWith(line.repeat(100_000)), /file-too-large/);
  });

  test('100 MB on standard input are refused before they are read', () => {
    const ended = fettleProcess(['assess', '-'], { input: Buffer.alloc(100e6, 0x20) });
    expect(ended.code).toBe(2);
    expect(ended.err).toMatch(/^Standard input is larger than 2 MB/);
  });

  test.runIf(existsSync('/dev/zero'))('a file without end', async () => {
    await expectRefused('/dev/zero', /file-too-large/);
  });

  test.runIf(process.platform !== 'win32')('links that lead round in a circle', async () => {
    const path = join(newFolder(), 'loop.yaml');
    symlinkSync(path, path);
    await expectRefused(path, /file-unreadable/);
  });
});

test('the empty standard input is an empty file', () => {
  const ended = fettleProcess(['claims', '-'], { input: '' });
  expect(ended.code).toBe(2);
  expect(ended.err).toMatch(/^The file is empty\./);
});
