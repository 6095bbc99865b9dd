import type { QuoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { missingInWords, moneyInWords, pricedLines } from './quoteWords.ts';

interface SumProps {
  readonly document: JobDocument;
  readonly totals: QuoteTotals;
}

/** What the quote comes to, line by line, and what is still open. */
export function QuoteSum({ document, totals }: SumProps) {
  const { currency, total, missing } = totals;
  const price = (value: number | undefined): string =>
    value === undefined ? 'open' : moneyInWords(value, currency);
  return (
    <>
      <table className="figures quotesum">
        <caption>
          {missing.length === 0
            ? 'Each line is rounded to the hundredth.'
            : 'Without what is open: it is not whole yet.'}
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Price</th>
          </tr>
        </thead>
        <tbody>
          {pricedLines(document, totals).map((line, place) => (
            // Two lines may say the same.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <tr key={place}>
              <th scope="row">{line.says}</th>
              <td>{price(line.price)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">In all</th>
            <td>
              <strong>{price(total)}</strong>
            </td>
          </tr>
        </tfoot>
      </table>
      {missing.length === 0 ? null : (
        <ul className="lines fault">
          {missing.map((each) => (
            <li key={each.path}>{missingInWords(document, each)}</li>
          ))}
        </ul>
      )}
    </>
  );
}
