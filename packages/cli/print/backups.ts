import type { Backup } from '@fettle/store/backup/backup.ts';
import { bytesText, countText } from './counts.ts';
import { table } from './layout.ts';
import { agoText, momentText } from './moments.ts';

/** What a backup holds, a few words. */
export const countsText = ({ manifest: { counts } }: Backup): string => {
  const { jobs, revisions, attachments } = counts;
  return `${countText(jobs, 'job')}, ${countText(revisions, 'revision')}, ${countText(attachments, 'photograph')}`;
};

const columns = [
  { head: 'Name', width: 22 },
  { head: 'Made', width: 16 },
  { head: '', width: 14 },
  { head: 'Jobs', width: 6, align: 'right' },
  { head: 'Size', width: 9, align: 'right' },
] as const;

/** A list of backups, newest first. */
export const printBackups = (backups: readonly Backup[], now: Date): string =>
  table(
    columns,
    backups.map(({ name, manifest }) => [
      name,
      momentText(manifest.madeAt),
      agoText(manifest.madeAt, now),
      String(manifest.counts.jobs),
      bytesText(manifest.database.bytes),
    ]),
  );
