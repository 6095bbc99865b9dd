import type { Model } from '@fettle/engine/model/model.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { HeadBudgetPlot } from '@fettle/plots/HeadBudgetPlot.tsx';
import { type MeasuredFlow, PumpCurvePlot } from '@fettle/plots/PumpCurvePlot.tsx';
import { ResidenceCurvePlot } from '@fettle/plots/ResidenceCurvePlot.tsx';
import { ResidenceTimePlot } from '@fettle/plots/ResidenceTimePlot.tsx';
import { headByPart } from '@fettle/workflows/report/water.ts';
import { inWords } from '../app/words.ts';
import type { WholeFigures } from '../computing/assessed.ts';

/** The flow of the packing that the figures are of, by the test with the least doubt. */
const measuredIn = ({ tests, packedState = 'as-found' }: Model): MeasuredFlow | undefined => {
  const [best] = tests
    .flatMap((test) => (test.kind === 'timed-volume' && test.state === packedState ? [test] : []))
    .toSorted((a, b) => a.doubtM3PerS - b.doubtM3PerS);
  return best && { ...best, name: `measured ${inWords(packedState)}` };
};

/** The plots of a filter through which water flows. */
export default function WaterDrawn({ figures, system }: { figures: WholeFigures; system: System }) {
  const look = { system, theme: 'page' } as const;
  const { model, assessment, curves, plannedCurves, times } = figures;
  const dye = figures.dye?.find(({ computed }) => computed !== undefined);
  const measured = measuredIn(model);
  const name = inWords(model.packedState ?? 'as-found');
  const planned =
    plannedCurves && plannedCurves.duty.flowM3PerS > 0 ? { ...plannedCurves, name: 'planned' } : undefined;
  return (
    <section aria-labelledby="water-plots">
      <h3 id="water-plots">Pump, head and time in the media</h3>
      <div className="plots">
        <figure className="plot">
          <PumpCurvePlot
            {...look}
            id="pump-plot"
            found={{ ...curves, name }}
            {...(planned === undefined ? {} : { planned })}
            {...(measured === undefined ? {} : { measured })}
          />
        </figure>
        <figure className="plot">
          <HeadBudgetPlot {...look} id="head-plot" parts={headByPart(assessment)} />
        </figure>
        {assessment.beds.length === 0 ? null : (
          <figure className="plot">
            <ResidenceTimePlot {...look} id="residence-plot" routes={assessment.routes} />
          </figure>
        )}
        {times === undefined ? null : (
          <figure className="plot">
            <ResidenceCurvePlot
              {...look}
              id="curve-plot"
              whole={times.whole}
              flowM3PerS={times.flowM3PerS}
              {...(dye === undefined ? {} : { dye })}
            />
          </figure>
        )}
      </div>
    </section>
  );
}
