import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import type { Medium, Stage } from '@fettle/engine/model/medium.ts';
import type { Shelf } from '@fettle/job/books/shelf.ts';
import { soundPart } from '@fettle/job/draft.ts';
import { ownMedia } from '@fettle/job/ownMedia.ts';
import type { Problem } from '@fettle/job/problems.ts';
import { at, isFields } from '@fettle/job/schema/walk.ts';
import type { Book } from '../../client/books.ts';

/** A medium as the shelf's room shows it. */
export interface ShownMedium {
  readonly id: string;
  /** Its place in the list of the shelf; undefined where it is not on it. */
  readonly place: number | undefined;
  /** Undefined where nobody knows a medium of this name. */
  readonly medium: Medium | undefined;
  readonly isOwn: boolean;
}

/** What is on the shelf, in its own order, and what could be. */
export interface ShownMedia {
  readonly onShelf: readonly ShownMedium[];
  /** The technician's own first, then the catalogue's, in its order. */
  readonly others: readonly ShownMedium[];
}

/** The entries of one of the lists of a book. */
export const entriesOf = (book: unknown, list: string): readonly unknown[] => {
  const entries = at(book, list);
  return Array.isArray(entries) ? entries : [];
};

/** Media of the shelf, of the technician's own and of the catalogue, those of one stage or all. */
export function shownMedia(
  book: Book,
  { problems, stage }: { readonly problems: readonly Problem[]; readonly stage: Stage | undefined },
): ShownMedia {
  const own = isFields(book.ownMedia) ? book.ownMedia : {};
  const { media } = ownMedia(soundPart<Shelf>(book, problems).ownMedia ?? {}, 'ownMedia');
  const shown = (id: string, place?: number): ShownMedium => {
    const isOwn = Object.hasOwn(own, id);
    const medium = Object.hasOwn(media, id) ? media[id] : undefined;
    return { id, place, isOwn, medium };
  };
  const ofStage = ({ medium }: ShownMedium): boolean => stage === undefined || medium?.stage === stage;
  const entries = entriesOf(book, 'media').map((entry) => String(at(entry, 'medium')));
  const listed = new Set(entries);
  const known = [...Object.keys(own), ...Object.keys(catalogue)];
  return {
    onShelf: entries.map(shown).filter(ofStage),
    others: known
      .filter((id) => !listed.has(id))
      .map((id) => shown(id))
      .filter(ofStage),
  };
}

/** A name as a short name of the books: `Old clay, 9 mm` is `old-clay-9-mm`. Empty where nothing is left. */
export const shortNameOf = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+/, '')
    .slice(0, 60)
    .replace(/-+$/, '');
