import { handlingKind, isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import { permit } from '@fettle/job/toModel/alterations.ts';
import { cautionBlocks } from '../cautions.ts';
import { madeAlterations } from '../changes.ts';
import { flowWay } from '../flowWay.ts';
import { flow, length, power, volume } from '../quantities.ts';
import { timedFlow } from '../timed.ts';
import type { Writer } from '../writer.ts';
import type { Stage } from './stage.ts';

/** Before anything is touched: photographs, and the flow as found, without which nothing can be compared. */
export const beforeStage = (writer: Writer): Stage => {
  const { found } = writer.source;
  const way = flowWay(writer);
  const timed = timedFlow(found, 'as-found');
  const watts = found.model.tests.find((test) => test.kind === 'power');
  return {
    id: 'build-before',
    before: cautionBlocks(writer, 'build', ['mains', 'cable', 'air-line']),
    steps: [
      writer.say(`step.photograph.${handlingKind(found)}`),
      timed === undefined
        ? writer.say(`step.flow.time.${way}`)
        : writer.say(`step.flow.on-record.${way}`, {
            flow: flow(timed.flowM3PerS, timed.doubtM3PerS),
            vessel: volume(timed.filling?.volumeM3 ?? 0),
          }),
      watts?.kind === 'power'
        ? writer.say('step.watts.on-record', { power: power(watts.powerW, watts.doubtW) })
        : writer.say('step.watts.read'),
    ],
  };
};

/** What comes out and is kept wet: of what is built in only a part, and no order where there is one bed. */
const unpackStep = ({ source: { found }, say }: Writer): string => {
  if (handlingKind(found) === 'built-in') return say('step.unpack.built-in');
  return say(found.assessment.beds.length === 1 ? 'step.unpack.one' : 'step.unpack');
};

/** How media are cleaned; those that the water keeps moving are hardly touched, and what is built in stays where it is. */
const cleanMediaSteps = ({ source: { found }, say }: Writer): readonly string[] => {
  if (handlingKind(found) === 'built-in') return [say('step.clean.media.built-in')];
  const packed = found.assessment.layout.chambers.filter(
    ({ id }) => (found.model.packing[id] ?? []).length > 0,
  );
  return [
    ...(packed.some(({ moved }) => moved === undefined) ? [say('step.clean.media')] : []),
    ...(packed.some(({ moved }) => moved !== undefined) ? [say('step.clean.media.moved')] : []),
  ];
};

export const openStage = (writer: Writer): Stage => {
  const kind = handlingKind(writer.source.found);
  const isClosed = kind === 'canister';
  return {
    id: 'build-open',
    before: cautionBlocks(writer, 'build', ['siphon', 'sump', 'weight', 'skin']),
    steps: [
      writer.say(`step.open.${kind}`),
      unpackStep(writer),
      ...(isDrivenByAir(writer.source.found.model)
        ? [writer.say('step.clean.lift')]
        : [
            writer.say('step.clean.housing'),
            writer.say(isClosed ? 'step.clean.hoses' : 'step.clean.intake'),
          ]),
      ...cleanMediaSteps(writer),
    ],
  };
};

/** What is done to the hardware; nothing where nothing is altered. */
export const alterStage = (writer: Writer): Stage => ({
  id: 'build-alter',
  steps: madeAlterations(writer.source)
    .map(permit)
    .map(({ id, settings }) =>
      writer.say(`step.alter.${id}`, {
        size: length(settings.boreM ?? settings.lengthM ?? settings.depthM ?? 0),
      }),
    ),
});
