import { PlansPlot, type SaidFigure } from '@fettle/plots/PlansPlot.tsx';
import type { Figure } from '@fettle/workflows/results/figures.ts';
import type { PlansResult } from '@fettle/workflows/results/plans.ts';
import { feed, sum } from '../plans/planTexts.ts';

const said = (figure: Figure, print: (figure: Figure) => string): SaidFigure => {
  const { value, low, high } = figure;
  const range = low === undefined || high === undefined ? {} : { low, high };
  return { value, says: print(figure), ...range };
};

/** What the plans cost and the feed that each carries, in the words of the table. */
export default function PlansDrawn({ plans, currency }: { plans: PlansResult; currency: string }) {
  if (plans.plans.length === 0) return null;
  return (
    <figure className="plot">
      <PlansPlot
        id="plans-plot"
        theme="page"
        currency={currency}
        gain={{ name: 'feed carried', unit: plans.asFound.feed.unit }}
        asBefore={said(plans.asFound.feed, feed)}
        plans={plans.plans.map(({ id, cost, feed: carried }) => ({
          id,
          cost: said(cost, sum),
          gain: said(carried, feed),
        }))}
      />
    </figure>
  );
}
