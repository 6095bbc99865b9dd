import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { flowOf, type TimedRuns } from './timedRuns.ts';

const advice = (runs: number): string =>
  runs === 1
    ? 'One run alone: its scatter is taken to be that of careful repeats. Run it again.'
    : runs === 2
      ? 'Two runs tell little of their scatter, so the range is wide: a third makes it much narrower.'
      : `Mean of ${runs} runs.`;

/** Mean flow and its range, as the job's assessment will have them. */
export function FlowSoFar({ runs, system }: { readonly runs: TimedRuns; readonly system: System }) {
  const flow = flowOf(runs);
  if (flow === undefined)
    return (
      <p role="status" className="flow soft">
        The flow stands here once there is a volume and one run.
      </p>
    );
  const { flowM3PerS: value, doubtM3PerS, repeats } = flow;
  const print = (shown: System): string =>
    printQuantity({
      value,
      dimension: 'flow',
      system: shown,
      // Two runs far apart leave a doubt larger than the flow; no water flows backwards for that.
      low: Math.max(0, value - doubtM3PerS),
      high: value + doubtM3PerS,
    });
  return (
    <div role="status" className="flow">
      <p className="figure">{print(system)}</p>
      <p>{print(system === 'us' ? 'metric' : 'us')} · 95 % range of the mean</p>
      <p className="soft">{advice(repeats)}</p>
    </div>
  );
}
