import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import { rangesToGoBy } from '@fettle/engine/doubt/doubtOf.ts';
import { doubtSaid, type FieldNaming, howSaid, inputName } from '@fettle/engine/doubt/doubtSaid.ts';
import type { Measurement } from '@fettle/engine/doubt/measurements.ts';
import type { OutcomeName } from '@fettle/engine/doubt/outcome.ts';
import type { Fact, Said } from '@fettle/engine/wording/said.ts';
import type { Block } from '../content/document.ts';
import { fieldFact } from './assumed.ts';
import { duration, feed, flow, share, volume } from './quantities.ts';
import { heading, lastState, type Writer } from './writer.ts';

const YEAR_S = 365 * 86_400;

/** How sure the figures of the last state are; undefined where nothing was drawn. */
export const lastDoubts = ({ source }: Pick<Writer, 'source'>): Doubts | undefined =>
  lastState(source).doubts;

const naming =
  (writer: Writer): FieldNaming =>
  (path) =>
    fieldFact(writer, path);

/** What is said of the range of the tank that it serves; what makes it and what to measure stand elsewhere. */
const ofTheRange: readonly string[] = [
  'doubt.serves',
  'doubt.serves.nothing',
  'doubt.tested',
  'doubt.tested.contradicts',
];

/** How sure the served volume is; nothing where nothing was drawn. */
export const servedDoubt = (writer: Writer): readonly string[] => {
  const doubts = lastDoubts(writer);
  if (doubts === undefined) return [];
  return doubtSaid(doubts, lastState(writer.source).model, naming(writer))
    .filter(({ code }) => ofTheRange.includes(code))
    .map(({ code, facts }) => writer.say(code, facts));
};

const oxygen = (value: number): Fact => ({ value, dimension: 'concentration', digits: 2 });

const ROWS: readonly (readonly [name: string, figure: OutcomeName, fact: (value: number) => Fact])[] = [
  ['flow', 'flowM3PerS', flow],
  ['flow-end', 'intervalEnd.flowM3PerS', flow],
  ['interval', 'intervalS', (value) => duration(value, value >= YEAR_S)],
  ['feed', 'clean.feedKgPerS', feed],
  ['feed-end', 'intervalEnd.feedKgPerS', feed],
  ['served', 'clean.servedM3', volume],
  ['served-day', 'day.servedM3', volume],
  ['served-end', 'intervalEnd.servedM3', volume],
  ['oxygen', 'intervalEnd.outletOxygenKgPerM3', oxygen],
];

const rangesTable = (writer: Writer, doubts: Doubts): Block => {
  const ranges = rangesToGoBy(doubts);
  const { carries } = lastState(writer.source).assessment;
  return {
    kind: 'table',
    id: 'ranges',
    caption: writer.say('table.ranges', { draws: doubts.draws }),
    columns: [
      { head: writer.say('column.figure'), align: 'left', share: 1.4 },
      { head: writer.say('column.low'), align: 'right' },
      { head: writer.say('column.middle'), align: 'right' },
      { head: writer.say('column.high'), align: 'right' },
    ],
    rows: ROWS.map(([name, figure, fact]) => [
      writer.say(`range.${name}`, { day: duration(carries.day.dayS) }),
      ...(['low', 'median', 'high'] as const).map((end) => writer.fact(fact(ranges[figure][end]))),
    ]),
  };
};

/** What makes less of the range than this is not listed. */
const LEAST_SHARE = 0.05;

const makersTable = (writer: Writer, { inputs }: Doubts): readonly Block[] => {
  const { model } = lastState(writer.source);
  const rows = inputs
    .filter((input) => input.share >= LEAST_SHARE)
    .map((input) => [writer.fact(inputName(input, model, naming(writer))), writer.fact(share(input.share))]);
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'range-makers',
      caption: writer.say('table.range-makers'),
      columns: [
        { head: writer.say('column.unsure'), align: 'left', share: 3 },
        { head: writer.say('column.share'), align: 'right', share: 0.7 },
      ],
      rows,
    },
  ];
};

/** The ranges of the figures and what makes them; nothing where nothing was drawn. */
export const rangesPart = (writer: Writer): readonly Block[] => {
  const doubts = lastDoubts(writer);
  return doubts === undefined
    ? []
    : [heading(writer, 'ranges', 3), rangesTable(writer, doubts), ...makersTable(writer, doubts)];
};

/** The measurement that would narrow the range of the served volume most, of those that are wanted. */
export const measureNextSaid = (
  writer: Writer,
  isWanted: (kind: Measurement['kind']) => boolean = () => true,
): Said | undefined => {
  const next = lastDoubts(writer)?.measureNext.find(({ kind }) => isWanted(kind));
  return next && howSaid(next, lastState(writer.source).model, naming(writer));
};
