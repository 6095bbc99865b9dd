import { DaysPlot, type DaysPlotProps } from '@fettle/plots/DaysPlot.tsx';
import { HeadByDayPlot } from '@fettle/plots/HeadByDayPlot.tsx';
import { type Print, printer, share } from '@fettle/workflows/printing.ts';
import { partNames } from '@fettle/workflows/report/water.ts';
import type { ForecastShown } from './forecastShown.ts';

/** How a figure goes from the first day to the last. */
const course = (what: string, values: readonly number[], print: (value: number) => string): string =>
  `${what}: ${print(values[0] ?? 0)} on day 0, ${print(values.at(-1) ?? 0)} on day ${values.length - 1}, at the least ${print(Math.min(...values))}.`;

type Plotted = Pick<DaysPlotProps, 'id' | 'title' | 'what' | 'dimension' | 'series' | 'says'>;

const plotsOf = ({ days, bedNames, bedTags }: ForecastShown, print: Print): readonly Plotted[] => {
  const beds = days.beds.map((bed) => ({
    ...bed,
    name: bedNames[bed.id] ?? bed.id,
    tag: bedTags[bed.id] ?? bed.id,
  }));
  return [
    {
      id: 'flow-days',
      title: 'Flow at the tank, day by day',
      what: 'flow',
      dimension: 'flow',
      series: [{ name: 'at the tank', values: days.flowM3PerS, isWater: true }],
      says: course('Flow at the tank', days.flowM3PerS, (flow) => print(flow, 'flow')),
    },
    {
      id: 'bed-days',
      title: 'Water through each bed, against clean',
      what: 'of clean',
      dimension: 'share',
      series: beds.map(({ tag, flowRatio }) => ({ name: tag, values: flowRatio })),
      says: beds.map(({ name, flowRatio }) => course(name, flowRatio, share)).join(' '),
    },
    {
      id: 'dirt-days',
      title: 'Dirt in each bed',
      what: 'dry solids',
      dimension: 'mass',
      series: beds.map(({ tag, dirtKg }) => ({ name: tag, values: dirtKg })),
      says: beds.map(({ name, dirtKg }) => course(name, dirtKg, (kg) => print(kg, 'mass'))).join(' '),
    },
  ];
};

/** Flow, water through the beds, dirt and head over the coming days. */
export default function ForecastPlots({ shown }: { readonly shown: ForecastShown }) {
  const { days, cleaned, asked } = shown;
  const look = { system: asked.system, theme: 'page' } as const;
  const print = printer(asked.system);
  const parts = Object.entries(days.headM).map(([part, headM]) => ({
    name: partNames[part as keyof typeof partNames],
    headM,
  }));
  const says = parts.map(({ name, headM }) => course(name, headM, (head) => print(head, 'length'))).join(' ');
  return (
    <div className="plots">
      {plotsOf(shown, print).map((plot) => (
        <figure key={plot.id} className="plot">
          <DaysPlot {...look} {...plot} cleaned={cleaned} />
        </figure>
      ))}
      <figure className="plot">
        <HeadByDayPlot {...look} id="head-days" parts={parts} says={says} />
      </figure>
    </div>
  );
}
