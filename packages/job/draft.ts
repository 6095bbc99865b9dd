import { type FieldPath, writtenPath } from './fieldPath.ts';
import type { Problem } from './problems.ts';
import type { WrittenQuantity } from './schema/fields.ts';
import type { JobDocument } from './schema/job.ts';
import { isFields } from './schema/walk.ts';

/** A document of which any field may be missing; what is there is of the right shape. */
export type Partly<T> = T extends WrittenQuantity
  ? T
  : T extends readonly (infer Entry)[]
    ? readonly (Partly<Entry> | undefined)[]
    : T extends object
      ? { readonly [K in keyof T]?: Partly<T[K]> | undefined }
      : T;

/** A job document of which any field may be missing. */
export type Draft = Partly<JobDocument>;

/**
 * What is left of a document once everything that the schema refused is taken out, so that the checks of how
 * its parts fit together still run on the rest. A known field that was refused stays, empty: it is wrong and
 * not missing.
 */
export function soundPart<Document>(
  value: Readonly<Record<string, unknown>>,
  refused: readonly Problem[],
): Partly<Document> {
  const places: Refused = new Map();
  for (const { code, path } of refused) {
    places.set(path, code === 'unknown-field' || code === 'bad-id' || places.get(path) === true);
  }
  // The schema has accepted all that is left, which is what `Partly` says.
  return without(value, [], places) as Partly<Document>;
}

/** What is left of a job document; see `soundPart`. */
export function draftOf(value: unknown, refused: readonly Problem[]): Draft {
  return isFields(value) ? soundPart<JobDocument>(value, refused) : {};
}

/** Refused places as problems write them, with whether the field itself goes. */
type Refused = Map<string, boolean>;

/**
 * Each place is written out and looked for among those refused, never the other way round: a written place does
 * not say whether a point in it parts two names or belongs to one.
 */
function without(value: unknown, path: FieldPath, refused: Refused): unknown {
  const kept = (inside: unknown, place: FieldPath): unknown =>
    refused.has(writtenPath(place)) ? undefined : without(inside, place, refused);
  if (Array.isArray(value)) return value.map((entry: unknown, index) => kept(entry, [...path, index]));
  if (!isFields(value)) return value;
  const fields = Object.entries(value).flatMap(([name, inside]) => {
    const place = [...path, name];
    return refused.get(writtenPath(place)) === true ? [] : [[name, kept(inside, place)] as const];
  });
  return Object.fromEntries(fields);
}
