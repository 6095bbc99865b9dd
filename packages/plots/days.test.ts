import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { DaysPlot, dayLabels } from './DaysPlot.tsx';
import { HeadByDayPlot } from './HeadByDayPlot.tsx';
import { expectLegible } from './testing/legible.ts';

const look = { system: 'metric', theme: 'light' } as const;

describe('the plots of the coming days', () => {
  const falling = (from: number, by: number): number[] =>
    Array.from({ length: 91 }, (_, day) => from * Math.exp(-by * day));
  const beds = {
    ...look,
    id: 'days',
    title: 'Water through each bed, against clean',
    what: 'of clean',
    dimension: 'share' as const,
    series: [
      { name: 'M1', values: falling(1, 0.002) },
      { name: 'M2', values: falling(1, 0.02) },
      { name: 'B3', values: falling(1, 0.0021) },
    ],
    cleaned: [30, 60],
    says: 'Three beds.',
  };

  it('name each bed once, none over another', () => {
    expectLegible(dayLabels(beds), 3);
  });

  it('name the bed that clogs where it is far from the others', () => {
    const label = dayLabels(beds).find(({ says }) => says === 'M2')!;
    expect(label.at.x).toBeGreaterThan(dayLabels({ ...beds, series: beds.series.slice(1, 2) })[0]!.at.x);
  });

  it('tell the lines apart without colour, and mark each cleaning', () => {
    const markup = renderToStaticMarkup(createElement(DaysPlot, beds));
    expect(new Set([...markup.matchAll(/stroke-dasharray="([^"]+)"/g)].map(([, dash]) => dash)).size).toBe(2);
    expect(markup.match(/v-2\.4/g)).toHaveLength(2);
    expect(markup).toContain('Three beds.');
  });

  it('lay the head of the parts over each other, and name those that have room', () => {
    const plot = createElement(HeadByDayPlot, {
      ...look,
      id: 'heads',
      parts: [
        { name: 'outlet hose', headM: falling(0.4, 0.001) },
        { name: 'openings inside', headM: falling(0.001, 0) },
        { name: 'beds', headM: falling(0.2, 0.001).reverse() },
      ],
      says: 'Head.',
    });
    const markup = renderToStaticMarkup(plot);
    expect(markup).toContain('>outlet hose<');
    expect(markup).toContain('>beds<');
    expect(markup).not.toContain('openings inside');
  });
});
