import type { FieldPath } from '@fettle/job/fieldPath.ts';
import { type FieldFacts, fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import * as z from 'zod';
import { type PlacesOf, schemaOf } from './places.ts';

/** A phrase as a label; signs such as `pH` keep their letters. */
export const asLabel = (says: string): string =>
  /^.[A-Z]/.test(says) ? says : says.charAt(0).toUpperCase() + says.slice(1);

/** A field's name as words: `waterChange` is `water change`. */
const nameInWords = (name: string | number | undefined): string =>
  String(name ?? '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/**
 * What the schema knows of a place. Of alternatives, each of which may stand there, it is said of all of them together:
 * it is then looked for where the group around it names the field.
 */
export const factsAt = (form: PlacesOf, path: FieldPath): FieldFacts | undefined => {
  const schema = schemaOf(form, path);
  const own = schema === undefined ? undefined : fieldFacts.get(inner(schema));
  if (own !== undefined) return own;
  const [name] = path.slice(-1);
  const around = schemaOf(form, path.slice(0, -1));
  const named = around instanceof z.ZodObject ? around.shape[String(name)] : undefined;
  return named === undefined ? undefined : fieldFacts.get(inner(named));
};

/** The label of a place: what the schema says of it, else its name in words. */
export const labelAt = (form: PlacesOf, path: FieldPath): string => {
  const says = factsAt(form, path)?.says;
  // A list of words to choose from need not be said before they are shown.
  const isChoice = schemaOf(form, path) instanceof z.ZodEnum;
  const told = isChoice ? says?.split(':')[0] : says;
  return asLabel(told ?? nameInWords(path.at(-1)));
};
