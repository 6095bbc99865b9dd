import { alike, isGroup } from '@fettle/job/changes/alike.ts';
import { applyPatches, enablePatches, type Patch, produceWithPatches } from 'immer';

enablePatches();

/** A job document as it is worked on: it may lack fields for a while, as a form does that is half filled in. */
export type Worked = { readonly fettle: number } & Readonly<Record<string, unknown>>;

/** One change, with the way there and the way back. */
export interface Step {
  /** What was done, as people say it: `put loose floss into basket 1`. */
  readonly says: string;
  /** Changes that follow one another under one key are one step: the letters of a word, the frames of a drag. */
  readonly key?: string;
  readonly there: readonly Patch[];
  readonly back: readonly Patch[];
}

/** A document with everything that can be undone and done again. */
export interface History {
  readonly document: Worked;
  /** Oldest first. */
  readonly past: readonly Step[];
  /** The one that was undone last comes first. */
  readonly future: readonly Step[];
}

/** A change of the document in place; immer keeps the one before as it was. */
export type Recipe = (draft: Record<string, unknown>) => void;

export interface Edit {
  readonly says: string;
  readonly key?: string;
  readonly recipe: Recipe;
}

type Ways = Pick<Step, 'there' | 'back'>;

/** Whether two changes set the same fields, and add or take away nothing: the later then stands for both. */
const setTheSame = (one: readonly Patch[], other: readonly Patch[]): boolean =>
  one.length === other.length &&
  one.every(
    ({ op, path }, index) =>
      op === 'replace' && other[index]?.op === 'replace' && path.join('/') === other[index].path.join('/'),
  );

/** A step that goes on: a drag of a thousand frames over one field is still one change of that field. */
const onwards = (before: Ways, { there, back }: Ways): Ways =>
  setTheSame(before.there, there) && setTheSame(before.back, back)
    ? { there, back: before.back }
    : { there: [...before.there, ...there], back: [...back, ...before.back] };

export const historyOf = (document: Worked): History => ({ document, past: [], future: [] });

/** The history with one change more; what had been undone is gone. Without a difference it is the same one. */
export function edited(history: History, { says, key, recipe }: Edit): History {
  const [document, there, back] = produceWithPatches(history.document, (draft) => recipe(draft));
  if (there.length === 0) return history;
  const last = history.past.at(-1);
  const goesOn = key !== undefined && last?.key === key && history.future.length === 0;
  const step: Step = {
    says,
    ...(key === undefined ? {} : { key }),
    ...(goesOn ? onwards(last, { there, back }) : { there, back }),
  };
  return { document, past: [...(goesOn ? history.past.slice(0, -1) : history.past), step], future: [] };
}

/** Makes a group of fields say what another one does, touching no field that says it already. */
function become(draft: Record<string, unknown>, next: Readonly<Record<string, unknown>>): void {
  for (const name of Object.keys(draft)) if (!Object.hasOwn(next, name)) delete draft[name];
  for (const [name, value] of Object.entries(next)) {
    const held = draft[name];
    if (alike(held, value)) continue;
    if (isGroup(held) && isGroup(value)) become(held as Record<string, unknown>, value);
    else draft[name] = value;
  }
}

/** The change after which a document says what another one does; it is a change of the fields that differ alone. */
export const becoming =
  (next: Readonly<Record<string, unknown>>): Recipe =>
  (draft) =>
    become(draft, next);

/** A document after some patches; undefined where they no longer fit, since it was changed elsewhere. */
export const patched = (document: Worked, patches: readonly Patch[]): Worked | undefined => {
  try {
    return applyPatches(document, [...patches]);
  } catch {
    return undefined;
  }
};

/** One step back; a step that no longer fits is passed over. */
export function undone({ document, past, future }: History): History {
  const step = past.at(-1);
  if (step === undefined) return { document, past, future };
  const before = patched(document, step.back);
  const rest = past.slice(0, -1);
  if (before === undefined) return undone({ document, past: rest, future });
  return { document: before, past: rest, future: [step, ...future] };
}

/** One step on again. */
export function redone({ document, past, future }: History): History {
  const [step, ...rest] = future;
  if (step === undefined) return { document, past, future };
  const after = patched(document, step.there);
  if (after === undefined) return redone({ document, past, future: rest });
  return { document: after, past: [...past, step], future: rest };
}

/**
 * The history without its last step, where that is the one of a key, as if it had not been done: what could be done
 * again before it can be done again. Else the same history.
 */
export function takenBack(history: History, key: string, before: Pick<History, 'past' | 'future'>): History {
  const last = history.past.at(-1);
  const document = last?.key === key ? patched(history.document, last.back) : undefined;
  if (document === undefined) return history;
  const past = history.past.slice(0, -1);
  const isAsBefore = past.length === before.past.length && past.at(-1) === before.past.at(-1);
  return { document, past, future: isAsBefore ? before.future : [] };
}
