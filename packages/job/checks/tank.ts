import { nearestWord } from '@fettle/engine/quantities/spelling.ts';
import { fishIds } from '../catalogue.ts';
import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { type Problem, problem } from '../problems.ts';
import { shown } from '../schema/issues.ts';
import { checkMedium, checkTwice } from './names.ts';

/** Dates in their order. */
export function checkAbout(draft: Draft): readonly Problem[] {
  const { received, promised } = draft.job ?? {};
  if (received === undefined || promised === undefined || promised >= received) return [];
  return [problem('dates-reversed', ['job', 'promised'], { facts: {}, allowed: `${received} or later` })];
}

/** Kinds of fish that the catalogue knows. */
export function checkFish(draft: Draft): readonly Problem[] {
  return (draft.tank?.fish ?? []).flatMap((entry, index) => {
    const kind = entry?.kind;
    if (kind === undefined || fishIds.includes(kind)) return [];
    const facts = { found: shown(kind), what: 'known kind of fish', nearest: nearestWord(kind, fishIds) };
    return [problem('not-among', ['tank', 'fish', index, 'kind'], { facts, allowed: fishIds.join(', ') })];
  });
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
