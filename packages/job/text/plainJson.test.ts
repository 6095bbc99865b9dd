import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseText } from './parse.ts';
import { plainJson } from './plainJson.ts';

describe('JSON that is read at once', () => {
  it('gives what the reader of YAML gives, whatever stands in it', () => {
    let read = 0;
    const texts = fc
      .tuple(fc.jsonValue({ maxDepth: 6, stringUnit: 'binary' }), fc.constantFrom(undefined, 1, '\t'))
      .map(([value, space]) => JSON.stringify({ value }, undefined, space));
    fc.assert(
      fc.property(texts, (text) => {
        const quick = plainJson(text);
        const slow = parseText(text);
        if (quick === undefined || slow.problems.length > 0) return;
        read++;
        expect(JSON.stringify(quick)).toBe(JSON.stringify(slow.value));
      }),
      { numRuns: 500 },
    );
    expect(read).toBeGreaterThan(200);
  });

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
  ])('is not %s', (_what, text) => {
    expect(plainJson(text)).toBeUndefined();
  });

  it('counts names and not texts that look like them', () => {
    const value = { 'a\\': '"b": {"c": 1}', '"': ['x:', '": '], ':': { '\u2028': null } };
    expect(plainJson(JSON.stringify(value))).toEqual(value);
  });
});
