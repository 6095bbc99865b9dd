import { COMPUTED_DOUBT } from '@fettle/engine/assessment/findings/measured.ts';
import type { Block } from '../../content/document.ts';
import { computedFlow, duration, flow, share, volume } from '../quantities.ts';
import { timedFlow } from '../timed.ts';
import { heading, lastState, paragraph, type Writer } from '../writer.ts';
import { CLEAN_AT, jugTimes } from './jugTimes.ts';

/** The clean flow that an owner is to hold his jug against: timed as left, else computed. */
export const ownersFlow = ({ source }: Writer) => {
  const timed = timedFlow(lastState(source), 'as-left');
  if (timed !== undefined)
    return { isTimed: true, flowM3PerS: timed.flowM3PerS, doubtM3PerS: timed.doubtM3PerS };
  const { flowM3PerS } = lastState(source).assessment.dutyPoint;
  return { isTimed: false, flowM3PerS, doubtM3PerS: COMPUTED_DOUBT * flowM3PerS };
};

const basisSentence = (writer: Writer): string => {
  const { isTimed, flowM3PerS, doubtM3PerS } = ownersFlow(writer);
  return isTimed
    ? writer.say('jug.timed', { flow: flow(flowM3PerS, doubtM3PerS) })
    : writer.say('jug.computed', { flow: computedFlow(flowM3PerS) });
};

/** How an owner sees by a jug and a watch that it is time to clean. */
export const jugPart = (writer: Writer): readonly Block[] => {
  const times = jugTimes(ownersFlow(writer));
  if (times.length === 0) return [];
  return [
    heading(writer, 'care-jug'),
    ...paragraph('care-jug', [
      writer.say('jug.how'),
      writer.say('jug.when', { share: share(CLEAN_AT) }),
      basisSentence(writer),
    ]),
    {
      kind: 'table',
      id: 'jug-times',
      caption: writer.say('table.jug'),
      columns: [
        { head: writer.say('column.vessel'), align: 'left', share: 1.4 },
        { head: writer.say('column.clean-time'), align: 'right' },
        { head: writer.say('column.clean-from'), align: 'right' },
      ],
      rows: times.map(({ volumeM3, cleanS, doubtS, cleanFromS }) => [
        writer.fact(volume(volumeM3, 3)),
        writer.fact({ value: cleanS, dimension: 'time', doubt: { kind: 'plus-minus', size: doubtS } }),
        writer.fact(duration(cleanFromS)),
      ]),
    },
    {
      kind: 'blanks',
      id: 'care-jug-blanks',
      labels: [writer.say('blank.own-vessel'), writer.say('blank.own-time')],
    },
  ];
};
