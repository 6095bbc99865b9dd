import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { onTestFinished } from 'vitest';
import type { Store } from '../../contract/store.ts';
import { openStore } from '../../open.ts';
import { plainPicture, telephonePicture } from '../../photographs/testing/pictures.ts';

/** A new folder that is gone after the test. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-store-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A store that is closed after the test. Each look at its clock is a second later. */
export async function newStore(folder = join(newFolder(), 'data')): Promise<Store> {
  let seconds = 0;
  const clock = () => new Date(Date.UTC(2026, 10, 2, 9, 0, seconds++));
  const store = await openStore({ folder, clock });
  onTestFinished(() => store.close().catch(() => undefined));
  return store;
}

/** A job document in which only the least is said, and what is given. */
export function document(about: NonNullable<JobDocument['job']> = {}): JobDocument {
  return {
    fettle: 1,
    job: about,
    tank: { volume: '100 L' },
    filter: {
      family: 'basket-stack-canister',
      measurements: { baskets: 2, basketWidth: '160 mm', basketDepth: '150 mm', basketHeight: '60 mm' },
      pump: { ratedFlow: '900 L/h' },
    },
  };
}

/** Fills a store with jobs, revisions, photographs, readings, books and a log, all of them invented. */
export async function fillWorkshop(store: Store): Promise<void> {
  const { number } = await store.jobs.create({ document: document({ title: 'Hall tank' }), by: 'orlinde' });
  const change = { number, by: 'tamsel' };
  await store.jobs.revise({
    ...change,
    base: 1,
    document: document({ number, title: '=1+1', tags: ['urgent', '@club'] }),
  });
  await store.jobs.goBack({ ...change, base: 2, to: 1 });
  await store.jobs.putAway({ ...change, base: 3 });
  await store.jobs.create({
    document: document({ number: 4711, notes: 'first line\n"second", line\n' }),
    by: '-brannic',
  });
  const photograph = { job: 4711, by: 'orlinde', name: 'front.jpg' };
  await store.attachments.add({
    ...photograph,
    bytes: await telephonePicture(),
    keepPlace: true,
    caption: '-3 °C, "cold"',
  });
  await store.attachments.add({ ...photograph, bytes: await plainPicture(40, 30, 5).png().toBuffer() });
  await store.attachments.add({
    ...photograph,
    job: number,
    bytes: await plainPicture(40, 30, 5).png().toBuffer(),
  });
  await fillBesides(store, number);
}

async function fillBesides(store: Store, number: number): Promise<void> {
  await store.readings.add({
    job: 4711,
    kind: 'nitrite',
    day: '2026-11-20',
    value: '0.25 mg/L',
    note: '+ odd',
    by: 'owner',
  });
  await store.readings.add({
    job: 4711,
    kind: 'jug-flow',
    day: '2026-11-19',
    value: '480 L/h',
    note: '',
    by: 'owner',
  });
  await store.books.revise({
    name: 'settings',
    base: 0,
    body: { workshop: 'Old harbour: yes', reminderDays: [7, 1] },
    by: 'orlinde',
  });
  await store.deeds.add({ who: 'orlinde', what: 'job-revised', job: number, about: '', from: '127.0.0.1' });
  await store.deeds.add({ who: 'nobody', what: 'sign-in-refused', about: '=cmd|calc' });
}

/** Every file below a folder with its bytes. */
export function filesIn(folder: string): ReadonlyMap<string, Buffer> {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1));
  return new Map(names.toSorted().map((name) => [name, readFileSync(join(folder, name))]));
}
