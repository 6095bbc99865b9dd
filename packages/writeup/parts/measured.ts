import { type FlowDifference, flowDifference } from '@fettle/engine/learning/flowDifference.ts';
import type { BenchTest, TimedFilling } from '@fettle/engine/model/model.ts';
import { isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import { said } from '@fettle/engine/wording/said.ts';
import type { Block } from '../content/document.ts';
import { flowWay } from './flowWay.ts';
import { computedFlow, flow, power, share } from './quantities.ts';
import { heading, lastState, paragraph, sayings, type Writer } from './writer.ts';

type Timed = Extract<BenchTest, { kind: 'timed-volume' }> & { readonly filling: TimedFilling };

/** States of the filter in the order of the work: cleaning comes before the alteration, so that each is known apart. */
const order = ['as-found', 'clean-empty', 'cleaned-original', 'as-left'] as const;

/** Every timed filling, in the order of the work. */
export const timedTests = ({ source }: Writer): readonly Timed[] => {
  const tests = new Map<string, BenchTest>();
  // Flows of another state than the one found are left out of its model, so that both models are asked.
  for (const state of [source.found, ...(source.after === undefined ? [] : [source.after])])
    for (const test of state.model.tests) tests.set(test.id, test);
  return [...tests.values()]
    .flatMap((test) =>
      test.kind === 'timed-volume' && test.filling ? [{ ...test, filling: test.filling }] : [],
    )
    .toSorted((one, other) => order.indexOf(one.state) - order.indexOf(other.state));
};

/** The comparable state before this one: with media against with media, so that each step is credited for itself. */
const beforeIt = (test: Timed, tests: readonly Timed[]): Timed | undefined =>
  test.state === 'clean-empty'
    ? undefined
    : tests
        .filter(({ state }) => state !== 'clean-empty' && order.indexOf(state) < order.indexOf(test.state))
        .at(-1);

const differenceText = (writer: Writer, { differenceM3PerS, doubtM3PerS, isReal }: FlowDifference): string =>
  writer.say(isReal ? (differenceM3PerS > 0 ? 'difference.more' : 'difference.less') : 'difference.none', {
    by: flow(Math.abs(differenceM3PerS), doubtM3PerS),
  });

const flowRow = (writer: Writer, test: Timed, tests: readonly Timed[]): readonly string[] => {
  const before = beforeIt(test, tests);
  return [
    writer.say(`state.${test.state}`),
    test.filling.timesS.map((time) => writer.fact({ value: time, dimension: 'time' })).join(', '),
    writer.fact(flow(test.flowM3PerS, test.doubtM3PerS)),
    before === undefined ? '–' : differenceText(writer, flowDifference(before.filling, test.filling)),
  ];
};

/** What the steps of the work are worth each: cleaning by itself, and the alteration by itself. */
const creditSentences = (writer: Writer, tests: readonly Timed[]): readonly string[] => {
  const has = (state: Timed['state']): boolean => tests.some((test) => test.state === state);
  if (tests.length === 0) return [writer.say('measured.no-flow')];
  if (has('as-found') && has('as-left') && !has('cleaned-original'))
    return [writer.say('measured.cleaning-not-apart')];
  if (has('as-left') && has('cleaned-original')) return [writer.say('measured.apart')];
  return has('as-left') ? [] : [writer.say(`measured.not-yet-left.${flowWay(writer)}`)];
};

const flowTable = (writer: Writer, tests: readonly Timed[]): readonly Block[] =>
  tests.length === 0
    ? []
    : [
        {
          kind: 'table',
          id: 'measured',
          caption: writer.say('table.measured'),
          columns: [
            { head: writer.say('column.state'), align: 'left' },
            { head: writer.say('column.runs'), align: 'left' },
            { head: writer.say('column.flow'), align: 'left', share: 1.2 },
            { head: writer.say('column.difference'), align: 'left', share: 1.6 },
          ],
          rows: tests.map((test) => flowRow(writer, test, tests)),
        },
      ];

/** Watts as measured, beside what the plate says where the job states it. */
const powerSentences = (writer: Writer): readonly string[] =>
  writer.source.found.comparisons.flatMap(({ test, measured, doubt, computed }) => {
    if (test.kind !== 'power' || computed === undefined) return [];
    const isStated = writer.source.document.filter.pump.power !== undefined;
    return [
      isStated
        ? writer.say('measured.power', { measured: power(measured, doubt), stated: power(computed) })
        : writer.say('measured.power.alone', { measured: power(measured, doubt) }),
    ];
  });

/** Flow computed clean against the rating, and against what was timed. */
const ratingSentences = (writer: Writer): readonly string[] => {
  const { model, assessment } = lastState(writer.source);
  const rated = model.filter.pump.ratedFlowM3PerS;
  const clean = assessment.dutyPoint.flowM3PerS;
  const turnover = Number((assessment.turnoverPerS * 3600).toPrecision(2));
  return [
    writer.say(isDrivenByAir(model) ? 'flow.rating.air' : 'flow.rating', {
      rated: flow(rated),
      clean: computedFlow(clean, model),
      share: share(rated > 0 ? clean / rated : 0),
    }),
    writer.say('flow.turnover', { turnover }),
  ];
};

/** What was measured, state by state, and whether each difference is more than the scatter of the runs. */
export const measuredPart = (writer: Writer): readonly Block[] => {
  const tests = timedTests(writer);
  const states = [...new Set(tests.map(({ state }) => state))].map((state) => said(`state.${state}`));
  return [
    heading(writer, 'measured'),
    ...paragraph('measured-how', [
      ...(tests.length === 0
        ? []
        : [writer.say(`measured.how.${flowWay(writer)}`, { states: sayings(states) })]),
      ...creditSentences(writer, tests),
      ...powerSentences(writer),
    ]),
    ...flowTable(writer, tests),
    ...paragraph('flow-and-rating', ratingSentences(writer)),
  ];
};
