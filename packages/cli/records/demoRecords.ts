import { existsSync, readFileSync } from 'node:fs';
import type { Model } from '@fettle/engine/model/model.ts';
import { readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { machineUser } from '@fettle/workflows/machineUser.ts';
import { badInput } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { type DataOptions, dataFolder } from './dataFolder.ts';

/** The demo job that goes through the whole work. */
export const mainDemo = 'tall-drum';

/** The demo jobs beside it. */
const otherDemos = ['two-halves', 'back-hanger', 'corner-box', 'everything-wrong', 'handed-back'] as const;

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

/** Demo jobs never come among real ones. */
const otherJobs = (folder: string) =>
  badInput({
    code: 'data-folder',
    path: '',
    says: `The folder ${shownName(folder)} holds other jobs than those of the demo; fettle serve --data opens the workbench on them.`,
    allowed: 'a folder that is empty or not there yet, or leave --data out',
  });

/**
 * Lays those of the demo jobs into records of their own that are not there yet.
 *
 * @param worked the main demo job, as far as it was worked
 * @returns its number
 * @throws BadInput where other jobs are there; StoreFailure
 */
export const layDemoRecords = async (folder: string, worked: JobDocument): Promise<number> => {
  const { openStore } = await import('@fettle/store/open.ts');
  const store = await openStore({ folder });
  try {
    const by = machineUser();
    const there = new Map<string | undefined, number>();
    for (const number of await store.jobs.numbers()) {
      const job = await store.jobs.find(number);
      there.set(job?.document.filter.name, number);
    }
    const documents = [worked, ...otherDemos.map((name) => demoNamed(name).document)];
    const names = documents.map(({ filter }) => filter.name);
    // Filters that somebody took in beside the demo jobs, to try it, are theirs to keep.
    if (there.size > 0 && !names.some((name) => there.has(name))) throw otherJobs(folder);
    for (const document of documents) {
      const { name } = document.filter;
      if (!there.has(name)) there.set(name, (await store.jobs.create({ document, by })).number);
    }
    return there.get(worked.filter.name) ?? 1;
  } finally {
    await store.close();
  }
};
