import { expect } from 'vitest';
import { type SectionToDraw, sectionDrawing } from '../sectionDrawing.ts';
import { textWidth } from '../textWidth.ts';
import { palettes } from '../tokens.ts';
import { type DrawingCase, drawingCases, media } from './drawingCases.ts';

/** What tests read from a drawing. */

export const cases = Object.entries(drawingCases);

export function drawn(one: DrawingCase, more: Partial<SectionToDraw> = {}): string {
  const assessment = one.flows ? { assessment: one.flows } : {};
  return sectionDrawing({ ...one, ...assessment, media, units: 'metric', theme: 'light', ...more });
}

/** Fails unless every tag is closed in turn and no text opens markup. */
export function expectWellFormed(svg: string): void {
  const tag = /<(?<end>\/?)(?<name>[a-zA-Z]+)(?: [\w:-]+="[^"<]*")*(?<empty>\/?)>/g;
  const open: string[] = [];
  for (const { groups } of svg.matchAll(tag)) {
    if (groups?.end) expect(open.pop()).toBe(groups.name);
    else if (!groups?.empty) open.push(groups?.name ?? '');
  }
  const rest = svg.replace(tag, '').replace(/&(amp|lt|gt|quot|#39);/g, '');
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
export function wordsOf(svg: string): readonly Word[] {
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
export function expectNoOverlap(svg: string): void {
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

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The section without its key, whose samples look like parts of it. */
export function sectionOf(svg: string): string {
  return svg.slice(0, /<g transform="translate\(0 [\d.]+\)"/.exec(svg)?.index);
}

export function rectsOf(svg: string, inked: string): readonly Rect[] {
  return [
    ...sectionOf(svg).matchAll(
      /<rect x="([-\d.]+)" y="([-\d.]+)" width="([\d.]+)" height="([\d.]+)" ([^>]*)>/g,
    ),
  ]
    .filter((found) => found[5]?.includes(inked))
    .map(([, x, y, width, height]) => ({
      x: Number(x),
      y: Number(y),
      width: Number(width),
      height: Number(height),
    }));
}

/** The beds: all hatched rectangles of the section but the walls. */
export function bedsDrawn(svg: string): readonly Rect[] {
  const walls = new Set(rectsOf(svg, '-wall)').map((wall) => JSON.stringify(wall)));
  return rectsOf(svg, 'fill="url(#').filter((one) => !walls.has(JSON.stringify(one)));
}

/** The ribbons of the main way, sheet mm. */
export function ribbonsOf(svg: string) {
  return [
    ...sectionOf(svg).matchAll(
      /<path d="([ML\d. -]+)" fill="none" stroke="([^"]+)" stroke-width="([\d.]+)"([^>]*)>/g,
    ),
  ]
    .filter(([, , stroke, , rest]) => stroke === palettes.light.water && !rest?.includes('dasharray'))
    .map(([, d = '', , width]) => ({
      width: Number(width),
      points: [...d.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) })),
    }));
}

/** The shafts of each row of arrows, in the water's order: their width, and where they stand across, mm. */
export function arrowRows(svg: string) {
  const shafts = /<path d="((?:M[-\d.]+ [-\d.]+H[-\d.]+)+)" stroke="([^"]+)" stroke-width="([\d.]+)"\/>/g;
  return [...sectionOf(svg).matchAll(shafts)]
    .filter(([, , stroke]) => stroke === palettes.light.water)
    .map(([, d = '', , width]) => ({
      width: Number(width),
      across: [...d.matchAll(/M[-\d.]+ ([-\d.]+)/g)].map((found) => Number(found[1])),
    }));
}
