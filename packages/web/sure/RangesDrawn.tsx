import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { type RangedFigure, RangesPlot } from '@fettle/plots/RangesPlot.tsx';

/** Ranges of a job's figures in one plot; nothing where no figure has a middle. */
export default function RangesDrawn({
  figures,
  system,
}: {
  readonly figures: readonly RangedFigure[];
  readonly system: System;
}) {
  if (figures.length === 0) return null;
  return (
    <figure className="plot">
      <RangesPlot id="ranges-plot" system={system} theme="page" figures={figures} />
    </figure>
  );
}
