import type { Store } from '@fettle/store/contract/store.ts';
import type { Servers } from '@fettle/store/sqlite/servers.ts';
import type { Computation } from '../computation/computation.ts';
import { type Follower, type Followers, newFollowers, type Progress } from './followers.ts';
import { type Ending, type Run, startRun } from './run.ts';
import { sameWork, type Wanted, type WorkLine } from './sameWork.ts';

export type Asked =
  | { readonly ok: true; readonly work: WorkLine; readonly isNew: boolean }
  | { readonly ok: false; readonly reason: 'too-many' };

/** Long work in the background: asked for, waited for, followed and called off. */
export interface Works {
  /**
   * Asks for work, whose request the caller has read by the kind's schema. The same request about the same
   * revision gives the work that there is already, unless that failed or was cancelled.
   */
  ask(wanted: Wanted): Promise<Asked>;
  /** How far a run is, while it runs. */
  progress(id: string): Progress | undefined;
  /** Calls work off. False where it has ended already or never was. */
  cancel(id: string): Promise<boolean>;
  /**
   * Tells a follower at once where running work is, and from then on until it ends. Of work that has ended
   * nothing is told: look at its record after this call.
   *
   * @returns stops the telling
   */
  follow(id: string, follower: Follower): () => void;
  /**
   * Comes in among the servers that work on these records, and puts what runs that died left behind in line again.
   * Called once, when the server starts, before anything is asked for. Where another server lives, nothing is put in
   * line: what runs may be that one's, and would be computed twice. What dead servers left is then taken up by the
   * first server that starts when no other is there.
   */
  recover(servers: Pick<Servers, 'enter'>): Promise<void>;
  /** Ends the runs; what is not done stands in line again at the next start. */
  close(): Promise<void>;
}

/** More than this does not wait in line. */
export const mostWaiting = 100;

/** What works are made of. */
export interface WorkParts {
  readonly store: Store;
  readonly computation: Computation;
  /** Told of errors that no request waits for. */
  readonly report: (says: string, error: unknown) => void;
}

/** The end of work whose result could not be written down. */
const unwritten: Ending = { state: 'failed', failure: 'What came out could not be written down.' };

/** Writes down how a run ended, and tells its followers. */
const finish = async (
  { id, run }: { readonly id: string; readonly run: Run },
  { store, followers }: { readonly store: Store; readonly followers: Followers },
): Promise<void> => {
  const ending = await run.ended;
  if (ending === undefined) return;
  try {
    if (await store.work.end(id, ending)) followers.tellEnd(id, ending.state);
  } catch (error) {
    // Left running, it would be given to whoever asks for the same, and never come to an end.
    if (await store.work.end(id, unwritten)) followers.tellEnd(id, unwritten.state);
    throw error;
  }
};

/** The line of work and what of it runs, oldest first. */
const newLine = ({ store, computation, report }: WorkParts, followers: Followers) => {
  const waiting: string[] = [];
  const running = new Map<string, { readonly run: Run; readonly done: Promise<void> }>();
  let closed = false;

  const begin = (id: string): void => {
    const onProgress = (progress: Progress) => followers.tellProgress(id, progress);
    const run = startRun({ id, store, computation, onProgress });
    const done = finish({ id, run }, { store, followers })
      .catch((error: unknown) => report(`The work ${id} came to no end that could be written down`, error))
      .finally(() => {
        running.delete(id);
        next();
      });
    running.set(id, { run, done });
  };

  const next = (): void => {
    while (!closed && running.size < computation.longThreads) {
      const id = waiting.shift();
      if (id === undefined) return;
      begin(id);
    }
  };

  return {
    waiting,
    add(id: string): void {
      waiting.push(id);
      next();
    },
    drop(id: string): void {
      const place = waiting.indexOf(id);
      if (place >= 0) waiting.splice(place, 1);
      running.get(id)?.run.stop();
    },
    async close(): Promise<void> {
      closed = true;
      const runs = [...running.values()];
      for (const { run } of runs) run.stop();
      await Promise.all(runs.map(({ done }) => done));
    },
  };
};

/** Background work over the store's records; runs as many at once as the computation has long threads. */
export const startWorks = (parts: WorkParts): Works => {
  const { store } = parts;
  const followers = newFollowers();
  const line = newLine(parts, followers);
  let asking: Promise<unknown> = Promise.resolve();

  const askNow = async (wanted: Wanted): Promise<Asked> => {
    const before = await sameWork(store, wanted);
    if (before !== undefined) return { ok: true, work: before, isNew: false };
    if (line.waiting.length >= mostWaiting) return { ok: false, reason: 'too-many' };
    const work = await store.work.add(wanted);
    line.add(work.id);
    return { ok: true, work, isNew: true };
  };

  return {
    ask(wanted) {
      // One behind the other, so that two who ask for the same at once get the same work.
      const asked = asking.then(() => askNow(wanted));
      asking = asked.catch(() => undefined);
      return asked;
    },
    progress: followers.reached,
    async cancel(id) {
      const did = await store.work.end(id, { state: 'cancelled' });
      line.drop(id);
      if (did) followers.tellEnd(id, 'cancelled');
      return did;
    },
    follow: followers.follow,
    async recover(servers) {
      const left = await servers.enter(() => store.work.recover());
      for (const work of left ?? []) line.add(work.id);
    },
    close() {
      followers.sendAway();
      return line.close();
    },
  };
};
