import type { JobDocument } from '@fettle/job/schema/job.ts';
import fc from 'fast-check';
import { expect } from 'vitest';
import type { Jobs } from '../contract/jobs.ts';
import { type Bench, by, type Case, jobOf } from './bench.ts';

/** What a job is expected to be: its documents, first to newest, and whether it is put away. */
interface Expected {
  readonly documents: JobDocument[];
  putAway: boolean;
}

/** Something done to the job at a place of all jobs there are. */
type Deed =
  | { readonly kind: 'create'; readonly document: JobDocument }
  | { readonly kind: 'revise'; readonly place: number; readonly document: JobDocument }
  | { readonly kind: 'go-back'; readonly place: number; readonly to: number }
  | { readonly kind: 'put-away' | 'bring-back'; readonly place: number };

// NUL stands for itself in documents; that the lists show another mark for it is a case of its own.
const words = fc.string({ unit: 'binary', maxLength: 12 });

const document: fc.Arbitrary<JobDocument> = fc
  .record({
    title: words,
    notes: words,
    tags: fc.uniqueArray(fc.constantFrom('club', 'loud', 'Ωhm', "o'clock"), { maxLength: 3 }),
    owner: words,
    depth: fc.constantFrom('1 mm', '2 mm'),
    beds: fc.nat({ max: 3 }),
  })
  .map(({ title, notes, tags, owner, depth, beds }) =>
    jobOf({
      job: { title, notes, tags },
      owner: { name: owner },
      packing: { 'chamber-1': Array.from({ length: beds }, () => ({ medium: 'foam-20ppi', depth })) },
    }),
  );

const place = fc.nat({ max: 5 });

const deed: fc.Arbitrary<Deed> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('create' as const), document }) },
  { weight: 6, arbitrary: fc.record({ kind: fc.constant('revise' as const), place, document }) },
  {
    weight: 3,
    arbitrary: fc.record({ kind: fc.constant('go-back' as const), place, to: fc.nat({ max: 9 }) }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('put-away' as const), place }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('bring-back' as const), place }) },
);

const withNumber = (written: JobDocument, number: number): JobDocument => ({
  ...written,
  job: { ...written.job, number },
});

const saysTheSame = (one: JobDocument, other: JobDocument): boolean => {
  try {
    expect(one).toEqual(other);
    return true;
  } catch {
    return false;
  }
};

/** Does it to the records and, where it should succeed, to what is expected. */
const act = async (jobs: Jobs, expected: Map<number, Expected>, done: Deed): Promise<void> => {
  if (done.kind === 'create') {
    const { number } = await jobs.create({ document: done.document, by });
    expect(number).toBe(expected.size + 1);
    expected.set(number, { documents: [withNumber(done.document, number)], putAway: false });
    return;
  }
  const number = 1 + (done.place % Math.max(expected.size, 1));
  const job = expected.get(number);
  const asked = { number, base: job?.documents.length ?? 1, by };
  if (done.kind === 'revise') {
    const next = withNumber(done.document, number);
    await jobs.revise({ ...asked, document: done.document });
    if (job !== undefined && !saysTheSame(next, job.documents.at(-1)!)) job.documents.push(next);
  } else if (done.kind === 'go-back') {
    const { ok } = await jobs.goBack({ ...asked, to: done.to });
    const earlier = job?.documents[done.to - 1];
    expect(ok).toBe(earlier !== undefined);
    if (earlier !== undefined) job?.documents.push(earlier);
  } else {
    const isAway = done.kind === 'put-away';
    await (isAway ? jobs.putAway(asked) : jobs.bringBack(asked));
    if (job === undefined || job.putAway === isAway) return;
    job.documents.push(job.documents.at(-1)!);
    job.putAway = isAway;
  }
};

const holds = async (jobs: Jobs, expected: ReadonlyMap<number, Expected>): Promise<void> => {
  expect(await jobs.numbers()).toEqual([...expected.keys()]);
  const listed = { in: [] as number[], away: [] as number[] };
  for (const [number, { documents, putAway }] of expected) {
    listed[putAway ? 'away' : 'in'].unshift(number);
    const job = await jobs.find(number);
    expect(job?.revision).toBe(documents.length);
    expect(job?.document).toEqual(documents.at(-1));
    expect(await jobs.revisions(number)).toHaveLength(documents.length);
    for (const [index, written] of documents.entries())
      expect((await jobs.revision(number, index + 1))?.document).toEqual(written);
  }
  const order = 'number';
  expect((await jobs.list({ order })).jobs.map(({ number }) => number)).toEqual(listed.in);
  expect((await jobs.list({ order, putAway: true })).jobs.map(({ number }) => number)).toEqual(listed.away);
};

/** Whatever is done in whatever order, the records hold what was acknowledged. */
export const modelCases: readonly Case[] = [
  [
    'after any row of changes, every revision of every job is what was acknowledged',
    async (bench: Bench) => {
      let { store } = bench;
      const expected = new Map<number, Expected>();
      // One store for all runs: each goes on from where the one before it left the records.
      await fc.assert(
        fc.asyncProperty(fc.array(deed, { maxLength: 12 }), async (row) => {
          for (const done of row) await act(store.jobs, expected, done);
        }),
        { numRuns: 25, endOnFailure: true },
      );
      await holds(store.jobs, expected);
      store = await bench.reopen();
      await holds(store.jobs, expected);
      expect((await store.checkup()).faults).toEqual([]);
    },
  ],
  [
    'undoing any change gives an equal document, and undoing the undoing too',
    async ({ store: { jobs } }) => {
      await fc.assert(
        fc.asyncProperty(document, document, async (first, second) => {
          const { number } = await jobs.create({ document: first, by });
          const changed = await jobs.revise({ number, base: 1, document: second, by });
          const base = changed.ok ? changed.revision : 0;
          await jobs.goBack({ number, base, to: 1, by });
          expect((await jobs.find(number))?.document).toEqual(withNumber(first, number));
          await jobs.goBack({ number, base: base + 1, to: base, by });
          expect((await jobs.find(number))?.document).toEqual(withNumber(second, number));
        }),
        { numRuns: 20 },
      );
    },
  ],
];
