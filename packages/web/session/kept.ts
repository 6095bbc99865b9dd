import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Step, Worked } from './history.ts';

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

interface Shelves extends DBSchema {
  sessions: { key: number; value: KeptSession };
}

/** Steps beyond these are forgotten by the browser; the records keep every revision all the same. */
const mostSteps = 5_000;

let opened: Promise<IDBPDatabase<Shelves>> | undefined;
const database = (): Promise<IDBPDatabase<Shelves>> => {
  opened ??= openDB<Shelves>('fettle', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('sessions', { keyPath: 'number' });
    },
  });
  return opened;
};

/** Keeps sessions in the browser's own database. A browser that has none, or has no room, keeps nothing. */
export const browserKeeper: SessionKeeper = {
  async find(number) {
    try {
      return await (await database()).get('sessions', number);
    } catch {
      return undefined;
    }
  },
  async keep(session) {
    try {
      await (await database()).put('sessions', { ...session, past: session.past.slice(-mostSteps) });
    } catch {
      // The records have it, or will: this is the second place.
    }
  },
};
