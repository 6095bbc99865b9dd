import { join } from 'node:path';
import { StoreFailure } from '../contract/failure.ts';
import { copyDurably } from '../files/durable.ts';
import { type OpenFile, openFile } from '../sqlite/driver.ts';
import { settleJournal } from '../sqlite/journal.ts';
import { isThere } from './pool.ts';

/** Files without which a database may lack what was written last. */
const ends = ['', '-wal', '-journal'];

/** Doors that were shut since the backup: links withdrawn, accounts closed. */
const shutAgain = `
update owner_link set
  withdrawn_at = (select withdrawn_at from before.owner_link as was where was.id = owner_link.id),
  withdrawn_by = (select withdrawn_by from before.owner_link as was where was.id = owner_link.id)
where withdrawn_at is null
  and id in (select id from before.owner_link where withdrawn_at is not null);
update account set closed_at = (select closed_at from before.account as was where was.name = account.name)
where closed_at is null
  and name in (select name from before.account where closed_at is not null)
`;

/**
 * Lets no door open again by a restore: in the restored database every session ends, and links and accounts stay
 * shut that are shut in the database that it takes the place of, as far as that can still be read. That one is
 * only copied, never opened. The restored one gets the journal of a new file.
 *
 * @param part folder for the copy
 */
export async function keepDoorsShut(of: {
  readonly restored: string;
  readonly before: string;
  readonly part: string;
}): Promise<void> {
  const { restored, before, part } = of;
  const copy = join(part, 'before.db');
  for (const end of ends) if (await isThere(before + end)) await copyDurably(before + end, copy + end);
  const file = openFile(restored);
  try {
    file.exec('delete from session');
    if (await isThere(copy)) shut(file, copy);
    // Nobody else has it open yet, as with a new file. Last, so that all that was written is in the file itself.
    settleJournal(file, true);
  } finally {
    file.close();
  }
}

function shut(file: OpenFile, copy: string): void {
  try {
    file.prepare('attach database ? as before').run([copy]);
    file.exec(`begin immediate; ${shutAgain}; commit`);
  } catch (error) {
    if (!(error instanceof StoreFailure) && !isOtherTables(error)) throw error;
    // Too damaged to be read, or no records at all: it says nothing about what was shut.
    try {
      file.exec('rollback');
    } catch {
      // Nothing had begun.
    }
  }
}

const isOtherTables = (error: unknown): boolean =>
  error instanceof Error && /no such (?:table|column)/.test(error.message);
