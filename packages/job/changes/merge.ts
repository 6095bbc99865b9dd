import { type FieldPath, writtenPath } from '../fieldPath.ts';
import { at } from '../schema/walk.ts';
import { alike, deepest, differingRun, isGroup, namesOfAll } from './alike.ts';
import { changesBetween, type FieldChange } from './changes.ts';

/** A field that two people changed, each in another way. */
export interface FieldConflict {
  /** As `writtenPath` writes it. */
  readonly path: string;
  /** What it held before both; absent where there was nothing. */
  readonly base?: unknown;
  /** Absent where they took it away. */
  readonly theirs?: unknown;
  /** Absent where you took it away. */
  readonly yours?: unknown;
}

/** What came of two changes of one document. */
export interface Merge {
  /** Both changes together; theirs wherever the two conflict. */
  readonly merged: unknown;
  readonly conflicts: readonly FieldConflict[];
  readonly theirs: readonly FieldChange[];
  readonly yours: readonly FieldChange[];
}

/** Three states of one document: before both changes, after theirs, after yours. */
export interface ThreeStates {
  readonly base: unknown;
  readonly theirs: unknown;
  readonly yours: unknown;
}

/**
 * Puts two changes of one document together by field.
 *
 * What only one side changed is taken; the same change on both sides is no conflict. Groups are gone through field
 * by field, also a group that both sides added; lists entry by entry where all three have the same length. Where
 * lengths differ, each side's change of a list is the one run of entries in which it differs from the base; two
 * runs go together where at least one entry that neither side touched lies between them; else the list conflicts
 * as a whole. Inputs are left as they are; the result shares their unchanged parts.
 */
export function mergeByField(states: ThreeStates): Merge {
  const conflicts: FieldConflict[] = [];
  return {
    merged: merge([], states, conflicts),
    conflicts,
    theirs: changesBetween(states.base, states.theirs),
    yours: changesBetween(states.base, states.yours),
  };
}

function merge(path: FieldPath, states: ThreeStates, conflicts: FieldConflict[]): unknown {
  const { base, theirs, yours } = states;
  if (alike(theirs, yours) || alike(base, yours)) return theirs;
  if (alike(base, theirs)) return yours;
  if (path.length < deepest) {
    if (isGroup(theirs) && isGroup(yours) && (isGroup(base) || base === undefined)) {
      return mergeGroups(path, { base: base ?? {}, theirs, yours }, conflicts);
    }
    if (Array.isArray(base) && Array.isArray(theirs) && Array.isArray(yours)) {
      const lists = { base, theirs, yours };
      const merged =
        base.length === theirs.length && base.length === yours.length
          ? base.map((_entry, place) => merge([...path, place], entriesAt(lists, place), conflicts))
          : mergeRuns(lists);
      if (merged !== undefined) return merged;
    }
  }
  conflicts.push({
    path: writtenPath(path),
    ...(base === undefined ? {} : { base }),
    ...(theirs === undefined ? {} : { theirs }),
    ...(yours === undefined ? {} : { yours }),
  });
  return theirs;
}

interface Groups {
  readonly base: Readonly<Record<string, unknown>>;
  readonly theirs: Readonly<Record<string, unknown>>;
  readonly yours: Readonly<Record<string, unknown>>;
}

function mergeGroups(path: FieldPath, groups: Groups, conflicts: FieldConflict[]): unknown {
  const { base, theirs, yours } = groups;
  const fields = namesOfAll(theirs, yours, base).flatMap((name) => {
    const states = { base: at(base, name), theirs: at(theirs, name), yours: at(yours, name) };
    const merged = merge([...path, name], states, conflicts);
    return merged === undefined ? [] : [[name, merged] as const];
  });
  // Unlike assignment, this makes a plain field of `__proto__` too.
  return Object.fromEntries(fields);
}

interface Lists {
  readonly base: readonly unknown[];
  readonly theirs: readonly unknown[];
  readonly yours: readonly unknown[];
}

function entriesAt({ base, theirs, yours }: Lists, place: number): ThreeStates {
  return { base: base[place], theirs: theirs[place], yours: yours[place] };
}

/** Undefined where the two runs of changed entries touch. */
function mergeRuns({ base, theirs, yours }: Lists): readonly unknown[] | undefined {
  const edits = [theirs, yours].map((list) => ({ list, run: differingRun(base, list) }));
  const [first, second] = edits.toSorted((one, other) => one.run.from - other.run.from);
  if (first === undefined || second === undefined || first.run.toBefore >= second.run.from) return undefined;
  return [
    ...first.list.slice(0, first.run.toAfter),
    ...base.slice(first.run.toBefore, second.run.from),
    ...second.list.slice(second.run.from),
  ];
}
