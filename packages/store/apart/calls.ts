import { StoreFailure } from '../contract/failure.ts';
import type { Store } from '../contract/store.ts';

/** The parts of the records that have methods of their own. */
export type RoomName = Exclude<keyof Store, 'checkup' | 'copyDatabase' | 'close'>;

type Methods<Of> = Readonly<Record<keyof Of, true>>;

/** Every method of every part: one that is missing here, or is gone, does not pass the compiler. */
export const methodsOf: { readonly [Room in RoomName]: Methods<Store[Room]> } = {
  jobs: {
    create: true,
    find: true,
    revise: true,
    goBack: true,
    putAway: true,
    bringBack: true,
    revisions: true,
    revision: true,
    list: true,
    tags: true,
    numbers: true,
    lay: true,
  },
  attachments: {
    add: true,
    list: true,
    find: true,
    read: true,
    caption: true,
    remove: true,
    keep: true,
    sweep: true,
    broken: true,
  },
  books: { find: true, revise: true, revisions: true, lay: true },
  work: {
    add: true,
    find: true,
    list: true,
    start: true,
    checkpoint: true,
    checkpoints: true,
    end: true,
    recover: true,
  },
  accounts: {
    add: true,
    find: true,
    list: true,
    change: true,
    startSession: true,
    session: true,
    extendSession: true,
    endSession: true,
  },
  ownerLinks: { add: true, list: true, find: true, withdraw: true },
  readings: { add: true, addTogether: true, list: true, remove: true, lay: true },
  deeds: { add: true, lay: true, list: true },
};

/** What the thread is asked: a method of the records or of a part of them, or that they be open, by `open`. */
export interface Call {
  readonly room?: RoomName;
  readonly method: string;
  /** Plain data, which is copied. */
  readonly values: readonly unknown[];
  /** Moment of the caller's clock, milliseconds since 1970; absent where the system's clock counts. */
  readonly at?: number;
}

/** How a call ended. A failure of the store goes apart, since errors lose their own fields between threads. */
export type Answer =
  | { readonly value: unknown }
  | { readonly failure: Pick<StoreFailure, 'code' | 'message' | 'advice'> }
  | { readonly error: unknown };

/** What an error is sent as. */
export const toAnswer = (error: unknown): Answer => {
  if (!(error instanceof StoreFailure)) return { error };
  const { code, message, advice } = error;
  return { failure: { code, message, advice } };
};

/**
 * What an answer gives.
 * @throws the error that it tells of
 */
export const valueIn = (answer: Answer): unknown => {
  if ('value' in answer) return answer.value;
  if ('error' in answer) throw answer.error;
  const { code, message, advice } = answer.failure;
  throw new StoreFailure(code, message, advice);
};
