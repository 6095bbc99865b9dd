import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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

describe('readings of an owner', () => {
  it('are taken down as they were written, for the one job', async () => {
    const { at } = await owners.linkTo(job);
    const fields = {
      'jug-flow': '8 L/min',
      ammonia: '0.25 ppm',
      nitrite: '',
      day: owners.today(),
      note: 'cloudy <b>\u0000\nline',
    };
    const answer = await owners.enter(at, fields, { Origin: testOrigin, 'Sec-Fetch-Site': 'same-origin' });
    expect([answer.status, answer.headers.get('location')]).toEqual([303, `${at}?taken=yes`]);
    const readings = await owners.server.services.store.readings.list(job);
    expect(readings.map(({ kind, value, enteredBy }) => [kind, value, enteredBy])).toEqual([
      ['jug-flow', '8 L/min', 'owner'],
      ['ammonia', '0.25 ppm', 'owner'],
    ]);
    expect(readings[0]?.note).toBe('cloudy <b> line');
    expect(await owners.server.services.store.readings.list(other)).toEqual([]);
    const page = await (await owners.get(`${at}?taken=yes`)).text();
    expect(page).toContain('Thank you');
    expect(page).toContain('cloudy &lt;b&gt; line');
    expect(page).toContain('Ammonia: 0.25 ppm does not say as what it is counted');
    expect(page).toContain('<td>Ammonia, not said as what</td>');
    expect(page).toContain('as what it is counted (as N, as NH3 or as NH4): 0.25 mg/L as N.');
  });

  it('that are wrong are told at their field, kept as typed, and none of them is taken down', async () => {
    const { at } = await owners.linkTo(other);
    const fields = {
      'jug-flow': '8 L/min',
      ammonia: '0.25',
      nitrite: '3 L',
      day: '2031-01-01',
      note: 'n"><i',
    };
    const answer = await owners.enter(at, fields);
    expect(answer.status).toBe(422);
    const text = await answer.text();
    expect(text).toContain('Ammonia: The number has no unit and a concentration is needed');
    expect(text).toContain('id="ammonia-fault"');
    expect(text).toContain('aria-describedby="nitrite-fault nitrite-hint"');
    expect(text).toContain('id="day-fault"');
    expect(text).toContain('value="8 L/min"');
    expect(text).toContain('n&quot;&gt;&lt;i</textarea>');
    expect(await owners.server.services.store.readings.list(other)).toEqual([]);
    expect(await (await owners.enter(at, { day: owners.today() })).text()).toContain(
      'Fill in at least one of the three readings.',
    );
  });

  it.each<[string, Record<string, string>]>([
    ['another site', { Origin: 'https://evil.example' }],
    ['a foreign frame', { Origin: 'null', 'Sec-Fetch-Site': 'cross-site' }],
  ])('are not taken from %s', async (_, headers) => {
    const { at } = await owners.linkTo(other);
    expect((await owners.enter(at, { ammonia: '0.1 mg/L', day: owners.today() }, headers)).status).toBe(403);
    expect(await owners.server.services.store.readings.list(other)).toEqual([]);
  });

  it('come as data too, with one clear sentence where they are wrong', async () => {
    const { at } = await owners.linkTo(other);
    const path = `/api${at}/readings`;
    const taken = await owners.send('POST', path, { body: { kind: 'nitrite', value: '0.1 mg/L' } });
    expect(taken.status).toBe(201);
    expect(await taken.json()).toEqual({
      reading: { kind: 'nitrite', value: '0.1 mg/L', day: owners.today(), note: '', by: 'owner' },
      notes: [{ code: 'basis-not-said', path: 'value', says: expect.stringContaining('nothing is assumed') }],
    });
    const wrong: unknown[] = [
      { kind: 'nitrite', value: '-1 mg/L' },
      { kind: 'colour', value: '1 mg/L' },
      { kind: 'nitrite', value: '1 mg/L', day: '2026-02-30' },
      { kind: 'nitrite', value: '1 mg/L', note: 'a'.repeat(501) },
      { kind: 'nitrite', value: '1 mg/L', enteredBy: 'rosalind' },
      { kind: '__proto__', value: '1 mg/L' },
    ];
    for (const body of wrong) expect((await owners.send('POST', path, { body })).status).toBe(422);
    expect((await owners.server.services.store.readings.list(other)).length).toBe(1);
  });

  it('are as long as may be by the form, as data and from the workshop alike', async () => {
    const number = await owners.takeIn(jobCalled('Long words'));
    const { at } = await owners.linkTo(number);
    const value = `0.1${'0'.repeat(192)} mg/L`;
    const most = { ammonia: value, note: '🫧'.repeat(500), day: owners.today() };
    expect((await owners.enter(at, most)).status).toBe(303);
    const overlong = [
      ['value', { value: `0${value}` }],
      ['note', { note: '🫧'.repeat(501) }],
    ] as const;
    for (const path of [`/api${at}/readings`, `/api/jobs/${number}/readings`]) {
      const body = { kind: 'ammonia', value, note: most.note, day: owners.today() };
      expect((await owners.send('POST', path, { cookie: owners.technician, body })).status).toBe(201);
      for (const [field, change] of overlong) {
        const answer = await owners.send('POST', path, {
          cookie: owners.technician,
          body: { ...body, ...change },
        });
        expect(await answer.json()).toMatchObject({
          status: 422,
          problems: [{ path: field, code: 'too-long' }],
        });
      }
    }
    const page = await owners.enter(at, { ...most, note: '🫧'.repeat(501) });
    expect(await page.text()).toContain('The note has 501 characters; at most 500 are allowed.');
  });

  it('are bounded within a day', async () => {
    const number = await owners.takeIn(jobCalled('Bounded'));
    const { at } = await owners.linkTo(number);
    for (let count = 0; count < 50; count += 1) {
      expect((await owners.enter(at, { ammonia: '0.1 mg/L', day: owners.today() })).status).toBe(303);
    }
    const more = await owners.enter(at, { ammonia: '0.1 mg/L', day: owners.today() });
    expect(more.status).toBe(422);
    expect(await more.text()).toContain('At most 50 readings');
    owners.server.pass(25 * 3_600_000);
    expect((await owners.enter(at, { ammonia: '0.1 mg/L', day: owners.today() })).status).toBe(303);
  });

  it('are on record', async () => {
    const deeds = await owners.server.services.store.deeds.list({ job, count: 1000 });
    const what = deeds.map(({ who, what: done }) => `${who} ${done}`);
    expect(what).toContain('owner readings-entered');
    expect(what).toContain('rosalind link-made');
  });
});
