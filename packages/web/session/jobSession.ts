import { alike } from '@fettle/job/changes/alike.ts';
import { Agreement, type Party } from './agreement.ts';
import {
  becoming,
  type Edit,
  edited,
  type History,
  historyOf,
  redone,
  takenBack,
  undone,
  type Worked,
} from './history.ts';
import type { KeptSession } from './kept.ts';
import { rebased, type Stand } from './rebased.ts';
import { type RecordsOfJob, type Saved, save, withEditsSince } from './saving.ts';

/** Where a job at work stands against the records. */
export type Standing =
  | { readonly is: 'saved' }
  /** Changed here, and about to be written. */
  | { readonly is: 'unsaved' }
  | { readonly is: 'saving' }
  /** Kept in this browser until the records can be reached again. */
  | { readonly is: 'unreached' }
  | (Extract<Saved, { how: 'refused' }> & { readonly is: 'refused' })
  | (Extract<Saved, { how: 'conflict' }> & {
      readonly is: 'conflict';
      /** The document that was to be written. */
      readonly yours: Worked;
    });

/** A job at work, at one moment. */
export interface SessionState extends Stand {
  readonly number: number;
  readonly standing: Standing;
}

/** What a session works with; a test gives others than the browser's. */
export interface SessionTools extends Pick<Party, 'keeper' | 'windows'> {
  readonly records: RecordsOfJob;
  readonly alone: <Result>(number: number, work: () => Promise<Result>) => Promise<Result>;
}

/** One job open at work: edits, undo, saving, other windows. */
export interface JobSession {
  state(): SessionState;
  /** What this browser has kept for certain: the rest of what is shown goes with the page. */
  kept(): Stand;
  /** Calls back after every change of the state, until what this gives is called. */
  subscribe(onChange: () => void): () => void;
  edit(edit: Edit): void;
  undo(): void;
  redo(): void;
  /**
   * Takes the last step back as if it had not been done, where it is the one of a key.
   * @param before what had been done, and undone, when it began
   */
  takeBack(key: string, before: Pick<History, 'past' | 'future'>): void;
  /** Writes now what is not written yet. */
  flush(leaving?: boolean): Promise<void>;
  /** Settles a conflict with the document that people chose; what was done since the conflict came is kept. */
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
/** Between two tries while the records cannot be reached, ms. */
const retryMs = 3_000;

/** A job as it is opened: what is known of what the windows agree on, and where it stands. */
interface OpenedJob {
  readonly known: KeptSession;
  readonly standing: Standing;
}

/** What the records have, or what this browser kept where they cannot be reached. */
async function openedJob(number: number, { records, keeper }: SessionTools): Promise<OpenedJob> {
  const kept = await keeper.find(number);
  if (kept !== undefined && !alike(kept.document, kept.base))
    return { known: kept, standing: { is: 'unsaved' } };
  try {
    const { document, revision } = await records.read(number);
    const base: Worked = { ...document };
    const isSame = kept !== undefined && alike(kept.document, base);
    const { past, future } = isSame ? kept : historyOf(base);
    const known = { number, turn: kept?.turn ?? 0, revision, base, document: base, past, future };
    return { known, standing: { is: 'saved' } };
  } catch (error) {
    if (kept === undefined) throw error;
    return { known: kept, standing: { is: 'unreached' } };
  }
}

/**
 * Opens a job to work on it. Every change is kept in the browser at once and written to the records a moment later;
 * what could not be written is tried again until it is.
 *
 * @throws Refused where there is no such job; Unreached where neither records nor browser have it
 */
export async function openSession(number: number, tools: SessionTools): Promise<JobSession> {
  const job = new WorkedJob(await openedJob(number, tools), tools);
  await job.begun();
  return job;
}

const standingOf = (document: Worked, base: Worked): Standing =>
  alike(document, base) ? { is: 'saved' } : { is: 'unsaved' };

class WorkedJob implements JobSession {
  readonly #tools: SessionTools;
  readonly #agreement: Agreement;
  readonly #listeners = new Set<() => void>();
  #state: SessionState;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #isClosed = false;

  constructor({ known, standing }: OpenedJob, tools: SessionTools) {
    const { turn: _, ...stand } = known;
    this.#state = { ...stand, standing };
    this.#tools = tools;
    const show = (agreed: Stand, hasOwn: boolean): void => this.#takeIn(agreed, hasOwn);
    this.#agreement = new Agreement(known, { ...tools, shown: this.state, show });
    if (standing.is !== 'saved') this.#writeIn(0);
  }

  readonly begun = (): Promise<void> => this.#agreement.begun;

  readonly state = (): SessionState => this.#state;

  readonly kept = (): Stand => this.#agreement.known();

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

  takeBack(key: string, before: Pick<History, 'past' | 'future'>): void {
    this.#work(takenBack(this.#state, key, before));
  }

  async flush(leaving = false): Promise<void> {
    clearTimeout(this.#timer);
    void this.#agreement.now();
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
      await this.#after(sent, await save(this.#tools.records, number, { ...sent, keepAlive: leaving }));
    });
  }

  settle(chosen: Worked): void {
    const { standing } = this.#state;
    if (standing.is !== 'conflict') return;
    const { theirs, revision, yours } = standing;
    const document = withEditsSince(yours, { saved: chosen, now: this.#state.document });
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
    void this.#agreement.close();
  }

  #take(next: SessionState): void {
    this.#show(next);
    this.#agreement.soon();
  }

  #show(next: SessionState): void {
    this.#state = next;
    for (const listen of this.#listeners) listen();
  }

  /** Shows what the windows agree on, with what was done here since. */
  #takeIn({ revision, base, document, past, future }: Stand, hasOwn: boolean): void {
    const standing = standingOf(document, base);
    this.#show({ ...this.#state, revision, base, document, past, future, standing });
    // The window of the edit writes it; this one does should that one be gone.
    if (standing.is === 'unsaved') this.#writeIn(hasOwn ? quietMs : 3 * quietMs);
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

  async #after(sent: SessionState, saved: Saved): Promise<void> {
    if (saved.how === 'saved') this.#written(sent, saved);
    else if (saved.how === 'unreached') {
      this.#take({ ...this.#state, standing: { is: 'unreached' } });
      this.#writeIn(retryMs);
    } else if (saved.how === 'refused') this.#take({ ...this.#state, standing: { ...saved, is: 'refused' } });
    else {
      // What another window of this browser wrote is a step of this job: nobody is asked about it.
      await this.#agreement.lookUp();
      if (this.#state.revision >= saved.revision) return;
      const standing: Standing = { ...saved, is: 'conflict', yours: sent.document };
      this.#take({ ...this.#state, standing });
    }
  }

  #written(sent: SessionState, { document, base, revision }: Extract<Saved, { how: 'saved' }>): void {
    const written: Stand = { ...sent, document, base, revision };
    const stand = rebased(this.#state, { since: sent, onto: written });
    const standing = standingOf(stand.document, stand.base);
    this.#take({ ...this.#state, ...stand, standing });
    // The next window to write needs to know of this revision.
    void this.#agreement.now();
    if (standing.is === 'unsaved') this.#writeIn(quietMs);
  }
}
