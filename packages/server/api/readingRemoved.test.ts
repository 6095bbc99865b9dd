import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
let cookie: string;
beforeAll(async () => {
  server = await testServer({ share: true });
  cookie = await server.signedIn('rosalind', 'helper');
});
afterAll(() => server.end());

const { send, post } = jobClientOf(() => server);
const today = () => new Date().toISOString().slice(0, 10);

const takeIn = async (): Promise<number> => {
  const body = demoText('tall-drum');
  const headers = { Cookie: cookie };
  return (await told(await send('POST', '/api/jobs', { body, type: 'application/yaml', headers }))).number;
};

const enter = async (number: number, change: object = {}) => {
  const reading = { kind: 'jug-flow', day: today(), value: '4800 L/h', ...change };
  return told(await post(`/api/jobs/${number}/readings`, reading, { Cookie: cookie }));
};

const remove = (at: string, headers: Readonly<Record<string, string>> = {}) =>
  send('DELETE', at, { headers: { Cookie: cookie, ...headers } });

describe('a reading', () => {
  test('is taken back by its id, once, and what it said stays in the log', async () => {
    const number = await takeIn();
    const { id } = await enter(number);
    const at = `/api/jobs/${number}/readings/${id}`;
    expect((await remove(at)).status).toBe(204);
    expect(await server.services.store.readings.list(number)).toEqual([]);
    const [deed] = await server.services.store.deeds.list({ job: number });
    expect([deed?.what, deed?.who, deed?.about]).toEqual([
      'reading-removed',
      'rosalind',
      `${id}: jug-flow 4800 L/h on ${today()}, by rosalind`,
    ]);
    const again = await remove(at);
    expect([again.status, (await told(again)).detail]).toEqual([404, `Job ${number} has no reading ${id}.`]);
  });

  test('is not taken back by a reader, from another site’s page, or under another job', async () => {
    const [number, other] = [await takeIn(), await takeIn()];
    const { id } = await enter(number);
    const at = `/api/jobs/${number}/readings/${id}`;
    const reader = await server.signedIn('some-reader', 'reader');
    const foreign = { Origin: 'https://evil.example' };
    expect((await remove(at, { Cookie: reader })).status).toBe(403);
    expect((await remove(at, foreign)).status).toBe(403);
    expect((await remove(`/api/jobs/${other}/readings/${id}`)).status).toBe(404);
    expect(await server.services.store.readings.list(number)).toHaveLength(1);
  });

  test('is answered with what it was understood to be, and with a day that is too early', async () => {
    const number = await takeIn();
    expect((await enter(number)).notes).toEqual([]);
    expect((await enter(number, { value: '0 L/h' })).notes).toEqual([]);
    const early = await enter(number, { kind: 'ammonia', value: '0.25 mg/L as NH4', day: '2001-01-01' });
    expect(early.notes).toMatchObject([{ code: 'counted-as' }, { code: 'before-it-came-in' }]);
  });
});
