import { flowDoubtRatio } from '@fettle/engine/assessment/findings/measured.ts';
import { handlingKind } from '@fettle/engine/planning/handling.ts';
import type { Printable } from '@fettle/engine/quantities/printQuantity.ts';
import type { Block } from '../../content/document.ts';
import { flowWay } from '../flowWay.ts';
import { duration, flow, share, volume } from '../quantities.ts';
import { timedFlow } from '../timed.ts';
import { heading, lastState, paragraph, type Writer } from '../writer.ts';
import { bagVolumes } from './bagVolumes.ts';
import { CLEAN_AT, jugTimes } from './jugTimes.ts';

/** The clean flow that an owner is to hold his jug against: timed as left, else computed. */
export const ownersFlow = ({ source }: Writer) => {
  const timed = timedFlow(lastState(source), 'as-left');
  if (timed !== undefined)
    return { isTimed: true, flowM3PerS: timed.flowM3PerS, doubtM3PerS: timed.doubtM3PerS };
  const { assessment, model } = lastState(source);
  const { flowM3PerS } = assessment.dutyPoint;
  return { isTimed: false, flowM3PerS, doubtM3PerS: flowDoubtRatio(model) * flowM3PerS };
};

const basisSentence = (writer: Writer): string => {
  const { isTimed, flowM3PerS, doubtM3PerS } = ownersFlow(writer);
  return isTimed
    ? writer.say('jug.timed', { flow: flow(flowM3PerS, doubtM3PerS) })
    : writer.say(`jug.computed.${flowWay(writer)}`, { flow: flow(flowM3PerS, doubtM3PerS) });
};

/** A time or a volume with its half-width. */
export const doubtful = (value: number, size: number, dimension: 'time' | 'volume'): Printable => ({
  value,
  dimension,
  doubt: { kind: 'plus-minus', size },
});

/** In English a sheet may be read where vessels hold gallons. */
export const markedIn = ({ language }: Pick<Writer, 'language'>): 'litres' | 'both' =>
  language.code === 'en' ? 'both' : 'litres';

const jugRows = (writer: Writer): readonly (readonly string[])[] =>
  jugTimes(ownersFlow(writer), markedIn(writer)).map(({ volumeM3, cleanS, doubtS, cleanFromS }) => [
    writer.fact(volume(volumeM3, 3)),
    writer.fact(doubtful(cleanS, doubtS, 'time')),
    writer.fact(duration(cleanFromS)),
  ]);

const bagRows = (writer: Writer): readonly (readonly string[])[] =>
  bagVolumes(ownersFlow(writer)).map(({ catchS, cleanM3, doubtM3, cleanBelowM3 }) => [
    writer.fact(duration(catchS)),
    writer.fact(doubtful(cleanM3, doubtM3, 'volume')),
    writer.fact(volume(cleanBelowM3)),
  ]);

/** How an owner sees by a vessel and a watch that it is time to clean. */
export const jugPart = (writer: Writer): readonly Block[] => {
  const way = flowWay(writer);
  const rows = way === 'bag' ? bagRows(writer) : jugRows(writer);
  if (rows.length === 0) return [];
  return [
    heading(writer, 'care-jug'),
    ...paragraph('care-jug', [
      writer.say(`jug.how.${way}`),
      writer.say(`jug.when.${way}`, { share: share(CLEAN_AT) }),
      handlingKind(writer.source.found) === 'sump' ? writer.say('jug.sump') : '',
      basisSentence(writer),
    ]),
    {
      kind: 'table',
      id: 'jug-times',
      caption: writer.say(`table.jug.${way}`),
      columns: [
        { head: writer.say(`column.given.${way}`), align: 'left', share: 1.4 },
        { head: writer.say('column.when-clean'), align: 'right' },
        { head: writer.say(`column.clean-at.${way}`), align: 'right' },
      ],
      rows,
    },
    {
      kind: 'blanks',
      id: 'care-jug-blanks',
      labels: [writer.say(`blank.own.${way}`), writer.say(`blank.own-clean.${way}`)],
    },
  ];
};
