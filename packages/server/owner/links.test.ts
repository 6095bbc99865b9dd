import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { freshAddress } from '../testing/client.ts';
import { jobCalled, ownersServer } from '../testing/ownersServer.ts';
import { testOrigin } from '../testing/testServer.ts';

let owners: Awaited<ReturnType<typeof ownersServer>>;
let job: number;
let other: number;
beforeAll(async () => {
  owners = await ownersServer();
  job = await owners.takeIn(jobCalled('Canister of the hall tank'));
  other = await owners.takeIn(jobCalled('The other tank'));
});
afterAll(() => owners.server.end());

describe('a link', () => {
  it('is told once, and is nowhere to be read after', async () => {
    const { url, id } = await owners.linkTo(job);
    const token = url.split('/').at(-1) ?? '';
    expect(token).toMatch(/^[\w-]{43}$/);
    expect(url).toMatch(/^https:\/\/bench\.example\/owner\//);
    const told = [
      await (await owners.get(`/api/jobs/${job}/owner-links`, owners.technician)).text(),
      await (await owners.get('/api/log?count=1000', owners.technician)).text(),
    ];
    for (const text of told) {
      expect(text).toContain(id);
      expect(text).not.toContain(token);
    }
  });

  it('that is wrong, withdrawn, past its end or malformed is answered alike', async () => {
    const withdrawn = await owners.linkTo(job);
    expect((await owners.get(withdrawn.at)).status).toBe(200);
    const path = `/api/jobs/${job}/owner-links/${withdrawn.id}`;
    expect(
      (
        await owners.send('DELETE', `/api/jobs/${other}/owner-links/${withdrawn.id}`, {
          cookie: owners.technician,
        })
      ).status,
    ).toBe(404);
    expect((await owners.send('DELETE', path, { cookie: owners.technician })).status).toBe(204);
    expect((await owners.send('DELETE', path, { cookie: owners.technician })).status).toBe(404);
    const deeds = await owners.server.services.store.deeds.list({ job });
    expect(deeds[0]).toMatchObject({ who: 'rosalind', what: 'link-withdrawn', about: withdrawn.id });
    const ended = await owners.linkTo(job, {
      endsAt: new Date(owners.server.services.clock().getTime() + 60_000).toISOString(),
    });
    expect((await owners.get(ended.at)).status).toBe(200);
    owners.server.pass(61_000);
    const wrong = `/owner/${'A'.repeat(43)}`;
    const paths = [
      withdrawn.at,
      ended.at,
      wrong,
      '/owner/short',
      '/owner/%00',
      `/owner/${'A'.repeat(2000)}`,
      `${withdrawn.at}%20`,
    ];
    for (const prefix of ['', '/api']) {
      const answers: string[] = [];
      for (const each of paths) {
        const answer = await owners.send('GET', `${prefix}${each}`, { from: freshAddress() });
        answers.push(`${answer.status} ${(await answer.text()).replace(/"request".*/, '')}`);
      }
      expect([...new Set(answers)]).toEqual([answers[0]]);
      expect(answers[0]).toMatch(/^404 /);
    }
  });

  it.each([
    'yesterday',
    '2020-01-01',
    '2126-01-01',
    '2026-13-01',
    '',
    '2026-12-01 10:00',
    "2026-12-01T10:00Z'--",
    '2027-02-30',
    '2027-02-30T10:00Z',
  ])('cannot end at %j', async (endsAt) => {
    const made = await owners.send('POST', `/api/jobs/${job}/owner-links`, {
      cookie: owners.technician,
      body: { endsAt },
    });
    expect(made.status).toBe(422);
    expect(await made.json()).toMatchObject({ problems: [{ path: 'endsAt' }] });
  });

  it('is not guessed: whoever tries many is held back', async () => {
    const from = freshAddress();
    const statuses: number[] = [];
    for (let count = 0; count < 32; count += 1) {
      statuses.push((await owners.send('GET', `/owner/${String(count).padStart(43, 'A')}`, { from })).status);
    }
    expect(statuses.filter((status) => status === 404).length).toBe(30);
    expect(statuses.at(-1)).toBe(429);
  });

  it('stays out of the error output, even when something breaks', async () => {
    const { at } = await owners.linkTo(job);
    const written = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    vi.spyOn(owners.server.services.store.jobs, 'find').mockRejectedValueOnce(new Error('broken'));
    expect((await owners.get(at)).status).toBe(500);
    const text = written.mock.calls.map(([piece]) => String(piece)).join('');
    vi.restoreAllMocks();
    expect(text).toContain('broken');
    expect(text).not.toContain(at.split('/').at(-1));
  });

  it('opens nothing but its own sheet', async () => {
    const { at } = await owners.linkTo(job);
    const token = at.split('/').at(-1) ?? '';
    const elsewhere = [
      `/api/jobs/${job}`,
      `/api/jobs/${other}`,
      '/api/jobs',
      '/api/log',
      `/api/jobs/${job}/readings`,
      `/api/jobs/${job}/attachments`,
    ];
    for (const path of elsewhere) {
      for (const headers of [
        { Cookie: `__Host-fettle=${token}` },
        { Authorization: `Bearer ${token}` },
        { Referer: `${testOrigin}${at}` },
      ]) {
        expect((await owners.server.ask(path, { headers })).status).toBe(401);
      }
      expect((await owners.get(`${path}?token=${token}`)).status).toBe(401);
    }
    for (const path of [
      `${at}/../../api/jobs`,
      `${at}/%2e%2e/%2e%2e/api/jobs`,
      `${at}/readings`,
      `${at}/attachments`,
      `${at}/jobs/${other}`,
    ]) {
      expect([303, 401, 404, 405]).toContain((await owners.get(path)).status);
    }
    for (const method of ['PUT', 'PATCH', 'DELETE', 'POST']) {
      expect([401, 404, 405]).toContain((await owners.send(method, at, { body: {} })).status);
    }
  });
});
