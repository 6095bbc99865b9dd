import type { FieldConflict } from '@fettle/job/changes/merge.ts';
import { useEffect, useRef } from 'react';
import { writtenText } from '../forms/understood.ts';
import type { BookAtWork, BookState } from './bookAtWork.ts';

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  return typeof value === 'object' && !('value' in Object(value))
    ? JSON.stringify(value)
    : writtenText(value);
};

function Choice({
  work,
  conflicts,
}: {
  readonly work: BookAtWork;
  readonly conflicts: readonly FieldConflict[];
}) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <section className="conflict" aria-labelledby="conflict">
      <h2 id="conflict" ref={heading}>
        Somebody else changed the same fields
      </h2>
      <p>
        What you typed is still here, and nothing is written until you choose. All other changes, theirs and
        yours, are kept either way.
      </p>
      <ul>
        {conflicts.map(({ path, theirs, yours }) => (
          <li key={path}>
            <code>{path}</code>: yours is {shown(yours)}, theirs {shown(theirs)}.
          </li>
        ))}
      </ul>
      <p className="buttons">
        <button type="button" className="main" onClick={() => work.settle('yours')}>
          Keep yours
        </button>
        <button type="button" onClick={() => work.settle('theirs')}>
          Take theirs
        </button>
      </p>
    </section>
  );
}

/** Tells what somebody else did to the book meanwhile, and asks where both changed the same. */
export function TheirChange({ work, state }: { readonly work: BookAtWork; readonly state: BookState }) {
  const { standing, tookTheirs } = state;
  if (standing.is === 'conflict') return <Choice work={work} conflicts={standing.conflicts} />;
  return tookTheirs ? (
    <p className="notice" role="status">
      Somebody else changed this meanwhile. Their change is here now; what you typed stands beside it.
    </p>
  ) : null;
}
