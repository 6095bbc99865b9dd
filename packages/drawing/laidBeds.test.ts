import type { Laying, Packing } from '@fettle/engine/model/model.ts';
import { describe, expect, it } from 'vitest';
import { describeWaterPath } from './describeWaterPath.ts';
import { laidLook } from './laidBeds.ts';
import { packingRowDrawing } from './packingRowDrawing.ts';
import { placedBeds } from './placedBeds.ts';
import { sectionDrawing } from './sectionDrawing.ts';
import { drawingCases, media } from './testing/drawingCases.ts';

const { layout, packing, flows } = drawingCases.stack;
const laid = (laying: Laying): Packing => ({
  ...packing,
  'basket-2': packing['basket-2']!.map((bed) => ({ ...bed, laying })),
});
const draw = (how: Packing, beside: Readonly<Record<string, number>> = {}) => {
  const assessment = { ...flows, wayFlowM3PerS: { ...flows.wayFlowM3PerS, ...beside } };
  const drawn = { layout, packing: how, media, assessment, units: 'metric', theme: 'light' } as const;
  return { svg: sectionDrawing(drawn), says: describeWaterPath(drawn) };
};

/** Words of a drawing, its spaces that do not break as any others. */
const wordsOf = (text: string): string => text.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

const gap = { cutGapM: 0.003 };
const bag = { bag: { openFraction: 0.4, cornerRadiusM: 0.01 } };
const bed = packing['basket-2']![0]!.id;
const placedWith = (how: Laying) =>
  placedBeds({ layout, packing: laid(how), media }).find((one) => one.bed.id === bed)!;
const box = { x: 10, y: 20, width: 60, height: 24 };

describe('a piece that was cut small', () => {
  it('is drawn narrower by its gap to scale, and by enough to be seen where that is less', () => {
    expect(laidLook(placedWith({ cutGapM: 0.01 }), box, 400).box).toMatchObject({ x: 14, width: 52, y: 20 });
    expect(laidLook(placedWith({ cutGapM: 0.0005 }), box, 400).box).toMatchObject({ x: 11.5, width: 57 });
    expect(laidLook(placedWith({}), box, 400)).toEqual({ box, edge: {} });
  });

  it('has the water round it in its gaps, in key and text alternative too, and as a fault where it is much', () => {
    const plain = draw(packing);
    const small = draw(laid(gap), { [`cut:${bed}`]: 2e-5 });
    const dashes = (svg: string): number => svg.split('stroke-dasharray="1.6 0.9"').length;
    expect(dashes(small.svg) - dashes(plain.svg)).toBe(2);
    for (const text of [small.svg, small.says])
      expect(wordsOf(text)).toMatch(/cut 3 mm short on each side, 20 %/);
    expect(small.says).not.toBe(plain.says);
  });

  it('says nothing of shares where none were reckoned', () => {
    const drawn = { layout, packing: laid(gap), media, units: 'metric' } as const;
    expect(wordsOf(describeWaterPath(drawn))).toContain('cut 3 mm short on each side)');
  });
});

describe('media in a mesh bag', () => {
  it('have a dashed edge that is round in the corners, in section, key and packing row', () => {
    expect(laidLook(placedWith(bag), box, 400).edge).toMatchObject({ rx: 4, 'stroke-dasharray': '0.9 0.7' });
    const { svg, says } = draw(laid(bag), { [`corners:${bed}`]: 3e-6 });
    expect(svg.split('stroke-dasharray="0.9 0.7"')).toHaveLength(3);
    expect(wordsOf(says)).toContain('in a mesh bag, 3 % of the water past it in the corners');
    const stages = [{ chamber: 'basket-2', says: '1' }];
    const row = packingRowDrawing({
      layout,
      packing: laid(bag),
      media,
      stages,
      title: 't',
      says: 's',
      theme: 'light',
    });
    expect(row).toContain('stroke-dasharray="0.9 0.7"');
  });
});
