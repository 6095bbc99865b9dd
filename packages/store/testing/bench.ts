import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { OpenOptions, Store } from '../contract/store.ts';

/** Opens the records of an engine in a folder. */
export type OpenStore = (options: Pick<OpenOptions, 'folder' | 'clock'>) => Promise<Store>;

/** What a case of the contract works with: empty records of its own, and the time in its hands. */
export interface Bench {
  readonly store: Store;
  readonly folder: string;
  /** Moves the time on, seconds. */
  readonly wait: (seconds: number) => void;
  /** Closes the records and opens them again. */
  readonly reopen: () => Promise<Store>;
}

/** One promise of the contract, in words, and what shows that it is kept. */
export type Case = readonly [says: string, shows: (bench: Bench) => Promise<void>];

/** When the time of every bench begins. */
export const firstMoment = '2026-11-02T09:00:00.000Z';

/** Runs a case on records of its own, which are gone afterwards. */
export async function onBench(open: OpenStore, shows: (bench: Bench) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-contract-'));
  let moment = Date.parse(firstMoment);
  const options = { folder, clock: () => new Date(moment) };
  let store = await open(options);
  try {
    await shows({
      store,
      folder,
      wait: (seconds) => {
        moment += seconds * 1_000;
      },
      reopen: async () => {
        await store.close();
        store = await open(options);
        return store;
      },
    });
  } finally {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A job without a number, with parts of its own in the place of the usual ones. */
export function jobOf(parts: Partial<JobDocument> = {}): JobDocument {
  return {
    fettle: 1,
    tank: { volume: '180 L', temperature: '25 °C' },
    filter: {
      family: 'internal-box',
      measurements: {
        innerWidth: '74 mm',
        innerDepth: '66 mm',
        innerHeight: '190 mm',
        chambers: 2,
        slotArea: '4.2 cm2',
      },
      pump: { ratedFlow: '900 L/h', shutoffHead: '1.3 m', power: '14 W' },
    },
    ...parts,
  };
}

/** A job of a title. */
export const titled = (title: string): JobDocument => jobOf({ job: { title } });

/** Who writes, where it does not matter. */
export const by = 'tamsel';
