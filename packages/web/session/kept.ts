import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import type { Step } from './history.ts';
import type { Stand } from './rebased.ts';
import { lineOf, type OnTheLine, sameUntil, splitAt } from './stepLine.ts';

/**
 * What this browser keeps of a job that is worked on, so that nothing is lost with a page, a server or a network. It
 * is what the windows of this browser agree on.
 */
export interface KeptSession extends Stand {
  readonly number: number;
  /** How often the windows have agreed on something new: each state that was kept has a greater one. */
  readonly turn: number;
}

/** Where sessions are kept. */
export interface SessionKeeper {
  find(number: number): Promise<KeptSession | undefined>;
  /**
   * Keeps what follows from what is kept, while no other window does. What is kept is what is known of it where no
   * other window was quicker.
   *
   * @returns what is kept then; undefined where this browser keeps nothing
   */
  agree(known: KeptSession, following: (kept: KeptSession) => KeptSession): Promise<KeptSession | undefined>;
}

/** A session without its steps, which have a shelf of their own so that each is written once. */
interface Header extends OnTheLine, Omit<KeptSession, 'past' | 'future' | 'turn'> {
  /** Absent where an edition before this one kept it. */
  readonly turn?: number;
}

/** As the first edition kept it, with its steps in it. */
type Whole = Omit<KeptSession, 'turn'>;

interface Shelves extends DBSchema {
  sessions: { key: number; value: Header | Whole };
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

type Shelf = IDBPTransaction<Shelves, ('sessions' | 'steps')[], IDBTransactionMode>;

async function keptUnder(header: Header | Whole, shelves: Shelf): Promise<KeptSession> {
  if ('past' in header) return { ...header, turn: 0 };
  const { done, turn = 0, ...session } = header;
  const steps = await shelves.objectStore('steps').getAll(stepsOf(header.number));
  return { ...session, turn, ...splitAt(steps, done) };
}

async function findKept(number: number): Promise<KeptSession | undefined> {
  const shelves = (await database()).transaction(['sessions', 'steps']);
  const header = await shelves.objectStore('sessions').get(number);
  return header && keptUnder(header, shelves);
}

/** One transaction, which no other window's comes between: what follows is made while nothing else is waited for. */
async function agreeOn(
  known: KeptSession,
  following: (kept: KeptSession) => KeptSession,
): Promise<KeptSession> {
  const { number } = known;
  const shelves = (await database()).transaction(['sessions', 'steps'], 'readwrite');
  const header = await shelves.objectStore('sessions').get(number);
  const isKnown = header === undefined || ('turn' in header && header.turn === known.turn);
  const kept = isKnown ? known : await keptUnder(header, shelves);
  const agreed = following(kept);
  const { past, future, ...session } = agreed;
  const line = lineOf(agreed);
  const hasSteps = header !== undefined && !('past' in header);
  const same = hasSteps ? sameUntil(lineOf(kept), line) : 0;
  const steps = shelves.objectStore('steps');
  await Promise.all([
    shelves.objectStore('sessions').put({ ...session, done: past.length }),
    steps.delete(stepsFrom(number, same)),
    ...line.slice(same).map((step, index) => steps.put(step, [number, same + index])),
    shelves.done,
  ]);
  return agreed;
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
  async agree(known, following) {
    try {
      return await agreeOn(known, following);
    } catch {
      // The records have it, or will: this is the second place.
      return undefined;
    }
  },
};
