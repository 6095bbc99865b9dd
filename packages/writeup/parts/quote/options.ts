import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { Block } from '../../content/document.ts';
import { changeCost } from '../changes.ts';
import { hasInterval, interval, missed } from '../interval.ts';
import { computedFlow, duration, feed, flow, money } from '../quantities.ts';
import { type TimedFlow, timedFlow } from '../timed.ts';
import { heading, paragraph, tense, type Writer } from '../writer.ts';
import { totalsOf } from './lines.ts';

/** A flow that was timed goes before one that was computed. */
const flowCell = (writer: Writer, assessment: Assessment, timed: TimedFlow | undefined): string =>
  timed === undefined
    ? writer.fact(computedFlow(assessment.dutyPoint.flowM3PerS, writer.source.found.model))
    : writer.say('choice.flow.timed', { flow: flow(timed.flowM3PerS, timed.doubtM3PerS) });

const figureCells = (writer: Writer, assessment: Assessment, timed?: TimedFlow): readonly string[] => [
  flowCell(writer, assessment, timed),
  writer.fact(feed(assessment.carries.day.feedKgPerS)),
  writer.fact(interval(assessment)),
  writer.fact(missed(assessment)),
];

const perYear = (writer: Writer, { cost }: Assessment): string =>
  writer.fact(money(cost.perYear, cost.currency));

/** As it came in nothing is known but the flow, where it was timed: figures of a dirty filter are not made up. */
const nothingRow = (writer: Writer): readonly string[] => {
  const { found } = writer.source;
  const timed = timedFlow(found, 'as-found');
  const unknown = writer.say('choice.unknown');
  const nought = money(0, found.assessment.cost.currency);
  return [
    writer.say('choice.nothing'),
    timed === undefined ? unknown : flowCell(writer, found.assessment, timed),
    unknown,
    unknown,
    unknown,
    writer.say('choice.no-charge', { zero: nought }),
    perYear(writer, found.assessment),
  ];
};

/** Whether the work is done: a quote tells what was known before it. */
const isBuilt = ({ source }: Writer): boolean => source.document.asLeft !== undefined;

const cleanRow = (writer: Writer): readonly string[] => {
  const { found } = writer.source;
  const { assessment } = found;
  return [
    writer.say('choice.clean'),
    ...figureCells(writer, assessment, isBuilt(writer) ? undefined : timedFlow(found, 'cleaned-original')),
    writer.say('choice.on-request'),
    perYear(writer, assessment),
  ];
};

/** What the re-pack costs once: the quote where it is whole, else what of it is known. */
const onceText = (writer: Writer): string => {
  const totals = totalsOf(writer);
  const { total, currency } = changeCost(writer.source);
  if (totals === undefined) return writer.say('choice.parts-only', { cost: money(total, currency) });
  const cost = money(totals.total, totals.currency);
  return totals.missing.length === 0 ? writer.fact(cost) : writer.say('choice.so-far', { cost });
};

const repackRows = (writer: Writer): readonly (readonly string[])[] => {
  const { after } = writer.source;
  if (after === undefined) return [];
  return [
    [
      writer.say(`choice.repack.${tense(writer.source)}`),
      ...figureCells(writer, after.assessment),
      onceText(writer),
      perYear(writer, after.assessment),
    ],
  ];
};

const hasAnyInterval = ({ source: { found, after } }: Writer): boolean =>
  hasInterval(found.assessment) || (after !== undefined && hasInterval(after.assessment));

/** What it is to do nothing, to clean only, and to re-pack, on one basis: so that cleaning is not sold as more. */
export const optionsPart = (writer: Writer): readonly Block[] => {
  const { carries } = writer.source.found.assessment;
  return [
    heading(writer, 'quote-options'),
    {
      kind: 'table',
      id: 'options',
      caption: writer.say('table.options'),
      columns: [
        { head: writer.say('column.choice'), align: 'left', share: 1.35 },
        { head: writer.say('column.flow'), align: 'left', share: 1.3 },
        { head: writer.say('column.feed'), align: 'left' },
        { head: writer.say('column.interval'), align: 'left' },
        { head: writer.say('column.bypass'), align: 'left' },
        { head: writer.say('column.once'), align: 'right' },
        { head: writer.say('column.per-year'), align: 'right' },
      ],
      rows: [nothingRow(writer), cleanRow(writer), ...repackRows(writer)],
    },
    ...paragraph(
      'quote-options-notes',
      [
        writer.say('quote.options.how', { day: duration(carries.day.dayS) }),
        writer.say('doubt.computed'),
        hasAnyInterval(writer) ? writer.say('doubt.interval') : '',
        isBuilt(writer) ? writer.say('quote.options.since') : '',
      ],
      'soft',
    ),
  ];
};
