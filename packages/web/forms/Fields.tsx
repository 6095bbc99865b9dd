import { type FieldPath, writtenPath } from '@fettle/job/fieldPath.ts';
import { inner } from '@fettle/job/schema/fields.ts';
import { knownNames } from '@fettle/job/schema/walk.ts';
import * as z from 'zod';
import { Field } from './Field.tsx';
import { useForm } from './JobForm.tsx';
import { labelAt } from './labels.ts';
import { putting, schemaOf, valueAt } from './places.ts';
import { problemInWords } from './problemInWords.ts';

/** Says what is wrong with a place that is no single field, such as a list with too few entries. */
function PlaceProblem({ path }: { readonly path: FieldPath }) {
  const form = useForm();
  const problem = form.problems.find((each) => each.path === writtenPath(path));
  return problem === undefined ? null : (
    <p className="fault" role="status">
      {problemInWords(problem, labelAt(form, path))}
    </p>
  );
}

/** A list of the document: each entry with its fields, and buttons to add one and take one away. */
function ListFields({ path, schema }: { readonly path: FieldPath; readonly schema: z.ZodArray }) {
  const form = useForm();
  const { document, edit } = form;
  const value = valueAt(document, path);
  const entries: readonly unknown[] = Array.isArray(value) ? value : [];
  const says = labelAt(form, path);
  const isGroup = inner(schema.element) instanceof z.ZodObject;
  return (
    <fieldset className="list">
      <legend>{says}</legend>
      <ol>
        {entries.map((_, place) => (
          // Entries have no name of their own: their place is all there is.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <li key={place}>
            <Place path={[...path, place]} />
            <button
              type="button"
              className="quiet"
              onClick={() =>
                edit({ says: `take away ${says}`, recipe: putting([...path, place], undefined) })
              }
            >
              Take away {place + 1}
            </button>
          </li>
        ))}
      </ol>
      <button
        type="button"
        onClick={() =>
          edit({ says: `add ${says}`, recipe: putting([...path, entries.length], isGroup ? {} : '') })
        }
      >
        Add
      </button>
    </fieldset>
  );
}

/** Whatever stands at a place: a field, a group of fields or a list. */
function Place({ path }: { readonly path: FieldPath }) {
  const schema = schemaOf(useForm(), path);
  if (schema instanceof z.ZodArray) return <ListFields path={path} schema={schema} />;
  if (schema instanceof z.ZodObject) return <Group path={path} />;
  return <Field path={path} />;
}

function Group({ path }: { readonly path: FieldPath }) {
  return (
    <fieldset>
      <legend>{labelAt(useForm(), path)}</legend>
      <Fields path={path} />
    </fieldset>
  );
}

/** The fields of a group of the document, in the schema's order, or those that are named. */
export function Fields({ path, only }: { readonly path: FieldPath; readonly only?: readonly string[] }) {
  const schema = schemaOf(useForm(), path);
  const names = only ?? knownNames(schema);
  return (
    <div className="fields">
      {names.map((name) => (
        <Place key={name} path={[...path, name]} />
      ))}
      <PlaceProblem path={path} />
    </div>
  );
}
