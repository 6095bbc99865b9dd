import { families } from '@fettle/engine/families/families.ts';
import type { Family, Measurement } from '@fettle/engine/families/layout.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beforeAfterDrawing } from './beforeAfterDrawing.ts';
import { bedsOf, type DrawingCase, drawingCases, media } from './testing/drawingCases.ts';
import {
  cases,
  drawn,
  expectNoOverlap,
  expectWellFormed,
  rectsOf,
  sectionOf,
  wordsOf,
} from './testing/drawingReading.ts';
import { palettes } from './tokens.ts';

describe.each(cases)('section of %s', (_, one) => {
  it('is one well-formed picture with a title and a text alternative', () => {
    const svg = drawn(one, { caption: 'As found' });
    expectWellFormed(svg);
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg).toMatch(/<title id="[^"]+">As found<\/title><desc id="[^"]+">The water runs from the tank /);
  });

  it('defines every id once and all that it refers to', () => {
    const svg = drawn(one);
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map((found) => found[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
    for (const id of /aria-labelledby="([^"]+)"/.exec(svg)?.[1]?.split(' ') ?? []) expect(ids).toContain(id);
  });

  it.each(['metric', 'us', 'both'] as const)('keeps every word on the sheet with %s lengths', (units) => {
    for (const word of wordsOf(drawn(one, { units, caption: 'As found on the bench' }))) {
      expect(word.from, word.content).toBeGreaterThanOrEqual(0);
      expect(word.to, word.content).toBeLessThanOrEqual(100);
    }
  });

  it.each(['metric', 'us', 'both'] as const)('lets no word stand over another with %s lengths', (units) => {
    expectNoOverlap(drawn(one, { units, caption: 'As found' }));
  });

  it.each(['metric', 'us', 'both'] as const)(
    'gives every %s length its word, at its line or in the key',
    (units) => {
      const words = wordsOf(drawn(one, { units })).map((word) => word.content);
      for (const { measurement } of one.layout.drawing.dimensions) {
        const named = measurement.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
        const stacked = named.split(' ').every((word) => words.includes(word));
        expect(stacked || words.some((line) => line.includes(named)), named).toBe(true);
      }
    },
  );

  it('keeps tubes clear of the walls that they run along', () => {
    const svg = sectionOf(drawn(one));
    const inside = rectsOf(svg, 'fill="none"').filter((rect) =>
      rectsOf(svg, `fill="${palettes.light.paper}"`).some(
        (other) => JSON.stringify(other) === JSON.stringify(rect),
      ),
    );
    const tubes = [
      ...svg.matchAll(
        /<path d="([ML\d. -]+)" fill="none" stroke="#22272c" stroke-width="([\d.]+)" stroke-linejoin/g,
      ),
    ].flatMap(([, d = '', width]) => {
      const xs = [...d.matchAll(/[ML]([-\d.]+) /g)].map((found) => Number(found[1]));
      const upright = xs.slice(1).filter((x, index) => x === xs[index]);
      return upright.map((x) => [x - Number(width) / 2, x + Number(width) / 2] as const);
    });
    expect(inside.length).toBeGreaterThan(0);
    expect(tubes.length > 0).toBe(one.layout.drawing.stubs.some(({ along }) => along[0]?.x === along[1]?.x));
    for (const [from, to] of tubes) {
      for (const wall of inside.flatMap((rect) => [rect.x, rect.x + rect.width])) {
        expect(from >= wall + 1 || to <= wall - 1, `${from} to ${to} at ${wall}`).toBe(true);
      }
    }
  });

  it('names each bed in the section and in the key', () => {
    const words = wordsOf(drawn(one)).map((word) => word.content);
    const beds = Object.values(one.packing).flat();
    const tags = words.filter((word) => /^[MBC]\d+$/.test(word));
    expect(tags.length).toBe(2 * beds.length);
  });
});

