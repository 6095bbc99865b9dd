import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Step, Worked } from './history.ts';
import { type Line, lineOf, type OnTheLine, sameUntil, splitAt } from './stepLine.ts';

/** What this browser keeps of a job that is worked on, so that nothing is lost with a page, a server or a network. */
export interface KeptSession {
  readonly number: number;
  /** The revision that the work began from, and its document as the records have it. */
  readonly revision: number;
  readonly base: Worked;
  readonly document: Worked;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** Where sessions are kept. */
export interface SessionKeeper {
  find(number: number): Promise<KeptSession | undefined>;
  keep(session: KeptSession): Promise<void>;
}

/** A session without its steps, which have a shelf of their own so that each is written once. */
interface Header extends OnTheLine {
  readonly number: number;
  readonly revision: number;
  readonly base: Worked;
  readonly document: Worked;
}

interface Shelves extends DBSchema {
  sessions: { key: number; value: Header | KeptSession };
  /** By job and place on the line of its steps. */
  steps: { key: [number, number]; value: Step };
}

let opened: Promise<IDBPDatabase<Shelves>> | undefined;

/** Rejects where a window of an older edition holds the shelves as they were: no job waits for it to be closed. */
const opening = (): Promise<IDBPDatabase<Shelves>> =>
  new Promise((settle, fail) => {
    const shelves = openDB<Shelves>('fettle', 2, {
      upgrade: (fresh, from) => {
        if (from < 1) fresh.createObjectStore('sessions', { keyPath: 'number' });
        fresh.createObjectStore('steps');
      },
      blocked: () => fail(new Error('A window of an older edition is open.')),
      // As little does one of a later edition wait for this window.
      blocking: () => void shelves.then((held) => held.close()),
    });
    shelves.then((held) => {
      opened = shelves;
      settle(held);
    }, fail);
  });

const database = (): Promise<IDBPDatabase<Shelves>> => {
  opened ??= opening();
  return opened;
};

const stepsOf = (number: number): IDBKeyRange => IDBKeyRange.bound([number, 0], [number, Infinity]);
const stepsFrom = (number: number, place: number): IDBKeyRange =>
  IDBKeyRange.bound([number, place], [number, Infinity]);

async function findKept(number: number): Promise<KeptSession | undefined> {
  const shelves = (await database()).transaction(['sessions', 'steps']);
  const [found, steps] = await Promise.all([
    shelves.objectStore('sessions').get(number),
    shelves.objectStore('steps').getAll(stepsOf(number)),
  ]);
  // Kept by an edition before this one, with its steps in it.
  if (found === undefined || 'past' in found) return found;
  const { done, ...session } = found;
  return { ...session, ...splitAt(steps, done) };
}

/** What this page wrote last of each job. */
const written = new Map<number, Line>();

async function keepSession({ past, future, ...session }: KeptSession): Promise<void> {
  const { number } = session;
  const line = lineOf({ past, future });
  const same = sameUntil(written.get(number) ?? [], line);
  const shelves = (await database()).transaction(['sessions', 'steps'], 'readwrite');
  const steps = shelves.objectStore('steps');
  await Promise.all([
    shelves.objectStore('sessions').put({ ...session, done: past.length }),
    steps.delete(stepsFrom(number, same)),
    ...line.slice(same).map((step, index) => steps.put(step, [number, same + index])),
    shelves.done,
  ]);
  written.set(number, line);
}

/** Keeps sessions in the browser's own database. A browser that has none, or has no room, keeps nothing. */
export const browserKeeper: SessionKeeper = {
  async find(number) {
    try {
      return await findKept(number);
    } catch {
      return undefined;
    }
  },
  async keep(session) {
    try {
      await keepSession(session);
    } catch {
      // The records have it, or will: this is the second place.
    }
  },
};
