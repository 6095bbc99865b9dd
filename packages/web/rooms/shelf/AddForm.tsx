import { type ReactNode, useId, useState } from 'react';
import { Framed } from '../../forms/Framed.tsx';

/** What came of adding something: nothing wrong, or one sentence. */
export type Added = { readonly ok: true } | { readonly ok: false; readonly says: string };

interface AddFormOf {
  readonly name: string;
  readonly how: string;
  readonly example: string;
  /** What was understood of what is typed so far. */
  readonly understood?: (typed: string) => string | undefined;
  readonly suggestions?: readonly { readonly value: string; readonly says: string }[];
  readonly button: string;
  readonly add: (typed: string) => Added;
  readonly children?: ReactNode;
}

/** One line that puts a new thing on the shelf. */
export function AddForm({
  name,
  how,
  example,
  understood,
  suggestions = [],
  button,
  add,
  children,
}: AddFormOf) {
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string>();
  const list = useId();
  const submit = (): void => {
    const added =
      typed.trim() === '' ? ({ ok: false, says: `Nothing is written: ${how}` } as const) : add(typed.trim());
    setProblem(added.ok ? undefined : added.says);
    if (added.ok) setTyped('');
  };
  const says = understood?.(typed);
  return (
    <form
      className="add"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <Framed
        name={name}
        how={how}
        {...(problem === undefined ? {} : { problem })}
        {...(says === undefined ? {} : { understood: says })}
      >
        {(input) => (
          <input
            {...input}
            type="text"
            autoComplete="off"
            placeholder={`such as ${example}`}
            list={suggestions.length === 0 ? undefined : list}
            value={typed}
            onChange={({ target }) => {
              setTyped(target.value);
              setProblem(undefined);
            }}
          />
        )}
      </Framed>
      {suggestions.length === 0 ? null : (
        <datalist id={list}>
          {suggestions.map(({ value, says: label }) => (
            <option key={value} value={value} label={label} />
          ))}
        </datalist>
      )}
      {children}
      <button type="submit">{button}</button>
    </form>
  );
}
