import type { FieldChange } from '@fettle/job/changes/changes.ts';

/** Changed fields that the history tells of one revision. */
const MOST_CHANGES = 100;
/** Longer values are cut in the history, characters of JSON. */
const MOST_LETTERS = 300;

const cut = (value: unknown): unknown => {
  const text = JSON.stringify(value);
  if (text === undefined || text.length <= MOST_LETTERS) return value;
  return `${(typeof value === 'string' ? value : text).slice(0, MOST_LETTERS)}…`;
};

/**
 * Changes as the history keeps them: bounded, so that a list of many revisions of a large job stays readable and
 * small. Nothing is lost by it, since every revision has its whole document.
 */
export const shownChanges = (changes: readonly FieldChange[]): readonly FieldChange[] =>
  changes.slice(0, MOST_CHANGES).map(({ path, ...values }) => ({
    path: path.slice(0, MOST_LETTERS),
    ...('before' in values ? { before: cut(values.before) } : {}),
    ...('after' in values ? { after: cut(values.after) } : {}),
  }));
