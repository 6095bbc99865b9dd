import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import type { Problem } from '../problems.ts';
import { checkMedium, checkTwice } from './names.ts';

/** Media in other filters. */
export function checkOtherFilters(draft: Draft, context: Context): readonly Problem[] {
  return (draft.otherFilters ?? []).flatMap((filter, at) =>
    (filter?.media ?? []).flatMap((entry, index) =>
      checkMedium(entry?.medium, ['otherFilters', at, 'media', index, 'medium'], context),
    ),
  );
}

/** Media on the shelf, each once. */
export function checkShelf(draft: Draft, context: Context): readonly Problem[] {
  const entries = (draft.shelf ?? []).map((entry, index) =>
    typeof entry === 'string'
      ? { id: entry, path: ['shelf', index] }
      : { id: entry?.medium, path: ['shelf', index, 'medium'] },
  );
  return [...entries.flatMap(({ id, path }) => checkMedium(id, path, context)), ...checkTwice(entries)];
}
