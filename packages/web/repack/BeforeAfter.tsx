import { printShare } from '@fettle/drawing/lengths.ts';
import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { boundBy } from '@fettle/engine/assessment/boundBy.ts';
import { stages } from '@fettle/engine/model/medium.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { feedText, intervalText } from '@fettle/workflows/amounts.ts';
import { memo } from 'react';

interface TwoPackings {
  readonly before: Assessment;
  readonly beforeName: string;
  readonly after: Assessment;
  readonly afterName: string;
  readonly system: System;
  /** Also the figures that a hand need not follow. */
  readonly isWhole?: boolean;
}

interface Row {
  readonly name: string;
  readonly print: (assessment: Assessment) => string;
}

const rowsIn = (system: System): readonly Row[] => [
  {
    name: 'Flow, clean',
    print: ({ dutyPoint }) => printQuantity({ value: dutyPoint.flowM3PerS, dimension: 'flow', system }),
  },
  { name: 'Feed carried', print: ({ carries }) => feedText(carries.day.feedKgPerS) },
  {
    name: 'Tank served, normal stock',
    print: ({ carries }) =>
      printQuantity({ value: carries.day.servedM3.normal, dimension: 'volume', system }),
  },
  { name: 'Cleaning after', print: ({ cleaning }) => intervalText(cleaning.timeS, cleaning.beyond) },
  { name: 'Running cost a year', print: ({ cost }) => `${Math.round(cost.perYear)} ${cost.currency}` },
];

const further = (system: System): readonly Row[] => [
  ...stages.map((stage) => ({
    name: `Water that misses ${stage} media`,
    print: ({ bypass, beds }: Assessment) =>
      beds.some((bed) => bed.stage === stage) ? printShare(bypass[stage]) : 'no such media',
  })),
  {
    name: 'What binds the feed',
    print: ({ carries }) => boundBy(carries.day.bindingLimit).replace(/^by /, ''),
  },
  {
    name: 'Oxygen in the water that leaves it, at that feed',
    print: ({ carries }) =>
      printQuantity({ value: carries.day.outletOxygenKgPerM3, dimension: 'concentration', system }),
  },
  {
    name: 'Of what reaches it, kept in one pass, clean',
    print: ({ solids }) => printShare(solids.caughtFraction),
  },
];

/** The figures of two packings beside each other. */
export const BeforeAfter = memo((of: TwoPackings) => {
  const { before, beforeName, after, afterName, system, isWhole = false } = of;
  return (
    <table className="figures">
      <caption>
        Each figure hangs on the doubts of what was assumed; cleaning is known within a factor of three.
      </caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{beforeName}</th>
          <th scope="col">{afterName}</th>
        </tr>
      </thead>
      <tbody>
        {[...rowsIn(system), ...(isWhole ? further(system) : [])].map(({ name, print }) => {
          const [first, second] = [print(before), print(after)];
          return (
            <tr key={name} className={first === second ? '' : 'differs'}>
              <th scope="row">{name}</th>
              <td>{first}</td>
              <td>{second}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
});
