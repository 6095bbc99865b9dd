import { alike } from '@fettle/job/changes/alike.ts';
import { becoming, edited, type History, patched, type Step, type Worked } from './history.ts';
import { withEditsSince } from './saving.ts';
import { lineOf, sameUntil } from './stepLine.ts';

/** A job at work: what the records have, what was made of it, and the way back. */
export interface Stand extends History {
  readonly revision: number;
  /** The document as the records have it. */
  readonly base: Worked;
}

/** Whether nothing was done between the two. */
export const isSameStand = (one: Stand, other: Stand): boolean =>
  one.document === other.document &&
  one.past === other.past &&
  one.future === other.future &&
  one.revision === other.revision &&
  one.base === other.base;

/** The same edits on what the records have since. */
const raised = (stand: Stand, { revision, base }: Stand): Stand =>
  stand.revision >= revision
    ? stand
    : {
        ...stand,
        revision,
        base,
        document: withEditsSince(stand.base, { saved: base, now: stand.document }),
      };

/** Documents before each of some steps that led to a document; undefined where a step does not fit it any more. */
function documentsBefore(after: Worked, steps: readonly Step[]): readonly Worked[] | undefined {
  const found: Worked[] = [];
  let document = after;
  for (const step of steps.toReversed()) {
    const before = patched(document, step.back);
    if (before === undefined) return undefined;
    document = before;
    found.unshift(document);
  }
  return found;
}

/** What was done in one window since another state, in the order in which it was done. */
interface Done {
  /** What was undone last of what had been done by then. */
  readonly undone: Step | undefined;
  readonly steps: readonly Step[];
  /** The document before the first of the steps, after each of them, and so on to the last. */
  readonly documents: readonly Worked[];
}

function doneSince(now: Stand, since: Stand): Done {
  const common = sameUntil(since.past, now.past);
  const [undone, ...more] = since.past.slice(common);
  const steps = now.past.slice(common);
  // The same drag, or the same word, that has gone on.
  const isOnward = more.length === 0 && undone?.key !== undefined && undone.key === steps[0]?.key;
  const before = documentsBefore(now.document, isOnward ? steps.slice(1) : steps);
  if (before === undefined)
    return { undone, steps: steps.slice(-1), documents: [since.document, now.document] };
  const documents = [...(isOnward ? [since.document] : []), ...before, now.document];
  return { undone: isOnward ? undefined : undone, steps, documents };
}

/** What was done in one window, done once more over where the windows stand by now. */
function laidOver(onto: Stand, since: Stand, { undone, steps, documents }: Done): History {
  const [first = since.document, ...after] = documents;
  const begun = withEditsSince(since.document, { saved: onto.document, now: first });
  const begin: History = { document: onto.document, past: onto.past, future: onto.future };
  let history: History =
    undone === undefined
      ? { ...begin, document: alike(begun, onto.document) ? onto.document : begun }
      : edited(begin, { says: `undo ${undone.says}`, recipe: becoming(begun) });
  let before = first;
  for (const [index, document] of after.entries()) {
    const { says = '', key } = steps[index] ?? {};
    const next = withEditsSince(before, { saved: history.document, now: document });
    history = edited(history, { says, ...(key === undefined ? {} : { key }), recipe: becoming(next) });
    before = document;
  }
  return history;
}

const isSameLine = (one: Stand, other: Stand): boolean => {
  const [line, others] = [lineOf(one), lineOf(other)];
  return (
    one.past.length === other.past.length &&
    line.length === others.length &&
    sameUntil(line, others) === line.length
  );
};

/**
 * The same stands, where this window took in what the records had by then: what another machine wrote is then no part
 * of a step that was done here, and undoing the step leaves it.
 */
function onOneBase(now: Stand, since: Stand, onto: Stand) {
  if (now.revision === since.revision) return { mine: now, theirs: onto, from: since };
  // Where both took something in, the later of the two stands.
  const [mine, theirs] =
    onto.revision === since.revision ? [now, raised(onto, now)] : [raised(now, onto), raised(onto, now)];
  return { mine, theirs, from: raised(since, mine) };
}

/**
 * What was done in one window since it knew where the windows stand, laid over where they stand by now: fields that
 * only one side changed are as that side has them, a field that both changed is as it is here. Steps stay steps, each
 * over all that came before it; what was undone here is a step of its own where others have gone on meanwhile.
 *
 * @returns `onto` itself where nothing was done here, `now` itself where the others did nothing
 */
export function rebased(now: Stand, { since, onto }: { readonly since: Stand; readonly onto: Stand }): Stand {
  if (isSameStand(now, since)) return onto;
  if (isSameStand(onto, since)) return now;
  const { mine, theirs, from } = onOneBase(now, since, onto);
  const { revision, base } = onto.revision === since.revision ? mine : theirs;
  if (!isSameLine(since, onto)) return { revision, base, ...laidOver(theirs, from, doneSince(mine, from)) };
  const both = withEditsSince(from.document, { saved: theirs.document, now: mine.document });
  const document = alike(both, theirs.document) ? theirs.document : both;
  return { revision, base, document, past: now.past, future: now.future };
}
