import { fullJob } from '@fettle/job/testing/fullJob.ts';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ownersServer } from '../testing/ownersServer.ts';

let owners: Awaited<ReturnType<typeof ownersServer>>;
beforeAll(async () => {
  owners = await ownersServer();
});
afterAll(() => owners.server.end());

const { quote: _, approval: __, ...plain } = fullJob;
const jobOf = (about: Record<string, unknown>, name = 'Hall canister') => ({
  ...plain,
  job: about,
  filter: { ...fullJob.filter, name },
});

interface Event {
  readonly uid: string;
  readonly day: string;
  readonly isDay: boolean;
  readonly says: string;
  readonly more: string;
  readonly stamp: string;
}

/** Reads a calendar with a program that is not ours. */
const read = (text: string): Event[] => {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      day: event.startDate.toString(),
      isDay: event.startDate.isDate && event.endDate.isDate,
      says: event.summary,
      more: event.description ?? '',
      stamp: String(component.getFirstPropertyValue('dtstamp')),
    };
  });
};

const calendarOf = async (job: number): Promise<string> => {
  const answer = await owners.get(`/api/jobs/${job}/reminders.ics`, owners.technician);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
  return answer.text();
};

describe('reminders', () => {
  it('name promise, test days and cleaning as whole days, counted from the promise', async () => {
    const job = await owners.takeIn(jobOf({ title: 'Hall', promised: '2026-12-30' }));
    const events = read(await calendarOf(job));
    const days = events.filter(({ says }) => says.startsWith('Test')).map(({ day }) => day);
    expect(days).toEqual([
      '2026-12-31',
      '2027-01-02',
      '2027-01-04',
      '2027-01-06',
      '2027-01-13',
      '2027-01-27',
    ]);
    expect(events.every(({ isDay }) => isDay)).toBe(true);
    expect(events.find(({ says }) => says.startsWith('Promised'))?.day).toBe('2026-12-30');
    // Computed, 229 days as left; as found it was 73.7.
    expect(events.find(({ says }) => says.startsWith('Clean'))?.day).toBe('2027-06-16');
  });

  it('go by the days of the settings', async () => {
    const job = await owners.takeIn(jobOf({ promised: '2026-12-30' }));
    const { books } = owners.server.services.store;
    await books.revise({ name: 'settings', base: 0, body: { reminderDays: [10, 2] }, by: 'rosalind' });
    const tests = read(await calendarOf(job)).filter(({ says }) => says.startsWith('Test'));
    expect(tests.map(({ day }) => day)).toEqual(['2027-01-01', '2027-01-09']);
    await books.revise({ name: 'settings', base: 1, body: {}, by: 'rosalind' });
  });

  it('keep their names when they move, so that a calendar moves them too', async () => {
    const job = await owners.takeIn(jobOf({ promised: '2026-12-30' }));
    const before = read(await calendarOf(job));
    const { jobs } = owners.server.services.store;
    const stored = await jobs.find(job);
    if (stored === undefined) throw new Error('the job is not there');
    const document = { ...stored.document, job: { ...stored.document.job, promised: '2027-01-30' } };
    await jobs.revise({ number: job, base: 1, by: 'rosalind', document });
    const after = read(await calendarOf(job));
    expect(after.map(({ uid }) => uid).toSorted()).toEqual(before.map(({ uid }) => uid).toSorted());
    expect(new Set(after.map(({ uid }) => uid)).size).toBe(after.length);
    expect(after.map(({ day }) => day)).not.toEqual(before.map(({ day }) => day));
    expect(await calendarOf(job)).toContain('SEQUENCE:2');
  });

  it('count from the hand-back once it is written down, and promise no more', async () => {
    const job = await owners.takeIn(jobOf({ promised: '2026-01-10', stage: 'proven' }));
    const { store, clock } = owners.server.services;
    const stored = await store.jobs.find(job);
    if (stored === undefined) throw new Error('the job is not there');
    const document = { ...stored.document, job: { ...stored.document.job, stage: 'handed-back' as const } };
    await store.jobs.revise({ number: job, base: 1, by: 'rosalind', document });
    const events = read(await calendarOf(job));
    const tomorrow = new Date(clock().getTime() + 24 * 3_600_000).toISOString().slice(0, 10);
    expect(events[0]).toMatchObject({ day: tomorrow, says: expect.stringMatching(/^Test/) });
    expect(events.some(({ says }) => says.startsWith('Promised'))).toBe(false);
  });

  it('are folded, escaped and ended as the standard wants', async () => {
    const title = `Löschwasser; "tank", 1\\2 ${'ä'.repeat(80)} BEGIN:VEVENT`;
    const text = await calendarOf(await owners.takeIn(jobOf({ title, promised: '2026-12-30' })));
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const lines = text.split('\r\n');
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    const [event] = read(text);
    expect(event?.says).toContain(title);
    expect(event?.stamp.slice(0, 10)).toBe(owners.server.services.clock().toISOString().slice(0, 10));
  });

  it('for the owner tell the name of the filter and nothing else', async () => {
    const job = await owners.takeIn(
      jobOf({ title: 'SECRET-TITLE', notes: 'SECRET-NOTE', promised: '2026-12-30' }, 'Owner’s drum'),
    );
    const { at } = await owners.linkTo(job);
    const text = await (await owners.get(`${at}/reminders.ics`)).text();
    expect(read(text).length).toBeGreaterThan(5);
    expect(text).toContain('Owner’s drum');
    for (const secret of [
      'SECRET',
      'rosalind',
      fullJob.owner.name,
      fullJob.owner.contact,
      fullJob.owner.place,
      at,
    ]) {
      expect(text).not.toContain(secret);
    }
  });

  it('are none where there is no day to count from, and it is said', async () => {
    const job = await owners.takeIn(jobOf({ title: 'No day' }));
    const answer = await owners.get(`/api/jobs/${job}/reminders.ics`, owners.technician);
    expect(answer.status).toBe(404);
    expect(await answer.json()).toMatchObject({ detail: expect.stringContaining('job.promised is absent') });
  });
});
