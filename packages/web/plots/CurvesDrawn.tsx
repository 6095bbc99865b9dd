import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { PumpCurvePlot } from '@fettle/plots/PumpCurvePlot.tsx';
import type { ComparedFigures } from '../computing/assessed.ts';

/** Pump and system of two packings in one plot. */
export default function CurvesDrawn({
  names,
  figures,
  system,
}: {
  readonly names: readonly [string, string];
  readonly figures: readonly [ComparedFigures, ComparedFigures];
  readonly system: System;
}) {
  const [first, second] = figures.map(({ curves }, index) => ({
    ...curves,
    name: (names[index] ?? '').toLowerCase(),
  }));
  if (first === undefined || first.duty.flowM3PerS <= 0) return null;
  const planned = second !== undefined && second.duty.flowM3PerS > 0 ? { planned: second } : {};
  return (
    <div className="plots">
      <figure className="plot">
        <PumpCurvePlot id="compared-plot" system={system} theme="page" found={first} {...planned} />
      </figure>
    </div>
  );
}
