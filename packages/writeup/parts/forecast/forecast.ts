import { type ForecastOf, lossSaid, unknownSaid } from '@fettle/engine/assessment/forecast/forecastSaid.ts';
import { intervalEndSaid } from '@fettle/engine/assessment/intervalEnd.ts';
import type { Block } from '../../content/document.ts';
import { ownersFlow } from '../care/jug.ts';
import { hasInterval } from '../interval.ts';
import { duration, flow, share } from '../quantities.ts';
import { heading, lastState, paragraph, type Writer } from '../writer.ts';
import { foretold, isEventful, monthDays, mostLosing } from './foretold.ts';
import { patternsTable } from './patterns.ts';
import { forecastDrawing } from './plot.ts';

const told = ({ source }: Writer): ForecastOf => {
  const { model, assessment, outlook } = lastState(source);
  return { model, layout: assessment.layout, forecast: outlook.forecast() };
};

/** What ends the cleaning interval, and what a jug shows of it then; nothing where nothing does within a year. */
const endSentence = (writer: Writer): string => {
  const { model, assessment } = lastState(writer.source);
  return hasInterval(assessment)
    ? writer.say('forecast.interval-end', {
        interval: duration(assessment.cleaning.timeS),
        end: intervalEndSaid(model, assessment),
      })
    : '';
};

/** What is left after one month, two and three. */
const monthsTable = (writer: Writer): Block => {
  const { source } = writer;
  const { flowRatio, beds } = lastState(source).outlook.forecast().days;
  const clean = ownersFlow(writer);
  const losing = mostLosing(beds);
  const before = source.after === undefined ? undefined : source.found.outlook.forecast().days.flowRatio;
  const rowAt = (day: number): readonly string[] => [
    day === 0 ? writer.say('forecast.clean') : writer.say('forecast.on-day', { day }),
    writer.fact(flow(clean.flowM3PerS * flowRatio[day]!, clean.doubtM3PerS * flowRatio[day]!)),
    writer.fact(share(flowRatio[day]!)),
    ...(before === undefined ? [] : [writer.fact(share(before[day]!))]),
    writer.fact(share(losing?.flowRatio[day] ?? 1)),
  ];
  return {
    kind: 'table',
    id: 'forecast-months',
    caption: writer.say('table.forecast-months'),
    columns: [
      { head: writer.say('column.when'), align: 'left', share: 1.2 },
      { head: writer.say('column.flow'), align: 'right', share: 1.6 },
      { head: writer.say('column.of-clean'), align: 'right' },
      ...(before === undefined
        ? []
        : [{ head: writer.say('column.of-clean-before'), align: 'right' } as const]),
      { head: writer.say('column.least-bed'), align: 'right' },
    ],
    rows: [0, ...monthDays].map(rowAt),
  };
};

/** How flow and dirt go over the coming months, and what each way of cleaning gives; little where little is known. */
export const forecastPart = (writer: Writer): readonly Block[] => {
  const how = foretold(writer);
  if (how === 'nothing') return [];
  if (how !== 'all')
    return [heading(writer, 'forecast'), ...paragraph('forecast', [writer.say(`forecast.only.${how}`)])];
  return [
    heading(writer, 'forecast'),
    ...paragraph('forecast', [writer.fact(lossSaid(told(writer))), endSentence(writer)]),
    monthsTable(writer),
    ...(isEventful(writer) ? [forecastDrawing(writer), patternsTable(writer)] : []),
    ...paragraph(
      'forecast-doubt',
      [
        ...(isEventful(writer) ? ['forecast.key', 'forecast.doubt'] : ['forecast.uneventful']).map((code) =>
          writer.say(code),
        ),
        ...unknownSaid(lastState(writer.source).model).map((one) => writer.fact(one)),
      ],
      'soft',
    ),
  ];
};
