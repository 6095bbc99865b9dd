import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({ share: false });
});
afterAll(() => server.end());

const { send, takeIn, put, read } = jobClientOf(() => server);

describe('revising a job', () => {
  test('demands to know from which revision', async () => {
    const number = await takeIn();
    const document = await read(number);
    const missing = await send('PUT', `/api/jobs/${number}`, {
      body: JSON.stringify(document),
      type: 'application/json',
    });
    expect(missing.status).toBe(428);
    expect(await told(missing)).toMatchObject({ code: 'if-match-missing' });
    expect((await put(number, document, { match: '"2"' })).status).toBe(412);
    expect((await read(number)).job).toEqual(document.job);
  });

  test.each(['1', 'W/"1"', '"x"', '"-1"', '"01"', '"1", "x"', '"1", W/"1"', '"a-1--ed"', '"1'])(
    'is told that %s is no revision, not that a race is lost',
    async (match) => {
      const number = await takeIn();
      const answer = await put(number, await read(number), { match });
      const { code, detail } = await told(answer);
      expect([answer.status, code]).toEqual([400, 'if-match-malformed']);
      expect(detail).toContain(`If-Match says ${match}, `);
      expect(detail).toContain('as If-Match: "3"');
    },
  );

  test('is not from whatever stands: *, which would take back what nobody looked at, is refused', async () => {
    const number = await takeIn();
    const document = await read(number);
    const answer = await put(number, { ...document, job: { title: 'Unseen' } }, { match: '*' });
    expect([answer.status, (await told(answer)).code]).toEqual([428, 'if-match-any']);
    const away = await send('DELETE', `/api/jobs/${number}`, { headers: { 'If-Match': ' * ' } });
    expect([away.status, (await told(away)).code]).toEqual([428, 'if-match-any']);
    const book = { body: '{}', type: 'application/json', headers: { 'If-Match': '*' } };
    expect((await send('PUT', '/api/settings', book)).status).toBe(428);
    expect(await read(number)).toEqual(document);
  });

  test('writes a new revision, from any that is named, whatever its form was', async () => {
    const number = await takeIn();
    const document = await read(number);
    const first = { ...document, job: { ...document.job, title: 'One' } };
    const written = await put(number, first, { match: '"9", "1-yaml"' });
    expect([written.status, await told(written), written.headers.get('ETag')]).toEqual([
      200,
      { number, revision: 2 },
      '"2"',
    ]);
    const second = { ...first, job: { ...first.job, title: 'Two' } };
    expect(await told(await put(number, second, { match: '"2"' }))).toEqual({ number, revision: 3 });
    expect((await read(number)).job?.title).toBe('Two');
  });

  test('fills in its number, and refuses another', async () => {
    const number = await takeIn();
    const { job: _, ...document } = await read(number);
    expect((await put(number, document)).status).toBe(200);
    expect((await read(number)).job).toEqual({ number });
    const other = await put(number, { ...document, job: { number: number + 1 } }, { match: '"2"' });
    expect([other.status, (await told(other)).problems[0]?.path]).toEqual([422, 'job.number']);
  });

  test('a lost race tells what others changed, and offers both changes in one', async () => {
    const number = await takeIn();
    const document = await read(number);
    const theirs = { ...document, job: { ...document.job, title: 'Theirs' } };
    const yours = { ...document, job: { ...document.job, notes: 'Yours' } };
    await put(number, theirs);
    const lost = await put(number, yours);
    const says = await told(lost);
    expect([lost.status, lost.headers.get('ETag'), says.current.revision]).toEqual([412, '"2"', 2]);
    expect(says.changes).toEqual([{ path: 'job.title', before: document.job?.title, after: 'Theirs' }]);
    expect([says.conflicts, says.merged?.job?.title, says.merged?.job?.notes]).toEqual([
      [],
      'Theirs',
      'Yours',
    ]);
    const merged = await put(number, yours, { query: '?merge=fields' });
    expect(await told(merged)).toEqual({ number, revision: 3, merged: true });
    expect((await read(number)).job).toEqual(says.merged?.job);
  });

  test('a change that names many revisions began from the newest of them that there is', async () => {
    const number = await takeIn();
    const document = await read(number);
    await put(number, { ...document, job: { ...document.job, title: 'Theirs' } });
    const yours = { ...document, job: { ...document.job, notes: 'Yours' } };
    const tags = [...Array.from({ length: 12 }, (_, index) => index + 100), 0, 1];
    const lost = await put(number, yours, { match: tags.map((tag) => `"${tag}"`).join(', ') });
    const { detail, merged } = await told(lost);
    expect([lost.status, merged?.job?.title, merged?.job?.notes]).toEqual([412, 'Theirs', 'Yours']);
    expect(detail).toContain('The change began from revision 1,');
  });

  test('a merge is not taken where both changed one field, differently', async () => {
    const number = await takeIn();
    const document = await read(number);
    await put(number, { ...document, job: { ...document.job, title: 'Theirs' } });
    const yours = { ...document, job: { ...document.job, title: 'Yours' } };
    const lost = await put(number, yours, { query: '?merge=fields' });
    const { conflicts, merged } = await told(lost);
    expect(lost.status).toBe(412);
    expect(conflicts).toEqual([
      { path: 'job.title', base: document.job?.title, theirs: 'Theirs', yours: 'Yours' },
    ]);
    expect(merged?.job?.title).toBe('Theirs');
    expect((await read(number)).job?.title).toBe('Theirs');
  });

  test('where both changes together are no job, it says so in place of offering them', async () => {
    const number = await takeIn();
    const document = await read(number);
    const dates = (received: string, promised: string) => ({
      ...document,
      job: { ...document.job, received, promised },
    });
    await put(number, dates('2026-11-02', '2026-11-03'));
    const lost = await put(number, dates('2026-11-19', '2026-11-20'), { query: '?merge=fields' });
    const { merged, mergedProblems } = await told(lost);
    expect([lost.status, merged]).toEqual([412, undefined]);
    expect(mergedProblems[0]?.code).toBe('dates-reversed');
  });

  test('of many who are quick at once one wins, and the others are told', async () => {
    const number = await takeIn();
    const document = await read(number);
    const titles = Array.from({ length: 8 }, (_, index) => `Title ${index}`);
    const answers = await Promise.all(
      titles.map((title) => put(number, { ...document, job: { ...document.job, title } })),
    );
    expect(answers.map(({ status }) => status).toSorted()).toEqual([200, ...Array(7).fill(412)]);
  });
});
