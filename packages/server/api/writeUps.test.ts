import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
let job: number;
beforeAll(async () => {
  server = await testServer({ share: false });
  job = await takeIn(demoText('handed-back'));
});
afterAll(() => server.end());

const { send, takeIn } = jobClientOf(() => server);
const file = (name: string) => send('GET', `/api/jobs/${job}/write-up/${name}`);

describe('the write-up of a job', () => {
  test.each([
    ['sheet-a4.pdf', 'application/pdf', '%PDF-'],
    ['sheet-letter.pdf', 'application/pdf', '%PDF-'],
    ['build.pdf', 'application/pdf', '%PDF-'],
    ['sheet.html', 'text/html; charset=utf-8', '<!doctype html>'],
    ['sheet.md', 'text/markdown; charset=utf-8', '# Landing canister'],
  ])('gives %s, which runs nothing wherever it is opened', async (name, type, start) => {
    const answer = await file(name);
    expect([answer.status, answer.headers.get('Content-Type')]).toEqual([200, type]);
    expect(answer.headers.get('Content-Security-Policy')).toContain('sandbox');
    expect(Buffer.from(await answer.arrayBuffer()).toString('latin1')).toMatch(new RegExp(`^${start}`));
  });

  test.each(['nothing.pdf', 'sheet.doc', 'sheet-a3.pdf', 'sheet-a4.html', 'constructor.pdf'])(
    'knows no %s',
    async (name) => {
      const answer = await file(name);
      expect(answer.status).toBe(404);
      expect((await told(answer)).detail).toBe(`No document of the write-up is called ${name}.`);
    },
  );

  test('comes whole in one archive, the same each time', async () => {
    const [one, other] = await Promise.all(
      [1, 2].map(async () => (await send('GET', `/api/jobs/${job}/write-up`)).arrayBuffer()),
    );
    expect(Buffer.compare(Buffer.from(one!), Buffer.from(other!))).toBe(0);
    const files = unzipSync(new Uint8Array(one!));
    for (const path of [
      'sheet-a4.pdf',
      'sheet-letter.pdf',
      'sheet.html',
      'sheet.md',
      'drawings/water-path.svg',
    ])
      expect(files[path]?.length ?? 0).toBeGreaterThan(1000);
  });

  test('of a job that is not there is not found', async () => {
    expect((await send('GET', '/api/jobs/999/write-up/sheet.md')).status).toBe(404);
  });
});
