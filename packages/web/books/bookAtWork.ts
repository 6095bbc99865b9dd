import { alike } from '@fettle/job/changes/alike.ts';
import type { FieldConflict } from '@fettle/job/changes/merge.ts';
import { produce } from 'immer';
import type { Book, RevisedBook } from '../client/books.ts';
import { Refused, Unreached } from '../client/request.ts';
import type { Edit } from '../session/history.ts';
import type { BookKeeper, KeptBook } from './keptBook.ts';
import { mergeBooks } from './mergeBooks.ts';

/** Where a book at work stands against the records. */
export type BookStanding =
  | { readonly is: 'saved' }
  | { readonly is: 'unsaved' }
  | { readonly is: 'saving' }
  /** Kept in this browser until the records can be reached again. */
  | { readonly is: 'unreached' }
  /** Kept in this browser until what is wrong is mended. */
  | { readonly is: 'wrong'; readonly says: string }
  /** Somebody else changed the same fields: one is chosen before anything is written. */
  | { readonly is: 'conflict'; readonly conflicts: readonly FieldConflict[] };

/** A book as it was before or after a change, with what the change was. */
interface Turn {
  readonly says: string;
  readonly key?: string;
  readonly book: Book;
}

/** A book at work, at one moment. */
export interface BookState extends KeptBook {
  readonly standing: BookStanding;
  readonly past: readonly Turn[];
  readonly future: readonly Turn[];
  /** True once somebody else's change was taken in, until the next edit. */
  readonly tookTheirs: boolean;
}

/** What a book at work works with; a test gives others than the browser's. */
export interface BookTools {
  readonly records: {
    read(): Promise<RevisedBook>;
    write(of: { readonly book: Book; readonly base: number; readonly keepAlive: boolean }): Promise<number>;
  };
  readonly keeper: BookKeeper;
  /** How many things are wrong with a book; one with any is not sent. */
  readonly wrongIn: (book: Book) => number;
}

/** What the records have, and both changes together, as they were when the conflict was found. */
interface Conflict {
  readonly theirs: RevisedBook;
  readonly yoursFirst: Book;
  readonly theirsFirst: Book;
}

/** Quiet after the last change before it is written, ms. */
const quietMs = 700;
/** Between two tries while the records cannot be reached, ms. */
const retryMs = 3_000;

const fresh = (kept: KeptBook, is: 'saved' | 'unsaved'): BookState => ({
  ...kept,
  standing: { is },
  past: [],
  future: [],
  tookTheirs: false,
});

/**
 * Opens a book to work on it: what this browser kept of it, else what the records have.
 * @throws Refused, Unreached where neither records nor browser have it
 */
export async function openBook(tools: BookTools): Promise<BookAtWork> {
  const kept = tools.keeper.find();
  if (kept !== undefined) return new BookAtWork(fresh(kept, 'unsaved'), tools);
  const { book, revision } = await tools.records.read();
  return new BookAtWork(fresh({ book, base: book, revision }, 'saved'), tools);
}

/** One book open at work: edits, undo, saving, and what others change meanwhile. */
export class BookAtWork {
  readonly #tools: BookTools;
  readonly #listeners = new Set<() => void>();
  #state: BookState;
  #conflict: Conflict | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> = Promise.resolve();
  #isClosed = false;

  constructor(opened: BookState, tools: BookTools) {
    this.#state = opened;
    this.#tools = tools;
    if (opened.standing.is !== 'saved') this.#writeIn(0);
  }

  readonly state = (): BookState => this.#state;

  /** Calls back after every change of the state, until what this gives is called. */
  readonly subscribe = (onChange: () => void): (() => void) => {
    this.#listeners.add(onChange);
    return () => this.#listeners.delete(onChange);
  };

  readonly edit = ({ says, key, recipe }: Edit): void => {
    const { book, past, future } = this.#state;
    const next = produce(book, (draft: Record<string, unknown>) => recipe(draft));
    if (next === book) return;
    const goesOn = key !== undefined && past.at(-1)?.key === key && future.length === 0;
    const turn: Turn = { says, book, ...(key === undefined ? {} : { key }) };
    this.#work({ book: next, past: goesOn ? past : [...past, turn], future: [] });
  };

  undo(): void {
    const { book, past, future } = this.#state;
    const turn = past.at(-1);
    if (turn === undefined) return;
    const undone = { says: turn.says, book };
    this.#work({ book: turn.book, past: past.slice(0, -1), future: [undone, ...future] });
  }

  redo(): void {
    const { book, past, future } = this.#state;
    const [turn, ...rest] = future;
    if (turn === undefined) return;
    this.#work({ book: turn.book, past: [...past, { says: turn.says, book }], future: rest });
  }

