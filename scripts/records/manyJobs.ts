import type { Chance } from './chance.ts';
import { inventedJob } from './inventedJobs.ts';
import type { Standing } from './loadMix.ts';
import { withStore } from './wholeRecords.ts';

/** Lays many invented jobs into a data folder by the store's own way of taking in; gives where each stands. */
export const layManyJobs = (folder: string, count: number, chance: Chance): Promise<Standing> =>
  withStore(folder, async (store) => {
    const standing: Standing = new Map();
    for (let laid = 0; laid < count; laid++) {
      const { number, revision } = await store.jobs.create({ document: inventedJob(chance), by: 'invented' });
      standing.set(number, revision);
    }
    return standing;
  });

/** Where each job of a data folder stands. */
export const standingIn = (folder: string): Promise<Standing> =>
  withStore(folder, async (store) => {
    const standing: Standing = new Map();
    const { total } = await store.jobs.list({ count: 1 });
    for (let skip = 0; skip < total; skip += 1000) {
      const { jobs } = await store.jobs.list({ count: 1000, skip, order: 'number' });
      for (const { number, revision } of jobs) standing.set(number, revision);
    }
    return new Map([...standing].toSorted(([one], [other]) => one - other));
  });
