import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { type QuoteTotals, quoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { html } from 'hono/html';
import type { Markup } from './page.ts';

/** A quote as people read it: every price with its currency. */
export interface ShownQuote {
  readonly lines: { says: string; price?: string | undefined }[];
  /** Absent where a price is still open. */
  readonly total?: string | undefined;
  readonly validUntil?: string | undefined;
  readonly warranty?: string | undefined;
}

const shownQuote = ({ quote }: JobDocument, totals: QuoteTotals | undefined): ShownQuote | undefined => {
  if (quote === undefined || totals === undefined) return undefined;
  const sum = (value: number): string =>
    printQuantity({ value, dimension: 'money', currency: totals.currency, system: 'metric' });
  const line = (says: string, price: number | undefined) => ({
    says,
    ...(price === undefined ? {} : { price: sum(price) }),
  });
  return {
    lines: [
      ...(quote.labour ?? []).map(({ work }, index) => line(work, totals.labourLines[index])),
      ...(quote.parts ?? []).map(({ part, count }, index) =>
        line(count === undefined || count === 1 ? part : `${count} × ${part}`, totals.partLines[index]),
      ),
    ],
    ...(totals.missing.length === 0 ? { total: sum(totals.total) } : {}),
    ...(quote.validUntil === undefined ? {} : { validUntil: quote.validUntil }),
    ...(quote.warranty === undefined ? {} : { warranty: quote.warranty }),
  };
};

/** The quote of a job, where it has one. */
export const quoteOf = (document: JobDocument): ShownQuote | undefined =>
  shownQuote(document, quoteTotals(document));

/** What is offered, line by line, and the sum. */
export const quoteTable = ({ lines, total }: Pick<ShownQuote, 'lines' | 'total'>): Markup => {
  const rows = lines.map(
    ({ says, price }) => html`<tr><td>${says}</td><td class="amount">${price ?? 'open'}</td></tr>`,
  );
  return html`<table><thead><tr><th scope="col">What</th><th scope="col" class="amount">Price</th></tr></thead>
<tbody>${rows}</tbody>
<tfoot><tr><th scope="row">In all</th><td class="amount">${total ?? 'open'}</td></tr></tfoot></table>`;
};

const approved = ({ approval }: JobDocument): Markup => {
  if (approval === undefined) return html`<p class="soft">Not approved yet.</p>`;
  const { day, by, how } = approval;
  const who = [by === undefined ? undefined : `by ${by}`, how].filter((part) => part !== undefined);
  return html`<p>Approved on ${[day, ...who].join(', ')}.</p>`;
};

/** What was offered for a job, as its technician sees it; nothing where there is no quote. */
export const quoteSection = (document: JobDocument): Markup | '' => {
  const totals = quoteTotals(document);
  const quote = shownQuote(document, totals);
  if (quote === undefined) return '';
  const { validUntil, warranty } = quote;
  const lacking = (totals?.missing ?? []).map(({ says }) => html`<p class="fault">${says}</p>`);
  return html`<section aria-labelledby="quote"><h2 id="quote">Quote</h2>
${quoteTable(quote)}
${lacking}
${validUntil === undefined ? '' : html`<p>It holds until ${validUntil}.</p>`}
${warranty === undefined ? '' : html`<p>Warranty: ${warranty}</p>`}
${approved(document)}
</section>`;
};
