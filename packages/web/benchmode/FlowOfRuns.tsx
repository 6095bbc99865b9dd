import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { useSystem } from '../app/preferences.ts';
import { writtenText } from '../forms/understood.ts';
import { type RunFlows, runFlowsOf } from './timedRuns.ts';

const printed = (value: number, system: System): string =>
  printQuantity({ value, dimension: 'flow', system });

const printedMean = ({ flowM3PerS, doubtM3PerS }: RunFlows['mean'], system: System): string =>
  printQuantity({
    value: flowM3PerS,
    dimension: 'flow',
    system,
    doubt: { kind: 'plus-minus', size: doubtM3PerS },
  });

/** The flow of each run of a timed filling, and their mean with its doubt; nothing until it can be read. */
export function FlowOfRuns({ test }: { readonly test: unknown }) {
  const system = useSystem();
  const flows = runFlowsOf(test);
  if (flows === undefined) return null;
  const { runs, mean } = flows;
  return (
    <table className="figures runflows">
      <caption>
        {runs.length === 1
          ? 'Its scatter is taken to be that of careful repeats: run it again.'
          : 'The range holds the true mean in 95 of 100 cases; volume and watch have their share in it.'}
      </caption>
      <thead>
        <tr>
          <th scope="col">Run</th>
          <th scope="col">Time</th>
          <th scope="col">Flow</th>
        </tr>
      </thead>
      <tbody>
        {runs.map(({ time, flowM3PerS }, place) => (
          // Two runs may take the same time: their place is all that tells them apart.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <tr key={place}>
            <th scope="row">{place + 1}</th>
            <td>{writtenText(time)}</td>
            <td>{printed(flowM3PerS, system)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Mean</th>
          <td />
          <td>
            <strong>{printedMean(mean, system)}</strong>
          </td>
        </tr>
      </tfoot>
    </table>
  );
}
