import { quoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import { readDocument } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { useMemo } from 'react';
import { today } from '../../../app/today.ts';
import { ProblemList } from '../../../findings/ProblemList.tsx';
import { Field } from '../../../forms/Field.tsx';
import { Fields } from '../../../forms/Fields.tsx';
import { Agreement } from '../../../quote/Agreement.tsx';
import { FromPlan } from '../../../quote/FromPlan.tsx';
import { QuoteLines } from '../../../quote/QuoteLines.tsx';
import { QuoteSum } from '../../../quote/QuoteSum.tsx';
import { useOwnBooks } from '../../../quote/useOwnBooks.ts';
import type { JobAtWork } from '../jobAtWork.ts';

const labourFields = [
  { field: 'work', label: 'What is done' },
  { field: 'time', label: 'How long it takes' },
  { field: 'price', label: 'Its price', how: 'Left empty, its time at the price of an hour.' },
];
const partFields = [
  { field: 'part', label: 'What it is' },
  { field: 'count', label: 'How many', how: 'Left empty, one.' },
  { field: 'price', label: 'Price of one' },
];

/** The job as it reads, or nothing while something in it is wrong. */
const useRead = (document: unknown): JobDocument | undefined =>
  useMemo(() => {
    const reading = readDocument(document);
    return reading.ok ? reading.document : undefined;
  }, [document]);

function Rate({ work }: { readonly work: JobAtWork }) {
  const { settings } = useOwnBooks();
  const isStated = Object(work.state.document.money).labour !== undefined;
  const { labour } = settings;
  return (
    <>
      <div className="fields">
        <Field
          path={['money', 'labour']}
          label="Price of an hour of work"
          how="A quote is reckoned with a price that is written, never with one that is assumed."
        />
        <Field path={['money', 'tariff']} label="Price of electricity" />
        <Field
          path={['money', 'currency']}
          label="Currency of this job"
          how="Its three letters; that of its prices where empty."
        />
      </div>
      {isStated || labour === undefined ? null : (
        <button
          type="button"
          onClick={() =>
            work.session.edit({
              says: 'price of an hour from the settings',
              recipe: (draft) => {
                draft.money = { ...Object(draft.money), labour };
              },
            })
          }
        >
          Take {String(labour)} from the settings
        </button>
      )}
    </>
  );
}

/** What the work is offered for, by when it is promised, and whether the owner agrees. */
export function Quote({ work }: { readonly work: JobAtWork }) {
  const { document, number } = work.state;
  const read = useRead(document);
  const totals = read === undefined ? undefined : quoteTotals(read);
  const { problems } = work.figures;
  return (
    <div className="part">
      <h2>Quote</h2>
      {problems.length === 0 ? null : <ProblemList number={number} document={document} problems={problems} />}
      {read === undefined ? null : <FromPlan work={work} document={read} />}
      <h3>What is offered</h3>
      <Rate work={work} />
      <QuoteLines list="labour" title="Work" called="work" fields={labourFields} />
      <QuoteLines list="parts" title="Parts and media" called="part" fields={partFields} />
      {read === undefined || totals === undefined ? null : <QuoteSum document={read} totals={totals} />}
      <h3>Until when it holds, and when it is ready</h3>
      <div className="fields">
        <Field path={['quote', 'day']} label="Day of the quote" />
        <Field path={['quote', 'validUntil']} label="It holds until" />
        <Field path={['job', 'promised']} label="Promised back on" />
        <Field path={['quote', 'warranty']} label="What is warranted, and how long" />
        <Field path={['quote', 'notes']} label="Notes on the quote" />
      </div>
      <h3>The owner agrees</h3>
      <Agreement totals={totals} today={today()} />
      <h3>What may be published</h3>
      <p className="soft">What is not said here is not consented to.</p>
      <Fields path={['consent']} />
    </div>
  );
}
