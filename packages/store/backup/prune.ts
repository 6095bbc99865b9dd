import { rm } from 'node:fs/promises';
import { onDisk, syncFolder } from '../files/durable.ts';
import { sweepParts } from '../files/passingFolder.ts';
import { backupsIn, poolOf } from './list.ts';
import { type Backup, manifestOf } from './manifest.ts';
import { clearPool } from './pool.ts';

const dayMs = 24 * 60 * 60 * 1000;
const keptDays = 7;
const keptWeeks = 5;

/**
 * Deletes automatic backups that are no longer needed: of each of the last seven days and five weeks the newest
 * stays. Those that were asked for stay, and the newest of all. Then pictures go that no backup names, and what was
 * half written a day ago or more.
 *
 * @param asked.root folder of backups
 * @returns names of the backups that were deleted
 */
export async function pruneBackups(asked: {
  readonly root: string;
  readonly clock?: () => Date;
}): Promise<readonly string[]> {
  const { root, clock = () => new Date() } = asked;
  const now = clock();
  const { whole, unreadable } = await backupsIn(root);
  const kept = neededOf(whole, now);
  const deleted: string[] = [];
  for (const backup of whole.filter((each) => !kept.has(each))) {
    // Without its manifest it does not count, wherever the deleting ends.
    await onDisk(backup.folder, () => rm(manifestOf(backup.folder)));
    await syncFolder(backup.folder);
    await onDisk(backup.folder, () => rm(backup.folder, { recursive: true }));
    deleted.push(backup.name);
  }
  const before = new Date(now.getTime() - dayMs);
  await sweepParts(root, before);
  // A manifest that this version cannot follow may name any of them.
  if (unreadable.length === 0) await clearPool(poolOf(root), hashesOf(kept), before);
  return deleted;
}

function hashesOf(kept: ReadonlySet<Backup>): ReadonlySet<string> {
  return new Set([...kept].flatMap(({ manifest }) => manifest.pictures.map((name) => name.slice(0, 64))));
}

/** The backups that stay, of a list from the newest to the oldest. */
function neededOf(whole: readonly Backup[], now: Date): ReadonlySet<Backup> {
  const automatic = whole.filter(({ manifest }) => manifest.automatic);
  const kept = new Set(whole.filter(({ manifest }) => !manifest.automatic));
  for (const backup of whole.slice(0, 1)) kept.add(backup);
  for (const [spanMs, most] of [
    [dayMs, keptDays],
    [7 * dayMs, keptWeeks],
  ] as const) {
    const taken = new Set<number>();
    for (const backup of automatic) {
      // Days and weeks by the calendar of UTC, weeks from Monday (1 January 1970 was a Thursday).
      const shift = spanMs === dayMs ? 0 : 3 * dayMs;
      const span = Math.floor((Date.parse(backup.manifest.madeAt) + shift) / spanMs);
      const current = Math.floor((now.getTime() + shift) / spanMs);
      if (current - span >= most || taken.has(span)) continue;
      taken.add(span);
      kept.add(backup);
    }
  }
  return kept;
}
