import { alike } from '@fettle/job/changes/alike.ts';
import {
  becoming,
  type Edit,
  edited,
  type History,
  historyOf,
  redone,
  undone,
  type Worked,
} from './history.ts';
import type { KeptSession, SessionKeeper } from './kept.ts';
import { type RecordsOfJob, type Saved, save, withEditsSince } from './saving.ts';
import { type Line, lineOf, sameUntil, splitAt } from './stepLine.ts';
import type { OtherWindows, WindowNews } from './windows.ts';

/** Where a job at work stands against the records. */
export type Standing =
  | { readonly is: 'saved' }
  /** Changed here, and about to be written. */
  | { readonly is: 'unsaved' }
  | { readonly is: 'saving' }
  /** Kept in this browser until the records can be reached again. */
  | { readonly is: 'unreached' }
  | (Extract<Saved, { how: 'refused' }> & { readonly is: 'refused' })
  | (Extract<Saved, { how: 'conflict' }> & { readonly is: 'conflict' });

/** A job at work, at one moment. */
export interface SessionState extends History {
  readonly number: number;
  readonly revision: number;
  /** The document as the records have it. */
  readonly base: Worked;
  readonly standing: Standing;
}

/** What a session works with; a test gives others than the browser's. */
export interface SessionTools {
  readonly records: RecordsOfJob;
  readonly keeper: SessionKeeper;
  readonly windows: (number: number, onNews: (news: WindowNews) => void) => OtherWindows;
  readonly alone: <Result>(number: number, work: () => Promise<Result>) => Promise<Result>;
}

/** One job open at work: edits, undo, saving, other windows. */
export interface JobSession {
  state(): SessionState;
  /** Calls back after every change of the state, until what this gives is called. */
  subscribe(onChange: () => void): () => void;
  edit(edit: Edit): void;
  undo(): void;
  redo(): void;
  /** Writes now what is not written yet. */
  flush(leaving?: boolean): Promise<void>;
  /** Settles a conflict with the document that people chose. */
  settle(document: Worked): void;
  /**
   * Looks whether the records have a newer revision, and takes it in.
   * @param asked what it is called where it was asked for here: it can be undone then
   */
  lookForNews(asked?: string): Promise<void>;
  close(): void;
}

/** Quiet after the last change before it is written, ms. */
const quietMs = 700;
/** Between two times that a job under a moving hand is kept and told to other windows, ms. */
const spreadEveryMs = 100;
/** Between two tries while the records cannot be reached, ms. */
const retryMs = 3_000;

const stateFrom = (kept: KeptSession): SessionState => ({
  ...kept,
  standing: alike(kept.document, kept.base) ? { is: 'saved' } : { is: 'unsaved' },
});

/** What the records have, or what this browser kept where they cannot be reached. */
async function openedState(number: number, { records, keeper }: SessionTools): Promise<SessionState> {
  const kept = await keeper.find(number);
  if (kept !== undefined && !alike(kept.document, kept.base)) return stateFrom(kept);
  try {
    const { document, revision } = await records.read(number);
    const base: Worked = { ...document };
    const same = kept !== undefined && alike(kept.document, base);
    const history = same ? { past: kept.past, future: kept.future } : historyOf(base);
    return {
      ...historyOf(base),
      ...history,
      document: base,
      number,
      revision,
      base,
      standing: { is: 'saved' },
    };
  } catch (error) {
    if (kept === undefined) throw error;
    return { ...stateFrom(kept), standing: { is: 'unreached' } };
  }
}

/**
 * Opens a job to work on it. Every change is kept in the browser at once and written to the records a moment later;
 * what could not be written is tried again until it is.
 *
 * @throws Refused where there is no such job; Unreached where neither records nor browser have it
 */
export async function openSession(number: number, tools: SessionTools): Promise<JobSession> {
  return new WorkedJob(await openedState(number, tools), tools);
}

const standingOf = (document: Worked, base: Worked): Standing =>
  alike(document, base) ? { is: 'saved' } : { is: 'unsaved' };

class WorkedJob implements JobSession {
  readonly #tools: SessionTools;
  readonly #windows: OtherWindows;
  readonly #listeners = new Set<() => void>();
  #state: SessionState;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #spreading: ReturnType<typeof setTimeout> | undefined;
  /** The newest state that is kept and told; and the steps of it that the other windows have. */
  #spread: SessionState;
  #told: Line;
  /** How often another window has told something. */
  #heard = 0;
  #isClosed = false;

  constructor(opened: SessionState, tools: SessionTools) {
    this.#state = opened;
    this.#spread = opened;
    this.#told = lineOf(opened);
    this.#tools = tools;
    this.#windows = tools.windows(opened.number, (news) => void this.#hear(news));
    if (opened.standing.is !== 'saved') this.#writeIn(0);
  }

  readonly state = (): SessionState => this.#state;

  readonly subscribe = (onChange: () => void): (() => void) => {
    this.#listeners.add(onChange);
    return () => this.#listeners.delete(onChange);
  };

  edit(edit: Edit): void {
    this.#work(edited(this.#state, edit));
  }

  undo(): void {
    this.#work(undone(this.#state));
  }

  redo(): void {
    this.#work(redone(this.#state));
  }

