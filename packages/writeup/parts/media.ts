import { bedShapes, chamberVolume } from '@fettle/engine/families/bedShape.ts';
import { chambersInWaterOrder, inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import { isUsedUp } from '@fettle/engine/model/medium.ts';
import { volumesOf } from '@fettle/engine/planning/candidates.ts';
import type { Block, Column } from '../content/document.ts';
import { changeCost } from './changes.ts';
import { cutLength } from './cutLengths.ts';
import { partLines } from './partLines.ts';
import { mass, money, share, volume } from './quantities.ts';
import { heading, lastState, paragraph, type Writer } from './writer.ts';

interface BedRow {
  readonly medium: string;
  readonly chamber: string;
  readonly depthM: number;
  readonly volumeM3: number;
  readonly massKg: number;
  /** Share of the chamber's room. */
  readonly fill: number;
}

const bedRows = (writer: Writer): readonly BedRow[] => {
  const { model, assessment } = lastState(writer.source);
  return chambersInWaterOrder(assessment.layout).flatMap((chamber) => {
    const beds = inWaterOrder(chamber, model.packing[chamber.id] ?? []);
    const shapes = bedShapes(chamber, beds);
    return beds.map((bed, at) => {
      const { volumeM3 } = shapes[at]!;
      return {
        medium: bed.medium,
        chamber: chamber.label,
        depthM: bed.depthM,
        volumeM3,
        massKg: volumeM3 * model.media[bed.medium]!.bulkDensityKgPerM3.value,
        fill: volumeM3 / chamberVolume(chamber),
      };
    });
  });
};

/** What was paid for each medium, spread over its beds by volume; a medium that was there costs nothing. */
const priceOf = (writer: Writer, row: BedRow, rows: readonly BedRow[]): string => {
  const { purchases, currency } = changeCost(writer.source);
  const bought = purchases.find(({ medium }) => medium === row.medium);
  if (bought === undefined) return writer.say('price.there');
  const all = rows
    .filter(({ medium }) => medium === row.medium)
    .reduce((sum, { volumeM3 }) => sum + volumeM3, 0);
  return writer.fact(money((bought.price * row.volumeM3) / all, currency));
};

/** Where nothing is changed nothing is bought: there is no price to tell. */
const hasPrices = ({ source }: Writer): boolean => source.after !== undefined;

const columns = (writer: Writer): readonly Column[] => [
  { head: writer.say('column.order'), align: 'right', share: 0.4 },
  { head: writer.say('column.medium'), align: 'left', share: 1.6 },
  { head: writer.say('column.chamber'), align: 'left', share: 1.2 },
  { head: writer.say('column.depth'), align: 'right', share: 1.3 },
  { head: writer.say('column.volume'), align: 'right', share: 1.5 },
  { head: writer.say('column.mass'), align: 'right', share: 1.3 },
  { head: writer.say('column.fill'), align: 'right', share: 0.8 },
  ...(hasPrices(writer) ? [{ head: writer.say('column.price'), align: 'right' } as const] : []),
];

const rowCells = (writer: Writer, rows: readonly BedRow[]): readonly (readonly string[])[] => {
  const { model } = lastState(writer.source);
  return rows.map((row, at) => [
    String(at + 1),
    writer.say('medium.with-stage', {
      medium: { name: model.media[row.medium]!.name },
      stage: { name: model.media[row.medium]!.stage },
    }),
    writer.name(row.chamber),
    cutLength(writer, row.depthM),
    writer.fact(volume(row.volumeM3, 3)),
    writer.fact(mass(row.massKg)),
    writer.fact(share(row.fill)),
    ...(hasPrices(writer) ? [priceOf(writer, row, rows)] : []),
  ]);
};

const footCells = (writer: Writer, rows: readonly BedRow[]): readonly string[] => {
  const { purchases, currency } = changeCost(writer.source);
  const sum = (of: (row: BedRow) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const bought = purchases.reduce((total, { price }) => total + price, 0);
  const volumes = writer.fact(
    volume(
      sum(({ volumeM3 }) => volumeM3),
      3,
    ),
  );
  const masses = writer.fact(mass(sum(({ massKg }) => massKg)));
  const price = hasPrices(writer) ? [writer.fact(money(bought, currency))] : [];
  return ['', writer.say('media.total'), '', '', volumes, masses, '', ...price];
};

/** Parts that the change needs, and what they come to with the media. */
const partsTable = (writer: Writer): readonly Block[] => {
  const { total, currency } = changeCost(writer.source);
  const lines = partLines(writer);
  if (lines.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'parts-table',
      caption: writer.say('table.parts'),
      columns: [
        { head: writer.say('column.part'), align: 'left', share: 3 },
        { head: writer.say('column.count'), align: 'right' },
        { head: writer.say('column.price'), align: 'right' },
      ],
      rows: lines.map(({ name, amount, price }) => [name, amount, writer.fact(money(price, currency))]),
      foot: [writer.say('media.total-with-parts'), '', writer.fact(money(total, currency))],
    },
  ];
};

/** Media that are used up and were in the filter: fresh ones take their place. */
const renewedSentence = (writer: Writer, rows: readonly BedRow[]): string => {
  const { found, after } = writer.source;
  if (after === undefined) return '';
  const held = volumesOf(found.assessment.layout.chambers, found.model.packing);
  const renewed = [...new Set(rows.map(({ medium }) => medium))].filter(
    (medium) => held.has(medium) && isUsedUp(after.model.media[medium]!),
  );
  const names = renewed.map((medium) => ({ name: after.model.media[medium]!.name }));
  return names.length === 0 ? '' : writer.say('media.renewed', { media: { all: names } });
};

/** The media in the order in which the water meets them. */
export const mediaPart = (writer: Writer): readonly Block[] => {
  const rows = bedRows(writer);
  if (rows.length === 0)
    return [heading(writer, 'media'), ...paragraph('no-media', [writer.say('media.none')])];
  return [
    heading(writer, 'media'),
    {
      kind: 'table',
      id: 'media-table',
      caption: writer.say('table.media'),
      columns: columns(writer),
      rows: rowCells(writer, rows),
      foot: footCells(writer, rows),
    },
    ...paragraph('media-notes', [writer.say('media.dry-mass'), renewedSentence(writer, rows)], 'soft'),
    ...partsTable(writer),
  ];
};
