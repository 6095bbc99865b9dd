import { media } from '@fettle/engine/catalogue/media.ts';
import { families } from '@fettle/engine/families/families.ts';
import { asShortName } from '@fettle/engine/quantities/spelling.ts';
import * as z from 'zod';
import type { FieldPath } from './fieldPath.ts';
import { type Note, note } from './notes.ts';
import { benchTestKinds } from './schema/benchTests.ts';
import { shown } from './schema/issues.ts';
import { jobSchema } from './schema/job.ts';
import { at, isFields, schemaAt } from './schema/walk.ts';

interface Tidying {
  readonly root: unknown;
  readonly media: readonly string[];
  readonly notes: Note[];
}

const alterations = [...new Set(families.flatMap((family) => family.alterations))];

/**
 * A document with every known name in its one spelling: capitals and spaces are free, as in `Foam 20PPI`, where that
 * leaves no doubt; a note tells of each. The document itself where nothing was to be done.
 */
export function withTidyNames(document: unknown): {
  readonly document: unknown;
  readonly notes: readonly Note[];
} {
  const own = at(document, 'media');
  const known = [...Object.keys(media), ...(isFields(own) ? Object.keys(own) : [])];
  const tidying: Tidying = { root: document, media: known, notes: [] };
  const tidied = tidy(document, [], tidying);
  return { document: tidying.notes.length === 0 ? document : tidied, notes: tidying.notes };
}

function tidy(value: unknown, path: FieldPath, tidying: Tidying): unknown {
  if (typeof value === 'string') return tidyName(value, path, tidying);
  if (Array.isArray(value)) {
    return value.map((entry: unknown, index) => tidy(entry, [...path, index], tidying));
  }
  if (!isFields(value)) return value;
  const fields = Object.entries(value);
  return Object.fromEntries(fields.map(([key, inside]) => [key, tidy(inside, [...path, key], tidying)]));
}

function tidyName(written: string, path: FieldPath, tidying: Tidying): string {
  if (written.length > 60) return written;
  const name = asShortName(written);
  if (name === written) return written;
  const known = namesAt(path, tidying);
  if (known.includes(written) || !known.includes(name)) return written;
  tidying.notes.push(note('name-respelt', path, { found: shown(written), taken: name }));
  return name;
}

/** The names that may stand at a place; empty where it holds none. */
function namesAt(path: FieldPath, { root, media: known }: Tidying): readonly string[] {
  const [part] = path;
  const last = path.at(-1);
  if (part === 'tests' && path.length === 3 && last === 'kind') return benchTestKinds;
  if (part === 'alterations' || path[1] === 'made') return alterations;
  if (last === 'medium' || last === 'like' || (part === 'shelf' && path.length === 2)) return known;
  const schema = schemaAt(jobSchema, root, path);
  return schema instanceof z.ZodEnum ? schema.options.map(String) : [];
}
