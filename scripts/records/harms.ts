import {
  copyFileSync,
  existsSync,
  openSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import type { Harm } from './killRounds.ts';
import type { Ledger } from './ledger.ts';

const database = (folder: string): string => join(folder, 'fettle.db');

/**
 * File of a picture that was acknowledged and never asked to be removed; undefined where there is none yet. One that
 * the kill overtook may be missing or cut without anything being lost.
 */
function acknowledgedPicture(folder: string, { pictures, removalsAsked }: Ledger): string | undefined {
  const root = join(folder, 'attachments');
  const kept = pictures.find(({ id }) => !removalsAsked.has(id));
  if (kept === undefined) return undefined;
  const names = readdirSync(root, { recursive: true, encoding: 'utf8' });
  const name = names.find((each) => each.includes(kept.hash) && !each.includes('.thumb.'));
  return name === undefined ? undefined : join(root, name);
}

/** Puts the database back as it was after an earlier look: what was acknowledged since is lost. */
function olderDatabase(): Harm {
  return (folder) => {
    const kept = join(folder, 'earlier');
    if (existsSync(kept)) {
      for (const ending of ['-journal', '-wal', '-shm'])
        rmSync(`${database(folder)}${ending}`, { force: true });
      copyFileSync(kept, database(folder));
    } else copyFileSync(database(folder), kept);
  };
}

const cutPicture: Harm = (folder, ledger) => {
  const file = acknowledgedPicture(folder, ledger);
  if (file !== undefined) truncateSync(file, Math.floor(statSync(file).size / 2));
};

const lostPicture: Harm = (folder, ledger) => {
  const file = acknowledgedPicture(folder, ledger);
  if (file !== undefined) rmSync(file);
};

/** Writes over the middle of the database. */
const scratchedDatabase: Harm = (folder) => {
  const file = openSync(database(folder), 'r+');
  const { size } = statSync(database(folder));
  for (let share = 1; share < 8; share++)
    writeSync(file, Buffer.alloc(600, 0xa5), 0, 600, Math.floor((size * share) / 8));
};

/** Harms by name, each of which the kill run must report as a loss. */
export const harms: Readonly<Record<string, () => Harm>> = {
  'older-database': olderDatabase,
  'cut-picture': () => cutPicture,
  'lost-picture': () => lostPicture,
  'scratched-database': () => scratchedDatabase,
};
