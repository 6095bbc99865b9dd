import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { StoreFailure } from '../contract/failure.ts';
import { onDisk, systemCodeOf } from '../files/durable.ts';
import { type DriverName, type OpenFile, openFile } from './driver.ts';

/** The place of a server among those that work on one data folder. */
export interface Servers {
  /**
   * Comes in, and stays until `leave` or until the program ends, however it ends.
   *
   * @param whenFirst done where no other server is there; none can come in until it is done
   * @returns what it gave; undefined where another server is there, and nothing was done
   * @throws StoreFailure `busy` where another server that comes in takes very long for that
   */
  enter<Result>(whenFirst: () => Promise<Result>): Promise<Result | undefined>;
  leave(): void;
}

/** How long a server waits for another one that is just coming in, milliseconds. */
const longestWait = 10_000;
const betweenTries = 50;

/** Made here, for its owner alone; one that is there is not touched, since closing it would end locks of this process. */
const makeLockFile = (path: string): Promise<void> =>
  onDisk(path, async () => {
    const handle = await open(path, 'wx', 0o600).catch((error: unknown) => {
      if (systemCodeOf(error) !== 'EEXIST') throw error;
    });
    await handle?.close();
  });

type Given = 'given' | 'refused' | 'no-lock';

/** Asks for a lock: `refused` where another server has one that stands against it, `no-lock` where none can be had. */
const given = (take: () => unknown): Given => {
  try {
    take();
    return 'given';
  } catch (error) {
    if (!(error instanceof StoreFailure)) throw error;
    return error.code === 'busy' ? 'refused' : 'no-lock';
  }
};

const shared = async (file: OpenFile, path: string): Promise<void> => {
  for (let waited = 0; waited < longestWait; waited += betweenTries) {
    file.exec('begin');
    // The transaction holds a lock from its first question on, and is never ended.
    if (given(() => file.scalar('select count(*) from sqlite_schema')) !== 'refused') return;
    file.exec('rollback');
    await setTimeout(betweenTries);
  }
  throw new StoreFailure('busy', `Another server does not let go of ${path}.`, 'Try again.');
};

/** Files whose locks stand: a file that nothing refers to any more is closed by the collector, and its locks end. */
const held = new Set<OpenFile>();

const serversAt = (file: OpenFile, path: string): Servers => {
  file.exec('pragma busy_timeout = 0');
  held.add(file);
  const end = (): void => {
    try {
      // A driver lets go of a file that was closed only in its own time.
      file.exec('rollback');
    } catch {
      // Nothing was held.
    }
  };
  return {
    enter: async (whenFirst) => {
      const isFirst = given(() => file.exec('begin exclusive')) !== 'refused';
      const found = isFirst ? await whenFirst().finally(end) : undefined;
      await shared(file, path);
      return found;
    },
    leave: () => {
      end();
      held.delete(file);
      file.close();
    },
  };
};

/**
 * Whether other servers work on a data folder is told by locks that the system keeps on a file in it, as SQLite takes
 * them: each server holds a lock that others may share for as long as it lives, and one that comes in asks first for
 * the lock that nobody shares. The system ends the locks of a program that ends, also of one that is killed, so that
 * nothing of a dead server stands in the way: no number of a process is written down that another one could have by
 * now, and the file itself means nothing. Between both locks of the first server there is a moment without any; it has
 * begun no work by then, so that whoever comes in then finds nothing that runs.
 *
 * Where the file cannot be used for that (it is another user's, or the disk has no room for it), a server takes itself
 * for the only one: the file keeps nobody out.
 */
export const serversOf = async (folder: string, driver?: DriverName): Promise<Servers> => {
  const path = join(folder, 'server.lock');
  try {
    await makeLockFile(path);
    return serversAt(openFile(path, driver), path);
  } catch (error) {
    if (!(error instanceof StoreFailure)) throw error;
    return { enter: (whenFirst) => whenFirst(), leave: () => undefined };
  }
};
