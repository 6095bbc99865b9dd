import { type QuoteTotals, quoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import { acceptedQuantity } from '@fettle/job/schema/fields.ts';
import { labourLineSchema } from '@fettle/job/schema/quote.ts';
import type { Block } from '../../content/document.ts';
import { money } from '../quantities.ts';
import { ended, heading, paragraph, type Writer } from '../writer.ts';

/** What the quote of the job comes to; undefined where nothing is quoted, in whole or in part. */
export const totalsOf = ({ source }: Writer): QuoteTotals | undefined => {
  const totals = quoteTotals(source.document);
  if (totals === undefined || totals.labourLines.length + totals.partLines.length === 0) return undefined;
  return totals;
};

const priceText = (writer: Writer, price: number | undefined, { currency }: QuoteTotals): string =>
  price === undefined ? writer.say('quote.price.open') : writer.fact(money(price, currency));

const labourTable = (writer: Writer, totals: QuoteTotals): readonly Block[] => {
  const lines = writer.source.document.quote?.labour ?? [];
  if (lines.length === 0) return [];
  const timeText = (time: string | undefined): string =>
    time === undefined
      ? '–'
      : writer.fact({
          value: acceptedQuantity(labourLineSchema.shape.time, time).value,
          dimension: 'time',
          digits: 2,
        });
  return [
    {
      kind: 'table',
      id: 'quote-labour',
      caption: writer.say('table.quote-labour'),
      columns: [
        { head: writer.say('column.work'), align: 'left', share: 4 },
        { head: writer.say('column.time'), align: 'right' },
        { head: writer.say('column.price'), align: 'right' },
      ],
      rows: lines.map(({ work, time }, at) => [
        work,
        timeText(time as string | undefined),
        priceText(writer, totals.labourLines[at], totals),
      ]),
      foot: [writer.say('media.total'), '', priceText(writer, totals.labour, totals)],
    },
  ];
};

/** A part by its own words, or by its name where it is the short name of a part that alterations need. */
const partName = ({ language }: Writer, part: string): string => {
  const own = language.sentences[`part.${part}`];
  return own === undefined || own.includes('{') ? part : own;
};

const partsTable = (writer: Writer, totals: QuoteTotals): readonly Block[] => {
  const lines = writer.source.document.quote?.parts ?? [];
  if (lines.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'quote-parts',
      caption: writer.say('table.quote-parts'),
      columns: [
        { head: writer.say('column.part'), align: 'left', share: 4 },
        { head: writer.say('column.count'), align: 'right', share: 0.5 },
        { head: writer.say('column.each'), align: 'right' },
        { head: writer.say('column.price'), align: 'right' },
      ],
      rows: lines.map(({ part, count = 1 }, at) => {
        const price = totals.partLines[at];
        const each = price === undefined ? undefined : price / count;
        return [
          partName(writer, part),
          String(count),
          priceText(writer, each, totals),
          priceText(writer, price, totals),
        ];
      }),
      foot: [writer.say('media.total'), '', '', priceText(writer, totals.parts, totals)],
    },
  ];
};

/** Lines without a price, by their names. */
const openLines = (writer: Writer, totals: QuoteTotals): readonly string[] => {
  const { labour = [], parts = [] } = writer.source.document.quote ?? {};
  return [
    ...labour.flatMap(({ work }, at) => (totals.labourLines[at] === undefined ? [work] : [])),
    ...parts.flatMap(({ part }, at) => (totals.partLines[at] === undefined ? [partName(writer, part)] : [])),
  ];
};

/** Every line that is offered with its price, and what they come to; a price that is missing is named. */
export const quoteLinesPart = (writer: Writer): readonly Block[] => {
  const totals = totalsOf(writer);
  if (totals === undefined) return [];
  const open = openLines(writer, totals);
  const { notes } = writer.source.document.quote ?? {};
  return [
    heading(writer, 'quote-lines'),
    ...labourTable(writer, totals),
    ...partsTable(writer, totals),
    ...paragraph(
      'quote-total',
      [
        writer.say(totals.missing.length === 0 ? 'quote.total' : 'quote.total.open', {
          total: money(totals.total, totals.currency),
        }),
      ],
      'lead',
    ),
    ...paragraph('quote-missing', [
      open.length === 0 ? '' : writer.say('quote.missing', { lines: open.join('; ') }),
    ]),
    ...paragraph('quote-notes', [
      notes === undefined ? '' : writer.say('quote.notes', { notes: ended(notes) }),
    ]),
  ];
};
