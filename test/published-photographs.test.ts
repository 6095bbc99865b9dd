import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readDocument } from '@fettle/job/read.ts';
import { fullJob } from '@fettle/job/testing/fullJob.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import { publishedPhotographs } from '@fettle/workflows/publishedPhotographs.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';

let folder: string;
let store: Store;
let job: number;

const documentWith = (consent: unknown) => {
  const { consent: _, ...rest } = fullJob;
  const reading = readDocument(consent === undefined ? rest : { ...rest, consent });
  if (!reading.ok) throw new Error(reading.problems[0]?.says);
  return reading.document;
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fettle-published-'));
  store = await openStore({ folder });
  job = (await store.jobs.create({ document: documentWith(undefined), by: 'anna' })).number;
  await store.attachments.add({
    job,
    bytes: inventedPicture(3, 1600, 1200),
    name: 'a.png',
    caption: 'The gap',
    by: 'anna',
  });
  await store.attachments.add({ job, bytes: inventedPicture(4), name: 'b.png', by: 'anna' });
});
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('photographs that are published', () => {
  it.each([
    ['nothing is said', undefined],
    ['the name alone is consented to', { day: '2026-11-18', name: true }],
    ['it is refused', { day: '2026-11-18', photographs: false }],
    ['it was withdrawn', { day: '2026-11-18', photographs: true, withdrawn: '2026-12-01' }],
  ])('are none where %s', async (_what, consent) => {
    expect(await publishedPhotographs(store, job, documentWith(consent))).toEqual([]);
  });

  it('are those of the job, oldest first, as large as a sheet prints them; one that is missing is left out', async () => {
    const document = documentWith({ day: '2026-11-18', photographs: true });
    const published = await publishedPhotographs(store, job, document);
    expect(published.map(({ caption, mediaType }) => [caption, mediaType])).toEqual([
      ['The gap', 'image/jpeg'],
      ['', 'image/jpeg'],
    ]);
    expect(Buffer.from(published[0]!.base64, 'base64').length).toBeLessThan(400_000);
    rmSync(join(folder, 'attachments'), { recursive: true });
    expect(await publishedPhotographs(store, job, document)).toEqual([]);
  });
});
