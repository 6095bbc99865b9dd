import type { Piscina } from 'piscina';
import { StoreFailure } from '../contract/failure.ts';
import type { OpenOptions, Store } from '../contract/store.ts';
import { type Answer, type Call, methodsOf, type RoomName, valueIn } from './calls.ts';
import { threadPool } from './threadPool.ts';

/** More calls than this are never under way: the server limits its requests long before. */
const MOST_CALLS = 100_000;

/** One thread, which another one follows where it dies. */
const recordsThread = (where: Omit<OpenOptions, 'clock'>): Piscina =>
  threadPool(new URL('./recordsThread.ts', import.meta.url), {
    workerData: where,
    minThreads: 1,
    maxThreads: 1,
    concurrentTasksPerWorker: MOST_CALLS,
  });

const gone = (cause: unknown): StoreFailure => {
  const failure = new StoreFailure(
    'input-output',
    'The part of the program that keeps the records ended while this was being done; it may not have been written.',
    'Look whether it was written, then try again.',
  );
  failure.cause = cause;
  return failure;
};

/** Values that cannot be copied never reach the thread. */
const isOfCaller = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'DataCloneError';

type Asks = (call: Omit<Call, 'at'>) => Promise<unknown>;

const roomOf = <Room extends RoomName>(room: Room, ask: Asks): Store[Room] => {
  const methods = Object.keys(methodsOf[room]).map((method) => [
    method,
    (...values: unknown[]) => ask({ room, method, values }),
  ]);
  // Each method goes by its name to the one of the same name, whose values and answer are plain data.
  return Object.fromEntries(methods) as Store[Room];
};

const ofWhole = <Method extends 'checkup' | 'copyDatabase'>(method: Method, ask: Asks): Store[Method] =>
  // As above.
  ((...values: unknown[]) => ask({ method, values })) as Store[Method];

/**
 * Opens the records in a data folder on a thread of their own, so that nobody waits while the disk writes, a copy of
 * the database is made or a picture is looked at. What goes in and out is copied between the threads.
 *
 * A thread that dies by an error takes the calls under way with it; another one opens the records for the next call.
 * It is ended from outside only when nothing is under way: within the older driver, that ends the whole program.
 *
 * @throws StoreFailure where they cannot be used, as `openStore`
 */
export const openApart = async ({ clock, ...where }: OpenOptions): Promise<Store> => {
  const thread = recordsThread(where);
  const underWay = new Set<Promise<unknown>>();
  let closing = false;
  const askThread: Asks = async (call) => {
    const at = clock === undefined ? {} : { at: clock().getTime() };
    const answer: Answer = await thread.run({ ...call, ...at }).catch((error: unknown) => {
      throw isOfCaller(error) ? error : gone(error);
    });
    return valueIn(answer);
  };
  const ask: Asks = async (call) => {
    if (closing) throw new TypeError('the records are closed');
    const asked = askThread(call);
    underWay.add(asked);
    return asked.finally(() => underWay.delete(asked));
  };
  try {
    await ask({ method: 'open', values: [] });
  } catch (error) {
    await thread.destroy();
    throw error;
  }
  return {
    jobs: roomOf('jobs', ask),
    attachments: roomOf('attachments', ask),
    books: roomOf('books', ask),
    work: roomOf('work', ask),
    accounts: roomOf('accounts', ask),
    ownerLinks: roomOf('ownerLinks', ask),
    readings: roomOf('readings', ask),
    deeds: roomOf('deeds', ask),
    checkup: ofWhole('checkup', ask),
    copyDatabase: ofWhole('copyDatabase', ask),
    close: async () => {
      closing = true;
      await Promise.allSettled([...underWay]);
      await askThread({ method: 'close', values: [] });
      await thread.destroy();
    },
  };
};
