import { type FieldPath, readPath } from './fieldPath.ts';
import type { Problem } from './problems.ts';
import type { WrittenQuantity } from './schema/fields.ts';
import type { JobDocument } from './schema/job.ts';
import { isFields } from './schema/walk.ts';

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
  let kept = value;
  for (const { code, path } of refused) {
    kept = without(kept, readPath(path), code === 'unknown-field' || code === 'bad-id');
  }
  // The schema has accepted all that is left, which is what `Draft` says.
  return isFields(kept) ? (kept as Draft) : {};
}

function without(value: unknown, path: FieldPath, gone: boolean): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return undefined;
  if (Array.isArray(value)) {
    return value.map((entry: unknown, index) => (index === step ? without(entry, rest, gone) : entry));
  }
  if (!isFields(value) || !Object.hasOwn(value, step)) return value;
  const fields = Object.entries(value).flatMap(([key, inside]) => {
    if (key !== String(step)) return [[key, inside] as const];
    return gone && rest.length === 0 ? [] : [[key, without(inside, rest, gone)] as const];
  });
  return Object.fromEntries(fields);
}
