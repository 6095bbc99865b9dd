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

const database = (folder: string): string => join(folder, 'fettle.db');

function pictures(folder: string): string[] {
  const root = join(folder, 'attachments');
  if (!existsSync(root)) return [];
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:jpg|png)$/.test(name) && !name.includes('.thumb.'))
    .map((name) => join(root, name));
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

const cutPicture: Harm = (folder) => {
  const [first] = pictures(folder);
  if (first !== undefined) truncateSync(first, Math.floor(statSync(first).size / 2));
};

const lostPicture: Harm = (folder) => {
  const [first] = pictures(folder);
  if (first !== undefined) rmSync(first);
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
