import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A picture that is on its way into the records. */
export interface WaitingPicture {
  readonly id: string;
  readonly job: number;
  readonly name: string;
  readonly picture: Blob;
  /** Why the records would not take it; it is not sent again unless somebody asks for that. */
  readonly refused?: string;
}

/** Where pictures stay until the records have them. */
export interface PictureKeeper {
  keep(picture: WaitingPicture): Promise<void>;
  of(job: number): Promise<readonly WaitingPicture[]>;
  forget(id: string): Promise<void>;
}

interface Shelves extends DBSchema {
  waiting: { key: string; value: WaitingPicture; indexes: { job: number } };
}

let opened: Promise<IDBPDatabase<Shelves>> | undefined;
const database = (): Promise<IDBPDatabase<Shelves>> => {
  opened ??= openDB<Shelves>('fettle-pictures', 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('waiting', { keyPath: 'id' }).createIndex('job', 'job');
    },
  });
  return opened;
};

/** What is done where the browser keeps nothing: the page still has it. */
const orElse = async <Value>(work: () => Promise<Value>, otherwise: Value): Promise<Value> => {
  try {
    return await work();
  } catch {
    return otherwise;
  }
};

/** Keeps pictures in the browser's own database: a phone may throw the page away while its camera is open. */
export const browserPictures: PictureKeeper = {
  keep: (picture) => orElse(async () => void (await (await database()).put('waiting', picture)), undefined),
  of: (job) => orElse(async () => (await database()).getAllFromIndex('waiting', 'job', job), []),
  forget: (id) => orElse(async () => (await database()).delete('waiting', id), undefined),
};
