import { forecast } from '@fettle/engine/assessment/forecast/forecast.ts';
import { describe, expect, it } from 'vitest';
import type { Block, Document } from '../content/document.ts';
import type { WriteUpSource } from '../source.ts';
import { demoDocument, demoSource, sourceOf } from '../testing/sources.ts';
import { type DocumentName, writeUpDocument } from '../writeUp.ts';

const documentOf = (source: WriteUpSource, name: DocumentName): Document =>
  writeUpDocument(source, { name, theme: 'print' });

const blockOf = ({ blocks }: Document, id: string): Block | undefined => blocks.find((one) => one.id === id);

const textOf = (document: Document, id: string): string => {
  const found = blockOf(document, id);
  return found?.kind === 'paragraph' ? found.text : '';
};

const tableOf = (document: Document, id: string) => {
  const found = blockOf(document, id);
  return found?.kind === 'table' ? found : undefined;
};

const found = documentOf(demoSource('tall-drum'), 'sheet');

describe('the months to come in the sheet', () => {
  it('are those of the forecast: what is left clean and after one month, two and three', () => {
    const { flowRatio } = forecast(demoSource('tall-drum').found.model).days;
    const left = tableOf(found, 'forecast-months')!.rows.map((row) => row[2]);
    expect(left).toEqual([0, 30, 60, 90].map((day) => `${Math.round(100 * flowRatio[day]!)} %`));
  });

  it('say how long the flow keeps, which bed ends the interval, and what is not known', () => {
    expect(textOf(found, 'forecast')).toContain(
      'Within 180 days the flow at the tank is not down by a quarter',
    );
    expect(textOf(found, 'forecast')).toContain('loose floss in basket 1');
    expect(textOf(found, 'forecast-doubt')).toContain('What plants shed is not counted');
  });

  it('say of a feed that nobody stated that it is assumed', () => {
    const { feed: _, ...tank } = demoDocument('tall-drum').tank;
    const unsaid = documentOf(sourceOf({ ...demoDocument('tall-drum'), tank }), 'sheet');
    expect(textOf(unsaid, 'forecast-doubt')).toContain('assumed from its stock');
    expect(textOf(found, 'forecast-doubt')).not.toContain('assumed');
  });

  it('hold ways of cleaning against each other: the interval is never late, and costs the most work', () => {
    const { rows } = tableOf(found, 'forecast-patterns')!;
    const [usual, never] = ['whenever the interval is over', 'never'].map((name) =>
      rows.find(([pattern]) => pattern === name),
    );
    expect(usual![4]).toBe('0');
    expect(never![3]).toBe('0');
    expect(Number(usual![3])).toBe(Math.max(...rows.map((row) => Number(row[3]))));
  });

  it('are drawn as vectors in the inks of print, with the lines in words', () => {
    const plot = found.drawings.forecast!;
    expect(plot).toMatch(/^<svg width="100mm" height="[\d.]+mm"/);
    expect(plot).not.toContain('var(');
    expect(plot).toContain('at the tank: 100 % of clean on day 0');
  });

  it('stand beside those of the old packing once it is packed anew', () => {
    const planned = documentOf(demoSource('tall-drum', 'planned'), 'sheet');
    const heads = tableOf(planned, 'forecast-months')!.columns.map(({ head }) => head);
    expect(heads).toContain('packed as before');
    expect(tableOf(found, 'forecast-months')!.columns).toHaveLength(heads.length - 1);
  });

  it('tell what was timed as left, and computed flows in its measure', () => {
    const left = documentOf(sourceOf(demoDocument('handed-back')), 'sheet');
    expect(tableOf(left, 'forecast-months')!.rows[0]![1]).toContain('511 ± 13 L/h');
  });

  it.each([
    ['sand that the water keeps moving', demoDocument('sand-column'), 'hold no dirt'],
    [
      'bubbles whose flow nobody timed',
      { ...demoDocument('bubbling-sponge'), tests: [] },
      'was computed and not timed',
    ],
    [
      'a tank that is not fed',
      { ...demoDocument('tall-drum'), tank: { ...demoDocument('tall-drum').tank, feed: '0 g/d' } },
      'is not fed',
    ],
  ])('of %s say no more than that', (_, document, says) => {
    const sheet = documentOf(sourceOf(document), 'sheet');
    expect(textOf(sheet, 'forecast')).toContain(says);
    for (const id of ['forecast-months', 'forecast-plot', 'forecast-patterns', 'forecast-doubt'])
      expect(blockOf(sheet, id), id).toBeUndefined();
    expect(sheet.drawings.forecast).toBeUndefined();
    expect(blockOf(documentOf(sourceOf(document), 'care'), 'care-pattern')).toBeUndefined();
  });

  it('of a filter through which no water runs say nothing', () => {
    const tall = demoDocument('tall-drum');
    const outlet = { ...tall.filter.hoses?.outlet, lift: '2 m' };
    const dry = sourceOf({
      ...tall,
      tests: [],
      filter: { ...tall.filter, hoses: { ...tall.filter.hoses, outlet } },
    });
    expect(blockOf(documentOf(dry, 'sheet'), 'heading-forecast')).toBeUndefined();
  });
});

describe('media that the water keeps moving', () => {
  it('are not swished: they are looked at, and rinsed only where they stick together', () => {
    const sand = sourceOf(demoDocument('sand-column'));
    expect(tableOf(documentOf(sand, 'care'), 'care-beds')!.rows[0]!.slice(1)).toEqual([
      'nothing while it moves: the water keeps it clean',
      'look every week whether all of it moves',
    ]);
    const steps = JSON.stringify(documentOf(sand, 'build').blocks);
    expect(steps).toContain('only where it sticks together');
    expect(steps).not.toContain('only swished');
  });
});

describe('how often, in the care plan', () => {
  it('is the interval, with its work, and why a calendar would be late', () => {
    const text = textOf(documentOf(demoSource('tall-drum'), 'care'), 'care-pattern');
    const { timeS } = demoSource('tall-drum').found.assessment.cleaning;
    expect(text).toContain(`after about ${Number((timeS / 86_400).toPrecision(2))} days`);
    expect(text).toMatch(/everything every 30 days would come to 12 days a year, but .* late on \d+ days/);
    expect(text).toContain('the packing wants changing rather than the calendar');
  });

  it('says what the jug should show by when: longer the later', () => {
    const { rows } = tableOf(documentOf(demoSource('tall-drum'), 'care'), 'care-jug-months')!;
    const times = rows.map((row) => Number.parseFloat(row[1]!));
    expect(times).toEqual(times.toSorted((one, other) => one - other));
    expect(times.at(-1)).toBeGreaterThan(times[0]!);
  });

  it('is once a year where nothing asks for it', () => {
    const care = documentOf(sourceOf(demoDocument('handed-back')), 'care');
    expect(textOf(care, 'care-pattern')).toContain('nothing asks for cleaning within a year');
    expect(blockOf(care, 'care-jug-months')).toBeUndefined();
  });
});
