import { telephonePicture } from '@fettle/store/photographs/testing/pictures.ts';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { jobClientOf, told } from '../testing/jobClient.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

let server: TestServer;
let picture: Uint8Array<ArrayBuffer>;
beforeAll(async () => {
  server = await testServer({ share: false });
  picture = new Uint8Array(await telephonePicture());
});
afterAll(() => server.end());

const { send, takeIn, put, read } = jobClientOf(() => server);

const attach = async (number: number, query = ''): Promise<string> => {
  const path = `/api/jobs/${number}/attachments${query}`;
  const answer = await send('POST', path, { body: picture, type: 'image/jpeg' });
  expect(answer.status).toBe(201);
  const { id } = await told(answer);
  expect(answer.headers.get('Location')).toBe(`/api/jobs/${number}/attachments/${id}`);
  return id;
};

describe('photographs', () => {
  test('are served as pictures and nothing else, under a harmless name', async () => {
    const number = await takeIn();
    const name = encodeURIComponent('../../"leak"\r\nX-Evil: 1.jpg');
    const id = await attach(number, `?name=${name}&caption=Grid%20askew`);
    const answer = await send('GET', `/api/jobs/${number}/attachments/${id}`);
    const bytes = new Uint8Array(await answer.arrayBuffer());
    expect([...bytes.subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
    expect(answer.headers.get('Content-Type')).toBe('image/jpeg');
    expect(answer.headers.get('X-Content-Type-Options')).toBe('nosniff');
    expect(answer.headers.get('Content-Security-Policy')).toContain('sandbox');
    expect(answer.headers.get('Content-Disposition')).toMatch(/^inline; filename="[A-Za-z0-9 _-]+\.jpg"$/);
    expect(answer.headers.get('X-Evil')).toBeNull();
    expect(answer.headers.get('Cache-Control')).toBe('private, no-cache');
    const again = await send('GET', `/api/jobs/${number}/attachments/${id}`, {
      headers: { 'If-None-Match': answer.headers.get('ETag') ?? '' },
    });
    expect(again.status).toBe(304);
    const small = await send('GET', `/api/jobs/${number}/attachments/${id}/thumbnail`);
    expect(small.status).toBe(200);
    expect(small.headers.get('ETag')).not.toBe(answer.headers.get('ETag'));
    expect((await small.arrayBuffer()).byteLength).toBeLessThanOrEqual(bytes.length);
  });

  test('are listed with what they show, and taken off', async () => {
    const number = await takeIn();
    const id = await attach(number);
    const changed = await send('PATCH', `/api/jobs/${number}/attachments/${id}`, {
      body: '{"caption": "The grid"}',
      type: 'application/json',
    });
    expect(await changed.json()).toMatchObject({ id, caption: 'The grid' });
    const list = async () => (await told(await send('GET', `/api/jobs/${number}/attachments`))).attachments;
    expect((await list()).map((each) => each.id)).toEqual([id]);
    expect((await send('DELETE', `/api/jobs/${number}/attachments/${id}`)).status).toBe(204);
    expect(await list()).toEqual([]);
    expect((await send('DELETE', `/api/jobs/${number}/attachments/${id}`)).status).toBe(404);
    expect((await send('GET', `/api/jobs/${number}/attachments/${id}`)).status).toBe(404);
  });

  test('that a job has already are told, under which id, and not attached again', async () => {
    const number = await takeIn();
    const id = await attach(number, '?caption=The%20gap');
    const path = `/api/jobs/${number}/attachments`;
    const again = await send('POST', `${path}?name=other.jpg`, { body: picture, type: 'image/jpeg' });
    expect([again.status, again.headers.get('Location')]).toEqual([200, `${path}/${id}`]);
    expect(await told(again)).toMatchObject({ id, caption: 'The gap', thereAlready: true });
    expect((await told(await send('GET', path))).attachments).toHaveLength(1);
    await send('DELETE', `${path}/${id}`);
    expect(await attach(number)).not.toBe(id);
    expect(await attach(await takeIn())).not.toBe(id);
  });

  test('of one job are not seen through another', async () => {
    const [one, other] = [await takeIn(), await takeIn()];
    const id = await attach(one);
    expect((await send('GET', `/api/jobs/${other}/attachments/${id}`)).status).toBe(404);
    expect((await send('DELETE', `/api/jobs/${other}/attachments/${id}`)).status).toBe(404);
  });

  test.each([
    ['an SVG drawing', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'image/svg+xml', 415],
    ['a text with a picture’s type', 'no picture', 'image/jpeg', 415],
    ['a picture with another type', 'x', 'text/html', 415],
  ])('%s is not taken', async (_, body, type, status) => {
    const number = await takeIn();
    const answer = await send('POST', `/api/jobs/${number}/attachments`, { body, type });
    expect(answer.status).toBe(status);
    expect((await told(answer)).detail).toMatch(/allowed/);
  });

  test('of a job that there is not are refused', async () => {
    const answer = await send('POST', '/api/jobs/999999/attachments', { body: picture, type: 'image/jpeg' });
    expect(answer.status).toBe(404);
  });

  test.each(['..%2f..%2ffettle.db', '%2e%2e', 'a', 'x'.repeat(17)])('there is none called %s', async (id) => {
    const number = await takeIn();
    expect((await send('GET', `/api/jobs/${number}/attachments/${id}`)).status).toBe(404);
  });
});

describe('everything at once', () => {
  test('comes as an archive that another program unpacks, with every revision and picture', async () => {
    const number = await takeIn();
    await put(number, { ...(await read(number)), job: { number, title: 'Second' } });
    const id = await attach(number);
    const answer = await send('GET', '/api/export');
    expect(answer.headers.get('Content-Type')).toBe('application/zip');
    const files = unzipSync(new Uint8Array(await answer.arrayBuffer()));
    const folder = `jobs/${String(number).padStart(6, '0')}`;
    expect(Object.keys(files)).toEqual(
      expect.arrayContaining([
        `${folder}/job.yaml`,
        `${folder}/revisions/0001.yaml`,
        `${folder}/revisions/0002.yaml`,
        `${folder}/photographs/${id}.jpg`,
        'export.json',
      ]),
    );
    expect(new TextDecoder().decode(files[`${folder}/job.yaml`])).toContain('title: Second');
  });

  test.each([
    ['files', { revisions: 65_534 }],
    ['bytes', { attachmentBytes: 4.3e9 }],
  ])(
    'is refused before anything is sent, where it has more %s than an archive can hold',
    async (_what, more) => {
      const { store } = server.services;
      const health = await store.checkup();
      const checkup = vi.spyOn(store, 'checkup').mockResolvedValueOnce({ ...health, ...more });
      const answer = await send('GET', '/api/export');
      checkup.mockRestore();
      expect(answer.status).toBe(409);
      expect(await told(answer)).toMatchObject({
        code: 'too-much-for-zip',
        detail: expect.stringContaining('fettle export writes them into a folder'),
      });
    },
  );
});
