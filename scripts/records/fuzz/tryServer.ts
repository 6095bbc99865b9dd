import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Store } from '@fettle/store/contract/store.ts';
import { projectRoot } from '../../sources.ts';
import { chanceFrom } from '../chance.ts';
import { inventedJob } from '../inventedJobs.ts';
import { fillWorkshop } from '../inventedWorkshop.ts';
import { documentDigest, type Ledger, newLedger, noteRevision } from '../ledger.ts';
import { residentMiB } from '../memory.ts';
import { startServerProcess, stopServerProcess } from '../serverProcess.ts';
import { withStore } from '../wholeRecords.ts';
import { type FuzzTally, fuzzServer } from './fuzzServer.ts';
import { sendRaw } from './rawRequests.ts';
import type { Targets } from './requests.ts';
import { send } from './send.ts';

/** What a run of hostile requests came to, and what was left of the records after it. */
export interface ServerTrial extends FuzzTally {
  readonly rawCases: number;
  /** How many acknowledged revisions were held against the records at the end. */
  readonly revisions: number;
  /** Before, at each quarter and after. */
  readonly memoryMiB: readonly number[];
}

/** How much more memory the server may hold in the last quarter than in the second. */
const mostGrowthMiB = 300;

/** Jobs to mutate: the demos as they are written, and invented ones as data. */
function material(seed: number): { readonly jobTexts: readonly string[]; readonly jobs: readonly unknown[] } {
  const folder = resolve(projectRoot, 'demo');
  const chance = chanceFrom(seed);
  return {
    jobTexts: readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8')),
    jobs: Array.from({ length: 8 }, () => inventedJob(chance)),
  };
}

async function everyPicture(store: Store): Promise<Targets['pictures']> {
  const numbers = await store.jobs.numbers();
  return (await Promise.all(numbers.map((number) => store.attachments.list(number)))).flat();
}

async function everyRevision(store: Store): Promise<Ledger> {
  const ledger = newLedger();
  for (const number of await store.jobs.numbers())
    for (const { revision } of (await store.jobs.revisions(number)) ?? []) {
      const held = await store.jobs.revision(number, revision);
      noteRevision(ledger, { number, revision, digest: documentDigest(held?.document) });
    }
  return ledger;
}

/** Starts a server over invented records, sends it what it cannot like, and looks over the records again. */
export async function tryServer(run: {
  readonly cases: number;
  readonly seed: number;
  readonly onProgress?: (done: number, faults: number) => void;
}): Promise<ServerTrial> {
  const { cases, seed, onProgress } = run;
  const folder = mkdtempSync(join(tmpdir(), 'fettle-fuzz-'));
  try {
    const { ledger, pictures } = await withStore(folder, async (store) => {
      await fillWorkshop(store, { jobs: 12, chance: chanceFrom(seed) });
      return { ledger: await everyRevision(store), pictures: await everyPicture(store) };
    });
    const server = await startServerProcess(folder);
    const memoryMiB = [residentMiB(server.process.pid)];
    const each = { server, ledger, pictures, ...material(seed), ...(onProgress ? { onProgress } : {}) };
    const quarters: FuzzTally[] = [];
    for (let quarter = 0; quarter < 4; quarter++) {
      quarters.push(await fuzzServer({ ...each, cases: Math.ceil(cases / 4), seed: seed + quarter * 1000 }));
      memoryMiB.push(residentMiB(server.process.pid));
    }
    const raw = await sendRaw(server.address, seed);
    const health = await send(server.address, { method: 'GET', address: '/api/health', headers: {} });
    const ended = await stopServerProcess(server);
    const faults = [
      ...quarters.flatMap((tally) => tally.faults),
      ...raw.faults,
      ...(health.status === 200 ? [] : [`the server's health is answered ${health.status} at the end`]),
      ...(ended === 0 ? [] : [`the server ended with ${ended}: ${server.written().slice(-1000)}`]),
      ...(memoryMiB[4]! - memoryMiB[2]! > mostGrowthMiB ? [`memory grew: ${memoryMiB.join(', ')} MiB`] : []),
      ...(await withStore(folder, (store) => changedSince(store, ledger))),
    ];
    const revisions = [...ledger.revisions.values()].reduce((sum, known) => sum + known.size, 0);
    return { ...together(quarters), faults, rawCases: raw.cases, revisions, memoryMiB };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Acknowledged revisions that are not there as they were, gaps between revisions, and faults of a whole look. */
async function changedSince(store: Store, ledger: Ledger): Promise<string[]> {
  const faults = [...(await store.checkup({ thorough: true })).faults];
  const now = await everyRevision(store);
  for (const [number, revisions] of ledger.revisions)
    for (const [revision, digest] of revisions)
      if (now.revisions.get(number)?.get(revision) !== digest)
        faults.push(`revision ${revision} of job ${number} is not what was acknowledged`);
  for (const [number, revisions] of now.revisions)
    if (Math.max(...revisions.keys()) !== revisions.size) faults.push(`job ${number} lacks a revision`);
  return faults;
}

function together(quarters: readonly FuzzTally[]): Pick<FuzzTally, 'cases' | 'answers'> {
  const answers = new Map<string, Map<number, number>>();
  for (const { answers: some } of quarters)
    for (const [name, known] of some) {
      const sum = answers.get(name) ?? new Map<number, number>();
      answers.set(name, sum);
      for (const [status, count] of known) sum.set(status, (sum.get(status) ?? 0) + count);
    }
  return { cases: quarters.reduce((sum, { cases }) => sum + cases, 0), answers };
}
