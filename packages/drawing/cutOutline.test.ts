import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutToDraw, cutOutlineDrawing, scaleOf } from './cutOutline.ts';
import { media } from './testing/drawingCases.ts';
import { textWidth } from './textWidth.ts';

const cut = (acrossM: number, uprightM: number, more: Partial<CutToDraw> = {}): CutToDraw => ({
  title: 'Cut 1: coarse foam',
  across: { lengthM: acrossM, says: `${Math.round(acrossM * 1000)} mm` },
  upright: { lengthM: uprightM, says: `${Math.round(uprightM * 1000)} mm` },
  words: { scale: (ratio) => `Scale ${ratio}`, bar: 'on paper 5 cm above, 2 in below', says: 'a piece' },
  room: { width: 110, height: 95 },
  theme: 'print',
  ...more,
});

/** Width and height of every rectangle drawn, mm. */
const rectangles = (svg: string): readonly (readonly [number, number])[] =>
  [...svg.matchAll(/<rect [^>]*?width="([\d.]+)" height="([\d.]+)"/g)].map(
    ([, width, height]) => [Number(width), Number(height)] as const,
  );

describe('the outline of a cut', () => {
  it('is drawn to the scale that it states, in true millimetres of paper', () => {
    const svg = cutOutlineDrawing(
      cut(0.172, 0.172, { medium: media['coarse-foam']!, thickness: { lengthM: 0.03, says: '30 mm' } }),
    );
    expect(svg).toContain('Scale 1:2');
    expect(/width="([\d.]+)mm"/.exec(svg)?.[1]).toBe(/viewBox="0 0 ([\d.]+)/.exec(svg)?.[1]);
    expect(rectangles(svg)).toContainEqual([86, 86]);
    expect(rectangles(svg)).toContainEqual([15, 86]);
  });

  it('takes the largest usual scale that has room', () => {
    const lengths = fc.double({ min: 0.005, max: 30, noNaN: true });
    fc.assert(
      fc.property(lengths, lengths, (acrossM, uprightM) => {
        const drawn = cut(acrossM, uprightM);
        const scale = scaleOf(drawn);
        expect((1000 * acrossM) / scale).toBeLessThanOrEqual(110);
        expect((1000 * uprightM) / scale).toBeLessThanOrEqual(95);
        expect([1, 2, 5, 10, 20, 50, 100, 200, 500, 1000]).toContain(scale);
      }),
    );
  });

  it('shows the chamber dashed within a piece that is cut larger', () => {
    const plain = cutOutlineDrawing(cut(0.1, 0.1));
    const over = cutOutlineDrawing(cut(0.104, 0.104, { chamber: { acrossM: 0.1, uprightM: 0.1 } }));
    expect(plain).not.toContain('stroke-dasharray');
    expect(over).toContain('stroke-dasharray');
  });

  it('has a ruler of 5 cm and 2 in on paper, whatever the scale', () => {
    for (const size of [0.05, 0.3, 2]) {
      const bar = /d="M([\d.]+) ([\d.]+)H([\d.]+)M\S+ \S+V/.exec(cutOutlineDrawing(cut(size, size)))!;
      expect(Number(bar[3]) - Number(bar[1])).toBeCloseTo(50.8, 1);
    }
  });

  it('folds a long title and keeps every word of it on the sheet', () => {
    const title = 'Cut 12: '.concat('hand-cut open-cell foam left over from the workshop '.repeat(4));
    const svg = cutOutlineDrawing(cut(0.1, 0.1, { title }));
    const lines = [...svg.matchAll(/font-weight="bold"[^>]*>([^<]*)</g)].map(([, line]) => line!);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(textWidth(line, { size: 4.3, bold: true })).toBeLessThanOrEqual(172);
  });

  it('takes no text for markup', () => {
    expect(cutOutlineDrawing(cut(0.1, 0.1, { title: '<b>&"' }))).toContain('&lt;b&gt;&amp;&quot;');
  });
});

describe('a small piece', () => {
  it('has a sheet of half the width, so that two stand side by side at one scale, with all its words on it', () => {
    const small = {
      room: { width: 100, height: 50 },
      thickness: { lengthM: 0.009, says: '9.0 mm (0.35 in)' },
    };
    const svg = cutOutlineDrawing(cut(0.178, 0.178, small));
    expect(svg).toContain('viewBox="0 0 86 ');
    expect(svg).toContain('Scale 1:5');
    expect(rectangles(svg)).toContainEqual([35.6, 35.6]);
    for (const [, x, says] of svg.matchAll(/<text x="([\d.]+)"(?![^>]*middle)[^>]*>([^<]*)</g))
      expect(Number(x) + textWidth(says!, { size: 3.2 })).toBeLessThanOrEqual(86.01);
    expect(cutOutlineDrawing(cut(0.178, 0.178))).toContain('viewBox="0 0 172 ');
  });
});
