import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import { describe, expect, it } from 'vitest';
import { coarsenessOf, hatchId, hatchings } from './hatching.ts';
import { media } from './testing/drawingCases.ts';
import { palettes } from './tokens.ts';

const inked = { palette: palettes.light, prefix: 'test' };

function widthOf(id: string): number {
  return patternWidth(media[id]!);
}

function patternWidth(medium: Medium): number {
  const start = new RegExp(`<pattern id="${hatchId(medium, 'test')}" width="([\\d.]+)"`);
  return Number(start.exec(hatchings([medium], inked))?.[1]);
}

describe('hatching', () => {
  it('is the denser the finer the foam', () => {
    expect(coarsenessOf(media['fine-foam']!)).toBeLessThan(coarsenessOf(media['coarse-foam']!));
    expect(widthOf('fine-foam')).toBeLessThan(widthOf('coarse-foam'));
  });

  it('steps from one grade of foam to the next so that the eye sees it', () => {
    const grades = [10, 20, 30, 45, 60].map((poresPerInch) => catalogue[`foam-${poresPerInch}ppi`]!);
    const widths = grades.map(patternWidth);
    widths.slice(1).forEach((width, index) => {
      // lengths in print are told apart from about a tenth on; half as much again is seen without comparing
      expect((widths[index] ?? 0) / width).toBeGreaterThanOrEqual(1.4);
    });
    // four pixels to a cell at 3.58 pixels per millimetre, the sheet on a telephone
    expect((widths.at(-1) ?? 0) * 3.58).toBeGreaterThanOrEqual(4);
  });

  it.each([
    ['carbon-granular-1mm', 'carbon-granular-2mm'],
    ['carbon-granular-2mm', 'gravel-4mm'],
    ['gravel-4mm', 'gravel-10mm'],
    ['floss-loose', 'coarse-pad'],
    ['coarse-pad', 'needled-mat'],
    ['ceramic-rings-12mm', 'ceramic-rings-15mm'],
  ])('tells %s from the coarser %s', (finer, coarser) => {
    expect(patternWidth(catalogue[coarser]!) / patternWidth(catalogue[finer]!)).toBeGreaterThan(1.15);
  });

  it('shows rings each by itself', () => {
    const svg = hatchings([catalogue['ceramic-rings-15mm']!], inked);
    const [, width, height, path] = /rings-\d" width="([\d.]+)" height="([\d.]+)"[^>]*><path (.*)\/>/.exec(
      svg,
    )!;
    const outer =
      Number(/a([\d.]+) /.exec(path!)?.[1]) * 2 + Number(/stroke-width="([\d.]+)"/.exec(path!)?.[1]);
    const nearest = Math.min(Number(width), Math.hypot(Number(width) / 2, Number(height) / 2));
    expect(nearest - outer).toBeGreaterThan(0.25 * outer);
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
