import { existsSync, readFileSync } from 'node:fs';
import type { Model } from '@fettle/engine/model/model.ts';
import { readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { machineUser } from '@fettle/workflows/machineUser.ts';
import { type DataOptions, dataFolder } from './dataFolder.ts';

/** The demo job that goes through the whole work. */
export const mainDemo = 'tall-drum';

/** The demo jobs beside it. */
const otherDemos = ['two-halves', 'back-hanger', 'corner-box', 'everything-wrong'] as const;

/** A demo job, beside the bundled program or in the repository. */
export const demoNamed = (name: string): { readonly document: JobDocument; readonly model: Model } => {
  const places = [`./demo/${name}.yaml`, `../../../demo/${name}.yaml`];
  const found = places.map((place) => new URL(place, import.meta.url)).find((place) => existsSync(place));
  if (!found) throw new Error(`the demo job ${name} is not beside the program`);
  const reading = readJob(readFileSync(found, 'utf8'));
  if (!reading.ok) throw new Error(`the demo job does not read: ${reading.problems[0]?.says}`);
  return reading;
};

/** Where the demo jobs of the workbench are kept: never among the records of real jobs, unless a folder is named. */
export const demoFolder = (options: DataOptions): string =>
  options.data === undefined ? `${dataFolder({}).folder}-demo` : dataFolder(options).folder;

/**
 * Lays the demo jobs into records of their own, where there are none yet.
 *
 * @param worked the main demo job, as far as it was worked
 * @returns its number
 * @throws StoreFailure
 */
export const layDemoRecords = async (folder: string, worked: JobDocument): Promise<number> => {
  const { openStore } = await import('@fettle/store/open.ts');
  const store = await openStore({ folder });
  try {
    const [first] = await store.jobs.numbers();
    if (first !== undefined) return first;
    const by = machineUser();
    const { number } = await store.jobs.create({ document: worked, by });
    for (const name of otherDemos) await store.jobs.create({ document: demoNamed(name).document, by });
    return number;
  } finally {
    await store.close();
  }
};
