import type { Document } from '../content/document.ts';
import { changeCost } from '../parts/changes.ts';
import { money } from '../parts/quantities.ts';
import { quoteLinesPart, totalsOf } from '../parts/quote/lines.ts';
import { optionsPart } from '../parts/quote/options.ts';
import { approvalPart, termsPart } from '../parts/quote/terms.ts';
import { familyName, filterName } from '../parts/summary.ts';
import { dayIn, newWriter, paragraph, tense, type Writer } from '../parts/writer.ts';
import { documentOf } from './frame.ts';

const leadSentence = (writer: Writer): string => {
  const totals = totalsOf(writer);
  if (totals === undefined) {
    const { total, currency } = changeCost(writer.source);
    return writer.say(`quote.lead.none.${tense(writer.source)}`, { cost: money(total, currency) });
  }
  return writer.say(totals.missing.length === 0 ? 'quote.lead.total' : 'quote.lead.open', {
    total: money(totals.total, totals.currency),
  });
};

/** The job as it was when it was quoted: what was planned then, and not what was built of it. */
const asQuoted = (writer: Writer): Writer => {
  const { planned } = writer.source;
  return planned === undefined
    ? writer
    : newWriter({ ...writer.source, after: { ...planned, state: 'planned' } }, writer.language);
};

/** What the work costs beside what it does, what it leaves out, and room to agree to it. */
export const quoteDocument = (later: Writer): Document => {
  const writer = asQuoted(later);
  const { filter, quote } = writer.source.document;
  const family = { name: familyName(filter.family) };
  return documentOf(writer, {
    id: 'quote',
    title: writer.say('quote.title', { filter: filterName(writer) }),
    subtitle:
      quote?.day === undefined
        ? writer.say('quote.subtitle', { family })
        : writer.say('quote.subtitle.of', { family, day: dayIn(writer, quote.day) }),
    description: writer.say('quote.description', { filter: filterName(writer) }),
    blocks: [
      ...paragraph('quote-lead', [leadSentence(writer)], 'lead'),
      ...quoteLinesPart(writer),
      ...optionsPart(writer),
      ...termsPart(writer),
      ...approvalPart(writer),
    ],
  });
};
