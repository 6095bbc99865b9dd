import { mutated } from '@fettle/job/testing/mutate.ts';
import type { Chance } from '../chance.ts';
import { inventedPicture, pictureBomb } from '../inventedPictures.ts';

/** What somebody may put in the place of a number or a name in an address. */
export const hostileNames: readonly string[] = [
  '0',
  '-1',
  '1.5',
  '1e3',
  '0x1',
  '00001',
  '%31',
  '999999999',
  '1000000000',
  '99999999999999999999',
  'NaN',
  'Infinity',
  'null',
  'undefined',
  '__proto__',
  'constructor',
  'toString',
  '..',
  '.',
  '...',
  '%2e%2e',
  '..%2f..%2f..%2fetc%2fpasswd',
  '..%5c..%5cfettle.db',
  '%2e%2e%2ffettle.db',
  '....//....//fettle.db',
  'fettle.db',
  '%00',
  '1%00',
  '1%0d%0aSet-Cookie:%20a=b',
  '%ff%fe',
  '%',
  '%zz',
  '%C0%AE%C0%AE',
  '%D9%A1',
  'a'.repeat(300),
  'a'.repeat(9000),
  "1'%20OR%20'1'='1",
  '1;DROP%20TABLE%20job',
  '%3Cscript%3Ealert(1)%3C/script%3E',
  '*',
  '%20',
  '1%20',
  '+1',
  '{number}',
];

/** What somebody may type into a field of an address's query or of a form. */
export const hostileTexts: readonly string[] = [
  '',
  ' ',
  '"',
  '""',
  "'",
  '*',
  'a*b',
  'NEAR(',
  'AND OR NOT',
  'title:drum',
  '-drum',
  '^drum',
  '(',
  ')',
  '{a b}:c',
  'drum OR 1=1 --',
  '\\',
  '\u0000',
  'a\u0000b',
  '\n',
  '\ud800',
  '\ufeff',
  '\u202e',
  'ß',
  'İ',
  '水',
  '😀',
  '-1',
  '0',
  '1e999',
  'NaN',
  '9'.repeat(400),
  'x'.repeat(5000),
  '%',
  '_',
  '%25',
  '__proto__',
  '2026-02-30',
  '2026-13-01',
  '0000-00-00',
  '+275760-09-13',
  '2026-11-05T00:00:00Z',
  'true',
  '[]',
  '{}',
  '<img src=x onerror=alert(1)>',
  '=1+1',
];

const laughs = `a: &a [x, x, x, x, x, x, x, x, x]\n${Array.from('bcdefghi', (name, index) => {
  const before = 'abcdefgh'[index];
  return `${name}: &${name} [${Array(9).fill(`*${before}`).join(', ')}]`;
}).join('\n')}\n`;

/** Whole bodies that are not what they say, or that ask for too much. */
export const hostileBodies: readonly (string | Buffer)[] = [
  '',
  ' ',
  '\u0000',
  '\ufeff',
  'null',
  'true',
  '1',
  '1e999',
  '""',
  '[]',
  '{}',
  '{',
  '[[',
  '{"a":',
  '{"a":1}{"b":2}',
  '{"__proto__":{"polluted":true}}',
  '{"constructor":{"prototype":{"polluted":true}}}',
  '{"fettle":1,"__proto__":{}}',
  `${'['.repeat(40_000)}${']'.repeat(40_000)}`,
  `${'{"a":'.repeat(20_000)}1${'}'.repeat(20_000)}`,
  `${'- '.repeat(5_000)}a`,
  `{${Array.from({ length: 20_000 }, (_, index) => `"k${index}":1`).join(',')}}`,
  laughs,
  'a: &a [*a]\n',
  'fettle: &one 1\njob: {number: *one}\n',
  '<<: {fettle: 1}\n',
  '!!js/function "function(){}"\n',
  '!!binary aGk=\n',
  '!!python/object:os.system ls\n',
  '--- 1\n--- 2\n',
  '%YAML 9.9\n---\nfettle: 1\n',
  'fettle: 1\nfettle: 1\n',
  'fettle: 999999999999999999999999\n',
  'fettle: 1\njob: {number: 1e400}\n',
  'fettle: 1\njob: {number: 0x7fffffffffffffffff}\n',
  '? [a, b]\n: c\n',
  Buffer.from([0xff, 0xfe, 0x66, 0x00]),
  Buffer.from([0xc3, 0x28, 0xa0, 0xa1]),
  Buffer.from([0x1f, 0x8b, 8, 0, 0, 0, 0, 0]),
  Buffer.from('fettle: 1\njob: {title: caf\xe9}\n', 'latin1'),
  Buffer.from('fettle: 1\n', 'utf16le'),
];

