import { describe, expect, it } from 'vitest';
import { media } from './drawingCases.ts';
import { coarsenessOf, hatchId, hatchings } from './hatching.ts';
import { palettes } from './tokens.ts';

const inked = { palette: palettes.light, prefix: 'test' };

function widthOf(id: string): number {
  const found = new RegExp(`<pattern id="${hatchId(media[id]!, 'test')}" width="([\\d.]+)"`).exec(
    hatchings(Object.values(media), inked),
  );
  return Number(found?.[1]);
}

describe('hatching', () => {
  it('is the denser the finer the foam', () => {
    expect(coarsenessOf(media['fine-foam']!)).toBeLessThan(coarsenessOf(media['coarse-foam']!));
    expect(widthOf('fine-foam')).toBeLessThan(widthOf('coarse-foam'));
  });

  it('has a pattern of its own for every form', () => {
    const forms = ['coarse-foam', 'floss', 'rings', 'gravel', 'carrier'].map((id) => media[id]!);
    const content = forms.map((medium) =>
      hatchings([medium], inked).replace(/.*<pattern id="test-[a-z]+-\d"/, ''),
    );
    const shapes = content.map((one) => one.replace(/[\d.\- ]+/g, ' '));
    expect(new Set(shapes).size).toBe(5);
  });

  it('defines each pattern once', () => {
    const ids = [
      ...hatchings([...Object.values(media), ...Object.values(media)], inked).matchAll(/ id="([^"]+)"/g),
    ];
    expect(new Set(ids.map((id) => id[1])).size).toBe(ids.length);
  });
});