describe('names from outside', () => {
  const evil = '</text><script>alert("x")</script>&amp;';

  it('cannot bring markup into the drawing', () => {
    const first = media.rings!;
    const one = drawingCases.stack;
    const svg = drawn(one, {
      caption: evil,
      media: { ...media, rings: { ...first, name: evil } },
      idPrefix: '"><script>',
    });
    expectWellFormed(svg);
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
  });

  it('of an unknown medium are drawn blank', () => {
    const packing = { 'basket-1': bedsOf('basket-1', [['<b>moss</b>', 30]]) };
    const svg = drawn({ layout: drawingCases.stack.layout, packing });
    expectWellFormed(svg);
    expect(svg).toContain('&lt;b&gt;moss&lt;/b&gt;');
  });
});

describe('any filter', () => {
  const anyMeasure = (one: Measurement): fc.Arbitrary<number> =>
    one.kind === 'count' || one.kind === 'yes-no'
      ? fc.integer({ min: one.least, max: one.most })
      : fc.double({ min: one.least, max: one.most, noNaN: true });
  const anyLayout = (family: Family) =>
    fc
      .record(Object.fromEntries(family.measurements.map((one) => [one.key, anyMeasure(one)])))
      .map((measurements) => family.layOut(measurements));

  it.each(families.map((family) => [family.id, family] as const))(
    'of the family %s can be drawn',
    (_, family) => {
      fc.assert(
        fc.property(anyLayout(family), fc.constantFrom('light', 'dark', 'print'), (layout, theme) => {
          const packing = Object.fromEntries(
            layout.chambers.map(({ id }) => [
              id,
              bedsOf(id, [
                ['rings', 30],
                ['floss', 10],
              ]),
            ]),
          );
          const svg = drawn({ layout, packing }, { theme });
          expectWellFormed(svg);
          expect(svg).not.toMatch(/(width|height)="-/);
          expectNoOverlap(svg);
          for (const word of wordsOf(svg)) {
            expect(word.from, word.content).toBeGreaterThanOrEqual(0);
            expect(word.to, word.content).toBeLessThanOrEqual(100);
          }
        }),
        { numRuns: 40 },
      );
    },
  );
});

describe('before and after', () => {
  const state = (one: DrawingCase, caption: string) => ({
    layout: one.layout,
    packing: one.packing,
    caption,
    ...(one.flows ? { assessment: one.flows } : {}),
  });
  const two = {
    before: state(drawingCases.stack, 'As found'),
    after: state(drawingCases.six, 'Planned: the taller housing of the same make, with three more baskets'),
    media,
    units: 'metric',
    theme: 'light',
    title: 'Before and after',
  } as const;

  /** Width on paper of the housing, mm, from the first outline of each half. */
  function outlines(svg: string): readonly number[] {
    return [
      ...svg.matchAll(/<g><rect x="[\d.]+" y="[\d.]+" width="([\d.]+)" height="[\d.]+" fill="none"/g),
    ].map((found) => Number(found[1]));
  }

  it('stand at one scale side by side', () => {
    const svg = beforeAfterDrawing(two);
    expectWellFormed(svg);
    expect(svg).toContain('viewBox="0 0 200 ');
    const [before = 0, after = 0] = outlines(svg);
    const inner = (one: DrawingCase): number => one.layout.drawing.housing[0]?.width ?? 0;
    // both outlines stand two walls of 2 mm outside the inner width
    expect((before - 4) / (after - 4)).toBeCloseTo(inner(drawingCases.stack) / inner(drawingCases.six), 2);
  });

  it('stand under each other where there is no room', () => {
    const svg = beforeAfterDrawing({ ...two, stacked: true });
    expectWellFormed(svg);
    expect(svg).toContain('viewBox="0 0 100 ');
  });

  it('have different ids and a text alternative for both', () => {
    const svg = beforeAfterDrawing(two);
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map((found) => found[1]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(svg).toMatch(/<desc[^>]*>As found: The water runs .* Planned: .*The water runs /);
  });
});
