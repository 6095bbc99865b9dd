import type { FieldPath } from './fieldPath.ts';
import { type Problem, problem } from './problems.ts';
import { at, isFields } from './schema/walk.ts';

/** Fields named `__proto__`, which the schema's own walk passes over. */
export function prototypeFields(value: unknown, path: FieldPath): readonly Problem[] {
  if (Array.isArray(value)) return value.flatMap((entry, index) => prototypeFields(entry, [...path, index]));
  if (!isFields(value)) return [];
  return Object.keys(value).flatMap((key) =>
    key === '__proto__'
      ? [problem('unknown-field', [...path, key], { facts: { nearest: undefined } })]
      : prototypeFields(at(value, key), [...path, key]),
  );
}
