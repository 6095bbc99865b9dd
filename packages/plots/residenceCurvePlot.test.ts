import { readFileSync } from 'node:fs';
import { sizes } from '@fettle/drawing/tokens.ts';
import { residenceCurve } from '@fettle/engine/assessment/residence/residence.ts';
import { readJob } from '@fettle/job/read.ts';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { ResidenceCurvePlot, residenceCurveLabels, residenceCurveScales } from './ResidenceCurvePlot.tsx';

const demos = ['tall-drum', 'two-halves', 'back-hanger', 'corner-box'].map((demo) => {
  const reading = readJob(readFileSync(new URL(`../../demo/${demo}.yaml`, import.meta.url)));
  if (!reading.ok) throw new Error(`${demo} does not read`);
  return { demo, times: residenceCurve(reading.model)! };
});

const look = { system: 'metric', theme: 'light' } as const;

describe('the plot of how long water stays', () => {
  it.each(demos)(
    'of $demo starts at nothing, keeps to its sheet and writes no label over another',
    ({ times }) => {
      const props = { ...look, id: 'e', ...times };
      const { x, y } = residenceCurveScales(props);
      expect([x.domain()[0], y.domain()[0]]).toEqual([0, 0]);
      expect(x.domain()[1]).toBeGreaterThan(times.whole.t90S);
      for (const { densityPerS } of times.whole.points)
        expect(100 * densityPerS).toBeLessThanOrEqual(y.domain()[1]!);
      const labels = residenceCurveLabels(props);
      expect(labels).toHaveLength(3);
      for (const [place, { box }] of labels.entries()) {
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(sizes.sheetWidth);
        for (const other of labels.slice(place + 1))
          expect(
            box.right <= other.box.left ||
              other.box.right <= box.left ||
              box.bottom <= other.box.top ||
              other.box.bottom <= box.top,
          ).toBe(true);
      }
    },
  );

  it('lays a dye test over it at the flow of the map', () => {
    const { times } = demos[0]!;
    const half = times.flowM3PerS / 2;
    const dye = {
      test: {
        id: 'pulse',
        state: 'cleaned-original' as const,
        flowM3PerS: half,
        samples: [],
        readingDoubt: 0,
        timeDoubtS: 0,
      },
      measured: times.whole,
      curve: times.whole.points.map(({ timeS, densityPerS }) => ({
        timeS: 2 * timeS,
        concentration: densityPerS / 2,
      })),
    };
    const alone = residenceCurveScales({ ...look, id: 'e', ...times });
    const over = residenceCurveScales({ ...look, id: 'e', ...times, dye });
    expect(over.y.domain()[1]! / alone.y.domain()[1]!).toBeCloseTo(1, 9);
    const markup = renderToStaticMarkup(
      createElement(ResidenceCurvePlot, { ...look, id: 'e', ...times, dye }),
    );
    expect(markup).toContain('By dye:');
    expect(markup).toContain('◇ dye');
  });
});
