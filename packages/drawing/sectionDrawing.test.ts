import { families } from '@fettle/engine/families/families.ts';
import type { Family, Measurement } from '@fettle/engine/families/layout.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beforeAfterDrawing } from './beforeAfterDrawing.ts';
import { bedsOf, type DrawingCase, drawingCases, media } from './drawingCases.ts';
import { type SectionToDraw, sectionDrawing } from './sectionDrawing.ts';
import { textWidth } from './textWidth.ts';
import { palettes } from './tokens.ts';

function drawn(one: DrawingCase, more: Partial<SectionToDraw> = {}): string {
  const assessment = one.flows ? { assessment: one.flows } : {};
  return sectionDrawing({ ...one, ...assessment, media, units: 'metric', theme: 'light', ...more });
}

/** Fails unless every tag is closed in turn and no text opens markup. */
function expectWellFormed(svg: string): void {
  const open: string[] = [];
  let rest = svg.replace(/<(\/?)([a-zA-Z]+)((?: [\w:-]+="[^"<]*")*)(\/?)>/g, (_, end, name, __, empty) => {
    if (end) expect(open.pop()).toBe(name);
    else if (!empty) open.push(name);
    return '';
  });
  rest = rest.replace(/&(amp|lt|gt|quot|#39);/g, '');
  expect(open).toEqual([]);
  expect(rest).not.toMatch(/[<>&]/);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
}

interface Word {
  readonly content: string;
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly size: number;
}

/** Words with their extents, mm. Those of the key count from the key's own top. */
function wordsOf(svg: string): readonly Word[] {
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = '', content = '']) => {
    const number = (name: string): number =>
      Number(new RegExp(` ?${name}="(-?[\\d.]+)"`).exec(attributes)?.[1]);
    const size = number('font-size');
    const bold = attributes.includes('font-weight="bold"');
    const width = textWidth(content.replace(/&[^;]+;/g, '<'), { size, bold });
    const anchor = /text-anchor="(\w+)"/.exec(attributes)?.[1] ?? 'start';
    const from = number('x') - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
    return { content, from, to: from + width, y: number('y'), size };
  });
}

/** Fails where two words of the section, its key left out, stand over each other. */
function expectNoOverlap(svg: string): void {
  const key = /<g transform="translate\(0 ([\d.]+)\)"/.exec(svg);
  const words = wordsOf(svg.slice(0, key?.index));
  for (const word of words) expect(word.y, word.content).toBeLessThan(Number(key?.[1]));
  words.forEach((one, index) => {
    for (const other of words.slice(index + 1)) {
      const beside = one.to <= other.from + 0.1 || other.to <= one.from + 0.1;
      const over = Math.abs(one.y - other.y) >= 0.8 * Math.min(one.size, other.size);
      expect(beside || over, `${one.content} over ${other.content}`).toBe(true);
    }
  });
}

const cases = Object.entries(drawingCases);

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

  it.each(['metric', 'us'] as const)('keeps every word on the sheet with %s lengths', (units) => {
    for (const word of wordsOf(drawn(one, { units, caption: 'As found on the bench' }))) {
      expect(word.from, word.content).toBeGreaterThanOrEqual(0);
      expect(word.to, word.content).toBeLessThanOrEqual(100);
    }
  });

  it.each(['metric', 'us'] as const)('lets no word stand over another with %s lengths', (units) => {
    expectNoOverlap(drawn(one, { units, caption: 'As found' }));
  });

  it('names each bed in the section and in the key', () => {
    const words = wordsOf(drawn(one)).map((word) => word.content);
    const beds = Object.values(one.packing).flat();
    const tags = words.filter((word) => /^[MBC]\d+$/.test(word));
    expect(tags.length).toBe(2 * beds.length);
  });
});

describe('water', () => {
  it('is drawn as wide as its share of the flow', () => {
    const one = drawingCases.stack;
    const strokes = [...drawn(one).matchAll(/<path [^>]*>/g)]
      .map(([path]) => path)
      .filter((path) => path.includes(`stroke="${palettes.light.water}"`) && path.includes('stroke-linejoin'))
      .map((path) => Number(/stroke-width="([\d.]+)"/.exec(path)?.[1]));
    const widest = Math.max(...strokes);
    // basket 3 takes 66 % of it, basket 1 96 %
    expect(strokes.some((width) => Math.abs(width - 0.66 * widest) < 0.01)).toBe(true);
    expect(strokes.some((width) => Math.abs(width - 0.96 * widest) < 0.01)).toBe(true);
  });

  it('past a chamber carries its share in per cent', () => {
    const words = wordsOf(drawn(drawingCases.stack)).map((word) => word.content.replace('\u00a0', ' '));
    expect(words).toEqual(expect.arrayContaining(['4 %', '34 %', '&lt;1 %']));
  });

  it('shows its way without shares where nothing has been reckoned', () => {
    const svg = drawn(drawingCases.turned);
    expect(svg).toContain('shares not reckoned');
    expect(wordsOf(svg).some((word) => word.content.includes('%'))).toBe(false);
    expect(svg).toContain('stroke-dasharray="1.6 0.9"');
  });

  it('has no dashed way beside a chamber whose gap is shut', () => {
    const one = drawingCases.stack;
    const chambers = one.layout.chambers.map((chamber) => ({
      ...chamber,
      gap: { ...chamber.gap, thicknessM: 0 },
    }));
    const svg = drawn({ ...one, layout: { ...one.layout, chambers } });
    expect(svg).not.toContain('stroke-dasharray="1.6 0.9"');
    expect(svg).not.toContain('past media');
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
