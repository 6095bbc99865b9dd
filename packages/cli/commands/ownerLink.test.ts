import { hashOfToken } from '@fettle/server/people/token.ts';
import { describe, expect, test } from 'vitest';
import { commandBench } from '../testing/commandBench.ts';
import { addOwnerLink } from './ownerLink.ts';

const { out, told, json, problems, inRecords } = commandBench(addOwnerLink, 'owner-link');

const deeds = async () =>
  (await inRecords((store) => store.deeds.list({ job: 1 }))).map(({ what, about }) => [what, about]);

/** Whether the path of a link still leads to its job. */
const opens = async (path: string): Promise<boolean> =>
  (await inRecords((store) => store.ownerLinks.find(hashOfToken(path.replace('/owner/', ''))))) !== undefined;

/** A day of the calendar so many days from now. */
const dayIn = (days: number): string => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

describe('links for owners by command', () => {
  test('are made with their path on the first line, and open the sheet of that job', async () => {
    const [path = ''] = (await out('1')).split('\n');
    expect(path).toMatch(/^\/owner\/[\w-]{43}$/);
    expect(await opens(path)).toBe(true);
    expect((await deeds())[0]?.[0]).toBe('link-made');
  });

  test('end on the day that was named', async () => {
    const { endsAt } = await json('1', '--until', dayIn(30));
    expect(endsAt).toBe(`${dayIn(30)}T23:59:59.999Z`);
    expect(await told('1', 'list')).toContain(', until ');
  });

  test('are listed without what is secret, and withdrawn by their id', async () => {
    expect(await told('1', 'list')).toContain('There is no link to job 1.');
    const { id, path } = await json('1');
    const listed = await told('1', 'list');
    expect(listed).toMatch(new RegExp(`1 link for its owner\\. ${id} made .*, without end`));
    expect(listed).not.toContain(path.replace('/owner/', ''));
    expect(await told('1', 'withdraw', id)).toContain('leads nowhere from now on');
    expect(await opens(path)).toBe(false);
    expect(await told('1', 'list')).toContain(', withdrawn ');
    expect((await deeds())[0]).toEqual(['link-withdrawn', id]);
    expect((await problems('1', 'withdraw', id)).map(({ code }) => code)).toEqual(['no-such-link']);
  });

  test('to a job that is put away lead nowhere, which is told', async () => {
    await inRecords((store) => store.jobs.putAway({ number: 1, base: 1, by: 'anna' }));
    expect(await told('1')).toContain('Job 1 is put away: the link leads nowhere until it is brought back.');
  });

  test.each([
    [
      'an end that is past',
      ['1', '--until', dayIn(-2)],
      'end-not-allowed',
      /--until must be a day.*10 years/,
    ],
    ['an end in words', ['1', '--until', 'spring'], 'end-not-allowed', /--until must be a day/],
    ['an end of a list', ['1', 'list', '--until', dayIn(3)], 'command-line-owner-link', /--until goes with/],
    ['no id', ['1', 'withdraw'], 'command-line-owner-link', /needs the id/],
    ['a job that is not there', ['7'], 'no-such-job', /no job 7/],
  ] as const)('with %s are refused', async (_what, words, code, says) => {
    const [problem] = await problems(...words);
    expect([problem?.code, problem?.says]).toEqual([code, expect.stringMatching(says)]);
    expect(await inRecords((store) => store.ownerLinks.list(1))).toEqual([]);
  });
});
