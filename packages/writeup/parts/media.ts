import { chambersInWaterOrder, inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import type { Block, Column } from '../content/document.ts';
import { changeCost } from './changes.ts';
import { length, mass, money, share, volume } from './quantities.ts';
import { heading, lastState, paragraph, type Writer } from './writer.ts';

interface BedRow {
  readonly medium: string;
  readonly chamber: string;
  readonly depthM: number;
  readonly volumeM3: number;
  readonly massKg: number;
  /** Share of the chamber's depth. */
  readonly fill: number;
}

const bedRows = (writer: Writer): readonly BedRow[] => {
  const { model, assessment } = lastState(writer.source);
  return chambersInWaterOrder(assessment.layout).flatMap((chamber) =>
    inWaterOrder(chamber, model.packing[chamber.id] ?? []).map((bed) => {
      const volumeM3 = bed.depthM * chamber.areaM2;
      return {
        medium: bed.medium,
        chamber: chamber.label,
        depthM: bed.depthM,
        volumeM3,
        massKg: volumeM3 * model.media[bed.medium]!.bulkDensityKgPerM3.value,
        fill: bed.depthM / chamber.depthM,
      };
    }),
  );
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

const columns = (writer: Writer): readonly Column[] => [
  { head: writer.say('column.order'), align: 'right', share: 0.4 },
  { head: writer.say('column.medium'), align: 'left', share: 1.6 },
  { head: writer.say('column.chamber'), align: 'left', share: 1.2 },
  { head: writer.say('column.depth'), align: 'right', share: 1.3 },
  { head: writer.say('column.volume'), align: 'right', share: 1.5 },
  { head: writer.say('column.mass'), align: 'right', share: 1.3 },
  { head: writer.say('column.fill'), align: 'right', share: 0.8 },
  { head: writer.say('column.price'), align: 'right' },
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
    writer.fact(length(row.depthM)),
    writer.fact(volume(row.volumeM3, 3)),
    writer.fact(mass(row.massKg)),
    writer.fact(share(row.fill)),
    priceOf(writer, row, rows),
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
  return ['', writer.say('media.total'), '', '', volumes, masses, '', writer.fact(money(bought, currency))];
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
    ...paragraph('media-notes', [writer.say('media.dry-mass')], 'soft'),
  ];
};
