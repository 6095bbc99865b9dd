import { lazy, Suspense } from 'react';
import type { BothFigures } from '../computing/assessed.ts';
import type { Rested } from '../computing/useRested.ts';
import { Drawn } from '../drawing/Drawn.tsx';
import { DirtRow } from '../plots/DirtRow.tsx';
import { BeforeAfter } from '../repack/BeforeAfter.tsx';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { ComparedBeds } from './ComparedBeds.tsx';
import type { Side } from './sides.ts';
import { useBoth } from './useBoth.ts';
import { useNarrow } from './useNarrow.ts';

const CurvesDrawn = lazy(() => import('../plots/CurvesDrawn.tsx'));

/** Two packings, chosen, with all that can be said of both. */
export interface Chosen {
  readonly first: Side;
  readonly second: Side;
}

function Waiting({ problems, figures, isBehind }: Rested<BothFigures>) {
  const [wrong] = problems;
  if (wrong !== undefined)
    return (
      <p className="fault" role="alert">
        One of the two cannot be computed: {wrong.says}
      </p>
    );
  return (
    <p role="status" className="soft noprint">
      {figures === undefined ? 'Both are being computed…' : isBehind ? 'They are being computed anew.' : ''}
    </p>
  );
}

/** Drawing, figures, plots and dirt of two packings beside each other. */
export function Compare({
  work,
  chosen: { first, second },
}: {
  readonly work: JobAtWork;
  readonly chosen: Chosen;
}) {
  const { state, system } = work;
  const both = useBoth(state.number, { first, second }, { system, stacked: useNarrow() });
  const { figures } = both;
  if (figures === undefined || both.problems.length > 0) return <Waiting {...both} />;
  const names = [first.name, second.name] as const;
  const two = [figures.first, figures.second] as const;
  return (
    <>
      <Waiting {...both} />
      <figure className="section both">
        <Drawn svg={figures.drawing} />
      </figure>
      <BeforeAfter
        before={two[0].assessment}
        beforeName={names[0]}
        after={two[1].assessment}
        afterName={names[1]}
        system={system}
        isWhole
      />
      <ComparedBeds names={names} figures={two} system={system} />
      <Suspense fallback={null}>
        <CurvesDrawn names={names} figures={two} system={system} />
      </Suspense>
      <div className="plots">
        {two.map(({ dirt }, index) => (
          <DirtRow key={names[index]} dirt={dirt} name={names[index] ?? ''} />
        ))}
      </div>
    </>
  );
}
