import type { OwnerLink } from '@fettle/store/contract/people.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import { noteDown } from '../api/deeds.ts';
import { dayMs } from '../durations.ts';
import type { FieldProblem } from '../problems.ts';
import type { Services } from '../services.ts';
import { readReading, type WrittenReading } from './readReading.ts';

/** Readings that owners may enter for one job within a day; far more than anybody measures. */
const mostADay = 50;

export type Entered =
  | { readonly ok: true; readonly readings: readonly Reading[] }
  | { readonly ok: false; readonly problems: readonly (FieldProblem & { readonly kind?: string })[] };

const room = async ({ store, clock }: Services, job: number): Promise<number> => {
  const since = new Date(clock().getTime() - dayMs).toISOString();
  const all = await store.readings.list(job);
  return (
    mostADay - all.filter(({ enteredBy, enteredAt }) => enteredBy === 'owner' && enteredAt > since).length
  );
};

/** Takes down what an owner measured: all of it, or nothing where something of it is wrong. */
export async function enterReadings(
  services: Services,
  of: { readonly link: OwnerLink; readonly written: readonly WrittenReading[]; readonly from: string },
): Promise<Entered> {
  const { link, written, from } = of;
  const { store, clock } = services;
  const read = written.map((each) => ({ kind: each.kind, ...readReading(each, clock()) }));
  const problems = read.flatMap((each) =>
    each.ok ? [] : each.problems.map((problem) => ({ ...problem, kind: each.kind })),
  );
  if (problems.length > 0) return { ok: false, problems };
  if ((await room(services, link.job)) < written.length) {
    const says = `At most ${mostADay} readings are taken for one filter within a day; come back tomorrow.`;
    return { ok: false, problems: [{ code: 'too-many', path: '', says }] };
  }
  const readings = await store.readings.addTogether(
    read.flatMap((each) => (each.ok ? [{ job: link.job, by: 'owner', ...each.reading }] : [])),
  );
  const about = `by link ${link.id}: ${readings.map(({ kind }) => kind).join(', ')}`;
  await noteDown(store, { who: 'owner', what: 'readings-entered', job: link.job, about, from });
  return { ok: true, readings };
}
