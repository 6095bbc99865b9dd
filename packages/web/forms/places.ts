import { type FieldPath, readPath } from '@fettle/job/fieldPath.ts';
import { jobSchema } from '@fettle/job/schema/job.ts';
import { at, isFields, schemaAt } from '@fettle/job/schema/walk.ts';
import type * as z from 'zod';
import type { Recipe } from '../session/history.ts';

/** A document and its schema; that of a job where none is named. */
export interface PlacesOf {
  readonly document: unknown;
  readonly schema?: z.core.$ZodType;
}

/** What stands at a place of a document; undefined where there is nothing. */
export const valueAt = (document: unknown, path: FieldPath): unknown =>
  path.reduce<unknown>((inside, step) => at(inside, step), document);

/** The schema of a place of a form's document, with the alternatives that the document's values pick. */
export const schemaOf = ({ schema = jobSchema, document }: PlacesOf, path: FieldPath) =>
  schemaAt(schema, document, path);

type Inside = Record<string | number, unknown>;

/** The group or list at a step, made where there is none. */
const opened = (inside: Inside, step: string | number, next: string | number): Inside => {
  const found = inside[step];
  if (isFields(found) || Array.isArray(found)) return found as Inside;
  const made: Inside | unknown[] = typeof next === 'number' ? [] : {};
  inside[step] = made;
  return inside[step] as Inside;
};

const isEmptyGroup = (value: unknown): boolean => isFields(value) && Object.keys(value).length === 0;

/** Takes a value away, and the groups around it that hold nothing any more. */
const clear = (draft: Inside, path: FieldPath): void => {
  const [step, ...rest] = path;
  if (step === undefined) return;
  const inside = draft[step];
  if (rest.length > 0 && (isFields(inside) || Array.isArray(inside))) clear(inside as Inside, rest);
  const isGone = rest.length === 0 || isEmptyGroup(draft[step]);
  if (!isGone) return;
  if (Array.isArray(draft)) draft.splice(Number(step), 1);
  else delete draft[step];
};

/** Puts a value at a place, with the groups around it where they are missing; undefined takes it away. */
export const putting =
  (path: FieldPath, value: unknown): Recipe =>
  (draft) => {
    if (value === undefined) {
      clear(draft, path);
      return;
    }
    let inside: Inside = draft;
    path.forEach((step, depth) => {
      const next = path[depth + 1];
      if (next === undefined) inside[step] = value;
      else inside = opened(inside, step, next);
    });
  };

/** A written path as steps: `filter.hoses.intake.length`. */
export const placeOf = (path: string): FieldPath => readPath(path);
