import type { PackedState } from '@fettle/job/packedStates.ts';
import { Link, useSearchParams } from 'wouter';
import { stateInWords } from '../rooms/job/lookedState.ts';

/** The states of the filter that can be looked at; none where there is but one. */
export function StateChoice({
  number,
  part = 'findings',
  states,
  looked,
}: {
  readonly number: number;
  /** The part of the job that shows them. */
  readonly part?: string;
  readonly states: readonly PackedState[];
  readonly looked: PackedState;
}) {
  const [search] = useSearchParams();
  if (states.length < 2) return null;
  const hrefOf = (state: PackedState): string => {
    const asked = new URLSearchParams(search);
    asked.set('state', state);
    return `/jobs/${number}/${part}?${asked}`;
  };
  return (
    <nav aria-label="State of the filter" className="states noprint">
      <ul>
        {states.map((state) => (
          <li key={state}>
            <Link href={hrefOf(state)} aria-current={state === looked ? 'true' : undefined}>
              {stateInWords(state)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
