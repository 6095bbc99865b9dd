import { type FieldPath, writtenPath } from '../fieldPath.ts';
import { at } from '../schema/walk.ts';
import { alike, deepest, differingRun, isGroup, namesOfAll } from './alike.ts';

/** One field in which two documents differ. */
export interface FieldChange {
  /** As `writtenPath` writes it; empty where the documents differ as a whole. */
  readonly path: string;
  /** What it held; absent where the field or the entry of a list was added. */
  readonly before?: unknown;
  /** What it holds now; absent where the field or the entry of a list was taken away. */
  readonly after?: unknown;
}

/**
 * The fields in which two plain documents differ, in the order of the document before, then what is new.
 *
 * Groups are compared field by field; a group that came or went is one change. Lists of equal length are compared
 * place by place. Lists of different length are compared from both ends: where one of them only has entries more
 * in one row, each of these is a change of its own, an added one under its place in the new list, a removed one
 * under its place in the old; else the whole list is one change. The order of fields is no change.
 */
export function changesBetween(before: unknown, after: unknown): readonly FieldChange[] {
  const found: FieldChange[] = [];
  compare([], { before, after }, found);
  return found;
}

interface Pair {
  readonly before: unknown;
  readonly after: unknown;
}

function compare(path: FieldPath, { before, after }: Pair, found: FieldChange[]): void {
  if (Object.is(before, after)) return;
  if (path.length < deepest && isGroup(before) && isGroup(after)) {
    for (const name of namesOfAll(before, after)) {
      compare([...path, name], { before: at(before, name), after: at(after, name) }, found);
    }
  } else if (path.length < deepest && Array.isArray(before) && Array.isArray(after)) {
    compareLists(path, { before, after }, found);
  } else if (!alike(before, after)) found.push(changeOf(path, { before, after }));
}

function compareLists(
  path: FieldPath,
  { before, after }: { readonly before: readonly unknown[]; readonly after: readonly unknown[] },
  found: FieldChange[],
): void {
  if (before.length === after.length) {
    for (let place = 0; place < before.length; place++) {
      compare([...path, place], { before: before[place], after: after[place] }, found);
    }
    return;
  }
  const { from, toBefore, toAfter } = differingRun(before, after);
  if (from < toBefore && from < toAfter) {
    found.push(changeOf(path, { before, after }));
    return;
  }
  const longer = before.length > after.length ? before : after;
  for (let place = from; place < Math.max(toBefore, toAfter); place++) {
    const entry = longer[place];
    const pair =
      longer === before ? { before: entry, after: undefined } : { before: undefined, after: entry };
    found.push(changeOf([...path, place], pair));
  }
}

function changeOf(path: FieldPath, { before, after }: Pair): FieldChange {
  return {
    path: writtenPath(path),
    ...(before === undefined ? {} : { before }),
    ...(after === undefined ? {} : { after }),
  };
}
