import { SOLD_BY_M3, volumesOf } from '@fettle/engine/planning/candidates.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Block } from '../../content/document.ts';
import { cutList } from '../../cuts/cutList.ts';
import { changeCost, goodMedia } from '../changes.ts';
import { partLines } from '../partLines.ts';
import { money, volume } from '../quantities.ts';
import { heading, paragraph, type Writer } from '../writer.ts';

/** Whether a job states the price of a medium itself. */
const statesMedium = ({ money: own, shelf, media }: JobDocument, id: string): boolean =>
  own?.media?.[id] !== undefined ||
  (shelf ?? []).some((item) => typeof item === 'object' && item.medium === id && item.price !== undefined) ||
  media?.[id]?.price !== undefined;

const priceText = (writer: Writer, price: number, isStated: boolean): string => {
  const text = writer.fact(money(price, changeCost(writer.source).currency));
  return isStated ? text : writer.say('build.price.placeholder', { price: text });
};

const mediaRows = (writer: Writer): readonly (readonly string[])[] => {
  const { after, document } = writer.source;
  if (after === undefined) return [];
  const held = goodMedia(writer.source);
  const wanted = volumesOf(after.assessment.layout.chambers, after.model.packing);
  return changeCost(writer.source).purchases.map(({ medium, volumeM3, price }) => [
    writer.name(after.model.media[medium]!.name),
    writer.fact(volume((wanted.get(medium) ?? 0) - (held.get(medium) ?? 0))),
    writer.fact(volume(volumeM3)),
    priceText(writer, price, statesMedium(document, medium)),
  ]);
};

const partRows = (writer: Writer): readonly (readonly string[])[] =>
  partLines(writer).map(({ name, amount, price, isStated }) => [
    name,
    amount,
    amount,
    priceText(writer, price, isStated),
  ]);

/**
 * Of each medium that is bought and cut, what its pieces come to as they are cut: amounts are counted by volume, and a
 * piece that was in the filter may be too small or of another shape for what is cut now.
 */
const cutSentences = (writer: Writer): readonly string[] => {
  const { after } = writer.source;
  const pads = cutList(writer.source).flatMap((cut) => (cut.kind === 'pad' ? [cut] : []));
  const held = goodMedia(writer.source);
  return changeCost(writer.source).purchases.flatMap(({ medium }) => {
    const pieces = pads.filter((pad) => pad.medium.id === medium);
    if (pieces.length === 0 || after === undefined) return [];
    const cutM3 = pieces.reduce(
      (sum, { acrossM, otherM, thicknessM, count }) => sum + acrossM * otherM * thicknessM * count,
      0,
    );
    const there = held.get(medium) ?? 0;
    return [
      writer.say(there > 0 ? 'build.parts.cut-and-there' : 'build.parts.cut', {
        medium: { name: after.model.media[medium]!.name },
        cut: volume(cutM3),
        there: volume(there),
      }),
    ];
  });
};

/** What is bought for the change, each with how much of it is needed, how much is sold, and its price. */
export const toGetPart = (writer: Writer): readonly Block[] => {
  const { total, currency, purchases } = changeCost(writer.source);
  const rows = [...mediaRows(writer), ...partRows(writer)];
  if (rows.length === 0)
    return [
      heading(writer, 'build-parts'),
      ...paragraph('build-nothing-to-get', [writer.say('build.parts.none')]),
    ];
  const isAssumed = rows.some((row) => row.at(-1)!.endsWith('*'));
  return [
    heading(writer, 'build-parts'),
    {
      kind: 'table',
      id: 'parts-to-get',
      caption: writer.say('table.parts-to-get'),
      columns: [
        { head: writer.say('column.what'), align: 'left', share: 2.4 },
        { head: writer.say('column.needed'), align: 'right', share: 1.2 },
        { head: writer.say('column.to-get'), align: 'right', share: 1.2 },
        { head: writer.say('column.price'), align: 'right' },
      ],
      rows,
      foot: [writer.say('media.total'), '', '', writer.fact(money(total, currency))],
    },
    ...paragraph(
      'build-parts-notes',
      [
        purchases.length === 0 ? '' : writer.say('build.parts.sold', { step: volume(SOLD_BY_M3) }),
        ...cutSentences(writer),
        isAssumed ? writer.say('build.parts.placeholder') : '',
      ],
      'soft',
    ),
  ];
};
