import type { FieldChange } from '@fettle/job/changes/changes.ts';
import { fieldInWords } from './fieldInWords.ts';
import { valueInWords } from './valueInWords.ts';

interface ChangesProps {
  /** The document after the changes, which says how its fields are called. */
  readonly document: unknown;
  readonly changes: readonly FieldChange[];
}

/** Changed fields in words, each with what it held and what it holds. */
export function Changes({ document, changes }: ChangesProps) {
  return (
    <ul className="lines">
      {changes.map(({ path, before, after }) => (
        <li key={path}>
          {fieldInWords(document, path)}:{' '}
          {before === undefined ? (
            <>
              now <strong>{valueInWords(after, { document, path })}</strong>
            </>
          ) : (
            <>
              {valueInWords(before, { document, path })} <span aria-hidden="true">→</span>
              <span className="hidden"> becomes </span>{' '}
              <strong>{after === undefined ? 'taken away' : valueInWords(after, { document, path })}</strong>
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
