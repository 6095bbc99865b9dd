import { setTimeout } from 'node:timers/promises';
import { backups, makeBackup } from '@fettle/store/backup/backup.ts';
import { backupsFolder } from '@fettle/store/backup/list.ts';
import { pruneBackups } from '@fettle/store/backup/prune.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { dayMs } from './durations.ts';

/** The backups that are made without being asked for. */
export interface Backups {
  state(): {
    /** When the newest was made, ISO 8601 in UTC. */
    readonly newest?: string;
    /** Why the last one failed, where it did. */
    readonly failure?: string;
  };
  /** Makes no more; waits a little for one that is being made. What is half made does not count. */
  stop(): Promise<void>;
}

export interface BackupParts {
  readonly store: Store;
  /** The data folder. */
  readonly folder: string;
  readonly clock: () => Date;
  readonly report: (says: string, error: unknown) => void;
}

/** One is made when the newest is this old, ms. */
const LASTS_MS = dayMs;
/** It is looked after the newest one this often, ms. */
const LOOK_EVERY_MS = 15 * 60_000;
/** One that is being made when the server stops gets so long to be whole, ms. */
const LAST_MS = 5000;

/** Called once a new backup is whole, so that nothing goes where nothing can be written. */
const clearAway = async ({ store, folder, clock, report }: BackupParts): Promise<void> => {
  try {
    await pruneBackups({ root: backupsFolder(folder), clock });
    await store.attachments.sweep();
  } catch (error) {
    report('What is no longer needed could not be cleared away', error);
  }
};

/**
 * Keeps a backup that is no older than a day, as long as the server runs, and then clears away automatic backups that
 * are no longer needed and files of photographs that were taken off. A failure is told and never stops it.
 */
export const startBackups = (parts: BackupParts): Backups => {
  const { store, folder, clock, report } = parts;
  let newest: string | undefined;
  let failure: string | undefined;
  let working: Promise<void> | undefined;

  const look = async (): Promise<void> => {
    try {
      newest = (await backups(folder))[0]?.manifest.madeAt;
      const age = newest === undefined ? Number.POSITIVE_INFINITY : clock().getTime() - Date.parse(newest);
      if (age < LASTS_MS || (await store.jobs.list({ count: 1 })).total === 0) return;
      const made = await makeBackup({ store, folder, clock, automatic: true });
      newest = made.manifest.madeAt;
      failure = undefined;
      await clearAway(parts);
    } catch (error) {
      failure = error instanceof Error ? error.message : String(error);
      report('The automatic backup failed', error);
    }
  };

  const lookOnce = (): void => {
    working ??= look().finally(() => {
      working = undefined;
    });
  };
  lookOnce();
  const timer = setInterval(lookOnce, LOOK_EVERY_MS);
  timer.unref();

  return {
    state: () => ({
      ...(newest === undefined ? {} : { newest }),
      ...(failure === undefined ? {} : { failure }),
    }),
    async stop() {
      clearInterval(timer);
      const patience = new AbortController();
      await Promise.race([
        working,
        setTimeout(LAST_MS, undefined, { signal: patience.signal, ref: false }).catch(() => undefined),
      ]);
      patience.abort();
    },
  };
};
