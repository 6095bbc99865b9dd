import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { backups, makeBackup, restoreBackup } from '@fettle/store/backup/backup.ts';
import { StoreFailure } from '@fettle/store/contract/failure.ts';
import { exportAll } from '@fettle/store/plainFiles/exportAll.ts';
import { importAll } from '@fettle/store/plainFiles/importAll.ts';
import { BadInput } from '../../../packages/cli/exits.ts';
import { layExport, withWholeExports } from '../../../packages/cli/records/importExport.ts';
import { hashOf } from '../canonical.ts';
import { type Chance, chanceFrom } from '../chance.ts';
import { fillWorkshop } from '../inventedWorkshop.ts';
import { differing, lookAt, withStore } from '../wholeRecords.ts';
import { damagedArchive } from './damagedArchive.ts';
import { anyBytes, hostileBodies, mutatedBytes, mutatedText } from './hostile.ts';

/** What imports of damaged folders and restores of damaged backups came to. */
export interface ImportTally {
  readonly cases: number;
  readonly faults: readonly string[];
  /** How often each ended so. */
  readonly outcomes: ReadonlyMap<string, number>;
}

/** Damages one file, or what it is called, in a way that a bad disk, an editor or an enemy could. */
function damage(folder: string, chance: Chance): string {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  const { name, parentPath } = chance.among(files);
  const path = join(parentPath, name);
  const bytes = readFileSync(path);
  const isText = /\.(?:yaml|json|csv|txt|md)$/.test(name);
  switch (chance.below(8)) {
    case 0:
      rmSync(path);
      return `without ${name}`;
    case 1:
      writeFileSync(path, chance.among(hostileBodies));
      return `${name} with another content`;
    case 2:
      writeFileSync(path, anyBytes(2000, chance));
      return `${name} of any bytes`;
    case 3:
      rmSync(path);
      symlinkSync('/etc/hostname', path);
      return `${name} as a link to elsewhere`;
    case 4:
      rmSync(path);
      mkdirSync(path);
      return `${name} as a folder`;
    default:
      writeFileSync(path, isText ? mutatedText(bytes.toString(), chance) : mutatedBytes(bytes, chance));
      return `${name} changed`;
  }
}

/** Sizes and hashes as an enemy would write them anew after the damage, so that what lies behind them is tried. */
function seal(exported: string): void {
  const list = join(exported, 'export.json');
  try {
    const manifest: unknown = JSON.parse(readFileSync(list, 'utf8'));
    const files: unknown = Reflect.get(Object(manifest), 'files');
    for (const [path, held] of Object.entries(Object(files))) {
      const bytes = readFileSync(join(exported, path));
      Object.assign(Object(held), { bytes: bytes.length, sha256: hashOf(bytes) });
    }
    writeFileSync(list, JSON.stringify(manifest));
  } catch {
    // The damage was to the list itself, or a file is gone: then there is nothing to seal.
  }
}

/** Sound records in a folder, an export and a backup of them. */
interface Sound {
  readonly data: string;
  readonly exported: string;
  readonly digests: ReadonlyMap<string, string>;
}

async function laySound(folder: string, seed: number): Promise<Sound> {
  const [data, exported] = [join(folder, 'data'), join(folder, 'exported')];
  await withStore(data, async (store) => {
    await fillWorkshop(store, { jobs: 6, chance: chanceFrom(seed) });
    await makeBackup({ store, folder: data });
    await exportAll({ store, to: exported });
  });
  return { data, exported, digests: (await lookAt(data)).digests };
}

/** How something ended that may refuse by its result or by a failure of the store, and no other way. */
async function ending(work: () => Promise<unknown>): Promise<string | Error> {
  try {
    const result = await work();
    const isRefused = typeof result === 'object' && result !== null && Reflect.get(result, 'ok') === false;
    return isRefused ? 'refused' : 'taken';
  } catch (error) {
    if (error instanceof StoreFailure) return `refused, ${error.code}`;
    if (error instanceof BadInput) return 'refused';
    return error instanceof Error ? error : new Error(String(error));
  }
}

interface Case {
  readonly folder: string;
  readonly sound: Sound;
  readonly chance: Chance;
}

interface CaseEnd {
  readonly what: string;
  readonly end: string | Error;
  readonly faults: readonly string[];
}

