import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import { familyById } from '@fettle/engine/families/families.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { valueAt } from './places.ts';

/** A medium by its name: the job's own first, then the catalogue's, as the shelf shows it. */
const mediumName = (document: unknown, id: string): string | undefined => {
  const own = valueAt(document, ['media', id, 'name']);
  if (typeof own === 'string') return own;
  return Object.hasOwn(catalogue, id) ? catalogue[id]?.name : undefined;
};

const alterationName = (_: unknown, id: string): string | undefined =>
  Object.hasOwn(alterationKinds, id) ? alterationKinds[id]?.says : undefined;

/** A language by its own name for itself. */
const languageName = (_: unknown, tag: string): string | undefined =>
  new Intl.DisplayNames([tag], { type: 'language' }).of(tag);

/** Fields that hold short names of things that have names in words, and who knows them. */
const known: Readonly<Record<string, (document: unknown, id: string) => string | undefined>> = {
  family: (_, id) => familyById(id)?.name,
  medium: mediumName,
  change: alterationName,
  alterations: alterationName,
  permitted: alterationName,
  forbidden: alterationName,
  made: alterationName,
  language: languageName,
};

/**
 * The name in words of what a field holds by its short name: a medium, a kind of filter, an alteration, a
 * language.
 *
 * @param field the field's own name, or that of the list in which the value stands
 * @returns undefined where the field holds nothing of the kind, or nobody knows the short name
 */
export const nameOfValue = (document: unknown, field: string, value: string): string | undefined =>
  Object.hasOwn(known, field) ? known[field]?.(document, value) : undefined;
