import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { familyById } from '@fettle/engine/families/families.ts';
import { type Fact, said } from '@fettle/engine/wording/said.ts';
import type { Block, KeyFigure } from '../content/document.ts';
import { changeCost, isUnchanged } from './changes.ts';
import { lastDoubts } from './doubt.ts';
import { findingText } from './findings.ts';
import { flows, hasMechanical, interval, missed } from './interval.ts';
import { computedFlow, duration, feed, flow, money, volume } from './quantities.ts';
import { type TimedFlow, timedFlow } from './timed.ts';
import { dayIn, faultsOf, lastState, paragraph, tense, type Writer } from './writer.ts';

/** What the filter is called. */
export const filterName = ({ source, language }: Writer): string => {
  const { filter, job } = source.document;
  return filter.name ?? job?.title ?? language.names[familyName(filter.family)] ?? familyName(filter.family);
};

export const familyName = (id: string): string => familyById(id)?.name ?? id;

/** The filter with its kind; its kind alone where nobody gave it a name. */
const whoIs = (writer: Writer): Fact => {
  const { filter, job } = writer.source.document;
  const family = { name: familyName(filter.family) };
  const isNamed = filter.name !== undefined || job?.title !== undefined;
  return isNamed
    ? said('who.named', { filter: filterName(writer), family })
    : said('who.unnamed', { family });
};

const foundSentence = (writer: Writer): string => {
  const { found } = writer.source;
  const faults = faultsOf(found);
  const timed = timedFlow(found, 'as-found');
  const facts: Record<string, Fact> = {
    who: whoIs(writer),
    ...(timed === undefined ? {} : { flow: flow(timed.flowM3PerS, timed.doubtM3PerS) }),
    count: faults.length,
    ...(faults[0] === undefined ? {} : { worst: findingText(writer, faults[0]).replace(/\.$/, '') }),
  };
  const how = timed === undefined ? 'computed' : 'timed';
  const many = faults.length === 0 ? 'none' : faults.length === 1 ? 'one' : 'many';
  return writer.say(`summary.found.${how}.${many}`, facts);
};

const changedSentence = (writer: Writer): string => {
  const { source } = writer;
  if (source.after === undefined) return writer.say('summary.changed.nothing');
  const { purchases, parts, total, renewed, currency } = changeCost(source);
  const costs = { cost: money(total, currency), renewed: money(renewed, currency) };
  return writer.say(`summary.changed.${tense(source)}.${changedHow()}`, costs);

  function changedHow(): string {
    if (isUnchanged(source)) return 'same';
    if (purchases.length + parts.length === 0) return 'free';
    if (renewed === 0) return 'bought';
    return total - renewed < 0.005 && parts.length === 0 ? 'renewed' : 'bought-and-renewed';
  }
};

const timedFact = ({ flowM3PerS, doubtM3PerS }: TimedFlow): Fact => flow(flowM3PerS, doubtM3PerS);

/** The flow that was timed as the filter was handed over: what was measured goes before what was computed. */
const timedAsLeft = ({ source: { after } }: Writer): TimedFlow | undefined =>
  after?.state === 'as-left' ? timedFlow(after, 'as-left') : undefined;

/** What cleaning alone gave, where it was timed: the change is not credited with it. */
const cleanedSentence = (writer: Writer): string => {
  const cleaned = timedFlow(writer.source.found, 'cleaned-original');
  return cleaned === undefined || timedAsLeft(writer) === undefined
    ? ''
    : writer.say('summary.cleaned', { flow: timedFact(cleaned) });
};

/** What is still wrong after the change, so that nobody takes it for cured. */
const leftOverSentence = (writer: Writer): string => {
  const { after } = writer.source;
  const faults = after === undefined ? [] : faultsOf(after);
  const [worst] = faults;
  if (worst === undefined) return '';
  return writer.say(`summary.left-over.${faults.length === 1 ? 'one' : 'many'}`, {
    count: faults.length,
    worst: findingText(writer, worst).replace(/\.$/, ''),
  });
};

