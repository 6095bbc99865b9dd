import { alike } from '@fettle/job/changes/alike.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { JobLine, JobQuery, StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Records } from './records.ts';

/** A job that says, or said when it was taken in, what a file without a number says. */
export interface TakenInBefore {
  readonly current: StoredJob;
  readonly changedSince: boolean;
}

/** What a document says beside its number, which the records give. */
const withoutNumber = ({ job: { number: _, ...job } = {}, ...rest }: JobDocument) =>
  Object.keys(job).length === 0 ? rest : { ...rest, job };

const MOST_AT_ONCE = 1_000;

/** Lines of the jobs that may say the same, those put away too: the title is looked for by its words. */
async function* maybeTheSame({ store }: Records, { job, filter }: JobDocument): AsyncGenerator<JobLine> {
  const words = /[\p{L}\p{N}]/u.test(job?.title ?? '') ? { words: job?.title ?? '' } : {};
  for (const putAway of [false, true]) {
    const query: JobQuery = {
      ...words,
      family: filter.family,
      putAway,
      order: 'number',
      count: MOST_AT_ONCE,
    };
    for (let skip = 0, total = 1; skip < total; skip += MOST_AT_ONCE) {
      const page = await store.jobs.list({ ...query, skip });
      total = page.total;
      yield* page.jobs.filter(({ title, filterName }) => title === job?.title && filterName === filter.name);
    }
  }
}

/**
 * Looks for a job that was taken in from the same document; the newest where there are several. One whose title or
 * filter's name was changed since is not found.
 */
export const takenInBefore = async (
  records: Records,
  document: JobDocument,
): Promise<TakenInBefore | undefined> => {
  const { jobs } = records.store;
  const said = withoutNumber(document);
  for await (const { number, revision } of maybeTheSame(records, document)) {
    const current = await jobs.find(number);
    if (current === undefined) continue;
    if (alike(withoutNumber(current.document), said)) return { current, changedSince: false };
    const first = revision > 1 ? await jobs.revision(number, 1) : undefined;
    if (first !== undefined && alike(withoutNumber(first.document), said))
      return { current, changedSince: true };
  }
  return undefined;
};
