import type { Context } from '../context.ts';
import type { FieldPath } from '../fieldPath.ts';
import { adviceOn } from '../names.ts';
import { type Problem, problem } from '../problems.ts';
import { shown } from '../schema/issues.ts';

/** Checks that a short name is one of the known media. */
export function checkMedium(
  id: string | undefined,
  path: FieldPath,
  context: Pick<Context, 'media'>,
): readonly Problem[] {
  if (id === undefined || Object.hasOwn(context.media, id)) return [];
  const ids = Object.keys(context.media);
  const { nearest, allowed } = adviceOn(id, ids);
  return [problem('unknown-medium', path, { facts: { found: shown(id), nearest }, allowed })];
}

/** Checks that a short name is a chamber of the filter. */
export function checkChamber(id: string | undefined, path: FieldPath, context: Context): readonly Problem[] {
  const ids = context.chamberIds;
  if (id === undefined || ids === undefined) return [];
  if (ids.includes(id)) return [];
  const { nearest, allowed } = adviceOn(id, ids);
  return [problem('unknown-chamber', path, { facts: { found: shown(id), nearest }, allowed })];
}

/** Names every entry that stands in a list for a second time. */
export function checkTwice(
  entries: readonly { readonly id: string | undefined; readonly path: FieldPath }[],
): readonly Problem[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id, path }) => {
    if (id === undefined) return [];
    const twice = seen.has(id);
    seen.add(id);
    return twice
      ? [problem('listed-twice', path, { facts: { found: shown(id) }, allowed: 'each once' })]
      : [];
  });
}