  async flush(leaving = false): Promise<void> {
    clearTimeout(this.#timer);
    this.#spreadNow();
    const { number } = this.#state;
    await this.#tools.alone(number, async () => {
      const { standing, document, base } = this.#state;
      if (standing.is === 'conflict') return;
      if (alike(document, base)) {
        // A try that was under way when the last change was taken back may have been refused meanwhile.
        if (standing.is !== 'saved') this.#take({ ...this.#state, standing: { is: 'saved' } });
        return;
      }
      const sent: SessionState = { ...this.#state, standing: { is: 'saving' } };
      this.#take(sent);
      this.#after(sent, await save(this.#tools.records, number, { ...sent, keepAlive: leaving }));
    });
  }

  settle(document: Worked): void {
    const { standing } = this.#state;
    if (standing.is !== 'conflict') return;
    const { theirs, revision } = standing;
    this.#take({ ...this.#state, document, base: theirs, revision, standing: { is: 'unsaved' } });
    this.#writeIn(0);
  }

  async lookForNews(asked?: string): Promise<void> {
    if (this.#state.standing.is !== 'saved') return;
    const { document, revision } = await this.#tools.records.read(this.#state.number);
    if (revision <= this.#state.revision || this.#state.standing.is !== 'saved') return;
    const base: Worked = { ...document };
    const history = asked === undefined ? {} : edited(this.#state, { says: asked, recipe: becoming(base) });
    this.#take({ ...this.#state, ...history, document: base, base, revision });
  }

  close(): void {
    this.#isClosed = true;
    clearTimeout(this.#timer);
    this.#spreadNow();
    clearTimeout(this.#spreading);
    this.#windows.close();
  }

  #take(next: SessionState): void {
    this.#show(next);
    if (this.#spreading !== undefined) return;
    this.#spreadNow();
    this.#spreading = setTimeout(() => {
      this.#spreading = undefined;
      this.#spreadNow();
    }, spreadEveryMs);
  }

  /** Keeps the newest state in the browser and tells it to the other windows. */
  #spreadNow(): void {
    if (this.#spread === this.#state) return;
    this.#spread = this.#state;
    const { number, revision, base, document, past, future } = this.#state;
    const line = lineOf({ past, future });
    const from = sameUntil(this.#told, line);
    this.#told = line;
    this.#windows.tell({ revision, base, document, done: past.length, from, steps: line.slice(from) });
    void this.#tools.keeper.keep({ number, revision, base, document, past, future });
  }

  #show(next: SessionState): void {
    this.#state = next;
    for (const listen of this.#listeners) listen();
  }

  async #hear(news: WindowNews): Promise<void> {
    this.#heard += 1;
    const turn = this.#heard;
    const known = this.#spread;
    // A window that slept or was just opened has missed steps: they are kept.
    const isBehind = news.from > this.#told.length;
    const kept = isBehind ? await this.#tools.keeper.find(this.#state.number) : undefined;
    // What was told since says all of this and more.
    if (turn !== this.#heard) return;
    const untold = this.#untoldOver(news.document, known);
    const before = kept === undefined ? this.#told : lineOf(kept);
    this.#hearOn(news, [...before.slice(0, news.from), ...news.steps]);
    if (untold !== undefined) this.edit(untold);
  }

  #hearOn({ revision, base, document, done }: WindowNews, line: Line): void {
    const standing = standingOf(document, base);
    this.#show({ ...this.#state, revision, base, document, ...splitAt(line, done), standing });
    this.#spread = this.#state;
    this.#told = lineOf(this.#state);
    // The window of the edit writes it; this one does should that one be gone.
    if (standing.is === 'unsaved') this.#writeIn(3 * quietMs);
  }

  /** What was done here that another window did not know, as a change of what it has. */
  #untoldOver(theirs: Worked, known: SessionState): Edit | undefined {
    const { document, past, future } = this.#state;
    if (document === known.document) return undefined;
    const [back] = past.length < known.past.length ? future : [];
    const { says = '', key } = back === undefined ? (past.at(-1) ?? {}) : { says: `undo ${back.says}` };
    const both = withEditsSince(known.document, { saved: theirs, now: document });
    return { says, ...(key === undefined ? {} : { key }), recipe: becoming(both) };
  }

  #writeIn(ms: number): void {
    clearTimeout(this.#timer);
    if (!this.#isClosed) this.#timer = setTimeout(() => void this.flush(), ms);
  }

  #work(history: History): void {
    const { document, past, standing } = this.#state;
    if (history.document === document && history.past === past) return;
    const isConflict = standing.is === 'conflict';
    this.#take({
      ...this.#state,
      ...history,
      standing: isConflict ? standing : standingOf(history.document, this.#state.base),
    });
    if (!isConflict) this.#writeIn(quietMs);
  }

  #after(sent: SessionState, saved: Saved): void {
    if (saved.how === 'saved') this.#written(sent, saved);
    else if (saved.how === 'unreached') {
      this.#take({ ...this.#state, standing: { is: 'unreached' } });
      this.#writeIn(retryMs);
    } else {
      const standing: Standing =
        saved.how === 'refused' ? { ...saved, is: 'refused' } : { ...saved, is: 'conflict' };
      this.#take({ ...this.#state, standing });
    }
  }

  #written(sent: SessionState, { document: saved, base, revision }: Extract<Saved, { how: 'saved' }>): void {
    const document = withEditsSince(sent.document, { saved, now: this.#state.document });
    const standing = standingOf(document, base);
    this.#take({ ...this.#state, document, revision, base, standing });
    if (standing.is === 'unsaved') this.#writeIn(quietMs);
  }
}
