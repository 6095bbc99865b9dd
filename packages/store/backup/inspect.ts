import { join } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import { copyDurably } from '../files/durable.ts';
import { inPassingFolder } from '../files/passingFolder.ts';
import { type OpenFile, openFile } from '../sqlite/driver.ts';
import { wholeFaults } from '../sqlite/quickCheck.ts';
import type { Manifest } from './manifest.ts';

/** What is in a database file. */
export interface Inspected {
  readonly tables: number;
  readonly counts: Manifest['counts'];
  /** Files of the pictures that its rows name, in order. */
  readonly pictures: readonly string[];
  /** What SQLite finds wrong in it. */
  readonly faults: readonly string[];
}

/**
 * Restores a database file into a folder of its own, opens it there, and looks it over table by table, while
 * others work on. The file itself is only read.
 *
 * @throws StoreFailure where it is no database
 */
export async function inspectDatabase(path: string): Promise<Inspected> {
  return onCopy(path, async (file) => {
    const faults = [...(await wholeFaults(file)), ...brokenKeys(file)];
    return {
      tables: Number(file.scalar('pragma user_version')),
      counts: {
        jobs: Number(file.scalar('select count(*) from job')),
        revisions: Number(file.scalar('select count(*) from revision')),
        attachments: Number(file.scalar('select count(*) from attachment')),
      },
      pictures: textsOf(
        file,
        `select distinct hash || case media_type when 'image/png' then '.png' else '.jpg' end as name
          from attachment where removed_at is null order by name`,
      ),
      faults,
    };
  });
}

function onCopy<Result>(path: string, look: (file: OpenFile) => Promise<Result>): Promise<Result> {
  return inPassingFolder('restored', async (folder) => {
    const copy = join(folder, 'fettle.db');
    await copyDurably(path, copy);
    const file = openFile(copy);
    try {
      return await look(file);
    } catch (error) {
      if (error instanceof StoreFailure) throw error;
      // A database that has not our tables, or not our columns in them.
      throw new StoreFailure('damaged', `${path} does not hold the records of a workshop.`);
    } finally {
      file.close();
    }
  });
}

function textsOf(file: OpenFile, sql: string): readonly string[] {
  return file
    .prepare(sql)
    .all([])
    .map((row) => String(typeof row === 'object' && row !== null ? Object.values(row)[0] : row));
}

function brokenKeys(file: OpenFile): readonly string[] {
  const rows = file.prepare('pragma foreign_key_check').all([]);
  return rows.length === 0 ? [] : [`${rows.length} rows belong to a job that is not there`];
}
