import type { Theme } from '@fettle/drawing/tokens.ts';
import { type DaySeries, DaysPlot } from '@fettle/plots/DaysPlot.tsx';
import { plotMarkup } from '@fettle/plots/plotMarkup.ts';
import { createElement } from 'react';
import type { Block } from '../../content/document.ts';
import { ownersFlow } from '../care/jug.ts';
import { flow, share } from '../quantities.ts';
import { lastState, placeIn, type Writer } from '../writer.ts';
import { foretold, isEventful, mostLosing } from './foretold.ts';

/** Two lines nearer to each other than this on every day would be drawn as one. */
const APART = 0.02;

const isApart = (one: readonly number[], other: readonly number[]): boolean =>
  one.some((value, day) => Math.abs(value - (other[day] ?? value)) >= APART);

/** The flow at the tank, and with it what goes another way: the bed that loses most, and the filter as it was packed. */
const seriesOf = (writer: Writer): readonly DaySeries[] => {
  const { source } = writer;
  const state = lastState(source);
  const { flowRatio, beds } = state.outlook.forecast().days;
  const bed = mostLosing(beds);
  const before = source.after === undefined ? [] : source.found.outlook.forecast().days.flowRatio;
  return [
    { name: writer.say('plot.at-tank'), values: flowRatio, isWater: true },
    ...(bed !== undefined && isApart(flowRatio, bed.flowRatio)
      ? [{ name: placeIn(writer, state, bed.id), values: bed.flowRatio }]
      : []),
    ...(isApart(flowRatio, before) && before.some((value) => value > 0)
      ? [{ name: writer.say('plot.as-before'), values: before }]
      : []),
  ];
};

/** Each line from its first day to its last, in words. */
const describe = (writer: Writer): string =>
  seriesOf(writer)
    .map(({ name, values }) =>
      writer.say('plot.course', {
        name,
        first: share(values[0]!),
        days: values.length - 1,
        last: share(values.at(-1)!),
        least: share(Math.min(...values)),
      }),
    )
    .join(' ');

/** The flow by day as a drawing; none where the days to come are not told. */
export const forecastDrawings = (writer: Writer, theme: Theme): Readonly<Record<string, string>> => {
  if (foretold(writer) !== 'all' || !isEventful(writer)) return {};
  const plot = createElement(DaysPlot, {
    id: 'foretold',
    // The scale is a share of clean, which is the same in every system of units.
    system: 'metric',
    theme,
    title: writer.say('plot.days'),
    what: writer.say('plot.of-clean'),
    dimension: 'share',
    dayAxis: writer.say('plot.day-axis'),
    series: seriesOf(writer),
    cleaned: [],
    says: describe(writer),
  });
  return { forecast: plotMarkup(plot) };
};

export const forecastDrawing = (writer: Writer): Block => {
  const { flowM3PerS, doubtM3PerS } = ownersFlow(writer);
  return {
    kind: 'drawing',
    id: 'forecast-plot',
    drawing: 'forecast',
    caption: writer.say('drawing.forecast', { flow: flow(flowM3PerS, doubtM3PerS) }),
    alternative: describe(writer),
    width: 'half',
  };
};
