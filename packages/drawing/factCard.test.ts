import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CardToDraw, cardSize, factCard, fitted } from './factCard.ts';
import { textWidth } from './textWidth.ts';

const card = (more: Partial<CardToDraw> = {}): CardToDraw => ({
  name: 'Hall canister',
  headline: 'Flow at the tank',
  figures: [
    { label: 'as found', metric: '310 ± 11 L/h', us: '81.8 ± 3.0 US gal/h', bar: 0.6 },
    { label: 'as left', metric: '511 ± 13 L/h', us: '135 ± 3 US gal/h', bar: 1 },
  ],
  note: 'Timed with a marked vessel.',
  theme: 'light',
  ...more,
});

interface Written {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly bold: boolean;
  readonly content: string;
}

const plain = (markup: string): string =>
  markup
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');

const textsOf = (svg: string): readonly Written[] =>
  [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes, content]) => {
    const value = (name: string): number =>
      Number(new RegExp(`(?:^| )${name}="([-\\d.]+)"`).exec(attributes!)?.[1]);
    return {
      x: value('x'),
      y: value('y'),
      size: value('font-size'),
      bold: attributes!.includes('bold'),
      content: plain(content!),
    };
  });

const words = fc.array(
  fc.string({ unit: fc.constantFrom(...'abWM ijäß漢א5%/'), minLength: 1, maxLength: 12 }),
  {
    minLength: 1,
    maxLength: 30,
  },
);
const prose = words.map((all) => all.join(' '));

describe('a fact card', () => {
  it('keeps every text inside the card, and inside its column, whatever is written', () => {
    const figure = fc.record({
      label: prose,
      metric: prose,
      us: prose,
      bar: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(
        prose,
        prose,
        prose,
        fc.array(figure, { minLength: 1, maxLength: 3 }),
        (name, headline, note, figures) => {
          const column = (cardSize.width - 144 - (figures.length - 1) * 48) / figures.length;
          for (const { x, y, size, bold, content } of textsOf(
            factCard(card({ name, headline, note, figures })),
          )) {
            const width = textWidth(content, { size, bold });
            expect(x + width).toBeLessThanOrEqual(cardSize.width - 71);
            expect(y - size).toBeGreaterThanOrEqual(0);
            expect(y + 0.25 * size).toBeLessThanOrEqual(cardSize.height);
            if (y > 310 && y < 500) expect(width).toBeLessThanOrEqual(column + 1);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is 1200 by 675 pixels, and says in words what it shows', () => {
    const svg = factCard(card());
    expect(svg).toContain('viewBox="0 0 1200 675"');
    expect(svg).toContain(
      'aria-label="Flow at the tank. as found: 310 ± 11 L/h (81.8 ± 3.0 US gal/h); as left',
    );
  });

  it('tells bars apart by shape: those before are outlined, the last is solid', () => {
    const bars = [...factCard(card()).matchAll(/<rect [^>]*height="26"[^>]*>/g)].map(([markup]) => markup);
    expect(bars).toHaveLength(2);
    expect(bars[0]).toContain('fill="none"');
    expect(bars[1]).not.toContain('fill="none"');
  });

  it('stands its figures in one size', () => {
    const sizes = textsOf(factCard(card())).filter(
      ({ content }) => content.endsWith('L/h') && !content.includes('US'),
    );
    expect(new Set(sizes.map(({ size }) => size)).size).toBe(1);
  });

  it('cuts what does not fit at any size with an ellipsis', () => {
    const { lines } = fitted('x'.repeat(500), { width: 200, largest: 40, smallest: 20, lines: 1 });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/…$/);
  });
});