/** Imports a damaged export into the records that it came from, or into empty ones. */
async function importDamaged({ folder, sound, chance }: Case): Promise<CaseEnd> {
  const [from, data] = [join(folder, 'exported'), join(folder, 'data')];
  cpSync(sound.exported, from, { recursive: true });
  const isEmpty = chance.share() < 0.5;
  if (!isEmpty) cpSync(sound.data, data, { recursive: true });
  const isSealed = chance.share() < 0.75;
  const what = `${damage(from, chance)}${isSealed ? ', sealed' : ''}`;
  if (isSealed) seal(from);
  const end = await withStore(data, (store) => ending(() => importAll({ store, from, by: 'invented' })));
  const { digests, faults: found } = await lookAt(data);
  // Whoever seals what he changed may write any document of the right shape: that it does not read, the import tells.
  const faults = found.filter((fault) => !(isSealed && fault.includes(' does not read: ')));
  const changed = isEmpty
    ? [...digests.keys()].filter((name) => name.startsWith('job ') && String(end).startsWith('refused'))
    : differing(sound.digests, digests).filter((name) => sound.digests.has(name));
  return {
    what: `import ${what}`,
    end,
    faults: [...faults, ...changed.map((name) => `${name} was changed`)],
  };
}

/** Restores a damaged backup over sound records: they are as before, or the backup was whole after all. */
async function restoreDamaged({ folder, sound, chance }: Case): Promise<CaseEnd> {
  const data = join(folder, 'data');
  cpSync(sound.data, data, { recursive: true });
  const what = damage(join(data, 'backups'), chance);
  const end = await ending(async () => {
    const [newest] = await backups(data);
    if (newest === undefined) return { ok: false };
    return restoreBackup({ from: newest.folder, to: data });
  });
  const { digests, faults } = await lookAt(data);
  const changed = differing(sound.digests, digests);
  return {
    what: `restore ${what}`,
    end,
    faults: [...faults, ...changed.map((name) => `${name} was changed`)],
  };
}

/** Where an archive with names that lead out of its folder would put a file. */
const outside = join(tmpdir(), 'outside.yaml');

/** Imports the damaged archive of an export: only what an export may hold is unpacked, and nothing beside it. */
async function importArchive({ folder, sound, chance }: Case): Promise<CaseEnd> {
  const data = join(folder, 'data');
  mkdirSync(folder);
  const { what, bytes } = damagedArchive(sound.exported, chance);
  const archive = join(folder, 'export.zip');
  writeFileSync(archive, bytes);
  const end = await withStore(data, (store) =>
    ending(() =>
      withWholeExports([archive], async (whole) => {
        for (const one of whole) await layExport({ store, folder: data, by: 'invented' }, one);
      }),
    ),
  );
  const { digests, faults } = await lookAt(data);
  const isTaken = end === 'taken';
  const changed = isTaken ? differing(sound.digests, digests).filter((name) => sound.digests.has(name)) : [];
  const left = isTaken ? [] : [...digests.keys()].filter((name) => name.startsWith('job '));
  const strays = [outside].filter((path) => existsSync(path));
  return {
    what: `archive ${what}`,
    end,
    faults: [...faults, ...[...changed, ...left, ...strays].map((name) => `${name} was changed`)],
  };
}

/** Most of what comes back into records comes as a folder. */
const kinds = [importDamaged, restoreDamaged, importDamaged, importArchive] as const;

/** Lets damaged exports be imported and damaged backups be restored, and holds the records against before. */
export async function fuzzImports({ cases, seed }: { cases: number; seed: number }): Promise<ImportTally> {
  const chance = chanceFrom(seed);
  const faults: string[] = [];
  const outcomes = new Map<string, number>();
  const root = mkdtempSync(join(tmpdir(), 'fettle-imports-'));
  try {
    const sound = await laySound(root, seed);
    for (let count = 0; count < cases; count++) {
      const folder = join(root, `case-${count}`);
      const run = { folder, sound, chance };
      const kind = kinds[count % kinds.length] ?? importDamaged;
      const { what, end, faults: found } = await kind(run);
      const name = `${what.split(' ')[0]} ${end instanceof Error ? 'threw' : end}`;
      outcomes.set(name, (outcomes.get(name) ?? 0) + 1);
      if (end instanceof Error) faults.push(`${what}: ${end.stack}`);
      faults.push(...found.map((fault) => `${what}, ${String(end)}: ${fault}`));
      rmSync(folder, { recursive: true, force: true });
    }
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
  return { cases, faults, outcomes };
}
