import { isBackHome } from '@fettle/job/stages.ts';
import type { RevisionSummary, StoredJob } from '@fettle/store/contract/jobs.ts';
import { dayMs } from '../durations.ts';

/** One day to be reminded of. */
export interface Reminder {
  /** Tells the reminders of one job apart; the same in every later calendar of it. */
  readonly id: string;
  /** Day of the calendar, `2026-11-20`. */
  readonly day: string;
  readonly says: string;
  readonly more: string;
}

const daysAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);

/** Day on which the job was first written down as handed back, where it stands so still. */
export const handedBackOn = (job: StoredJob, revisions: readonly RevisionSummary[]): string | undefined => {
  if (!isBackHome(job.document.job?.stage)) return undefined;
  const moved = revisions.findLast(({ changes }) =>
    changes.some(
      ({ path, before, after }) => path === 'job.stage' && isBackHome(after) && !isBackHome(before),
    ),
  );
  return moved?.at.slice(0, 10);
};

/** What reminders are reckoned from. */
export interface RemindedOf {
  readonly job: StoredJob;
  readonly revisions: readonly RevisionSummary[];
  /** Days after hand-back on which to test. */
  readonly testDays: readonly number[];
  /** Computed cleaning interval in days; absent where nothing asks for cleaning within a year. */
  readonly cleaningDays?: number;
  /** What the filter is called in the calendar. */
  readonly name: string;
}

/**
 * The days that somebody wants to be reminded of, soonest first: the promise while the filter is here, then tests
 * and cleaning counted from the hand-back, or from the promise until that is known. None where neither is known.
 */
export function remindersOf({
  job,
  revisions,
  testDays,
  cleaningDays,
  name,
}: RemindedOf): readonly Reminder[] {
  const promised = job.document.job?.promised;
  const back = handedBackOn(job, revisions);
  const from = back ?? promised;
  if (from === undefined) return [];
  const promise: Reminder[] =
    promised === undefined || back !== undefined
      ? []
      : [{ id: 'promise', day: promised, says: `Promised back: ${name}`, more: '' }];
  const tests = testDays.map((days) => ({
    id: `test-${days}`,
    day: daysAfter(from, days),
    says: `Test: ${name}`,
    more: `${days === 1 ? 'One day' : `${days} days`} after it came back: flow by the jug, ammonia, nitrite.`,
  }));
  const cleaning: Reminder[] =
    cleaningDays === undefined
      ? []
      : [
          {
            id: 'cleaning',
            day: daysAfter(from, Math.max(1, Math.round(cleaningDays))),
            says: `Clean: ${name}`,
            more: 'Computed, and known within a factor of three: look at the flow.',
          },
        ];
  return [...promise, ...tests, ...cleaning].toSorted((one, other) => (one.day < other.day ? -1 : 1));
}
