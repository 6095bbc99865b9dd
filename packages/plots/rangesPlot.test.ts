import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { barOf, RangesPlot } from './RangesPlot.tsx';

const served = { label: 'served', low: 0.02, median: 0.04, high: 0.07, printed: '20 to 70 L' };

describe('a range beside others', () => {
  test('is drawn against its own middle, whatever its unit', () => {
    const { from, to, isCut } = barOf(served);
    expect([from, isCut]).toEqual([0.5, false]);
    expect(to).toBeCloseTo(1.75, 12);
    expect(barOf({ low: 20, median: 40, high: 70 })).toEqual({ from: 0.5, to: 1.75, isCut: false });
  });

  test('is cut off, with a mark, where its upper end is more than four times its middle', () => {
    expect(barOf({ low: 0, median: 1, high: 11 })).toEqual({ from: 0, to: 4, isCut: true });
  });

  test('is told in words as well', () => {
    const long = { label: 'interval', low: 1, median: 2, high: 30, printed: '1 to 30 days' };
    const look = { id: 'ranges', system: 'metric', theme: 'print' } as const;
    const svg = renderToStaticMarkup(createElement(RangesPlot, { ...look, figures: [served, long] }));
    expect(svg).toContain(
      '<desc id="ranges-says">From low to high, each against its middle: served 20 to 70 L; interval 1 to 30 days.</desc>',
    );
    expect(svg).not.toMatch(/NaN|Infinity/);
    expect(svg.match(/<rect[^>]*height="3"/g)).toHaveLength(2);
  });
});
