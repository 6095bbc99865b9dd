import { mkdir, open, readdir, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import type { BookName } from '../contract/books.ts';
import type { Deed } from '../contract/deeds.ts';
import type { Store } from '../contract/store.ts';
import { makeFolder, makeNamedFolder, onDisk, syncFolder, systemCodeOf } from '../files/durable.ts';
import { newPartNameOf } from '../files/partNames.ts';
import { sweepPartsOf } from '../files/passingFolder.ts';
import { type Cell, writtenTable } from './csv.ts';
import { exportJob } from './exportJob.ts';
import { columns, type ExportManifest, readme, revisionFile } from './layout.ts';
import { type NotingWriter, notingWriter, type PlainWriter } from './writer.ts';
import { bookText } from './yamlText.ts';

/** How an export ended. */
export type Exported =
  | ({ readonly ok: true } & Pick<ExportManifest, 'counts' | 'missing'>)
  | { readonly ok: false; readonly says: string; readonly allowed: string };

/**
 * Writes everything as plain files into a new folder, which is there whole or not at all. What an export into the same
 * folder left beside it when it was killed, a day ago or more, is cleared away.
 *
 * @param asked.to a folder that is not there, or is empty
 * @param asked.numbers these jobs alone, without books; all jobs, books and the log where left out
 * @throws StoreFailure where the records cannot be read or the folder cannot be written
 */
export async function exportAll(asked: {
  readonly store: Store;
  readonly to: string;
  readonly numbers?: readonly number[];
}): Promise<Exported> {
  const to = resolve(asked.to);
  const isFree = await onDisk(to, () => isFreeFolder(to));
  if (!isFree) {
    const says = `${asked.to} is not an empty folder.`;
    return { ok: false, says, allowed: 'a folder that is not there or is empty' };
  }
  await makeNamedFolder(dirname(to));
  await sweepPartsOf(to);
  const part = join(dirname(to), newPartNameOf(to));
  try {
    await makeFolder(part);
    const { store, numbers } = asked;
    const writer = folderWriter(part);
    const about = await writeExport(numbers === undefined ? { store } : { store, numbers }, writer);
    await writer.settle();
    await onDisk(to, async () => {
      await rmdir(to).catch(() => undefined);
      await rename(part, to);
    });
    await syncFolder(dirname(to));
    return { ok: true, ...about };
  } finally {
    await rm(part, { recursive: true, force: true });
  }
}

async function isFreeFolder(path: string): Promise<boolean> {
  const names = await readdir(path).catch((error: unknown) => {
    const code = systemCodeOf(error);
    if (code === 'ENOENT') return [];
    if (code === 'ENOTDIR') return [path];
    throw error;
  });
  return names.length === 0;
}

/** Files given to the disk at the same time: it takes many in hardly more time than one. */
const syncedAtOnce = 16;

function folderWriter(folder: string): PlainWriter & { readonly settle: () => Promise<void> } {
  const folders = new Set<string>([folder]);
  const files: string[] = [];
  return {
    put: async (path, bytes) => {
      const file = join(folder, path);
      await onDisk(file, async () => {
        for (let above = dirname(file); !folders.has(above); above = dirname(above)) folders.add(above);
        await mkdir(dirname(file), { recursive: true, mode: 0o700 });
        await writeFile(file, bytes, { flag: 'wx', mode: 0o600 });
      });
      files.push(file);
    },
    settle: async () => {
      for (let from = 0; from < files.length; from += syncedAtOnce) {
        await Promise.all(files.slice(from, from + syncedAtOnce).map(syncFile));
      }
      for (const each of folders) await onDisk(each, () => syncFolder(each));
    },
  };
}

async function syncFile(path: string): Promise<void> {
  await onDisk(path, async () => {
    const handle = await open(path, 'r+');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  });
}

/**
 * Hands everything to a writer as plain files, `export.json` last. Jobs that are changed meanwhile are each in it as
 * they stood at one moment.
 */
export async function writeExport(
  from: { readonly store: Store; readonly numbers?: readonly number[] },
  to: PlainWriter,
): Promise<Pick<ExportManifest, 'counts' | 'missing'>> {
  const { store, numbers } = from;
  const writer = notingWriter(to);
  await writer.text('README.txt', readme);
  const counts = { jobs: 0, revisions: 0, photographs: 0, readings: 0, bookRevisions: 0, logLines: 0 };
  const rows: (readonly Cell[])[] = [];
  const missing: string[] = [];
  for (const number of numbers ?? (await store.jobs.numbers())) {
    const job = await exportJob({ store, number, writer });
    if (job === undefined) continue;
    rows.push(job.line);
    missing.push(...job.missing);
    counts.jobs++;
    counts.revisions += job.revisions;
    counts.photographs += job.photographs;
    counts.readings += job.readings;
  }
  await writer.text('jobs.csv', writtenTable(columns.jobs, rows));
  if (numbers === undefined) {
    for (const name of ['shelf', 'settings'] as const) {
      counts.bookRevisions += await exportBook(store, name, writer);
    }
    counts.logLines = await exportLog(store, writer);
  }
  await writer.close({ counts, missing });
  return { counts, missing };
}

async function exportBook(store: Store, name: BookName, writer: NotingWriter): Promise<number> {
  const revisions = await store.books.revisions(name);
  for (const { revision, body } of revisions) {
    await writer.text(`${name}/${revisionFile(revision)}`, bookText(body));
  }
  const newest = revisions.at(-1);
  if (newest === undefined) return 0;
  await writer.text(`${name}.yaml`, bookText(newest.body));
  const rows = revisions.map(({ revision, changedAt, changedBy }) => [revision, changedAt, changedBy]);
  await writer.text(`${name}/revisions.csv`, writtenTable(columns.bookRevisions, rows));
  return revisions.length;
}

async function exportLog(store: Store, writer: NotingWriter): Promise<number> {
  const newestFirst: Deed[] = [];
  for (;;) {
    const last = newestFirst.at(-1)?.id;
    const deeds = await store.deeds.list({ count: 1000, ...(last === undefined ? {} : { before: last }) });
    if (deeds.length === 0) break;
    newestFirst.push(...deeds);
  }
  const rows = newestFirst.toReversed().map((deed) => columns.log.map((column) => deed[column]));
  await writer.text('log.csv', writtenTable(columns.log, rows));
  return rows.length;
}
