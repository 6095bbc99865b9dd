import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { backups, makeBackup, verifyBackup } from '@fettle/store/backup/backup.ts';
import { exportAll } from '@fettle/store/plainFiles/exportAll.ts';
import { digestOf } from './canonical.ts';
import { type Chance, chanceFrom } from './chance.ts';
import { fillWorkshop } from './inventedWorkshop.ts';
import { commandLineOf } from './serverProcess.ts';
import { differing, lookAt, withStore } from './wholeRecords.ts';

/** What the kills of one command came to. */
export interface KilledCommand {
  readonly command: string;
  readonly kills: number;
  /** How many of them came before the command had ended by itself. */
  readonly inTheMiddle: number;
  readonly faults: readonly string[];
}

/** A command with what it starts from and what must hold after it was killed. */
interface Trial {
  readonly command: string;
  readonly words: (folder: string) => readonly string[];
  /** Lays out a folder that the command is let loose on. */
  readonly prepare: (folder: string) => void;
  readonly look: (folder: string) => Promise<readonly string[]>;
}

/** Runs a command; killed after the given milliseconds unless it has ended before. */
function runKilled(words: readonly string[], afterMs: number): Promise<'killed' | number> {
  const started = spawn(process.execPath, commandLineOf(words), { stdio: 'ignore' });
  const timer = setTimeout(() => started.kill('SIGKILL'), afterMs);
  return new Promise((settle) => {
    started.once('exit', (code) => {
      clearTimeout(timer);
      settle(code ?? 'killed');
    });
  });
}

async function killOften(
  trial: Trial,
  { kills, chance }: { kills: number; chance: Chance },
): Promise<KilledCommand> {
  const faults: string[] = [];
  let inTheMiddle = 0;
  const longest = await unkilled(trial);
  for (let count = 0; count < kills; count++) {
    await inFolder(async (folder) => {
      trial.prepare(folder);
      const afterMs = chance.between(Math.floor(longest * 0.3), longest);
      if ((await runKilled(trial.words(folder), afterMs)) === 'killed') inTheMiddle++;
      const found = await trial.look(folder).catch((error: unknown) => [String(error)]);
      faults.push(...found.map((fault) => `${trial.command}, killed after ${afterMs} ms: ${fault}`));
    });
  }
  return { command: trial.command, kills, inTheMiddle, faults };
}

/** How long a command takes that nobody kills, in milliseconds; a command that then fails is no trial. */
async function unkilled(trial: Trial): Promise<number> {
  return inFolder(async (folder) => {
    trial.prepare(folder);
    const began = performance.now();
    const code = await runKilled(trial.words(folder), 60_000);
    const took = performance.now() - began;
    const found = await trial.look(folder);
    if (code !== 0 || found.length > 0)
      throw new Error(`${trial.command} ends with ${code} when nobody kills it: ${found.join(' ')}`);
    return Math.ceil(took);
  });
}

/** What all trials begin from: a filled data folder with a backup, and an export of it. */
interface Stock {
  readonly data: string;
  readonly exported: string;
  readonly digests: ReadonlyMap<string, string>;
}

const stockJobs = 16;

async function layStock(folder: string): Promise<Stock> {
  const [data, exported] = [join(folder, 'data'), join(folder, 'exported')];
  await withStore(data, async (store) => {
    await fillWorkshop(store, { jobs: stockJobs, chance: chanceFrom(40) });
    await makeBackup({ store, folder: data });
    await exportAll({ store, to: exported });
  });
  const { digests, faults } = await lookAt(data);
  if (faults.length > 0 || digests.size < stockJobs)
    throw new Error(`the stock is not whole: ${faults.join(' ')}`);
  return { data, exported, digests };
}

const dataIn = (folder: string): string => join(folder, 'data');

/** Digest of a book in which nothing was written yet. */
const emptyBook = digestOf([]);

/** Sound records, where there are any, of which each job is as it was or, where that may be, not there yet. */
async function lookFor(folder: string, { digests }: Stock, mayLack: boolean): Promise<string[]> {
  const now = await lookAt(dataIn(folder));
  const isLacking = (name: string): boolean => (now.digests.get(name) ?? emptyBook) === emptyBook;
  const different = differing(now.digests, digests).filter((name) => !mayLack || !isLacking(name));
  return [...now.faults, ...different.map((name) => `${name} is neither as before nor as after`)];
}

async function backupFaults(folder: string): Promise<string[]> {
  const found: string[] = [];
  for (const backup of await backups(dataIn(folder))) {
    const { faults } = await verifyBackup(backup);
    found.push(...faults);
  }
  return found;
}

const trialsWith = (stock: Stock): readonly Trial[] => [
  {
    command: 'open a new folder',
    words: (folder) => ['jobs', '--data', dataIn(folder)],
    prepare: () => {},
    look: async (folder) => (await lookAt(dataIn(folder))).faults,
  },
  {
    command: 'backup',
    words: (folder) => ['backup', '--data', dataIn(folder)],
    prepare: (folder) => cpSync(stock.data, dataIn(folder), { recursive: true }),
    look: async (folder) => [...(await lookFor(folder, stock, false)), ...(await backupFaults(folder))],
  },
  {
    command: 'import',
    words: (folder) => ['import', stock.exported, '--data', dataIn(folder)],
    prepare: () => {},
    look: (folder) => lookFor(folder, stock, true),
  },
  {
    command: 'restore',
    words: (folder) => ['restore', '--data', dataIn(folder)],
    prepare: (folder) => cpSync(stock.data, dataIn(folder), { recursive: true }),
    look: (folder) => lookFor(folder, stock, false),
  },
];

/** Kills each command that writes at moments of chance while it runs, and looks at what it leaves. */
export async function killCommands(run: { kills: number; seed: number }): Promise<readonly KilledCommand[]> {
  const chance = chanceFrom(run.seed);
  return inFolder(async (folder) => {
    const stock = await layStock(folder);
    const rows: KilledCommand[] = [];
    for (const trial of trialsWith(stock)) rows.push(await killOften(trial, { kills: run.kills, chance }));
    return rows;
  });
}

async function inFolder<Result>(work: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-killed-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
