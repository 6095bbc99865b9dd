import { alike } from '@fettle/job/changes/alike.ts';
import { becoming, type Edit, type Worked } from '../../session/history.ts';
import { withEditsSince } from '../../session/saving.ts';

/** A job as it stood when its page was left with something that this browser had not kept for certain. */
export interface LeftBehind {
  /** What it had kept by then. */
  readonly kept: Worked;
  readonly document: Worked;
}

/** Where it is kept: what is written there is there at once, which a browser's database does not promise to a page that goes. */
export type LeftPlace = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** A browser that may keep nothing of a page throws as soon as the place is asked for. */
type Place = () => LeftPlace;

const nameOf = (job: number): string => `fettle-left-${job}`;

export const keepLeft = (place: Place, job: number, left: LeftBehind): void => {
  try {
    place().setItem(nameOf(job), JSON.stringify(left));
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
    // What an edition before this one left does not say since when: what is kept has all but its last letters.
    return kept === null || !Object.hasOwn(Object(kept), 'kept') ? undefined : (kept as LeftBehind);
  } catch {
    return undefined;
  }
};

/**
 * The change that brings back what was typed last: what was done between what is kept and the page's going, and nothing
 * that was kept by then. In a field that was changed since, in another window or on another machine, the later stands.
 *
 * @returns nothing where it is there already
 */
export function bringingBack({ kept, document }: LeftBehind, now: Worked): Edit | undefined {
  const both = withEditsSince(kept, { saved: document, now });
  return alike(both, now) ? undefined : { says: 'what was typed last', recipe: becoming(both) };
}
