import { assess } from '@fettle/engine/assessment/assess.ts';
import { dirtTimes } from '@fettle/engine/assessment/dirt/dirtTimes.ts';
import { familyModels } from '@fettle/engine/assessment/testing/familyModels.ts';
import { tubeCanister } from '@fettle/engine/assessment/testing/models.ts';
import { describe, expect, test } from 'vitest';
import { type DirtToDraw, describeDirt, dirtRowDrawing } from './dirtRowDrawing.ts';
import { themes } from './tokens.ts';

const rowOf = (
  model: (typeof familyModels)[number][1],
  theme: DirtToDraw['theme'] = 'light',
): DirtToDraw => ({
  layout: assess(model).layout,
  packing: model.packing,
  media: model.media,
  times: dirtTimes(model, 4),
  theme,
});

/** How dark each strip of each section is drawn, section by section. */
const darkness = (svg: string): readonly (readonly number[])[] =>
  svg
    .split('>day ')
    .slice(1)
    .map((section) => {
      const ofSection = section.split('transform=')[0] ?? '';
      return [...ofSection.matchAll(/fill-opacity="([\d.]+)"/g)].map(([, share]) => Number(share));
    });

const sum = (shares: readonly number[]): number => shares.reduce((total, share) => total + share, 0);

describe('dirt over time, drawn', () => {
  test.each(familyModels)('%s: no section is lighter than the one before it', (_, model) => {
    const row = rowOf(model);
    const dark = darkness(dirtRowDrawing(row)).map(sum);
    expect(dark).toHaveLength(5);
    expect(dark[0]).toBe(0);
    expect(dark).toEqual(dark.toSorted((one, other) => one - other));
    // Media that the water keeps moving hold no dirt.
    const holdsDirt = row.times.at(-1)!.beds.some(({ dirtKg }) => dirtKg > 0);
    expect(dark.at(-1)! > 0).toBe(holdsDirt);
  });

  test('a bed about a tube is drawn on both sides of it, each darkened from the side that the water meets', () => {
    const model = tubeCanister();
    const [chamber = ''] = Object.keys(model.packing);
    const one = { ...model, packing: { [chamber]: (model.packing[chamber] ?? []).slice(0, 1) } };
    const drawn = darkness(dirtRowDrawing(rowOf(one))).at(-1)!;
    const half = drawn.slice(0, drawn.length / 2);
    expect(sum(half)).toBeGreaterThan(0);
    expect(drawn.slice(drawn.length / 2)).toEqual(half);
  });

  test('most filters hold dirt by the end of their interval', () => {
    const holding = familyModels.filter(([, model]) =>
      rowOf(model)
        .times.at(-1)!
        .beds.some(({ dirtKg }) => dirtKg > 0),
    );
    expect(holding.length).toBeGreaterThanOrEqual(familyModels.length - 2);
  });

  test.each([
    [0.1234, 'holds 120 g of dry dirt'],
    [0.00084, 'holds 0.84 g of dry dirt'],
    [2e-10, 'holds less than 0.01 g of dry dirt'],
    [0, 'holds 0 g of dry dirt'],
  ])('%d kg of dirt is written as people write grams', (dirtKg, says) => {
    const [[, model]] = familyModels as [(typeof familyModels)[number]];
    const row = rowOf(model);
    const times = row.times.map((time) => ({ ...time, beds: time.beds.map((bed) => ({ ...bed, dirtKg })) }));
    expect(describeDirt({ ...row, times })).toContain(says);
  });

  test.each(familyModels)('%s: what is seen is said in a sentence, bed by bed', (_, model) => {
    const row = rowOf(model);
    const says = describeDirt(row);
    for (const beds of Object.values(row.packing))
      for (const { medium } of beds) expect(says).toContain(row.media[medium]?.name);
    expect(dirtRowDrawing(row)).toContain('<desc');
  });

  test('is dark by ink, so that one colour is enough', () => {
    const [[, model]] = familyModels as [(typeof familyModels)[number]];
    for (const theme of themes) expect(dirtRowDrawing(rowOf(model, theme))).toContain('fill-opacity');
    expect(dirtRowDrawing(rowOf(model, 'print'))).not.toMatch(/#17708e|#a8361a/);
  });
});
