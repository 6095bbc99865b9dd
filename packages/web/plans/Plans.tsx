import { COMPARISON_DAY } from '@fettle/engine/assessment/assess.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { favours } from '@fettle/engine/planning/plan.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { type FormEvent, useState } from 'react';
import { moneyInWords } from '../quote/quoteWords.ts';
import type { JobSession } from '../session/jobSession.ts';
import { Outdated } from './Outdated.tsx';
import { PlansFound } from './PlansFound.tsx';
import { type Search, usePlans } from './usePlans.ts';

interface PlansProps {
  readonly session: JobSession;
  readonly model: Model;
}

/** A budget as typed: `15`, `15 GBP`, or nothing for what costs nothing. */
const budgetIn = (typed: string, currency: string): number | undefined | 'wrong' => {
  if (typed.trim() === '') return undefined;
  const plain = Number(typed);
  if (Number.isFinite(plain)) return plain >= 0 ? plain : 'wrong';
  const reading = readQuantity(typed, 'money', { least: 0 });
  return reading.ok && (reading.currency ?? currency) === currency ? reading.value : 'wrong';
};

function UnderWay({
  search,
  onCancel,
}: {
  search: Extract<Search, { is: 'under way' }>;
  onCancel: () => void;
}) {
  const { progress } = search;
  return (
    <div role="status" className="search">
      <progress {...(progress === undefined ? {} : { value: progress.assessed, max: progress.planned })} />
      <span>
        {progress === undefined
          ? 'The search begins…'
          : `${progress.assessed.toLocaleString()} of ${progress.planned.toLocaleString()} candidates assessed`}
      </span>
      <button type="button" onClick={onCancel}>
        Cancel
      </button>
    </div>
  );
}

/** Asks for plans within a budget, and shows those that were found. */
export function Plans({ session, model }: PlansProps) {
  const { search, ask, cancel } = usePlans(session);
  const { currency } = model.money;
  const asked = search.is === 'found' ? search.asked : undefined;
  // Until something else is written there, the fields say what the plans under them were searched with.
  const [written, setWritten] = useState<string>();
  const [chosen, setChosen] = useState<(typeof favours)[number]>();
  const typed = written ?? String(asked?.budget || '');
  const favour = chosen ?? asked?.favour ?? 'balance';
  const budget = budgetIn(typed, currency);
  const send = (event: FormEvent): void => {
    event.preventDefault();
    if (budget !== 'wrong') void ask({ favour, ...(budget === undefined ? {} : { budget }) });
  };
  return (
    <section aria-labelledby="plans">
      <h3 id="plans">Plans</h3>
      <form className="fields noprint" onSubmit={send}>
        <div className="field">
          <label htmlFor="budget">Budget for media and parts, {currency}</label>
          <input
            id="budget"
            className="quantity"
            value={typed}
            placeholder="nothing"
            aria-invalid={budget === 'wrong'}
            aria-describedby="budget-says"
            onChange={({ target }) => setWritten(target.value)}
          />
          <p id="budget-says" className={budget === 'wrong' ? 'fault' : 'soft'}>
            {budget === 'wrong'
              ? `${typed} is no sum of money in ${currency}; allowed: 0 ${currency} or more.`
              : 'Left empty, only what costs nothing is looked at. Labour is apart.'}
          </p>
        </div>
        <div className="field">
          <label htmlFor="favour">What it is to be good for</label>
          <select
            id="favour"
            value={favour}
            onChange={({ target }) => setChosen(favours.find((each) => each === target.value))}
          >
            {favours.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </select>
        </div>
        <button type="submit" className="main" disabled={search.is === 'under way'}>
          Search plans
        </button>
      </form>
      {search.is === 'under way' ? <UnderWay search={search} onCancel={() => void cancel()} /> : null}
      {search.is === 'failed' ? (
        <p className="fault" role="alert">
          {search.says}
        </p>
      ) : null}
      {search.is === 'found' ? (
        <>
          <p>
            These plans were searched with{' '}
            {search.asked.budget ? `a budget of ${moneyInWords(search.asked.budget, currency)}` : 'no budget'}
            , to be good for {search.asked.favour ?? 'balance'}.
          </p>
          <Outdated session={session} revision={search.revision} />
          <PlansFound
            plans={search.plans}
            model={model}
            session={session}
            day={search.asked.day ?? COMPARISON_DAY}
          />
        </>
      ) : null}
    </section>
  );
}
