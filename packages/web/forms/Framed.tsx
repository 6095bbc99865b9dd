import { type FieldPath, writtenPath } from '@fettle/job/fieldPath.ts';
import { type ReactNode, useId } from 'react';

/** What every field says of itself, whatever it is filled in with. */
export interface FieldWords {
  readonly name: string;
  /** Where its value stands in the document, so that a problem can lead to it. */
  readonly path?: FieldPath;
  /** Which of several alike it belongs to; not seen, but read out behind its name. */
  readonly of?: string;
  readonly how?: string;
  readonly problem?: string;
  readonly assumed?: string;
  /** What was understood of the text. */
  readonly understood?: string;
}

/** What the input has to carry so that it is named and described by the words around it. */
export interface Described {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean;
}

/** A field with its name over it, and under it how to find it out, what was understood, assumed or is wrong. */
export function Framed({
  name,
  path,
  of,
  how,
  problem,
  assumed,
  understood,
  children,
}: FieldWords & { readonly children: (input: Described) => ReactNode }) {
  const id = useId();
  const lines = [
    { key: 'how', says: how, look: 'soft' },
    { key: 'problem', says: problem, look: 'fault' },
    { key: 'understood', says: problem === undefined ? understood : undefined, look: 'understood' },
    { key: 'assumed', says: problem === undefined ? assumed : undefined, look: 'assumed' },
  ].filter(({ says }) => says !== undefined && says !== '');
  return (
    <div className="field" data-path={path === undefined ? undefined : writtenPath(path)}>
      <label htmlFor={id}>
        {name}
        {of === undefined ? null : <span className="unseen"> {of}</span>}
      </label>
      {children({
        id,
        'aria-describedby': lines.length === 0 ? undefined : lines.map(({ key }) => `${id}-${key}`).join(' '),
        'aria-invalid': problem !== undefined,
      })}
      {lines.map(({ key, says, look }) => (
        <p key={key} id={`${id}-${key}`} className={look} role={key === 'problem' ? 'status' : undefined}>
          {says}
        </p>
      ))}
    </div>
  );
}
