import type { Stats } from 'node:fs';
import { lstat, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { noneWhereAbsent, onDisk } from './durable.ts';
import { isPart, isPartOf } from './partNames.ts';

/** What folders that pass are for: a database restored on trial, an archive unpacked. */
type Purpose = 'restored' | 'import';

/** Nothing that makes such a folder takes so long, milliseconds: a day. */
const longestUse = 24 * 3_600_000;

/** Names as `mkdtemp` makes them. */
const ours = /^fettle-(?:restored|import)-[A-Za-z0-9]{6}$/;

/**
 * Works in a new folder in the system's folder for temporary files, for its owner alone, and deletes it afterwards.
 * What others that were killed left there a day ago or more is deleted, too.
 *
 * @throws StoreFailure where the disk takes no folder; whatever the work throws
 */
export async function inPassingFolder<Result>(
  purpose: Purpose,
  work: (folder: string) => Promise<Result>,
): Promise<Result> {
  await sweepPassing(new Date(Date.now() - longestUse));
  const folder = await onDisk(tmpdir(), () => mkdtemp(join(tmpdir(), `fettle-${purpose}-`)));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/**
 * Deletes what was half written directly in a folder when its writer was killed, a day ago or more.
 *
 * @throws StoreFailure where the folder may not be looked into
 */
export async function sweepParts(folder: string, before = new Date(Date.now() - longestUse)): Promise<void> {
  const names = await onDisk(folder, () => readdir(folder).catch(noneWhereAbsent));
  for (const name of names?.filter(isPart) ?? []) {
    const path = join(folder, name);
    const found = await lstat(path).catch(() => undefined);
    if (found === undefined || found.mtime >= before) continue;
    await rm(path, { recursive: true, force: true }).catch(() => undefined);
  }
}

/**
 * Deletes what was half written of one file or folder, beside it, when its writer was killed, a day ago or more, by this
 * user. The folder may be anybody's, so nothing else in it is touched.
 */
export async function sweepPartsOf(target: string): Promise<void> {
  const folder = dirname(target);
  const names = await readdir(folder).catch(() => []);
  await sweepOwn(
    names.filter((name) => isPartOf(target, name)).map((name) => join(folder, name)),
    new Date(Date.now() - longestUse),
  );
}

/** Deletes such folders of this user that were last touched before a moment. One that cannot be deleted stays. */
async function sweepPassing(before: Date): Promise<void> {
  const names = await readdir(tmpdir()).catch(() => []);
  const paths = names.filter((each) => ours.test(each)).map((name) => join(tmpdir(), name));
  await sweepOwn(paths, before, (found) => found.isDirectory());
}

async function sweepOwn(
  paths: readonly string[],
  before: Date,
  isMeant: (found: Stats) => boolean = (found) => found.isDirectory() || found.isFile(),
): Promise<void> {
  for (const path of paths) {
    const found = await lstat(path).catch(() => undefined);
    if (found === undefined || !isMeant(found) || found.mtime >= before) continue;
    if (process.getuid !== undefined && found.uid !== process.getuid()) continue;
    await rm(path, { recursive: true, force: true }).catch(() => undefined);
  }
}
