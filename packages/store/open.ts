import { open, rename, rm } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { Kysely, SqliteDialect, sql } from 'kysely';
import { StoreFailure } from './contract/failure.ts';
import type { OpenOptions, Store } from './contract/store.ts';
import { lstatOf, makeFolder, onDisk, refuseLostLink, statOf, syncFolder } from './files/durable.ts';
import { newPartNameOf } from './files/partNames.ts';
import { sweepPartsOf } from './files/passingFolder.ts';
import { attachmentsIn } from './photographs/attachments.ts';
import { accountsIn } from './records/accounts.ts';
import { booksIn } from './records/books.ts';
import { checkup } from './records/checkup.ts';
import { deedsIn } from './records/deeds.ts';
import { jobsIn } from './records/jobs.ts';
import { ownerLinksIn } from './records/ownerLinks.ts';
import { readingsIn } from './records/readings.ts';
import { workIn } from './records/work.ts';
import { writingIn } from './records/writing.ts';
import { openDatabase } from './sqlite/openDatabase.ts';
import type { Tables } from './sqlite/tables.ts';
import { refuseReadOnlyFile, refuseReadOnlyFolder } from './sqlite/writable.ts';

/** The data folder may be a link to another disk; what is in it may not. */
const makeDataFolder = async (folder: string): Promise<void> => {
  const found = await onDisk(folder, () => statOf(folder));
  if (found === undefined) {
    await refuseLostLink(folder);
    await makeFolder(folder).catch((error: unknown) => {
      throw error instanceof StoreFailure ? error : cannotBe(folder, error);
    });
  } else if (!found.isDirectory())
    throw new StoreFailure('no-access', `${folder} is no folder.`, 'Name a folder for the data.');
};

const cannotBe = (folder: string, cause: unknown): StoreFailure => {
  const failure = new StoreFailure(
    'no-access',
    `The folder ${folder} is not there and cannot be made.`,
    'Name a folder for the data that lies in a folder.',
  );
  failure.cause = cause;
  return failure;
};

/** What the database tells of a file that cannot be made is worded for the records themselves. */
const cannotCopyTo = (to: string, cause: unknown): StoreFailure => {
  const failure = new StoreFailure(
    'no-access',
    `${to} cannot be written.`,
    'Name a file in a folder that this user may write to.',
  );
  failure.cause = cause;
  return failure;
};

/** Copies the database as it is at one moment, under a name that counts only when the copy is on the disk. */
const copyDatabase = async (db: Kysely<Tables>, to: string): Promise<void> => {
  if ((await onDisk(to, () => lstatOf(to))) !== undefined)
    throw new StoreFailure('no-access', `${to} is there already.`, 'Name a file that is not there yet.');
  if ((await onDisk(to, () => statOf(dirname(to))))?.isDirectory() !== true)
    throw new StoreFailure('no-access', `${dirname(to)} is no folder.`, 'Name a file in a folder.');
  await sweepPartsOf(to);
  const part = join(dirname(to), newPartNameOf(to));
  try {
    await sql`vacuum into ${part}`.execute(db).catch((error: unknown) => {
      throw error instanceof StoreFailure && error.code === 'no-access' ? cannotCopyTo(to, error) : error;
    });
    await onDisk(to, async () => {
      const handle = await open(part, 'r+');
      await handle.chmod(0o600).finally(() => handle.sync().finally(() => handle.close()));
      await rename(part, to);
      await syncFolder(dirname(to));
    });
  } finally {
    await rm(part, { force: true });
  }
};

/**
 * Opens the records in a data folder, which is made where it is absent.
 *
 * @throws StoreFailure where they cannot be used: see `StoreFailureCode`
 */
export const openStore = async (options: OpenOptions): Promise<Store> => {
  const folder = resolve(options.folder);
  const clock = options.clock ?? (() => new Date());
  await makeDataFolder(folder);
  if (options.mustWrite === true) await refuseReadOnlyFolder(folder);
  const file = await openDatabase(folder, options.driver);
  if (options.mustWrite === true) refuseReadOnlyFile(file);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) });
  const records = { db, write: writingIn(db, options.betweenCommitsMs), now: () => clock().toISOString() };
  const attachments = attachmentsIn({ db, folder, clock });
  return {
    jobs: jobsIn(records),
    attachments,
    books: booksIn(records),
    work: workIn(records),
    accounts: accountsIn(records),
    ownerLinks: ownerLinksIn(records),
    readings: readingsIn(records),
    deeds: deedsIn(records),
    checkup: (how) => checkup({ db, file, attachments }, how),
    copyDatabase: (to) => copyDatabase(db, to),
    close: () => db.destroy(),
  };
};
