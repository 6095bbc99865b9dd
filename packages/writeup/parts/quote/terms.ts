import { acceptedQuantity } from '@fettle/job/schema/fields.ts';
import { approvalSchema } from '@fettle/job/schema/quote.ts';
import type { Block } from '../../content/document.ts';
import { money } from '../quantities.ts';
import { dayIn, ended, heading, paragraph, type Writer } from '../writer.ts';
import { totalsOf } from './lines.ts';

/** How long the quote holds, and what an alteration means for warranties. */
export const termsPart = (writer: Writer): readonly Block[] => {
  const { quote } = writer.source.document;
  const until = quote?.validUntil;
  return [
    heading(writer, 'quote-terms'),
    ...paragraph('quote-validity', [
      quote === undefined
        ? ''
        : until === undefined
          ? writer.say('quote.no-day')
          : writer.say('quote.until', { day: dayIn(writer, until) }),
      quote?.warranty === undefined
        ? writer.say('quote.no-warranty')
        : writer.say('quote.warranty', { warranty: ended(quote.warranty) }),
    ]),
    ...paragraph('quote-maker', [writer.say('quote.maker')]),
    heading(writer, 'quote-excluded', 3),
    {
      kind: 'list',
      id: 'quote-excluded-list',
      items: ['lines', 'wiring', 'animals', 'used-up'].map((what) => writer.say(`excluded.${what}`)),
    },
  ];
};

const approvalSentences = (writer: Writer): readonly string[] => {
  const { approval } = writer.source.document;
  if (approval === undefined) return [];
  const { by, how, amount, notes } = approval;
  const day = dayIn(writer, approval.day);
  const agreed =
    amount === undefined ? undefined : acceptedQuantity(approvalSchema.shape.amount, amount).value;
  const totals = totalsOf(writer);
  const isOther = agreed !== undefined && totals !== undefined && Math.abs(agreed - totals.total) > 0.004;
  return [
    by === undefined ? writer.say('quote.approved', { day }) : writer.say('quote.approved.by', { day, by }),
    how === undefined ? '' : writer.say('quote.approved.how', { how: how.replace(/[.]$/, '') }),
    agreed === undefined
      ? ''
      : writer.say('quote.approved.amount', {
          amount: money(agreed, writer.source.found.model.money.currency),
        }),
    isOther ? writer.say('quote.approved.other') : '',
    notes === undefined ? '' : writer.say('quote.notes', { notes: ended(notes) }),
  ];
};

/** The approval that the job holds, or room for one. */
export const approvalPart = (writer: Writer): readonly Block[] => {
  const { approval } = writer.source.document;
  if (approval !== undefined)
    return [heading(writer, 'quote-approval'), ...paragraph('quote-approved', approvalSentences(writer))];
  if (totalsOf(writer) === undefined) return [];
  return [
    heading(writer, 'quote-approval'),
    ...paragraph('quote-to-approve', [writer.say('quote.to-approve')]),
    {
      kind: 'blanks',
      id: 'quote-approval-blanks',
      labels: ['name', 'day', 'signature'].map((what) => writer.say(`blank.${what}`)),
    },
  ];
};