const nowSentence = (writer: Writer): string => {
  const { assessment, model } = lastState(writer.source);
  if (!flows(assessment)) return writer.say(`summary.now.${tense(writer.source)}.none`);
  const { day } = assessment.carries;
  const timed = timedAsLeft(writer);
  return writer.say(`summary.now.${tense(writer.source)}${timed === undefined ? '' : '.timed'}`, {
    flow: timed === undefined ? computedFlow(assessment.dutyPoint.flowM3PerS, model) : timedFact(timed),
    feed: feed(day.feedKgPerS),
    day: duration(day.dayS),
    heavy: volume(day.servedM3.heavy),
    light: volume(day.servedM3.light),
  });
};

/** Three sentences: as it came, what was done, what it does now; and what is still wrong, if anything is. */
export const summarySentences = (writer: Writer): readonly string[] => [
  foundSentence(writer),
  changedSentence(writer),
  nowSentence(writer),
  cleanedSentence(writer),
  leftOverSentence(writer),
];

export const summaryPart = (writer: Writer): readonly Block[] =>
  paragraph('summary', summarySentences(writer), 'lead');

/** A figure in its two systems of units apart, where they differ. */
export const inBoth = (writer: Writer, fact: Fact): Pick<KeyFigure, 'metric' | 'us'> => {
  const text = writer.fact(fact);
  const both = /^(.*?) \((.*)\)$/.exec(text);
  return both?.[1] === undefined || both[2] === undefined
    ? { metric: text }
    : { metric: both[1], us: both[2] };
};

/** A figure as it is now, with what it was before where something was changed. */
const keyFigure = (
  writer: Writer,
  id: string,
  { now, before }: { readonly now: Fact; readonly before: Fact | undefined },
): KeyFigure => {
  const figure = { label: writer.say(`figure.${id}`), ...inBoth(writer, now) };
  if (before === undefined) return figure;
  const was = writer.fact(before);
  const same = was === writer.fact(now);
  return { ...figure, note: writer.say(same ? 'figure.as-before' : 'figure.before', { before: was }) };
};

/** The flow as it was timed, beside the one as found where that was timed too: like with like. */
const timedFigure = (writer: Writer): KeyFigure | undefined => {
  const now = timedAsLeft(writer);
  if (now === undefined) return undefined;
  const before = timedFlow(writer.source.found, 'as-found');
  const note =
    before === undefined
      ? {}
      : { note: writer.say('figure.before-timed', { before: writer.fact(timedFact(before)) }) };
  return { label: writer.say('figure.flow-timed'), ...inBoth(writer, timedFact(now)), ...note };
};

/** The figures that an owner asks for first, with what they were before. */
export const figuresPart = (writer: Writer): readonly Block[] => {
  const { found, after } = writer.source;
  const figure = (id: string, of: (assessment: Assessment) => Fact): KeyFigure =>
    keyFigure(writer, id, {
      now: of(lastState(writer.source).assessment),
      before: after === undefined ? undefined : of(found.assessment),
    });
  const figures = [
    timedFigure(writer) ?? figure('flow', ({ dutyPoint }) => computedFlow(dutyPoint.flowM3PerS, found.model)),
    figure('feed', ({ carries }) => feed(carries.day.feedKgPerS)),
    figure('interval', interval),
    ...(hasMechanical(lastState(writer.source).assessment) ? [figure('bypass', missed)] : []),
  ];
  return [
    { kind: 'figures', id: 'key-figures', figures },
    ...paragraph(
      'key-figures-doubt',
      [writer.say(lastDoubts(writer) === undefined ? 'doubt.computed' : 'doubt.computed.drawn')],
      'soft',
    ),
  ];
};

/** When it came in, and when it was as it is told. */
export const datesPart = (writer: Writer): readonly Block[] => {
  const { job, asLeft } = writer.source.document;
  return paragraph(
    'dates',
    [
      job?.received === undefined
        ? ''
        : writer.say('sheet.received', { received: dayIn(writer, job.received) }),
      asLeft?.day === undefined ? '' : writer.say('sheet.left', { left: dayIn(writer, asLeft.day) }),
    ],
    'soft',
  );
};
