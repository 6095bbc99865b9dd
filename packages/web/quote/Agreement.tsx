import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import type { QuoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import { Field } from '../forms/Field.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { putting, valueAt } from '../forms/places.ts';
import { approving } from './quoteEdits.ts';
import { moneyInWords, writtenMoney } from './quoteWords.ts';

interface AgreementProps {
  /** Undefined where there is no quote, or it does not read. */
  readonly totals: QuoteTotals | undefined;
  /** ISO. */
  readonly today: string;
}

/** What was agreed to, where the quote comes to something else by now. */
function Difference({ totals }: Pick<AgreementProps, 'totals'>) {
  const agreed = valueAt(useForm().document, ['approval', 'amount']);
  if (totals === undefined || typeof agreed !== 'string') return null;
  const reading = readQuantity(agreed, 'money');
  if (!reading.ok || Math.abs(reading.value - totals.total) < 0.005) return null;
  return (
    <p className="fault" role="status">
      The quote comes to {moneyInWords(totals.total, totals.currency)} now; the owner agreed to {agreed}.
    </p>
  );
}

/** Whether the owner agrees: one button, then its particulars. */
export function Agreement({ totals, today }: AgreementProps) {
  const { document, edit } = useForm();
  const isAgreed = valueAt(document, ['approval']) !== undefined;
  const amount = totals === undefined || totals.missing.length > 0 ? undefined : totals.total;
  const agree = (): void =>
    edit(
      approving({
        today,
        ...(totals === undefined || amount === undefined
          ? {}
          : { amount: writtenMoney(amount, totals.currency) }),
      }),
    );
  if (!isAgreed)
    return (
      <>
        <p>Not agreed to yet.</p>
        {amount === undefined ? (
          <p className="marked">
            There is no sum to agree to yet: nothing is quoted, or prices are still open.
          </p>
        ) : null}
        <button type="button" onClick={agree}>
          The owner agrees, today
        </button>
      </>
    );
  return (
    <>
      <Difference totals={totals} />
      <div className="fields">
        <Field path={['approval', 'day']} label="Agreed on" />
        <Field path={['approval', 'by']} label="Who agreed" />
        <Field path={['approval', 'how']} label="How it was said" />
        <Field path={['approval', 'amount']} label="Agreed to in all" />
        <Field path={['approval', 'notes']} label="Notes on the agreement" />
      </div>
      <button
        type="button"
        className="quiet"
        onClick={() => edit({ says: 'the owner does not agree', recipe: putting(['approval'], undefined) })}
      >
        Not agreed after all
      </button>
    </>
  );
}
