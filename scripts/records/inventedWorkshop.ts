import type { Store } from '@fettle/store/contract/store.ts';
import type { Chance } from './chance.ts';
import { inventedJob, inventedReading, inventedShelf, lookedAtAgain } from './inventedJobs.ts';
import { inventedPicture } from './inventedPictures.ts';

/** Fills records with invented jobs, some with more revisions, pictures and readings, and a shelf. */
export async function fillWorkshop(
  store: Store,
  { jobs, chance }: { jobs: number; chance: Chance },
): Promise<void> {
  const by = 'invented';
  for (let count = 0; count < jobs; count++) {
    const document = inventedJob(chance);
    const { number, revision } = await store.jobs.create({ document, by });
    if (count % 2 === 0) {
      const next = lookedAtAgain({ ...document, job: { ...document.job, number } }, chance);
      await store.jobs.revise({ number, base: revision, by, document: next });
    }
    if (count % 3 === 0)
      await store.attachments.add({ job: number, bytes: inventedPicture(count + 1), name: 'seen.png', by });
    if (count % 4 === 0) {
      const { kind: _, ...reading } = inventedReading(chance);
      await store.readings.add({ ...reading, kind: 'jug-flow', value: '480 L/h', job: number, by });
    }
  }
  await store.books.revise({ name: 'shelf', base: 0, body: inventedShelf(chance), by });
}