  /** Writes now what is not written yet. */
  async flush(leaving = false): Promise<void> {
    clearTimeout(this.#timer);
    // One at a time: the second is of what was typed while the first was on its way.
    const written = this.#writing.then(() => this.#write(leaving));
    this.#writing = written.catch(() => undefined);
    await written;
  }

  /** Settles a conflict: yours or theirs in the fields that both changed. All else of both stands. */
  settle(choice: 'yours' | 'theirs'): void {
    if (this.#conflict === undefined) return;
    const { theirs, yoursFirst, theirsFirst } = this.#conflict;
    const { book: now } = this.#state;
    const withTheirs = () => mergeBooks({ base: yoursFirst, theirs: theirsFirst, yours: now }).theirsFirst;
    const book = choice === 'yours' ? now : withTheirs();
    this.#conflict = undefined;
    const { book: base, revision } = theirs;
    this.#show({ ...this.#state, book, base, revision, past: [], future: [], standing: { is: 'unsaved' } });
    this.#writeIn(0);
  }

  /** Looks whether the records have a newer revision, and takes it in. */
  async lookForNews(): Promise<void> {
    if (this.#state.standing.is !== 'saved') return;
    const { book, revision } = await this.#tools.records.read();
    if (this.#state.standing.is !== 'saved' || revision <= this.#state.revision) return;
    this.#show({ ...fresh({ book, base: book, revision }, 'saved'), tookTheirs: true });
  }

  close(): void {
    this.#isClosed = true;
    clearTimeout(this.#timer);
  }

  #work(change: Pick<BookState, 'book' | 'past' | 'future'>): void {
    const { standing } = this.#state;
    const isConflict = standing.is === 'conflict';
    this.#show({
      ...this.#state,
      ...change,
      tookTheirs: isConflict,
      standing: isConflict ? standing : { is: 'unsaved' },
    });
    if (!isConflict) this.#writeIn(quietMs);
  }

  #show(next: BookState): void {
    this.#state = next;
    const { book, base, revision } = next;
    this.#tools.keeper.keep(alike(book, base) ? undefined : { book, base, revision });
    for (const listen of this.#listeners) listen();
  }

  #writeIn(ms: number): void {
    clearTimeout(this.#timer);
    if (!this.#isClosed) this.#timer = setTimeout(() => void this.flush(), ms);
  }

  async #write(keepAlive: boolean): Promise<void> {
    const { standing, book, base, revision } = this.#state;
    if (standing.is === 'conflict') return;
    if (alike(book, base)) {
      if (standing.is !== 'saved') this.#show({ ...this.#state, standing: { is: 'saved' } });
      return;
    }
    const wrong = this.#tools.wrongIn(book);
    if (wrong > 0) {
      const says = wrong === 1 ? '1 field is to be mended' : `${wrong} fields are to be mended`;
      this.#show({ ...this.#state, standing: { is: 'wrong', says } });
      return;
    }
    this.#show({ ...this.#state, standing: { is: 'saving' } });
    try {
      this.#written(book, await this.#tools.records.write({ book, base: revision, keepAlive }));
    } catch (error) {
      await this.#notWritten(error);
    }
  }

  #written(sent: Book, revision: number): void {
    const isAll = alike(sent, this.#state.book);
    this.#show({
      ...this.#state,
      base: sent,
      revision,
      standing: { is: isAll ? 'saved' : 'unsaved' },
    });
    if (!isAll) this.#writeIn(quietMs);
  }

  async #notWritten(error: unknown): Promise<void> {
    if (error instanceof Refused && error.problem.code === 'lost-race') {
      try {
        this.#takeIn(await this.#tools.records.read());
      } catch (failure) {
        await this.#notWritten(failure);
      }
    } else if (error instanceof Refused) {
      this.#show({ ...this.#state, standing: { is: 'wrong', says: error.message } });
    } else if (error instanceof Unreached) {
      this.#show({ ...this.#state, standing: { is: 'unreached' } });
      this.#writeIn(retryMs);
    } else throw error;
  }

  #takeIn(theirs: RevisedBook): void {
    const { base, book: yours, revision } = this.#state;
    const { yoursFirst, theirsFirst, conflicts } = mergeBooks({ base, theirs: theirs.book, yours });
    // What stood before holds nothing of theirs: going back to it would take their change away.
    const taken = { book: yoursFirst, past: [], future: [], tookTheirs: true };
    if (conflicts.length === 0) {
      const from = { base: theirs.book, revision: theirs.revision };
      this.#show({ ...taken, ...from, standing: { is: 'unsaved' } });
      this.#writeIn(0);
      return;
    }
    this.#conflict = { theirs, yoursFirst, theirsFirst };
    // The base stays what it was: a page that is opened anew must find the conflict again.
    this.#show({ ...taken, base, revision, standing: { is: 'conflict', conflicts } });
  }
}
