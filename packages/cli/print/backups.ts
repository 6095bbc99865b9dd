import type { Backup } from '@fettle/store/backup/backup.ts';
import { countText } from './counts.ts';
import { table } from './layout.ts';
import { agoText, momentText } from './moments.ts';

/** A number of bytes in the unit that suits it. */
export const bytesText = (bytes: number): string => {
  if (bytes < 1e6) return `${Math.max(1, Math.round(bytes / 1e3))} kB`;
  return bytes < 1e9 ? `${(bytes / 1e6).toFixed(1)} MB` : `${(bytes / 1e9).toFixed(1)} GB`;
};

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
