import { alike } from '@fettle/job/changes/alike.ts';
import { becoming, type Edit, type Worked } from '../../session/history.ts';
import { withEditsSince } from '../../session/saving.ts';

/** A job as it stood when its page was left with something that was not in the records. */
export interface LeftBehind {
  readonly revision: number;
  readonly base: Worked;
  readonly document: Worked;
}

/** Where it is kept: what is written there is there at once, which a browser's database does not promise to a page that goes. */
export type LeftPlace = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** A browser that may keep nothing of a page throws as soon as the place is asked for. */
type Place = () => LeftPlace;

const nameOf = (job: number): string => `fettle-left-${job}`;

export const keepLeft = (place: Place, job: number, left: LeftBehind): void => {
  try {
    const { revision, base, document } = left;
    place().setItem(nameOf(job), JSON.stringify({ revision, base, document }));
  } catch {
    // A browser without room keeps nothing here; its database has all but the last letters.
  }
};

/** What was kept, which is taken away with it. */
export const takeLeft = (place: Place, job: number): LeftBehind | undefined => {
  try {
    const shelf = place();
    const kept: unknown = JSON.parse(shelf.getItem(nameOf(job)) ?? 'null');
    shelf.removeItem(nameOf(job));
    return kept === null ? undefined : (kept as LeftBehind);
  } catch {
    return undefined;
  }
};

/**
 * The change that brings back what was typed last.
 *
 * @returns nothing where it is there already, or the records have gone on since: then theirs stands
 */
export function bringingBack(left: LeftBehind, now: LeftBehind): Edit | undefined {
  if (left.revision !== now.revision || alike(left.document, now.document)) return undefined;
  const both = withEditsSince(left.base, { saved: now.document, now: left.document });
  return { says: 'what was typed last', recipe: becoming(both) };
}
