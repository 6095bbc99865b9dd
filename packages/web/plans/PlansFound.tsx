import type { Model } from '@fettle/engine/model/model.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { intervalText } from '@fettle/workflows/amounts.ts';
import type { FoundPlan } from '@fettle/workflows/plannedState.ts';
import { type Print, printer } from '@fettle/workflows/printing.ts';
import { siOf } from '@fettle/workflows/results/figures.ts';
import type { PlansResult } from '@fettle/workflows/results/plans.ts';
import { lazy, Suspense } from 'react';
import { useSystem } from '../app/preferences.ts';
import type { JobSession } from '../session/jobSession.ts';
import { feed, sum } from './planTexts.ts';
import { TakeButton } from './TakeButton.tsx';

const PlansDrawn = lazy(() => import('../plots/PlansDrawn.tsx'));

type Row = Pick<FoundPlan, 'flow' | 'feed' | 'served' | 'cleaningInterval'>;

const Figures = ({ row, print }: { readonly row: Row; readonly print: Print }) => (
  <>
    <td>{print(siOf(row.flow), 'flow')}</td>
    <td>{feed(row.feed)}</td>
    <td>{print(siOf(row.served.normal), 'volume')}</td>
    <td>{intervalText(siOf(row.cleaningInterval), row.cleaningInterval.beyond)}</td>
  </>
);

const changes = ({ alterations }: FoundPlan): string =>
  alterations.map(({ id }) => alterationKinds[id]?.says ?? id).join(', ') || 'hardware as it is';

interface PlanOf {
  readonly plan: FoundPlan;
  readonly model: Model;
  readonly print: Print;
}

function Plan({ plan, model, print, session }: PlanOf & { readonly session: JobSession }) {
  return (
    <tr>
      <th scope="row">
        {plan.id} <small>{changes(plan)}</small> <TakeButton plan={plan} model={model} session={session} />
      </th>
      <Figures row={plan} print={print} />
      <td>{sum(plan.cost)}</td>
    </tr>
  );
}

function Bought({ plan, model, print }: PlanOf) {
  const amounts = (all: typeof plan.purchases): string[] =>
    all.map(
      ({ medium, volume, price }) =>
        `${print(siOf(volume), 'volume')} of ${model.media[medium]?.name ?? medium} (${sum(price)})`,
    );
  const media = amounts(plan.purchases);
  const renewed = amounts(plan.renewals);
  const parts = plan.parts.map(
    ({ part, count, price }) => `${Number(count.toPrecision(2))} × ${part} (${sum(price)} each)`,
  );
  const all = [...media, ...parts];
  return (
    <p>
      {all.length === 0 ? 'Nothing to buy for it.' : `To buy: ${all.join(', ')}.`}
      {renewed.length === 0
        ? ''
        : ` Spent in any case, to be taken fresh at the next cleaning, and not in the cost: ${renewed.join(', ')}.`}
    </p>
  );
}

function Steps({ plan, model, print }: PlanOf) {
  return (
    <details>
      <summary>
        {plan.id}: {changes(plan)}
        {plan.bestFor.length === 0 ? '' : `, best for ${plan.bestFor.join(', ').replaceAll('-', ' ')}`}
      </summary>
      <p>{plan.order.says}</p>
      <Bought plan={plan} model={model} print={print} />
      <ol>
        {plan.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {plan.cautions.map(({ medium, says }) => (
        <p key={`${medium}${says}`} className="caution">
          {model.media[medium]?.name ?? medium}: {says}
        </p>
      ))}
    </details>
  );
}

const columns = ['Flow, clean', 'Feed carried', 'Serves, normal stock', 'Cleaning after', 'Cost'];

/** The plans that a search found, against the filter as found; any of them can be taken into the drawing. */
export function PlansFound(of: {
  readonly plans: PlansResult;
  readonly model: Model;
  readonly session: JobSession;
  /** Day on which they were compared. */
  readonly day: number;
}) {
  const { plans, model, session, day } = of;
  const { possible, assessed } = plans.counted;
  const print = printer(useSystem());
  return (
    <>
      {/* The box can be scrolled, so the keys have to get there. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: see above */}
      <section className="wide" aria-label="Plans that were found" tabIndex={0}>
        <table className="figures">
          <caption>
            {assessed.toLocaleString()} of {possible.toLocaleString()} candidates were assessed
            {plans.complete ? ': the search is complete.' : '; what was left out may hold a better one.'} Feed
            and volume are those of day {day} after cleaning. Figures are without their ranges; cleaning is
            known within a factor of three.
          </caption>
          <thead>
            <tr>
              <td />
              {columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">cleaned, packed as before</th>
              <Figures row={plans.asFound} print={print} />
              <td />
            </tr>
            {plans.plans.map((plan) => (
              <Plan key={plan.id} plan={plan} model={model} print={print} session={session} />
            ))}
          </tbody>
        </table>
      </section>
      <Suspense fallback={null}>
        <PlansDrawn plans={plans} currency={model.money.currency} />
      </Suspense>
      {plans.nothingBetter === undefined ? null : (
        <p>Nothing better was found. What would have to give: {plans.nothingBetter.join('; ')}.</p>
      )}
      {plans.plans.map((plan) => (
        <Steps key={plan.id} plan={plan} model={model} print={print} />
      ))}
    </>
  );
}
