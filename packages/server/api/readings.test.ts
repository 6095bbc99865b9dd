import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());

const { send, post, takeIn, read } = jobClientOf(() => server);
const today = () => new Date().toISOString().slice(0, 10);

describe('follow-up readings', () => {
  test('are kept as they were written, by day', async () => {
    const number = await takeIn();
    const second = { kind: 'jug-flow', day: today(), value: '480 L/h', note: 'by the jug' };
    const first = { kind: 'ammonia', day: '2026-01-02', value: '0.25 mg/L' };
    for (const reading of [second, first])
      expect((await post(`/api/jobs/${number}/readings`, reading)).status).toBe(201);
    const { readings } = await told(await send('GET', `/api/jobs/${number}/readings`));
    expect(readings.map((each: { value: string }) => each.value)).toEqual(['0.25 mg/L', '480 L/h']);
    expect(readings[1]).toMatchObject({ ...second, job: number, enteredBy: 'bench' });
  });

  test.each([
    [{ value: '480' }, 'value'],
    [{ value: '480 mg/L' }, 'value'],
    [{ value: '-3 L/h' }, 'value'],
    [{ value: '9000000 L/h' }, 'value'],
    [{ day: '2026-02-30' }, 'day'],
    [{ day: '2999-01-01' }, 'day'],
    [{ kind: 'nitrate' }, 'kind'],
    [{ more: 1 }, 'more'],
  ])('with %j are refused, and the field is named', async (change, path) => {
    const number = await takeIn();
    const reading = { kind: 'jug-flow', day: today(), value: '480 L/h', ...change };
    const answer = await post(`/api/jobs/${number}/readings`, reading);
    expect([answer.status, (await told(answer)).problems[0]?.path]).toEqual([422, path]);
    expect(await server.services.store.readings.list(number)).toEqual([]);
  });

  test.each(['kind', 'value'])('without %s are refused, and the field is told as missing', async (left) => {
    const number = await takeIn();
    const reading = { kind: 'jug-flow', day: today(), value: '480 L/h', [left]: undefined };
    const answer = await post(`/api/jobs/${number}/readings`, reading);
    const { problems, detail } = await told(answer);
    expect([answer.status, problems]).toMatchObject([422, [{ code: 'missing-field', path: left }]]);
    expect(detail).toMatch(new RegExp(`^${left} is missing; it must be (text|one of: .*jug-flow)`));
  });

  test('of a job that there is not are refused', async () => {
    const reading = { kind: 'jug-flow', day: today(), value: '480 L/h' };
    expect((await post('/api/jobs/999999/readings', reading)).status).toBe(404);
  });
});

describe('the technician’s own books', () => {
  const put = (name: string, body: string, match: string) =>
    send('PUT', `/api/${name}`, { body, type: 'application/yaml', headers: { 'If-Match': match } });

  test('begin empty at revision 0, and are written by revision', async () => {
    const before = await send('GET', '/api/shelf');
    expect([await told(before), before.headers.get('ETag')]).toEqual([{}, '"0"']);
    expect((await put('shelf', 'media: [{ medium: foam-20ppi, amount: 4 L }]', '"0"')).status).toBe(200);
    expect((await put('shelf', 'media: []', '"0"')).status).toBe(412);
    const after = await send('GET', '/api/shelf');
    expect([await told(after), after.headers.get('ETag')]).toEqual([
      { media: [{ medium: 'foam-20ppi', amount: '4 L' }] },
      '"1"',
    ]);
  });

  test('with a mistake are refused with its line', async () => {
    const answer = await put('settings', 'workshop: Old harbour\nunits: cubits\n', '"0"');
    const { problems } = await told(answer);
    expect([answer.status, problems[0]?.path]).toEqual([422, 'units']);
  });

  test('fill a job that is taken in, where that is asked for', async () => {
    await put('shelf', 'media: [{ medium: foam-20ppi, amount: 4 L }]', '"1"');
    const { shelf: _, ...without } = await read(await takeIn());
    const answer = await post('/api/jobs?fill=books', without);
    const { number, filled } = await told(answer);
    expect(answer.status).toBe(201);
    const document = await told(await send('GET', `/api/jobs/${number}`));
    expect(filled).toEqual(expect.any(Array));
    for (const path of filled) expect(document).toHaveProperty(path.split(/[.[]/)[0] ?? '');
  });
});
