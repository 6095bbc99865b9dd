import { describe, expect, it } from 'vitest';
import { drawingCases } from './testing/drawingCases.ts';
import {
  arrowRows,
  bedsDrawn,
  cases,
  drawn,
  rectsOf,
  ribbonsOf,
  sectionOf,
  wordsOf,
} from './testing/drawingReading.ts';
import { palettes } from './tokens.ts';

describe('water', () => {
  it('is drawn in the open as wide as its share of the flow', () => {
    // An eighth of it misses both halves by the partition's top edge: 2e-5 of 1.5e-4 m³/s.
    const widths = ribbonsOf(drawn(drawingCases.split)).map((ribbon) => ribbon.width);
    const widest = Math.max(...widths);
    expect(widths.some((width) => Math.abs(width - (13 / 15) * widest) < 0.01)).toBe(true);
  });

  it('goes through a bed in arrows that together are as wide as the share of its chamber', () => {
    const svg = drawn(drawingCases.stack);
    const widest = Math.max(...ribbonsOf(svg).map((ribbon) => ribbon.width));
    const sums = arrowRows(svg).map((row) => row.width * row.across.length);
    // basket 1 takes 96 % of it through two beds, basket 2 99.7 %, basket 3 66 % through two beds
    expect(sums.length).toBe(5);
    [0.96, 0.96, 0.997, 0.66, 0.66].forEach((share, index) => {
      // widths are written to 0.01 mm, one for each of the arrows of a row
      expect(Math.abs((sums[index] ?? 0) - share * widest)).toBeLessThan(0.03);
    });
  });

  it.each(cases)('never runs as a ribbon through a bed of %s', (_, one) => {
    const svg = drawn(one);
    const beds = bedsDrawn(svg);
    // About a tube the section cuts each bed twice.
    const twice = (id: string): number => (one.layout.chambers.find((each) => each.id === id)?.twin ? 2 : 1);
    const cuts = Object.entries(one.packing).map(([id, held]) => held.length * twice(id));
    expect(beds.length).toBe(cuts.reduce((sum, count) => sum + count, 0));
    expect(ribbonsOf(svg).length).toBeGreaterThan(1);
    for (const { points } of ribbonsOf(svg)) {
      for (const [index, to] of points.slice(1).entries()) {
        const from = points[index] ?? to;
        for (const bed of beds) {
          const over = (a: number, b: number, start: number, extent: number): number =>
            Math.min(Math.max(a, b), start + extent) - Math.max(Math.min(a, b), start);
          const inside = [
            over(from.x, to.x, bed.x, bed.width) >= 0 && over(from.y, to.y, bed.y, bed.height) > 0.15,
            over(from.y, to.y, bed.y, bed.height) >= 0 && over(from.x, to.x, bed.x, bed.width) > 0.15,
          ];
          expect(inside).toEqual([false, false]);
        }
      }
    }
  });

  it.each(cases)('is spread under the hatching of every bed of %s over its whole width', (_, one) => {
    const svg = drawn(one);
    const tints = rectsOf(svg, `fill="${palettes.light.waterTint}"`);
    for (const bed of bedsDrawn(svg)) {
      const under = tints.some(
        (tint) =>
          tint.x <= bed.x + 0.02 &&
          tint.y <= bed.y + 0.02 &&
          tint.x + tint.width >= bed.x + bed.width - 0.02 &&
          tint.y + tint.height >= bed.y + bed.height - 0.02,
      );
      expect(under).toBe(true);
    }
  });

  it('is marked as a fault only where 5 % of the flow or more misses the media', () => {
    const { ink, fault } = palettes.light;
    const svg = drawn(drawingCases.stack);
    const shares = [...svg.matchAll(/<text ([^>]*)>([^<]*)%<\/text>/g)].map(
      ([, attributes = '', content = '']) => [
        content.replace('\u00a0', ''),
        /fill="([^"]+)"/.exec(attributes)?.[1],
        /font-weight="([^"]+)"/.exec(attributes)?.[1],
      ],
    );
    expect(shares).toEqual(
      expect.arrayContaining([
        ['&lt;1', ink, 'normal'],
        ['4', ink, 'normal'],
        ['34', fault, 'bold'],
      ]),
    );
    expect(shares.length).toBe(3);
  });

  it('has no ink of faults where hardly any of it misses the media', () => {
    const one = drawingCases.stack;
    const flows = {
      dutyPoint: one.flows.dutyPoint,
      wayFlowM3PerS: { 'gap:basket-1': 4.4e-6, 'gap:basket-2': 3e-7, 'gap:basket-3': 9e-7 },
    };
    expect(drawn({ ...one, flows })).not.toContain(palettes.light.fault);
    const more = { ...flows, wayFlowM3PerS: { 'gap:basket-1': 4.6e-6 } };
    expect(drawn({ ...one, flows: more })).toContain(palettes.light.fault);
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

  it('has no dashed way over a lip that stays dry', () => {
    const one = drawingCases.hung;
    const dry = { ...one.flows, wayFlowM3PerS: { ...one.flows.wayFlowM3PerS, 'overflow-lip': 0 } };
    const dashes = (svg: string): number => sectionOf(svg).split('stroke-dasharray="1.6 0.9"').length;
    const svg = drawn({ ...one, flows: dry });
    expect(dashes(drawn(one)) - dashes(svg)).toBe(1);
    expect(wordsOf(svg).map((word) => word.content)).not.toContain('0\u00a0%');
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
