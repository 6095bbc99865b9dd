import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseText } from './parse.ts';
import { plainJson } from './plainJson.ts';

describe('JSON that is read at once', () => {
  /** Numbers in every spelling that JSON has. */
  const number = fc
    .tuple(
      fc.constantFrom('', '-'),
      fc.nat({ max: 10_000 }),
      fc.constantFrom('', '.5', '.025'),
      fc.constantFrom('', 'e3', 'E5', 'e+2', 'E-3', 'e0'),
    )
    .map((parts) => parts.join(''));

  const space = fc.constantFrom('', '', '', ' ', '\t', '\n', '\r\n', '\n\n  ', '\r');
  const word = fc.oneof(fc.string(), fc.string({ unit: 'binary' })).map((text) => JSON.stringify(text));

  /** Texts of JSON with space of every kind, or none, between their signs. */
  const { value: written } = fc.letrec<{ value: string; list: string; fields: string }>((tie) => ({
    value: fc.oneof(
      { maxDepth: 4 },
      number,
      word,
      fc.constantFrom('true', 'false', 'null'),
      tie('list'),
      tie('fields'),
    ),
    list: fc
      .array(fc.tuple(space, tie('value'), space))
      .map((all) => `[${all.map((one) => one.join('')).join()}]`),
    fields: fc
      .uniqueArray(fc.tuple(word, space, space, tie('value'), space), { selector: ([name]) => name })
      .map((all) => `{${all.map(([name, a, b, value, c]) => `${b}${name}${a}:${b}${value}${c}`).join()}}`),
  }));
  const texts = fc.oneof(
    fc.tuple(space, written, space).map(([before, value, behind]) => `${before}{"value":${value}}${behind}`),
    fc
      .tuple(fc.jsonValue({ maxDepth: 6, stringUnit: 'binary' }), fc.constantFrom(undefined, 1, '\t'))
      .map(([value, indent]) => JSON.stringify({ value }, undefined, indent)),
  );

  it('is taken by the reader of YAML, too, which makes the same of it', () => {
    let read = 0;
    fc.assert(
      fc.property(texts, (text) => {
        const quick = plainJson(text);
        if (quick === undefined) return;
        read++;
        const slow = parseText(text);
        expect(slow.problems).toEqual([]);
        expect(JSON.stringify(quick)).toBe(JSON.stringify(slow.value));
      }),
      { numRuns: 1000 },
    );
    expect(read).toBeGreaterThan(400);
  });

  it.each(['{"a":[1,5e3]}', '{"a":[0,1E-5,2,3e+10]}', '{"a":[1,5,12,345]}'])(
    'lets %s be the numbers that it lists, for the reader of YAML as well',
    (text) => {
      expect(parseText(text)).toMatchObject({ value: JSON.parse(text), problems: [] });
      expect(plainJson(text)).toEqual(JSON.parse(text));
    },
  );

  it.each(['{"a":[1,5 L]}', '{"a":[1,5L]}', '{"a":[1,5e3 L]}', '{"a":[1,5 %]}', '{"a":1,5 L}'])(
    'leaves %s to the reader of YAML, which tells of the comma',
    (text) => {
      expect(plainJson(text)).toBeUndefined();
      expect(parseText(text).problems.map(({ code }) => code)).toEqual(['decimal-comma']);
    },
  );

  it.each([
    ['a repeated field', '{"fettle": 1, "filter": {"name": "a", "name": "b"}}'],
    ['a repeated field with another spelling', String.raw`{"name": 1, "n\u0061me": 2}`],
    ['a repeated prototype', '{"__proto__": 1, "__proto__": 2}'],
    ['a list at the root', '[1]'],
    ['two documents', '{"a": 1}\n---\n{"b": 2}'],
    ['YAML', 'fettle: 1'],
    ['YAML in braces', '{fettle: 1}'],
    ['a comma too many', '{"a": 1,}'],
    ['deep nesting', `{"a": ${'['.repeat(30)}${']'.repeat(30)}}`],
    ['a long text', `{"a": "${'x'.repeat(200_000)}"}`],
    ['bytes that are no text', new Uint8Array([0x7b, 0xff, 0x7d])],
    ['nothing', ''],
    ['a text with a carriage return that ends no line', '{"a":\r1}'],
  ])('is not %s', (_what, text) => {
    expect(plainJson(text)).toBeUndefined();
  });

  it('counts names and not texts that look like them', () => {
    const value = { 'a\\': '"b": {"c": 1}', '"': ['x:', '": '], ':': { '\u2028': null } };
    expect(plainJson(JSON.stringify(value))).toEqual(value);
  });
});
