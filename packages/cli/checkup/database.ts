import { StoreFailure } from '@fettle/store/contract/failure.ts';
import type { Health, Store } from '@fettle/store/contract/store.ts';
import { BadInput } from '../exits.ts';
import { bytesText, countText } from '../print/counts.ts';
import { agoText } from '../print/moments.ts';
import { type DataOptions, dataFolder } from '../records/dataFolder.ts';
import { dataWords, hasRecords } from '../records/records.ts';
import { type CheckupLine, fault, look, ok } from './line.ts';

/** Where the folder itself cannot be looked into. */
const elsewhere = 'Use a folder of this user, or ask whose it is.';

/** A backup older than this is worth a look, days. */
const OLD_BACKUP_DAYS = 7;
const DAY_MS = 86_400_000;

const restoreFrom = (options: DataOptions): string =>
  `fettle restore${dataWords(options)} goes back to the newest backup.`;

const counts = ({ edition, journal, jobs, revisions, attachments, databaseBytes }: Health): string =>
  `edition ${edition}, journal ${journal}, ${countText(jobs, 'job')}, ${countText(revisions, 'revision')}, ${countText(attachments, 'photograph')}, ${bytesText(databaseBytes)}`;

const integrity = ({ faults }: Health, options: DataOptions, thorough: boolean): readonly CheckupLine[] => {
  if (faults.length > 0) return faults.map((says) => fault('Integrity', says, restoreFrom(options)));
  return [
    ok(
      'Integrity',
      thorough
        ? 'every page, document and picture is whole'
        : 'looked over quickly; --thorough reads every page, document and picture',
    ),
  ];
};

const accountsLine = async (store: Store): Promise<CheckupLine> => {
  const open = (await store.accounts.list()).filter(({ closedAt }) => closedAt === undefined);
  return ok(
    'Accounts',
    open.length === 0
      ? 'none; only fettle serve --share needs them'
      : open.map(({ name, role }) => `${name} (${role})`).join(', '),
  );
};

const openedLines = async (options: DataOptions, thorough: boolean): Promise<readonly CheckupLine[]> => {
  const { openStore } = await import('@fettle/store/open.ts');
  const store = await openStore({ folder: dataFolder(options).folder });
  try {
    const health = await store.checkup({ thorough });
    return [
      ok('Database', counts(health)),
      ...integrity(health, options, thorough),
      await accountsLine(store),
    ];
  } finally {
    await store.close();
  }
};

/** The database, whatever state it is in. */
export const databaseLines = async (
  options: DataOptions,
  thorough: boolean,
): Promise<readonly CheckupLine[]> => {
  try {
    if (!hasRecords(options)) return [ok('Database', 'none yet; the first job makes it')];
    return await openedLines(options, thorough);
  } catch (error) {
    if (error instanceof BadInput) return [fault('Database', error.message, elsewhere)];
    if (!(error instanceof StoreFailure)) throw error;
    return [fault('Database', error.message, error.advice || restoreFrom(options))];
  }
};

/** The newest backup and its age. */
export const backupLine = async (options: DataOptions, now: Date): Promise<CheckupLine> => {
  const make = `fettle backup${dataWords(options)} makes one; --out puts it on another disk.`;
  const { backups } = await import('@fettle/store/backup/backup.ts');
  try {
    const there = hasRecords(options);
    const [newest] = await backups(dataFolder(options).folder);
    if (newest === undefined)
      return there ? look('Backup', 'none yet', make) : ok('Backup', 'nothing to back up yet');
    const { madeAt } = newest.manifest;
    const says = `the newest was made ${agoText(madeAt, now)}, in ${newest.folder}`;
    const old = now.getTime() - Date.parse(madeAt) > OLD_BACKUP_DAYS * DAY_MS;
    return old ? look('Backup', says, make) : ok('Backup', says);
  } catch (error) {
    if (error instanceof BadInput) return look('Backup', error.message, elsewhere);
    if (!(error instanceof StoreFailure)) throw error;
    return look('Backup', error.message, error.advice || make);
  }
};
