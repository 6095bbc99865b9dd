import { inWords } from '../app/words.ts';
import { Framed } from './Framed.tsx';
import { useForm } from './JobForm.tsx';
import { type PlacedField, usePlace } from './LineField.tsx';
import { useTyped } from './useTyped.ts';
import { nameOfValue } from './valueNames.ts';

/** Text of several lines. */
export function TextField(field: PlacedField) {
  const { text, put } = usePlace(field);
  const { typed, type, commitNow } = useTyped(text, put);
  return (
    <Framed {...field}>
      {(input) => (
        <textarea
          {...input}
          rows={3}
          value={typed}
          onChange={(event) => type(event.target.value)}
          onBlur={commitNow}
        />
      )}
    </Framed>
  );
}

/** A day of the calendar. */
export function DayField(field: PlacedField) {
  const { text, put } = usePlace(field);
  return (
    <Framed {...field}>
      {(input) => <input {...input} type="date" value={text} onChange={(event) => put(event.target.value)} />}
    </Framed>
  );
}

/** A whole number. */
export function NumberField(field: PlacedField) {
  const { text, put } = usePlace(field);
  const { typed, type, commitNow } = useTyped(text, (value) =>
    // What is no number goes into the job as it is, which says what is wrong with it.
    put(/^\s*\d+\s*$/.test(value) ? Number(value) : value),
  );
  return (
    <Framed {...field}>
      {(input) => (
        <input
          {...input}
          type="text"
          inputMode="numeric"
          className="quantity"
          value={typed}
          placeholder={field.example === undefined ? undefined : `such as ${field.example}`}
          onChange={(event) => type(event.target.value)}
          onBlur={commitNow}
        />
      )}
    </Framed>
  );
}

/** One of a few words. */
export function ChoiceField({ choices, ...field }: PlacedField & { readonly choices: readonly string[] }) {
  const { text, put } = usePlace(field);
  const { document } = useForm();
  const name = String(field.path.at(-1));
  return (
    <Framed {...field}>
      {(input) => (
        <select {...input} value={text} onChange={(event) => put(event.target.value)}>
          <option value="">not stated</option>
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {nameOfValue(document, name, choice) ?? inWords(choice)}
            </option>
          ))}
        </select>
      )}
    </Framed>
  );
}

/** Yes, no, or nothing said. */
export function YesNoField(field: PlacedField) {
  const { value, put } = usePlace(field);
  return (
    <Framed {...field}>
      {(input) => (
        <select
          {...input}
          value={value === undefined ? '' : value === true ? 'yes' : 'no'}
          onChange={({ target }) => put(target.value === '' ? undefined : target.value === 'yes')}
        >
          <option value="">not stated</option>
          <option value="yes">yes</option>
          <option value="no">no</option>
        </select>
      )}
    </Framed>
  );
}
