import { timedVolumeSchema } from '@fettle/job/schema/benchTests.ts';
import { useId, useState } from 'react';
import { understand } from '../forms/understood.ts';

interface RunListProps {
  readonly times: readonly string[];
  readonly take: (time: string) => void;
  readonly remove: (place: number) => void;
}

/** A time that another watch took, typed in. */
function TypedTime({ take }: Pick<RunListProps, 'take'>) {
  const id = useId();
  const [typed, setTyped] = useState('');
  const understanding = understand(timedVolumeSchema.shape.times.element, typed);
  const isWrong = understanding.is === 'wrong';
  return (
    <form
      className="typedtime"
      onSubmit={(event) => {
        event.preventDefault();
        if (understanding.is !== 'understood') return;
        take(typed.trim());
        setTyped('');
      }}
    >
      <label htmlFor={id}>Or type a time, such as 31.2 s</label>
      <input
        id={id}
        value={typed}
        autoComplete="off"
        aria-invalid={isWrong}
        aria-describedby={`${id}-says`}
        onChange={(event) => setTyped(event.target.value)}
      />
      <button type="submit" disabled={understanding.is !== 'understood'}>
        Add this time
      </button>
      <p id={`${id}-says`} className={isWrong ? 'fault' : 'soft'} role="status">
        {understanding.is === 'empty' ? '' : understanding.says}
      </p>
    </form>
  );
}

/** The runs so far; one that went wrong is taken away alone. */
export function RunList({ times, take, remove }: RunListProps) {
  return (
    <section aria-labelledby="runs">
      <h3 id="runs">Runs</h3>
      <ol className="runs">
        {times.map((time, place) => (
          // Two runs may take the same time: their place is all that tells them apart.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <li key={place}>
            <span>
              {place + 1}. <strong>{time}</strong>
            </span>
            <button type="button" className="quiet" onClick={() => remove(place)}>
              Take away<span className="unseen"> run {place + 1}</span>
            </button>
          </li>
        ))}
      </ol>
      <TypedTime take={take} />
    </section>
  );
}
