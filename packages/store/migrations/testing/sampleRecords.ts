import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Store } from '../../contract/store.ts';

/** The hash of no picture that there is: a row without its file. */
const noPicture = 'ab12'.repeat(16);

/** A small job of an invented owner. */
export const sampleJob: JobDocument = {
  fettle: 1,
  job: {
    number: 7,
    title: 'Überlauf of the reading room',
    received: '2026-11-02',
    promised: '2026-11-20',
    stage: 'taken-in',
    tags: ['reading room', 'loud'],
    notes: "The owner's word for it: “gurgles”.\nSecond line.",
  },
  owner: { name: 'Orlinde Quillmere', place: 'the old harbour' },
  tank: { volume: '180 L ± 5 %', temperature: '25 °C' },
  filter: {
    name: 'Reading room canister',
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
};

const writeJobs = async ({ jobs }: Store): Promise<void> => {
  const by = 'tamsel';
  await jobs.create({ document: sampleJob, by });
  const loud = { ...sampleJob, job: { ...sampleJob.job, stage: 'tested' as const } };
  await jobs.revise({ number: 7, base: 1, document: loud, by: 'brannic' });
  await jobs.goBack({ number: 7, base: 2, to: 1, by });
  const { job: _about, owner: _owner, ...rest } = sampleJob;
  const { number } = await jobs.create({ document: rest, by, kind: 'imported' });
  await jobs.putAway({ number, base: 1, by });
};

const layJob = async ({ jobs }: Store): Promise<void> => {
  const by = 'tamsel';
  const reading = {
    id: 'sampleread23ings',
    job: 9,
    kind: 'jug-flow' as const,
    day: '2026-11-21',
    value: '480 L/h',
    note: 'after a day',
    enteredAt: '2026-11-21T10:00:00.000Z',
    enteredBy: 'owner',
  };
  const picture = {
    id: 'samplepicture234',
    job: 9,
    hash: noPicture,
    mediaType: 'image/jpeg' as const,
    bytes: 1234,
    widthPx: 640,
    heightPx: 480,
    name: 'basket.jpg',
    caption: 'Lowest basket',
    takenAt: '2026-11-02T09:30:00',
    place: { latitudeDeg: 12.5, longitudeDeg: -3.25 },
    addedAt: '2026-11-02T10:00:00.000Z',
    addedBy: by,
  };
  const document = { ...sampleJob, job: { ...sampleJob.job, number: 9 } };
  const first = { revision: 1, at: '2026-11-02T09:00:00.000Z', by, kind: 'imported' as const, changes: [] };
  await jobs.lay({
    number: 9,
    revisions: [{ ...first, document }],
    readings: [reading],
    attachments: [picture],
  });
};

const writeAround = async (store: Store): Promise<void> => {
  const by = 'tamsel';
  await store.books.revise({ name: 'shelf', base: 0, body: { shelf: ['foam-30ppi'] }, by });
  await store.books.revise({ name: 'shelf', base: 1, body: { shelf: ['foam-20ppi'] }, by });
  await store.accounts.add({ name: 'tamsel', role: 'technician', passwordHash: 'no hash' });
  await store.accounts.startSession({ tokenHash: 'token', account: by, endsAt: '2999-01-01T00:00:00.000Z' });
  await store.ownerLinks.add({ job: 7, tokenHash: 'link', by });
  const work = await store.work.add({
    kind: 'plans',
    job: 7,
    revision: 3,
    request: { budget: '10 GBP' },
    by,
  });
  await store.work.start(work.id);
  await store.work.end(work.id, { state: 'done', result: { plans: [1, 2] } });
  await store.deeds.add({ who: by, what: 'signed-in', from: '127.0.0.1' });
};

/** Fills new records so that every table has rows. */
export async function writeSampleRecords(store: Store): Promise<void> {
  await writeJobs(store);
  await layJob(store);
  await writeAround(store);
}
