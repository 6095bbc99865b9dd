import type { FieldConflict } from '@fettle/job/changes/merge.ts';
import { useState } from 'react';
import { placeOf, putting } from '../../forms/places.ts';
import { fieldInWords } from '../../history/fieldInWords.ts';
import { valueInWords } from '../../history/valueInWords.ts';
import { edited, historyOf, type Worked } from '../../session/history.ts';
import type { JobSession, Standing } from '../../session/jobSession.ts';

type Conflicting = Extract<Standing, { is: 'conflict' }>;

/** The same for as long as the same choice is to be made. */
export const conflictName = ({ revision, conflicts }: Pick<Conflicting, 'revision' | 'conflicts'>): string =>
  JSON.stringify([revision, conflicts.map(({ path, theirs, yours }) => [path, theirs, yours])]);

/** Both changes together, with those of the conflicting fields that were chosen to be ours. */
const settled = ({ merged, conflicts }: Conflicting, ours: ReadonlySet<string>): Worked =>
  conflicts
    .filter(({ path }) => ours.has(path))
    .reduce(
      (history, { path, yours }) => edited(history, { says: path, recipe: putting(placeOf(path), yours) }),
      historyOf(merged),
    ).document;

function Choice({
  conflict: { path, theirs, yours },
  document,
  isOurs,
  choose,
}: {
  readonly document: unknown;
  readonly conflict: FieldConflict;
  readonly isOurs: boolean;
  readonly choose: (isOurs: boolean) => void;
}) {
  const sides = [
    { says: 'Theirs', value: theirs, ours: false },
    { says: 'Yours', value: yours, ours: true },
  ];
  return (
    <fieldset>
      <legend>{fieldInWords(document, path)}</legend>
      {sides.map(({ says, value, ours }) => (
        <label key={says}>
          <input type="radio" name={path} checked={isOurs === ours} onChange={() => choose(ours)} /> {says}:{' '}
          {valueInWords(value, { document, path })}
        </label>
      ))}
    </fieldset>
  );
}

/** Somebody else changed the same fields: one of the two is chosen for each, and nothing is lost till then. */
export function Conflict({
  session,
  standing,
}: {
  readonly session: JobSession;
  readonly standing: Conflicting;
}) {
  const [ours, setOurs] = useState<ReadonlySet<string>>(
    () => new Set(standing.conflicts.map(({ path }) => path)),
  );
  return (
    <section className="conflict" aria-labelledby="conflict">
      <h2 id="conflict">Somebody else changed the same fields</h2>
      <p>Choose for each field which one stands. All other changes, theirs and yours, are kept.</p>
      {standing.conflicts.map((conflict) => (
        <Choice
          key={conflict.path}
          conflict={conflict}
          document={standing.merged}
          isOurs={ours.has(conflict.path)}
          choose={(isOurs) => {
            const next = new Set(ours);
            if (isOurs) next.add(conflict.path);
            else next.delete(conflict.path);
            setOurs(next);
          }}
        />
      ))}
      <button type="button" className="main" onClick={() => session.settle(settled(standing, ours))}>
        Keep these
      </button>
    </section>
  );
}
