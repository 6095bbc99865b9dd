import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coordinate, element, escapeXml, text } from './svg.ts';

describe('text in a drawing', () => {
  it.each([
    ['a < b & c', 'a &lt; b &amp; c'],
    ['</text><script>alert(1)</script>', '&lt;/text&gt;&lt;script&gt;alert(1)&lt;/script&gt;'],
    [`'single' "double"`, '&#39;single&#39; &quot;double&quot;'],
    ['bell\u0007 and null\u0000', 'bell and null'],
    ['half a pair \ud800 of signs', 'half a pair  of signs'],
    ['whole pair 🐟', 'whole pair 🐟'],
  ])('writes %j safely', (given, safe) => {
    expect(escapeXml(given)).toBe(safe);
  });

  it('lets no sign of any name open markup', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const safe = escapeXml(name);
        expect(safe).not.toMatch(/[<>"']/);
        expect(safe.replace(/&(amp|lt|gt|quot|#39);/g, '')).not.toContain('&');
      }),
    );
  });

  it('cannot leave an attribute', () => {
    expect(element('g', { id: '"><script>' })).toBe('<g id="&quot;&gt;&lt;script&gt;"/>');
    expect(text('x', { fill: "red' onload='go()" })).not.toContain("'");
  });
});

describe('coordinates', () => {
  it.each([
    [1.005, '1'],
    [12.3456, '12.35'],
    [-0.001, '0'],
    [100, '100'],
  ])('writes %d as %s', (value, written) => {
    expect(coordinate(value)).toBe(written);
  });
});
