import { StoreFailure } from '@fettle/store/contract/failure.ts';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { ComputationBusy } from '../computation/quickThreads.ts';
import { jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());
afterEach(() => vi.restoreAllMocks());

const { send, post, takeIn } = jobClientOf(() => server);

describe('what goes wrong inside', () => {
  test.each([
    ['disk-full', 507],
    ['read-only', 503],
    ['busy', 503],
    ['damaged', 503],
  ] as const)('records that are %s: %s, with the sentence of the records', async (code, status) => {
    const failure = new StoreFailure(code, 'Nothing was written.', 'Make room.');
    vi.spyOn(server.services.store.jobs, 'list').mockRejectedValueOnce(failure);
    const answer = await send('GET', '/api/jobs');
    expect(answer.status).toBe(status);
    expect(await told(answer)).toMatchObject({
      code: `records-${code}`,
      detail: 'Nothing was written. Make room.',
    });
  });

  test('a fault: 500 without its words, which stand on the error output with the name of the request', async () => {
    vi.spyOn(server.services.store.jobs, 'list').mockRejectedValueOnce(new Error('secret words'));
    const written = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const answer = await send('GET', '/api/jobs');
    const text = await answer.text();
    expect(answer.status).toBe(500);
    expect(text).not.toMatch(/secret|\.ts:/);
    const id = answer.headers.get('X-Request-Id') ?? 'none';
    expect(JSON.parse(text)).toMatchObject({ code: 'fault', request: id });
    expect(String(written.mock.calls[0]?.[0])).toMatch(
      new RegExp(`${id} at GET "?/api/jobs"?:.*secret words`),
    );
  });

  test('too much to compute: 503 that says when to ask again', async () => {
    const number = await takeIn();
    vi.spyOn(server.services.computation, 'assessmentText').mockRejectedValueOnce(
      new ComputationBusy('busy', 'More is being asked than can be computed at once.'),
    );
    const answer = await send('GET', `/api/jobs/${number}/assessment`);
    expect([answer.status, answer.headers.get('Retry-After')]).toEqual([503, '2']);
  });

  test('a log that cannot be written does not undo what was done', async () => {
    vi.spyOn(server.services.store.deeds, 'add').mockRejectedValueOnce(
      new StoreFailure('disk-full', 'Full.'),
    );
    const written = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const number = await takeIn();
    const reading = { kind: 'nitrite', day: '2026-11-02', value: '0.1 mg/L' };
    const entered = await post(`/api/jobs/${number}/readings`, reading);
    expect(entered.status).toBe(201);
    expect(String(written.mock.calls[0]?.[0])).toContain('reading-entered by bench');
  });

  test('people get a page, programs problem details', async () => {
    const page = await send('GET', '/plain/jobs/999999', { headers: { Accept: 'text/html' } });
    expect([page.status, page.headers.get('Content-Type')]).toEqual([404, 'text/html; charset=UTF-8']);
    expect(await page.text()).toContain('There is no job 999999.');
    const plain = await send('GET', '/plain/jobs/999999');
    expect(plain.headers.get('Content-Type')).toBe('application/problem+json');
  });
});
