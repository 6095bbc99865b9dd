import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { said } from '@fettle/engine/wording/said.ts';
import type { Block } from '../content/document.ts';
import { comparedFlow, duration, feed } from './quantities.ts';
import { faultsOf, heading, paragraph, placeIn, type Writer } from './writer.ts';

/** What a finding says, in the language. */
export const findingText = (writer: Writer, { said }: Finding): string => writer.fact(said);

/** What cures it, in the language. */
export const cureText = (writer: Writer, { cureSaid }: Finding): string => writer.fact(cureSaid);

/** What curing a fault alone does to flow, feed carried and cleaning interval. */
export const effectCells = (writer: Writer, { effect }: Finding): readonly string[] => {
  if (effect === undefined) return ['–', '–', '–'];
  const { flow, feed: fed, cleaningInterval } = effect;
  const intervalOf = (flowM3PerS: number, timeS: number, beyond: boolean): string =>
    writer.fact(flowM3PerS > 0 ? duration(timeS, beyond) : said('figure.no-water'));
  const from = (before: string, after: string): string =>
    before === after
      ? writer.say('effect.same', { value: before })
      : writer.say('effect.from-to', { before, after });
  return [
    from(writer.fact(comparedFlow(flow.beforeM3PerS)), writer.fact(comparedFlow(flow.afterM3PerS))),
    from(writer.fact(feed(fed.beforeKgPerS)), writer.fact(feed(fed.afterKgPerS))),
    from(
      intervalOf(flow.beforeM3PerS, cleaningInterval.beforeS, cleaningInterval.beforeBeyond),
      intervalOf(flow.afterM3PerS, cleaningInterval.afterS, cleaningInterval.afterBeyond),
    ),
  ];
};

const faultBlocks = (writer: Writer, finding: Finding, number: number): readonly Block[] => {
  const { found } = writer.source;
  const place = placeIn(writer, found, finding.place);
  const id = `finding-${finding.id}${number}`;
  const label = writer.say('finding.numbered', {
    number,
    severity: writer.say(`severity.${finding.severity}`),
    place,
  });
  const text = [
    findingText(writer, finding),
    writer.say('finding.cure', { cure: cureText(writer, finding) }),
  ].join(' ');
  return [{ kind: 'paragraph', id, label, text }];
};

const effectTable = (writer: Writer, faults: readonly Finding[]): readonly Block[] => {
  const shown = faults
    .map((finding, at) => ({ finding, number: at + 1 }))
    .filter(({ finding }) => finding.effect);
  if (shown.length === 0) return [];
  const day = writer.source.found.assessment.carries.day.dayS;
  return [
    {
      kind: 'table',
      id: 'effects',
      caption: writer.say('table.effects', { day: duration(day) }),
      columns: [
        { head: writer.say('column.finding'), align: 'left', share: 0.7 },
        { head: writer.say('column.flow'), align: 'left', share: 1.2 },
        { head: writer.say('column.feed'), align: 'left' },
        { head: writer.say('column.interval'), align: 'left' },
      ],
      rows: shown.map(({ finding, number }) => [String(number), ...effectCells(writer, finding)]),
    },
  ];
};

/** What was wrong, worst first, each with what it costs by being so; then what was right. */
export const findingsPart = (writer: Writer): readonly Block[] => {
  const { found } = writer.source;
  const faults = faultsOf(found);
  const strengths = found.findings.filter(({ severity }) => severity === 'strength');
  const items = strengths.map((finding) => findingText(writer, finding));
  return [
    heading(writer, 'findings'),
    ...(faults.length === 0 ? paragraph('no-findings', [writer.say('findings.none')]) : []),
    ...faults.flatMap((finding, at) => faultBlocks(writer, finding, at + 1)),
    ...effectTable(writer, faults),
    ...(items.length === 0
      ? []
      : [heading(writer, 'strengths', 3), { kind: 'list', id: 'strength-list', items } as const]),
  ];
};
