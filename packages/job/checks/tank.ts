import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { type Problem, problem } from '../problems.ts';
import { checkMedium, checkTwice } from './names.ts';

/** Dates in their order. */
export function checkAbout(draft: Draft): readonly Problem[] {
  const { received, promised } = draft.job ?? {};
  if (received === undefined || promised === undefined || promised >= received) return [];
  return [problem('dates-reversed', ['job', 'promised'], { facts: {}, allowed: `${received} or later` })];
}

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
