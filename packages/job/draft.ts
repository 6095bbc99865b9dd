import { type FieldPath, readPath } from './fieldPath.ts';
import type { Problem } from './problems.ts';
import type { WrittenQuantity } from './schema/fields.ts';
import type { JobDocument } from './schema/job.ts';
import { at, isFields } from './schema/walk.ts';

type Partly<T> = T extends WrittenQuantity
  ? T
  : T extends readonly (infer Entry)[]
    ? readonly (Partly<Entry> | undefined)[]
    : T extends object
      ? { readonly [K in keyof T]?: Partly<T[K]> | undefined }
      : T;

/** A document of which any field may be missing; what is there is of the right shape. */
export type Draft = Partly<JobDocument>;

/**
 * What is left of a document once everything that the schema refused is taken out, so that the checks of how
 * its parts fit together still run on the rest. A known field that was refused stays, empty: it is wrong and
 * not missing.
 */
export function draftOf(value: unknown, refused: readonly Problem[]): Draft {
  if (!isFields(value)) return {};
  // One copy for all that is taken out: a copy for each would take minutes where thousands are refused.
  const kept = structuredClone(value);
  for (const { code, path } of refused) {
    takeOut(kept, readPath(path), code === 'unknown-field' || code === 'bad-id');
  }
  // The schema has accepted all that is left, which is what `Draft` says.
  return kept as Draft;
}

function takeOut(whole: object, path: FieldPath, gone: boolean): void {
  let inside: unknown = whole;
  for (const step of path.slice(0, -1)) inside = at(inside, step);
  const last = path.at(-1);
  if (last === undefined || typeof inside !== 'object' || inside === null) return;
  if (!Object.hasOwn(inside, last)) return;
  if (gone && !Array.isArray(inside)) Reflect.deleteProperty(inside, last);
  else Object.defineProperty(inside, last, { value: undefined });
}
