import { type FieldPath, writtenPath } from '@fettle/job/fieldPath.ts';
import { type FieldWords, Framed } from './Framed.tsx';
import { useForm } from './JobForm.tsx';
import { putting, valueAt } from './places.ts';
import { useTyped } from './useTyped.ts';

/** What fields of all kinds have in common. */
export interface PlacedField extends FieldWords {
  readonly path: FieldPath;
  readonly example?: string;
}

/** The text at a place of the job, and how to change it. Empty text takes the field away. */
export function usePlace({ path, name }: PlacedField, toText: (value: unknown) => string = String) {
  const { document, edit } = useForm();
  const value = valueAt(document, path);
  const put = (next: unknown): void => {
    const emptied = typeof next === 'string' && next.trim() === '';
    edit({ says: name, key: writtenPath(path), recipe: putting(path, emptied ? undefined : next) });
  };
  return { value, text: value === undefined ? '' : toText(value), put };
}

/** One line of text. */
export function LineField(field: PlacedField) {
  const { text, put } = usePlace(field);
  const { typed, type, commitNow } = useTyped(text, put);
  return (
    <Framed {...field}>
      {(input) => (
        <input
          {...input}
          type="text"
          value={typed}
          placeholder={field.example === undefined ? undefined : `such as ${field.example}`}
          onChange={(event) => type(event.target.value)}
          onBlur={commitNow}
        />
      )}
    </Framed>
  );
}
