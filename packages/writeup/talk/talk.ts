import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { chambersInWaterOrder, inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import { handlingKind, isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import { cutList } from '../cuts/cutList.ts';
import { alterationItems, changeCost, changeSentences } from '../parts/changes.ts';
import { cutLength } from '../parts/cutLengths.ts';
import { cureText, findingText } from '../parts/findings.ts';
import { flows, hasInterval, hasMechanical, interval, missed } from '../parts/interval.ts';
import { timedTests } from '../parts/measured.ts';
import { computedFlow, duration, feed, flow, money, volume } from '../parts/quantities.ts';
import { familyName, filterName } from '../parts/summary.ts';
import { pathText } from '../parts/waterPath.ts';
import { faultsOf, lastState, tense, type Writer } from '../parts/writer.ts';

/** A part of a walk-through: what is shown, and the facts that are said over it. */
export interface TalkSection {
  readonly id: string;
  readonly heading: string;
  readonly facts: readonly string[];
}

const introduction = (writer: Writer): readonly string[] => {
  const { model } = writer.source.found;
  return [
    writer.say('talk.filter', {
      filter: filterName(writer),
      family: { name: familyName(model.filter.family) },
      volume: volume(model.tank.volumeM3, 3),
    }),
    writer.say(isDrivenByAir(model) ? 'talk.rated.air' : 'talk.rated', {
      flow: flow(model.filter.pump.ratedFlowM3PerS),
    }),
    writer.say('talk.safe'),
  ];
};

const timedFacts = (writer: Writer, states: readonly string[]): readonly string[] =>
  timedTests(writer)
    .filter(({ state }) => states.includes(state))
    .map(({ state, filling, flowM3PerS, doubtM3PerS }) =>
      writer.say('talk.timed', {
        state: writer.say(`state.${state}`),
        runs: filling.timesS.length,
        vessel: volume(filling.volumeM3),
        flow: flow(flowM3PerS, doubtM3PerS),
      }),
    );

const foundFacts = (writer: Writer): readonly string[] => {
  const { found } = writer.source;
  const faults = faultsOf(found);
  return faults.length === 0
    ? [writer.say('findings.none')]
    : faults.flatMap((finding) => [
        findingText(writer, finding),
        writer.say('finding.cure', { cure: cureText(writer, finding) }),
      ]);
};

const packingFacts = (writer: Writer): readonly string[] => {
  const { model, assessment } = lastState(writer.source);
  return chambersInWaterOrder(assessment.layout).map((chamber) => {
    const beds = inWaterOrder(chamber, model.packing[chamber.id] ?? []);
    const media = beds.map((bed) =>
      writer.say('bed.of-depth', {
        depth: cutLength(writer, bed.depthM),
        medium: { name: model.media[bed.medium]!.name },
      }),
    );
    return writer.say('talk.chamber', {
      chamber: { name: chamber.label },
      media: media.length === 0 ? writer.say('chamber.empty') : media.join('; '),
    });
  });
};

const changeFacts = (writer: Writer): readonly string[] => {
  const cuts = cutList(writer.source).length;
  return [
    ...changeSentences(writer),
    ...alterationItems(writer).map((item) => writer.say('talk.altered', { item })),
    ...(cuts > 0 ? [writer.say('talk.cuts', { count: cuts })] : []),
  ];
};

const cleaningFact = (writer: Writer, assessment: Assessment): string => {
  if (hasInterval(assessment)) return writer.say('talk.interval', { interval: interval(assessment) });
  return writer.say(flows(assessment) ? 'cleaning.beyond' : 'cleaning.no-flow');
};

const resultFacts = (writer: Writer): readonly string[] => {
  const { found, after } = writer.source;
  const { assessment, model } = lastState(writer.source);
  const { day } = assessment.carries;
  const form = tense(writer.source);
  return [
    ...(flows(assessment)
      ? [
          writer.say(`talk.clean.${form}`, { flow: computedFlow(assessment.dutyPoint.flowM3PerS, model) }),
          ...(hasMechanical(assessment) ? [writer.say('talk.misses', { share: missed(assessment) })] : []),
        ]
      : []),
    writer.say('talk.carries', {
      day: duration(day.dayS),
      feed: feed(day.feedKgPerS),
      heavy: volume(day.servedM3.heavy),
      light: volume(day.servedM3.light),
    }),
    cleaningFact(writer, assessment),
    ...(after === undefined
      ? []
      : [
          writer.say('talk.before', {
            day: duration(found.assessment.carries.day.dayS),
            feed: feed(found.assessment.carries.day.feedKgPerS),
            interval: interval(found.assessment),
          }),
        ]),
  ];
};

const costFacts = (writer: Writer): readonly string[] => {
  const { cost } = lastState(writer.source).assessment;
  const change = changeCost(writer.source);
  const form = tense(writer.source);
  return [
    ...(form === 'found'
      ? []
      : [writer.say(`cost.change.${form}`, { cost: money(change.total, change.currency) })]),
    writer.say('talk.year', { cost: money(cost.perYear, cost.currency) }),
  ];
};

const limitFacts = (writer: Writer): readonly string[] => [
  writer.say('limits.one-unit'),
  writer.say('limits.model'),
  writer.say('limits.advice'),
];

/** The walk-through in the order of the work; a part without facts is not there. */
export const talkSections = (writer: Writer): readonly TalkSection[] => {
  const { source } = writer;
  const isClosed = handlingKind(source.found) === 'canister';
  const parts: readonly (readonly [id: string, facts: readonly string[]])[] = [
    ['talk-filter', introduction(writer)],
    ['talk-as-found', timedFacts(writer, ['as-found'])],
    ['talk-opened', [writer.say('path.found', { path: pathText(writer, source.found) })]],
    ['talk-wrong', foundFacts(writer)],
    ['talk-cleaned', timedFacts(writer, ['clean-empty', 'cleaned-original'])],
    ['talk-changed', source.after === undefined ? [] : changeFacts(writer)],
    ['talk-packed', source.after === undefined ? [] : packingFacts(writer)],
    ['talk-leak', isClosed && source.after !== undefined ? [writer.say('talk.leak')] : []],
    ['talk-as-left', timedFacts(writer, ['as-left'])],
    ['talk-does', resultFacts(writer)],
    ['talk-costs', costFacts(writer)],
    ['talk-limits', limitFacts(writer)],
  ];
  return parts.flatMap(([id, facts]) =>
    facts.length === 0 ? [] : [{ id, heading: writer.say(`heading.${id}`), facts }],
  );
};