/** Pictures that are none, or not whole, or far larger than their file. */
export const hostilePictures: readonly Buffer[] = [
  Buffer.alloc(0),
  Buffer.from('GIF89a'),
  Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'),
  Buffer.from('<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]><svg>&x;</svg>'),
  Buffer.from('%PDF-1.4\n'),
  Buffer.from('<html><body>hello</body></html>'),
  Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]),
  Buffer.from([0xff, 0xd8, 0xff, 0xd9]),
  Buffer.from('RIFF\x00\x00\x00\x00WEBPVP8 ', 'latin1'),
  Buffer.from('\x00\x00\x00\x1cftypavif', 'latin1'),
  inventedPicture(7).subarray(0, 60),
  pictureBomb(60_000, 60_000),
  pictureBomb(4_000_000, 1),
  pictureBomb(0, 0),
  pictureBomb(20_000, 20_000),
];

/** Bytes with some of them changed, taken out or doubled. */
export function mutatedBytes(bytes: Buffer, chance: Chance): Buffer {
  const changed = Buffer.from(bytes);
  for (let count = chance.between(1, 12); count > 0 && changed.length > 0; count--)
    changed[chance.below(changed.length)] = chance.below(256);
  switch (chance.below(4)) {
    case 0:
      return changed.subarray(0, chance.below(changed.length + 1));
    case 1: {
      const cut = chance.below(changed.length + 1);
      return Buffer.concat([changed.subarray(0, cut), changed.subarray(Math.floor(cut / 2))]);
    }
    default:
      return changed;
  }
}

/** A text that was met with accidents, by chance whole again. */
export const mutatedText = (text: string, chance: Chance): string =>
  chance.share() < 0.1 ? text : mutated(text, chance.between(1, 2 ** 31 - 1));

/** Up to the given number of bytes of anything. */
export function anyBytes(most: number, chance: Chance): Buffer {
  const bytes = Buffer.alloc(chance.below(most + 1));
  for (let index = 0; index < bytes.length; index++) bytes[index] = chance.below(256);
  return bytes;
}

/** Fields of plain data, by the way that leads to each. */
function placesIn(value: unknown, way: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [way];
  return [way, ...Object.entries(value).flatMap(([name, held]) => placesIn(held, [...way, name]))];
}

/** Plain data of which one to three fields hold something else, are gone, or go by another name. */
export function mutatedData(value: unknown, chance: Chance): unknown {
  const changed: unknown = structuredClone(value);
  for (let count = chance.between(1, 3); count > 0; count--) {
    const way = chance.among(placesIn(changed));
    const last = way.at(-1);
    if (last === undefined) continue;
    let holder: unknown = changed;
    for (const step of way.slice(0, -1))
      holder = typeof holder === 'object' && holder !== null ? Reflect.get(holder, step) : undefined;
    if (typeof holder !== 'object' || holder === null) continue;
    const kind = chance.below(6);
    if (kind === 0) Reflect.deleteProperty(holder, last);
    else if (kind === 1)
      Reflect.set(holder, chance.among(['__proto__x', 'number', 'a b', '']), Reflect.get(holder, last));
    // A copy: what is changed next may lie within it.
    else Reflect.set(holder, last, structuredClone(chance.among(hostileValues)));
  }
  return changed;
}

const hostileValues: readonly unknown[] = [
  ...hostileTexts,
  null,
  true,
  0,
  -1,
  1.5,
  1e300,
  Number.MAX_SAFE_INTEGER,
  [],
  {},
  [[]],
  [null],
  { a: { b: { c: {} } } },
  Array(3000).fill('x'),
  '5 L ± 5 L',
  '1e999 L/h',
  '-5 mm',
  '0 mm',
  '1 kg',
  '2026-11-05',
];
