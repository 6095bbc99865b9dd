import { createHash } from 'node:crypto';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import ical from 'ical-generator';
import type { Reminder } from './reminders.ts';

/** The start of a day by this machine's clock, which is how the calendar's library reads a day. */
const localDay = (day: string, add = 0): Date => {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(year, month - 1, date + add);
};

/** The same in every later calendar of the job, and of no job in other records. */
const uidOf = ({ number, createdAt }: StoredJob, { id }: Reminder): string => {
  const job = createHash('sha256').update(`${number} ${createdAt}`).digest('hex').slice(0, 20);
  return `${id}-${job}@fettle.invalid`;
};

/** Reminders as an iCalendar file (RFC 5545), whole days; reading a later one moves what has moved. */
export function calendarOf(of: {
  readonly job: StoredJob;
  readonly reminders: readonly Reminder[];
  readonly name: string;
  readonly now: Date;
}): string {
  const { job, reminders, name, now } = of;
  const calendar = ical({ prodId: { company: 'Fettle', product: 'Reminders', language: 'EN' }, name });
  for (const reminder of reminders) {
    calendar.createEvent({
      id: uidOf(job, reminder),
      sequence: job.revision,
      stamp: now,
      start: localDay(reminder.day),
      end: localDay(reminder.day, 1),
      allDay: true,
      summary: reminder.says,
      ...(reminder.more === '' ? {} : { description: reminder.more }),
    });
  }
  return calendar.toString();
}
