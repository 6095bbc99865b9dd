import { reminderDaysOf } from '@fettle/job/books/settings.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import { storedSettings } from '@fettle/workflows/storedSettings.ts';
import type { Context } from 'hono';
import { notFound } from '../api/refusal.ts';
import { assessmentOf } from '../owner/sheet.ts';
import type { Environment, Services } from '../services.ts';
import { calendarOf } from './calendar.ts';
import { type Reminder, remindersOf } from './reminders.ts';

const remindersFor = async (
  services: Services,
  { job, name }: { readonly job: StoredJob; readonly name: string },
): Promise<readonly Reminder[]> => {
  const { store } = services;
  const interval = (await assessmentOf(services, job))?.cleaningInterval;
  return remindersOf({
    job,
    name,
    revisions: (await store.jobs.revisions(job.number)) ?? [],
    testDays: reminderDaysOf(await storedSettings(store)),
    ...(interval === undefined || interval.beyond ? {} : { cleaningDays: interval.value }),
  });
};

/**
 * Answers with the reminders of a job as a file for a calendar.
 * @throws Refusal 404 where there is no day to count from
 */
export async function answerCalendar(
  context: Context<Environment>,
  services: Services,
  of: { readonly job: StoredJob; readonly name: string },
): Promise<Response> {
  const reminders = await remindersFor(services, of);
  if (reminders.length === 0) {
    throw notFound(
      'There is nothing to be reminded of yet: job.promised is absent, and the filter is not handed back.',
    );
  }
  return context.body(calendarOf({ ...of, reminders, now: services.clock() }), 200, {
    'Content-Type': 'text/calendar; charset=utf-8',
    'Content-Disposition': 'attachment; filename="reminders.ics"',
  });
}
