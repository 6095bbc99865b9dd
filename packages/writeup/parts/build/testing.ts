import { powerW } from '@fettle/engine/assessment/cost.ts';
import { bestPowerTest } from '@fettle/engine/model/benchTests.ts';
import { type HandlingKind, handlingKind, isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import type { Printable } from '@fettle/engine/quantities/printQuantity.ts';
import type { Block } from '../../content/document.ts';
import { cautionBlocks } from '../cautions.ts';
import { measureNextSaid } from '../doubt.ts';
import { flowWay } from '../flowWay.ts';
import { computedFlow, duration, flow, power, volume } from '../quantities.ts';
import { timedFlow } from '../timed.ts';
import { lastState, paragraph, type Writer } from '../writer.ts';
import { isColumn } from './handOrder.ts';
import type { Stage } from './stage.ts';

export const closeStage = (writer: Writer): Stage => ({
  id: 'build-close',
  before: cautionBlocks(writer, 'build', ['seal', 'overflow']),
  steps: [writer.say(`step.close.${handlingKind(writer.source.found)}`)],
});

const blanks = (id: string, labels: readonly string[]): Block => ({ kind: 'blanks', id, labels });

/** How each kind is stood up for the leak test; what works under water has none. */
const leakPlaces: Partial<Readonly<Record<HandlingKind, string>>> = {
  canister: 'stand',
  sump: 'fill',
  hanging: 'hang',
};

/** On dry paper, at the height of installation. */
export const leakStage = (writer: Writer): Stage => {
  const kind = handlingKind(writer.source.found);
  const place = leakPlaces[kind];
  if (place === undefined)
    return {
      id: 'build-leak',
      before: paragraph('build-no-leak', [
        writer.say(isDrivenByAir(writer.source.found.model) ? 'build.leak.none.air' : 'build.leak.none'),
      ]),
      steps: [],
    };
  const isClosed = kind === 'canister';
  return {
    id: 'build-leak',
    steps: [
      writer.say(`step.leak.${place}`),
      writer.say(kind === 'sump' ? 'step.leak.wait' : 'step.leak.run'),
      ...(isClosed ? [writer.say('step.leak.night')] : []),
      writer.say('step.leak.fails'),
    ],
    after: [
      blanks('build-leak-blanks', [
        writer.say(kind === 'sump' ? 'blank.leak-wait' : 'blank.leak-run'),
        ...(isClosed ? [writer.say('blank.leak-night')] : []),
      ]),
    ],
  };
};

/** The vessel of the bench tests: the one as left, else the one as found. */
const vesselOf = ({ source }: Writer): number | undefined =>
  (timedFlow(lastState(source), 'as-left') ?? timedFlow(source.found, 'as-found'))?.filling?.volumeM3;

const flowSteps = (writer: Writer): readonly string[] => {
  const vesselM3 = vesselOf(writer);
  const way = flowWay(writer);
  const left = timedFlow(lastState(writer.source), 'as-left');
  const { assessment, model } = lastState(writer.source);
  const clean = assessment.dutyPoint.flowM3PerS;
  const expected =
    vesselM3 === undefined || clean <= 0
      ? []
      : [
          writer.say(`step.check.expected.${way}`, {
            flow: computedFlow(clean, model),
            vessel: volume(vesselM3),
            time: duration(vesselM3 / clean),
          }),
        ];
  return [
    writer.say(`step.check.flow.${vesselM3 === undefined ? 'new' : 'again'}.${way}`),
    ...(left === undefined
      ? expected
      : [writer.say('step.check.flow.left', { flow: flow(left.flowM3PerS, left.doubtM3PerS) })]),
  ];
};

const runBlanks = (writer: Writer): Block => {
  const vesselM3 = flowWay(writer) === 'bag' ? undefined : vesselOf(writer);
  const runs = [1, 2, 3].map((number) =>
    vesselM3 === undefined
      ? writer.say('blank.run.plain', { number })
      : writer.say('blank.run', { number, vessel: volume(vesselM3) }),
  );
  const others = ['watts', 'noise', 'tested-by'].map((name) => writer.say(`blank.${name}`));
  return blanks('build-run-blanks', [...runs, ...others]);
};

/** As it was read at the plug, with its doubt; else as the plate has it. */
const expectedPower = ({ source: { found } }: Writer): Printable => {
  const read = bestPowerTest(found.model);
  const all = powerW(found.model);
  // A second pump's plate stands beside what was read at the plug of the first.
  return read === undefined || all !== read.powerW
    ? { ...power(all), digits: 2 }
    : power(read.powerW, read.doubtW);
};

/** How it is filled and started; a column fills from below, and cannot be tipped. */
const startStep = ({ source: { found }, say }: Writer): string => {
  const kind = handlingKind(found);
  return say(isColumn(found) ? `step.start.${kind}.column` : `step.start.${kind}`);
};

/** What else would be worth measuring then; the flow is timed anyhow. */
const measureNextStep = (writer: Writer): readonly string[] => {
  const how = measureNextSaid(writer, (kind) => kind !== 'time-flow');
  return how === undefined ? [] : [writer.say('step.check.measure-next', { how })];
};

/** Running again: the same tests as before, with what is expected of them. */
export const runStage = (writer: Writer): Stage => ({
  id: 'build-run',
  before: cautionBlocks(writer, 'build', ['siphon-break']),
  steps: [
    startStep(writer),
    ...flowSteps(writer),
    writer.say('step.check.watts', {
      power: expectedPower(writer),
    }),
    writer.say(isDrivenByAir(writer.source.found.model) ? 'step.check.noise.air' : 'step.check.noise'),
    writer.say(`step.check.surface.${handlingKind(writer.source.found)}`),
    ...measureNextStep(writer),
  ],
  after: [runBlanks(writer)],
});

export const hygieneStage = (writer: Writer): Stage => ({
  id: 'build-hygiene',
  before: cautionBlocks(writer, 'build', ['disinfect']),
  steps: [],
});
