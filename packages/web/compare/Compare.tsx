import { lazy, Suspense } from 'react';
import { Drawn } from '../drawing/Drawn.tsx';
import { DirtRow } from '../plots/DirtRow.tsx';
import { BeforeAfter } from '../repack/BeforeAfter.tsx';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { ComparedBeds } from './ComparedBeds.tsx';
import type { Side } from './sides.ts';
import { type Both, useBoth } from './useBoth.ts';
import { useNarrow } from './useNarrow.ts';

const CurvesDrawn = lazy(() => import('../plots/CurvesDrawn.tsx'));

/** Two packings, chosen, with all that can be said of both. */
export interface Chosen {
  readonly first: Side;
  readonly second: Side;
}

/** Why there is nothing to be seen of the two that are chosen; undefined where there is, or will be. */
const hindranceOf = ({ problems: [wrong], failure }: Both): string | undefined => failure ?? wrong?.says;

function Waiting({ both }: { readonly both: Both }) {
  const { figures, isBehind } = both;
  const hindrance = hindranceOf(both);
  if (hindrance !== undefined)
    return (
      <p className="fault" role="alert">
        {hindrance}
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
  if (figures === undefined || hindranceOf(both) !== undefined) return <Waiting both={both} />;
  const two = [figures.first, figures.second] as const;
  // Not those of what is chosen, which may be computed only now.
  const names = [two[0].name, two[1].name] as const;
  return (
    <>
      <Waiting both={both} />
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
        <DirtRow dirt={two[0].dirt} name={names[0]} />
        <DirtRow dirt={two[1].dirt} name={names[1]} />
      </div>
    </>
  );
}
