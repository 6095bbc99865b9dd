import type * as z from 'zod';
import { useSystem } from '../app/preferences.ts';
import { Framed } from './Framed.tsx';
import { type PlacedField, usePlace } from './LineField.tsx';
import { understand, writtenText } from './understood.ts';
import { useTyped } from './useTyped.ts';

/** A quantity in any usual unit; what was understood stands under it. */
export function QuantityField({ schema, ...field }: PlacedField & { readonly schema: z.core.$ZodType }) {
  const { text, put } = usePlace(field, writtenText);
  const { typed, type, commitNow } = useTyped(text, put);
  const understanding = understand(schema, typed, useSystem());
  const wrong = understanding.is === 'wrong' ? understanding.says : field.problem;
  const { problem: _, ...words } = field;
  return (
    <Framed
      {...words}
      {...(wrong === undefined ? {} : { problem: wrong })}
      {...(understanding.is === 'understood' ? { understood: understanding.says } : {})}
    >
      {(input) => (
        <input
          {...input}
          type="text"
          className="quantity"
          inputMode="text"
          autoComplete="off"
          spellCheck={false}
          value={typed}
          placeholder={field.example === undefined ? undefined : `such as ${field.example}`}
          onChange={(event) => type(event.target.value)}
          onBlur={commitNow}
          onKeyDown={(event) => {
            if (event.key === 'Enter') commitNow();
          }}
        />
      )}
    </Framed>
  );
}
