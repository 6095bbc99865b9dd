import { at, isFields } from '../schema/walk.ts';

/**
 * Deepest place to which documents are taken apart. Job files nest less than half as deep; what lies deeper is
 * taken as one value, so that no document can exhaust the stack.
 */
export const deepest = 64;

/** True for a group of fields that holds plain data, not a moment or another object with a nature of its own. */
export function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  if (!isFields(value)) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}

/** Names of the fields of a group that hold something; a field that holds `undefined` is as good as absent. */
export function namesIn(group: Readonly<Record<string, unknown>>): readonly string[] {
  return Object.keys(group).filter((name) => at(group, name) !== undefined);
}

/** The names of several groups, each once, in the order in which they are met. */
export function namesOfAll(...groups: readonly Readonly<Record<string, unknown>>[]): readonly string[] {
  return [...new Set(groups.flatMap(namesIn))];
}

/** True where two plain values say the same; the order of fields says nothing. Takes any depth. */
export function alike(one: unknown, other: unknown): boolean {
  const pairs: (readonly [unknown, unknown])[] = [[one, other]];
  for (let pair = pairs.pop(); pair !== undefined; pair = pairs.pop()) {
    const [a, b] = pair;
    if (Object.is(a, b)) continue;
    if (Array.isArray(a) && Array.isArray(b)) {
      if (a.length !== b.length) return false;
      for (let index = 0; index < a.length; index++) pairs.push([a[index], b[index]]);
    } else if (isGroup(a) && isGroup(b)) {
      const names = namesIn(a);
      if (names.length !== namesIn(b).length) return false;
      for (const name of names) pairs.push([at(a, name), at(b, name)]);
    } else return false;
  }
  return true;
}

/** The one run of entries in which two lists differ: what stands before it and behind it is common to both. */
export interface Run {
  /** Place of its first entry, the same in both lists. */
  readonly from: number;
  /** Place behind its last entry in the list before. */
  readonly toBefore: number;
  /** Place behind its last entry in the list after. */
  readonly toAfter: number;
}

/** Finds the shortest such run, with as much as possible common at the beginning. */
export function differingRun(before: readonly unknown[], after: readonly unknown[]): Run {
  const shorter = Math.min(before.length, after.length);
  let from = 0;
  while (from < shorter && alike(before[from], after[from])) from++;
  let end = 0;
  while (end < shorter - from && alike(before.at(-1 - end), after.at(-1 - end))) end++;
  return { from, toBefore: before.length - end, toAfter: after.length - end };
}
