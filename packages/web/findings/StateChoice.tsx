import type { PackedState } from '@fettle/job/packedStates.ts';
import { Link } from 'wouter';
import { stateInWords } from '../rooms/job/lookedState.ts';

/** The states of the filter that can be looked at; none where there is but one. */
export function StateChoice({
  number,
  states,
  looked,
}: {
  readonly number: number;
  readonly states: readonly PackedState[];
  readonly looked: PackedState;
}) {
  if (states.length < 2) return null;
  return (
    <nav aria-label="State of the filter" className="states noprint">
      <ul>
        {states.map((state) => (
          <li key={state}>
            <Link
              href={`/jobs/${number}/findings?state=${state}`}
              aria-current={state === looked ? 'true' : undefined}
            >
              {stateInWords(state)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
