import type { FieldChange } from '@fettle/job/changes/changes.ts';
import { fieldInWords, valueInWords } from './fieldInWords.ts';

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
              now <strong>{valueInWords(after)}</strong>
            </>
          ) : (
            <>
              {valueInWords(before)} <span aria-hidden="true">→</span>
              <span className="hidden"> becomes </span>{' '}
              <strong>{after === undefined ? 'taken away' : valueInWords(after)}</strong>
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
