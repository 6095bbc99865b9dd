import { readFileSync } from 'node:fs';
import { textWidth } from '@fettle/drawing/textWidth.ts';
import { sizes, themes } from '@fettle/drawing/tokens.ts';
import { assess } from '@fettle/engine/assessment/assess.ts';
import { pumpAndSystem } from '@fettle/engine/assessment/hydraulics/curves.ts';
import { residenceCurve } from '@fettle/engine/assessment/residence/residence.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { readJob } from '@fettle/job/read.ts';
import { createElement, type ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { HeadBudgetPlot } from './HeadBudgetPlot.tsx';
import { PlansPlot, plansLabels, plansScales } from './PlansPlot.tsx';
import { PumpCurvePlot, pumpLabels, pumpScales } from './PumpCurvePlot.tsx';
import type { PlacedLabel } from './placeLabels.ts';
import { ResidenceCurvePlot } from './ResidenceCurvePlot.tsx';
import {
  middleTime,
  ResidenceTimePlot,
  residenceLabels,
  residenceScales,
  risesOf,
} from './ResidenceTimePlot.tsx';
import { expectLegible } from './testing/legible.ts';

const modelOf = (demo: string): Model => {
  const reading = readJob(readFileSync(new URL(`../../demo/${demo}.yaml`, import.meta.url)));
  if (!reading.ok) throw new Error(`${demo} does not read`);
  return reading.model;
};

const demos = ['tall-drum', 'two-halves', 'back-hanger', 'corner-box', 'everything-wrong'].map((demo) => {
  const model = modelOf(demo);
  const assessment = assess(model);
  const curves = { duty: assessment.dutyPoint, ...pumpAndSystem(model, assessment.dutyPoint) };
  const narrow: Model = { ...model, filter: { ...model.filter, outletLiftM: 0.1 } };
  const duty = assess(narrow).dutyPoint;
  return {
    demo,
    assessment,
    times: residenceCurve(model)!,
    found: { name: 'as found', ...curves },
    planned: { name: 'planned', duty, ...pumpAndSystem(narrow, duty) },
    measured: {
      name: 'measured as found',
      flowM3PerS: 0.8 * duty.flowM3PerS,
      doubtM3PerS: 0.1 * duty.flowM3PerS,
    },
  };
});

const parts = [
  { label: 'clean beds', headM: 0.0125, share: 0.0208 },
  { label: 'outlet hose', headM: 0.101, share: 0.168 },
];

const priced = (id: string, cost: number, gain: number) => ({
  id,
  cost: { value: cost, says: `${cost.toFixed(2)} GBP` },
  gain: { value: gain, says: `${gain} g/d` },
});

const plans = {
  id: 'd',
  theme: 'light',
  currency: 'GBP',
  gain: { name: 'feed carried', unit: 'g/d' },
  asBefore: { value: 1.28, says: '1.28 g/d', low: 1, high: 1.6 },
  // Four that cost the same and carry almost the same, as searches do give them.
  plans: [
    priced('plan-1', 0, 1.16),
    priced('plan-2', 0, 1.17),
    priced('plan-3', 0, 1.18),
    priced('plan-4', 0, 1.18),
    priced('plan-5', 15, 1.3),
  ],
} as const;

const look = { system: 'metric', theme: 'light' } as const;
const pump = ({ found, planned, measured }: (typeof demos)[number]) => ({
  ...look,
  id: 'a',
  found,
  planned,
  measured,
});
const wordsOf = (element: ReactElement): string =>
  /<desc[^>]*>([^<]*)/.exec(renderToStaticMarkup(element))?.[1]?.replaceAll('&lt;', '<') ?? '';

const everyPlot = themes.flatMap((theme) =>
  (['metric', 'us'] as const).flatMap((system): [string, ReactElement][] => {
    const of = demos[0]!;
    const seen = { system, theme };
    return [
      [`pump, ${theme}, ${system}`, createElement(PumpCurvePlot, { ...pump(of), ...seen })],
      [`head, ${theme}, ${system}`, createElement(HeadBudgetPlot, { id: 'b', parts, ...seen })],
      [
        `residence, ${theme}, ${system}`,
        createElement(ResidenceTimePlot, { id: 'c', routes: of.assessment.routes, ...seen }),
      ],
      [`curve, ${theme}, ${system}`, createElement(ResidenceCurvePlot, { id: 'e', ...of.times, ...seen })],
      [`plans, ${theme}`, createElement(PlansPlot, { ...plans, theme })],
    ];
  }),
);

describe('every plot', () => {
  it.each(everyPlot)(
    '%s is drawn without a browser, named, and without styles a page would refuse',
    (_, plot) => {
      const markup = renderToStaticMarkup(plot);
      expect(markup).toMatch(/^<svg [^>]*role="img" aria-labelledby="(\w)-title \1-says"/);
      expect(markup).toMatch(/<title id="\w-title">[^<]{5,}<\/title><desc id="\w-says">[^<]{20,}<\/desc>/);
      expect(markup).not.toMatch(/style=|NaN|undefined|Infinity/);
    },
  );

  it.each(everyPlot)('%s has letters of 11 pixels and more on a phone, none beyond its sheet', (_, plot) => {
    const markup = renderToStaticMarkup(plot);
    const sizesUsed = [...markup.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
    expect((Math.min(...sizesUsed) / sizes.sheetWidth) * 358).toBeGreaterThanOrEqual(11);
    for (const [, attributes = '', words = ''] of markup.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)) {
      const x = Number(/\bx="([-\d.]+)"/.exec(attributes)?.[1]);
      const size = Number(/font-size="([\d.]+)"/.exec(attributes)?.[1] ?? sizes.text);
      const width = textWidth(words.replace('&lt;', '<'), { size, bold: attributes.includes('bold') });
      const before = attributes.includes('"middle"') ? width / 2 : attributes.includes('"end"') ? width : 0;
      expect(x - before, words).toBeGreaterThanOrEqual(0);
      expect(x - before + width, words).toBeLessThanOrEqual(sizes.sheetWidth);
    }
  });
});

describe('the plot of pump and system', () => {
  it.each(demos.map((one) => [one.demo, one] as const))(
    'of %s has its duty point on both curves',
    (_, one) => {
      const { spot } = pumpScales(pump(one));
      for (const { duty, pump: curve, system } of [one.found, one.planned]) {
        const at = spot(duty);
        expect(curve.map(spot)).toContainEqual(at);
        expect(system.map(spot)).toContainEqual(at);
      }
    },
  );

  it.each(demos.map((one) => [one.demo, one] as const))(
    'of %s has more flow further right, more head higher',
    (_, one) => {
      const spots = one.found.system.map(pumpScales(pump(one)).spot);
      for (const [place, { x, y }] of spots.slice(1).entries()) {
        expect(x).toBeGreaterThan(spots[place]!.x);
        expect(y).toBeLessThan(spots[place]!.y);
      }
    },
  );

  it.each(demos.map((one) => [one.demo, one] as const))('of %s has no label over another', (_, one) => {
    const two = pumpLabels(pump(one));
    expectLegible(two, two.some(({ says }) => says.includes('both')) ? two.length : 5);
    expectLegible(pumpLabels({ ...look, id: 'a', found: one.found }), 3);
  });

  it.each(demos.map((one) => [one.demo, one] as const))(
    'of %s names each system on the side away from the other',
    (_, one) => {
      const { spot } = pumpScales(pump(one));
      const named = pumpLabels(pump(one)).filter(({ says }) => says.startsWith('system, '));
      const middle = ({ box }: PlacedLabel): number => (box.top + box.bottom) / 2;
      const [found, planned] = ['system, as found', 'system, planned'].map((name) =>
        named.find(({ says }) => says === name),
      );
      // Two that lie on each other have one name.
      if (found === undefined || planned === undefined) {
        expect(named.map(({ says }) => says)).toEqual(['system, both']);
        return;
      }
      // The lift of what is planned puts its system above the one as found.
      expect(spot(one.planned.system[0]!).y).toBeLessThan(spot(one.found.system[0]!).y);
      expect(middle(planned)).toBeLessThan(planned.at.y);
      expect(middle(found)).toBeGreaterThan(found.at.y);
    },
  );

  it.each(['metric', 'us'] as const)('says its figures as they are printed elsewhere, %s', (system) => {
    const one = demos[0]!;
    const print = (value: number, dimension: 'flow' | 'length') =>
      printQuantity({ value, dimension, system });
    const words = wordsOf(createElement(PumpCurvePlot, { ...pump(one), system }));
    for (const { duty } of [one.found, one.planned]) {
      expect(words).toContain(
        `${print(duty.flowM3PerS, 'flow')} flows at ${print(duty.headM, 'length')} of head`,
      );
    }
    expect(words).toContain(' ± ');
  });

  it('names both packings at one label where they print alike', () => {
    const { found } = demos[0]!;
    const labels = pumpLabels({ ...look, id: 'a', found, planned: { ...found, name: 'planned' } });
    expect(labels.map(({ says }) => says.split(' ')[0])).toEqual(['both', 'system,', 'pump']);
  });
});

describe('the plot of the head', () => {
  it('says each part with head and share, largest first', () => {
    expect(wordsOf(createElement(HeadBudgetPlot, { ...look, id: 'b', parts }))).toBe(
      'Of the pump’s head with clean media go to outlet hose 10.1 cm, 17 %; to clean beds 12.5 mm, 2.1 %.',
    );
  });
});

describe('the plot of the time in the media', () => {
  const routes = [
    { id: 'route-1', share: 0.7, contactTimeS: 22.4 },
    { id: 'route-2', share: 0.2, contactTimeS: 0 },
    { id: 'route-3', share: 0.1, contactTimeS: 8 },
  ];

  it('adds up the water from the shortest time to the longest', () => {
    const rises = risesOf(routes);
    expect(rises.map(({ timeS }) => timeS)).toEqual([0, 8, 22.4]);
    expect(rises.at(-1)?.sum).toBeCloseTo(1, 12);
    expect(middleTime(rises)).toBe(22.4);
  });

  it('says who misses the media and how long half of the water stays', () => {
    expect(wordsOf(createElement(ResidenceTimePlot, { ...look, id: 'c', routes }))).toBe(
      '20 % of the water meets no media; half of it is in media for 22 s or longer. By route: 10 % for 8 s, 70 % for 22 s.',
    );
  });

  it.each(demos.map((one) => [one.demo, one] as const))(
    'of %s rises to all the water, no label over another',
    (_, one) => {
      const rises = risesOf(one.assessment.routes);
      const { y } = residenceScales(rises);
      expect(rises.at(-1)!.sum).toBeCloseTo(1, 9);
      expect(y(100)).toBeLessThan(y(0));
      expectLegible(residenceLabels(rises), rises.filter(({ share }) => share >= 0.03).length);
    },
  );
});

describe('the plot of plans', () => {
  it('names every plan once, none over another, however alike they are', () => {
    expectLegible(plansLabels(plans), 6);
  });

  it('begins at no money and nothing carried', () => {
    const { x, y } = plansScales(plans);
    expect([x.domain()[0], y.domain()[0]]).toEqual([0, 0]);
    expect(x(15)).toBeGreaterThan(x(0));
    expect(y(1.3)).toBeLessThan(y(1.28));
  });

  it('says every plan with its price, as the table prints it', () => {
    expect(wordsOf(createElement(PlansPlot, plans))).toBe(
      'Cleaned, packed as before, feed carried: 1.28 g/d. With plans: plan-1 1.16 g/d for 0.00 GBP; plan-2 1.17 g/d for 0.00 GBP; plan-3 1.18 g/d for 0.00 GBP; plan-4 1.18 g/d for 0.00 GBP; plan-5 1.3 g/d for 15.00 GBP.',
    );
  });

  it('stands where nothing was found', () => {
    expect(wordsOf(createElement(PlansPlot, { ...plans, plans: [] }))).toContain('No plans.');
  });
});
