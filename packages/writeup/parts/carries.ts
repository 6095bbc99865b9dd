import { boundSaid } from '@fettle/engine/assessment/boundBy.ts';
import { fedSaid } from '@fettle/engine/assessment/fedSaid.ts';
import type { Fact } from '@fettle/engine/wording/said.ts';
import type { Block } from '../content/document.ts';
import { lastDoubts, servedDoubt } from './doubt.ts';
import { flows, hasInterval } from './interval.ts';
import { duration, feed, share, temperature, volume } from './quantities.ts';
import { heading, lastState, paragraph, type Writer } from './writer.ts';

/** Under which conditions a load is carried, as facts of one sentence. */
export const carriesConditions = (writer: Writer): Readonly<Record<string, Fact>> => {
  const { tank } = lastState(writer.source).model;
  return {
    volume: volume(tank.volumeM3, 3),
    temperature: temperature(tank.temperatureK),
    pH: Number(tank.pH.toPrecision(2)),
    alkalinity: { value: tank.alkalinityKgPerM3, dimension: 'alkalinity', digits: 2 },
    protein: share(tank.feedProteinFraction),
  };
};

const cleaningSentences = (writer: Writer): readonly string[] => {
  const { assessment } = lastState(writer.source);
  const { timeS, endedBy, flowRatio } = assessment.cleaning;
  if (!flows(assessment)) return [writer.say('cleaning.no-flow')];
  if (!hasInterval(assessment)) return [writer.say('cleaning.beyond')];
  return [
    writer.say(`cleaning.${endedBy}`, { interval: duration(timeS), flow: share(flowRatio) }),
    writer.say('doubt.interval'),
  ];
};

/** What tank it carries, and under which conditions. */
export const carriesPart = (writer: Writer): readonly Block[] => {
  const { model, assessment } = lastState(writer.source);
  const { day, clean } = assessment.carries;
  const enough = day.feedKgPerS >= model.tank.feedKgPerS ? 'enough' : 'short';
  return [
    heading(writer, 'carries'),
    ...paragraph('carries', [
      writer.say(`carries.${enough}`, {
        feed: feed(day.feedKgPerS),
        fed: fedSaid(model),
        day: duration(day.dayS),
        clean: feed(clean.feedKgPerS),
      }),
      writer.say('carries.bound', { by: boundSaid(day.bindingLimit) }),
    ]),
    {
      kind: 'table',
      id: 'serves',
      caption: writer.say('table.serves', { day: duration(day.dayS) }),
      columns: [
        { head: writer.say('column.stock'), align: 'left' },
        { head: writer.say('column.tank'), align: 'left' },
      ],
      rows: (['light', 'normal', 'heavy'] as const).map((stock) => [
        writer.say(`stock.${stock}`),
        writer.fact(volume(day.servedM3[stock])),
      ]),
    },
    ...paragraph('served-doubt', servedDoubt(writer)),
    ...paragraph('conditions', [
      writer.say('carries.conditions', carriesConditions(writer)),
      writer.say(lastDoubts(writer) === undefined ? 'doubt.carries' : 'doubt.carries.drawn'),
    ]),
    ...paragraph('cleaning', cleaningSentences(writer)),
  ];
};
