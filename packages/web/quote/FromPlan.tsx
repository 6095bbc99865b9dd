import type { OwnBooks } from '@fettle/job/books/fill.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { useMemo, useState } from 'react';
import { today } from '../app/today.ts';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { openPartsOfPlan, partsOfPlan } from './partsOfPlan.ts';
import { takingPlanIntoQuote, takingReckonedPrices } from './quoteEdits.ts';
import { useOwnBooks, useOwnBooksWhole } from './useOwnBooks.ts';

interface FromPlanProps {
  readonly work: JobAtWork;
  readonly document: JobDocument;
}

const taken = (parts: number, isWithBooks: boolean): string => {
  const lines =
    parts === 0
      ? 'The plan needs nothing that has to be bought.'
      : 'What the plan needs stands among the parts, in the place of what an earlier plan needed. Prices are those that the job or your shelf states.';
  return isWithBooks
    ? lines
    : `${lines} Shelf and settings could not be reached: their prices, and how long your quotes hold, are not in it.`;
};

/** Prices that the plan was reckoned with and nobody has stated: they count in a quote only once somebody says so. */
function OpenPrices({ work, document }: FromPlanProps) {
  const books = useOwnBooks();
  const open = useMemo(
    () => openPartsOfPlan(document, books, printer(work.system)),
    [document, books, work.system],
  );
  if (open.length === 0) return null;
  return (
    <div className="caution">
      <p>
        The plan was reckoned with prices of the catalogue, which are placeholders, for what neither the job
        nor your shelf prices: {open.map(({ part, price }) => `${part} ${price}`).join('; ')}.
      </p>
      <button type="button" onClick={() => work.session.edit(takingReckonedPrices(open))}>
        Quote these prices
      </button>
    </div>
  );
}

/** Whether the quote still has the lines of a plan that needs other things by now. */
const isOutdated = (document: JobDocument, books: OwnBooks, work: JobAtWork): boolean => {
  const quoted = (document.quote?.parts ?? []).filter(({ from }) => from === 'plan');
  if (quoted.length === 0) return false;
  const needed = new Set(partsOfPlan(document, books, printer(work.system)).map(({ part }) => part));
  return quoted.some(({ part }) => !needed.has(part));
};

/** Takes what the plan needs into the quote, and says what came of it. */
export function FromPlan({ work, document }: FromPlanProps) {
  const shown = useOwnBooks();
  const wholeBooks = useOwnBooksWhole();
  const [told, tell] = useState('');
  const [isTaking, setTaking] = useState(false);
  if (document.planned === undefined)
    return <p className="soft">No re-pack is planned yet; one that is planned can be taken in here.</p>;
  const put = (books: OwnBooks, isWithBooks: boolean): void => {
    const parts = partsOfPlan(document, books, printer(work.system));
    work.session.edit(takingPlanIntoQuote({ parts, today: today(), days: books.settings.quoteDays }));
    tell(taken(parts.length, isWithBooks));
  };
  const take = (): void => {
    setTaking(true);
    wholeBooks()
      .then(
        (books) => put(books, true),
        () => put(shown, false),
      )
      .finally(() => setTaking(false));
  };
  return (
    <>
      {isOutdated(document, shown, work) ? (
        <p className="marked">
          The plan has changed since it was taken into the quote: take it again to replace its lines.
        </p>
      ) : null}
      <button type="button" disabled={isTaking} onClick={take}>
        Take the plan into the quote
      </button>
      <p role="status" className="told">
        {isTaking ? 'Waiting for the prices of your shelf…' : told}
      </p>
      <OpenPrices work={work} document={document} />
    </>
  );
}
