import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '@fettle/store/open.ts';
import { type Chance, chanceFrom } from './chance.ts';
import { type Desk, newDesk, writeUntilGone } from './clients.ts';
import { type Ledger, newLedger } from './ledger.ts';
import { type Loss, lossesIn } from './losses.ts';
import { killAtOnce, startServerProcess } from './serverProcess.ts';

/** A harm done to the records on purpose, between a kill and the look: what sees no harm is no check. */
export type Harm = (folder: string, ledger: Ledger) => void | Promise<void>;

/** What many kills came to. */
export interface KillTally {
  readonly rounds: number;
  readonly acknowledged: number;
  readonly outrun: number;
  readonly losses: readonly (Loss & { readonly round: number })[];
  readonly seconds: number;
}

export interface KillRun {
  readonly rounds: number;
  readonly seed: number;
  /** Longest time that clients write on before a kill, ms; 2500 where left out. */
  readonly longestMs?: number;
  /** Done before each round's look, with the copy of the folder as it was before the round. */
  readonly harm?: Harm;
  readonly onRound?: (round: number, losses: readonly Loss[], ledger: Ledger) => void;
}

/** Rounds after which the records are looked over whole and a new data folder is begun. */
const roundsOfFolder = 25;
const clients = 4;

/** Kills a writing server again and again at moments of chance, and holds what is left against the ledger. */
export async function killRounds(run: KillRun): Promise<KillTally> {
  const { rounds, seed, harm, onRound, longestMs = 2500 } = run;
  const chance = chanceFrom(seed);
  const began = performance.now();
  const losses: KillTally['losses'][number][] = [];
  const sums = { acknowledged: 0, outrun: 0 };
  for (let first = 0; first < rounds; first += roundsOfFolder) {
    const folder = mkdtempSync(join(tmpdir(), 'fettle-kill-'));
    const ledger = newLedger();
    const desk = newDesk();
    const last = Math.min(rounds, first + roundsOfFolder);
    try {
      for (let round = first; round < last; round++) {
        await oneKill({ folder, ledger, desk, chance, longestMs });
        await harm?.(folder, ledger);
        const found = await look(folder, ledger, round === last - 1 ? 'all' : 'touched');
        losses.push(...found.map((loss) => ({ ...loss, round })));
        onRound?.(round, found, ledger);
        // Records with a loss are no ground for more rounds.
        if (found.length > 0) break;
      }
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
    sums.acknowledged += ledger.acknowledged;
    sums.outrun += ledger.outrun;
  }
  return { rounds, ...sums, losses, seconds: (performance.now() - began) / 1000 };
}

interface Round {
  readonly folder: string;
  readonly ledger: Ledger;
  readonly desk: Desk;
  readonly chance: Chance;
  readonly longestMs: number;
}

async function oneKill({ folder, ledger, desk, chance, longestMs }: Round): Promise<void> {
  const server = await startServerProcess(folder);
  let gone = false;
  const writing = Array.from({ length: clients }, () => {
    const own = chanceFrom(chance.below(2 ** 31));
    return writeUntilGone({ address: server.address, ledger, desk, chance: own }, () => gone);
  });
  const afterMs = chance.between(20, longestMs);
  try {
    await Promise.race([firstWrite(ledger), Promise.all(writing)]);
    await Promise.race([new Promise((settle) => setTimeout(settle, afterMs)), Promise.all(writing)]);
  } finally {
    gone = true;
    await killAtOnce(server);
  }
  await Promise.all(writing);
}

/**
 * Resolves as soon as one more write is acknowledged and there is a picture: a server that has just started takes
 * its time.
 */
async function firstWrite(ledger: Ledger): Promise<void> {
  const before = ledger.acknowledged;
  const isMet = (): boolean => ledger.acknowledged > before && ledger.pictures.length > 0;
  for (let tries = 0; tries < 6000 && !isMet(); tries++) await new Promise((settle) => setTimeout(settle, 5));
}

async function look(folder: string, ledger: Ledger, which: 'all' | 'touched'): Promise<readonly Loss[]> {
  try {
    const store = await openStore({ folder });
    try {
      const found = await lossesIn(store, ledger, which === 'all' ? ledger.revisions.keys() : ledger.touched);
      ledger.touched.clear();
      const waiting = new Set((await store.work.recover()).map(({ id }) => id));
      const unended = ledger.works.filter(({ id }) => !waiting.has(id));
      for (const { id } of unended) {
        const state = (await store.work.find(id))?.state;
        if (state !== 'done' && state !== 'failed' && state !== 'cancelled')
          return [...found, { kind: 'lost', says: `work ${id} neither waits nor has ended: ${state}` }];
      }
      return found;
    } finally {
      await store.close();
    }
  } catch (error) {
    return [{ kind: 'torn', says: `the records do not open: ${String(error)}` }];
  }
}
