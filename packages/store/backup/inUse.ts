import { readdir, readlink, realpath } from 'node:fs/promises';
import { join } from 'node:path';
import { pid } from 'node:process';
import { StoreFailure } from '../contract/failure.ts';
import { openFile } from '../sqlite/driver.ts';

/**
 * Refuses where another program has a database open. This one itself does not count: a driver lets go of a file that
 * was closed only in its own time.
 *
 * On Linux the system tells which files this user's programs have open. Elsewhere the database is asked for a lock
 * that no other program lets it have while it writes or, with a write-ahead log, while it has it open; a program that
 * has it open and is idle is seen on Windows alone, where the file cannot be moved then.
 *
 * @throws StoreFailure `busy`
 */
export async function refuseInUse(database: string): Promise<void> {
  const user = process.platform === 'linux' ? await openedBy(database) : undefined;
  if (user !== undefined || (process.platform !== 'linux' && isLocked(database))) {
    const by = user === undefined ? 'another program' : `the program with process number ${user}`;
    throw new StoreFailure('busy', `${database} is in use by ${by}.`, 'Stop fettle serve first.');
  }
}

async function openedBy(database: string): Promise<string | undefined> {
  const path = await realpath(database);
  for (const program of await readdir('/proc').catch(() => [])) {
    if (!/^\d+$/.test(program) || program === String(pid)) continue;
    const folder = join('/proc', program, 'fd');
    for (const name of await readdir(folder).catch(() => [])) {
      const opened = await readlink(join(folder, name)).catch(() => undefined);
      if (opened === path) return program;
    }
  }
  return undefined;
}

function isLocked(database: string): boolean {
  try {
    const file = openFile(database);
    try {
      file.exec('pragma busy_timeout = 0; pragma locking_mode = exclusive; begin exclusive; rollback');
      return false;
    } finally {
      file.close();
    }
  } catch (error) {
    // What is damaged is in the way of nobody.
    return error instanceof StoreFailure && error.code === 'busy';
  }
}
