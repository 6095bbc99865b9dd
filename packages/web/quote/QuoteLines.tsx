import { Field } from '../forms/Field.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { putting, valueAt } from '../forms/places.ts';

/** A field of a line: where it stands in it, and what is said of it. */
interface LinePart {
  readonly field: string;
  readonly label: string;
  readonly how?: string;
}

interface LinesProps {
  readonly list: 'labour' | 'parts';
  readonly title: string;
  /** What one line is called: `work`. */
  readonly called: string;
  readonly fields: readonly LinePart[];
}

/** Lines of the quote of one kind, each with its fields, and buttons to add one and take one away. */
export function QuoteLines({ list, title, called, fields }: LinesProps) {
  const { document, edit } = useForm();
  const written = valueAt(document, ['quote', list]);
  const lines: readonly unknown[] = Array.isArray(written) ? written : [];
  const put = (says: string, next: readonly unknown[]): void =>
    edit({ says, recipe: putting(['quote', list], next.length === 0 ? undefined : next) });
  return (
    <fieldset className="list quotelines">
      <legend>{title}</legend>
      <ol>
        {lines.map((line, place) => (
          // Lines have no name of their own: their place is all there is.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <li key={place}>
            {valueAt(line, ['from']) === 'plan' ? (
              <p className="soft">From the plan: replaced when the plan is taken over again.</p>
            ) : null}
            <div className="fields">
              {fields.map(({ field, label, how }) => (
                <Field
                  key={field}
                  path={['quote', list, place, field]}
                  label={label}
                  of={`of ${called} ${place + 1}`}
                  {...(how === undefined ? {} : { how })}
                />
              ))}
            </div>
            <button
              type="button"
              className="quiet"
              onClick={() =>
                put(
                  `take away ${called} ${place + 1}`,
                  lines.filter((_, each) => each !== place),
                )
              }
            >
              Take away {called} {place + 1}
            </button>
          </li>
        ))}
      </ol>
      <button type="button" onClick={() => put(`add ${called}`, [...lines, {}])}>
        Add {called}
      </button>
    </fieldset>
  );
}
