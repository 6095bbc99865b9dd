import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { Link, useSearchParams } from 'wouter';
import { listRevisions } from '../../../client/history.ts';
import { Compare } from '../../../compare/Compare.tsx';
import { chosenSides, type Side, sidesOf } from '../../../compare/sides.ts';
import { usePlans } from '../../../plans/usePlans.ts';
import type { JobAtWork } from '../jobAtWork.ts';

function SideChoice({
  name,
  sides,
  chosen,
  onChange,
}: {
  readonly name: string;
  readonly sides: readonly Side[];
  readonly chosen: Side | undefined;
  readonly onChange: (id: string) => void;
}) {
  return (
    <label>
      {name}
      <select value={chosen?.id ?? ''} onChange={({ target }) => onChange(target.value)}>
        {chosen === undefined ? <option value="">nothing yet</option> : null}
        {sides.map((side) => (
          <option key={side.id} value={side.id}>
            {side.name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What there is to compare: the states of the job, plans that were found, and earlier revisions. */
function useSides({ session, state, figures }: JobAtWork): readonly Side[] {
  const { search } = usePlans(session);
  const revisions = useQuery({
    queryKey: ['revisions', state.number, state.revision],
    queryFn: () => listRevisions(state.number),
    placeholderData: (before) => before,
  });
  const { document } = state;
  const model = figures.quick?.model;
  const found = search.is === 'found' ? search.plans : undefined;
  return useMemo(
    () =>
      sidesOf({
        document,
        plans: found === undefined || model === undefined ? undefined : { found, model },
        revisions: revisions.data ?? [],
      }),
    [document, found, model, revisions.data],
  );
}

/** Any two packings of the job, held against each other. */
export function ComparePart({ work }: { readonly work: JobAtWork }) {
  const sides = useSides(work);
  const [asked, setAsked] = useSearchParams();
  const { first, second } = chosenSides(sides, { first: asked.get('first'), second: asked.get('second') });
  const choose = (which: 'first' | 'second', id: string): void =>
    setAsked((before) => ({ ...Object.fromEntries(before), [which]: id }), { replace: true });
  return (
    <div className="part">
      <h2>Compare</h2>
      <div className="narrowing noprint">
        <SideChoice name="This packing" sides={sides} chosen={first} onChange={(id) => choose('first', id)} />
        <SideChoice name="against" sides={sides} chosen={second} onChange={(id) => choose('second', id)} />
      </div>
      {first === undefined || second === undefined ? (
        <p>
          There is one packing so far. Plan another one under{' '}
          <Link href={`/jobs/${work.state.number}/re-pack`}>Re-pack</Link>, by hand or by a search for plans,
          then compare both here.
        </p>
      ) : (
        <Compare work={work} chosen={{ first, second }} />
      )}
    </div>
  );
}
