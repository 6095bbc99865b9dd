import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());

const { send, takeIn, put, read } = jobClientOf(() => server);
const drum = demoText('tall-drum');

describe('the history of a job', () => {
  test('keeps every revision, and any can be taken up again', async () => {
    const number = await takeIn();
    const document = await read(number);
    await put(number, { ...document, job: { ...document.job, title: 'Two' } });
    const back = await send('POST', `/api/jobs/${number}/go-back`, {
      body: '{"to": 1}',
      type: 'application/json',
      headers: { 'If-Match': '"2"' },
    });
    expect(await told(back)).toEqual({ number, revision: 3 });
    expect(await read(number)).toEqual(document);
    const { revisions } = await told(await send('GET', `/api/jobs/${number}/revisions`));
    expect(revisions.map(({ kind, by }: { kind: string; by: string }) => [kind, by])).toEqual([
      ['taken-in', 'bench'],
      ['edited', 'bench'],
      ['went-back', 'bench'],
    ]);
    const second = await send('GET', `/api/jobs/${number}/revisions/2`);
    expect([JSON.parse(await second.text()).job.title, second.headers.get('ETag')]).toEqual(['Two', '"2"']);
    expect((await send('GET', `/api/jobs/${number}/revisions/9`)).status).toBe(404);
  });

  test.each([
    ['{"to": 9}', 404],
    ['{"to": 0}', 422],
    ['{"to": 1, "from": 2}', 422],
    ['{', 400],
    ['{"to": 1, "__proto__": {}}', 400],
  ])('going back to %s: %s', async (body, status) => {
    const number = await takeIn();
    const answer = await send('POST', `/api/jobs/${number}/go-back`, {
      body,
      type: 'application/json',
      headers: { 'If-Match': '"1"' },
    });
    expect(answer.status).toBe(status);
  });

  test('a job that is put away is in no list, and comes back', async () => {
    const number = await takeIn(drum.replace('Tall drum, slow', 'Putaway drum, slow'));
    const found = async (query: string) => {
      const page = await told(await send('GET', `/api/jobs?words=putaway${query}`));
      return page.jobs.map((job: { number: number }) => job.number);
    };
    expect(await found('')).toEqual([number]);
    const away = await send('DELETE', `/api/jobs/${number}`, { headers: { 'If-Match': '"1"' } });
    expect(await told(away)).toEqual({ number, revision: 2 });
    expect([await found(''), await found('&putAway=true')]).toEqual([[], [number]]);
    const stale = await send('POST', `/api/jobs/${number}/bring-back`, { headers: { 'If-Match': '"1"' } });
    expect(stale.status).toBe(412);
    await send('POST', `/api/jobs/${number}/bring-back`, { headers: { 'If-Match': '"2"' } });
    expect(await found('')).toEqual([number]);
  });

  test('says in the log who did what', async () => {
    const number = await takeIn();
    await put(number, { ...(await read(number)), job: { title: 'New' } });
    const deeds = await server.services.store.deeds.list({ job: number });
    expect(deeds.map(({ who, what, from }) => [who, what, from])).toEqual([
      ['bench', 'job-revised', '198.51.100.7'],
      ['bench', 'job-taken-in', '198.51.100.7'],
    ]);
  });
});
