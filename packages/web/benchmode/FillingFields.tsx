import { timedVolumeSchema } from '@fettle/job/schema/benchTests.ts';
import { useId } from 'react';
import { Framed } from '../forms/Framed.tsx';
import { understand } from '../forms/understood.ts';
import { type TimedRuns, testStates } from './timedRuns.ts';

interface FieldsProps {
  readonly runs: TimedRuns;
  readonly change: (next: TimedRuns) => void;
}

/** What hands did to the filter before each state. */
const stateWords: Readonly<Record<TimedRuns['state'], string>> = {
  'as-found': 'as found, nothing touched',
  'clean-empty': 'clean, without media',
  'cleaned-original': 'cleaned, packed as it came',
  'as-left': 'as left, packed anew',
};

const volumeSchema = timedVolumeSchema.shape.volume;

/** What was filled in each run. */
function Volume({ runs, change }: FieldsProps) {
  const understanding = understand(volumeSchema, runs.volume);
  return (
    <Framed
      name="Volume filled in each run"
      how="To a mark on the jug or bucket; weigh it for a better figure: 1 kg of water is 1 L."
      {...(understanding.is === 'wrong' ? { problem: understanding.says } : {})}
      {...(understanding.is === 'understood' ? { understood: understanding.says } : {})}
    >
      {(input) => (
        <input
          {...input}
          value={runs.volume}
          autoComplete="off"
          placeholder="such as 5 L ± 1 %"
          onChange={(event) => change({ ...runs, volume: event.target.value })}
        />
      )}
    </Framed>
  );
}

/** Volume and state of a timed filling. */
export function FillingFields({ runs, change }: FieldsProps) {
  const name = useId();
  return (
    <>
      <fieldset className="states">
        <legend>State of the filter</legend>
        {testStates.map((state) => (
          <label key={state} className="check">
            <input
              type="radio"
              name={name}
              checked={runs.state === state}
              onChange={() => change({ ...runs, state })}
            />
            {stateWords[state]}
          </label>
        ))}
      </fieldset>
      <Volume runs={runs} change={change} />
    </>
  );
}
