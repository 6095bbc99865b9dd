import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { telephonePicture } from '@fettle/store/photographs/testing/pictures.ts';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type ServerProcess,
  startServerProcess,
  stopServerProcess,
} from '../scripts/records/serverProcess.ts';
import { type ApiClient, apiClient } from './support/apiClient.ts';
import { keptFolder } from './support/keptFolder.ts';
import { demo, demos, fettle } from './support/program.ts';

let server: ServerProcess;
let client: ApiClient;
const folder = keptFolder();
beforeAll(async () => {
  server = await startServerProcess(folder.path);
  client = await apiClient(server.address);
}, 60_000);
afterAll(async () => {
  expect(await stopServerProcess(server)).toBe(0);
  folder.remove();
}, 60_000);

const yaml = { 'Content-Type': 'application/yaml' };
const json = { 'Content-Type': 'application/json' };

const takeIn = async (name: string): Promise<number> => {
  const taken = await client.call('takeInJob', { body: readFileSync(demo(name), 'utf8'), headers: yaml });
  expect(taken.status).toBe(201);
  return taken.data.number;
};

const waitFor = async (id: string, state: string): Promise<void> => {
  for (let tries = 0; tries < 600; tries++) {
    const { data } = await client.call('readWork', { parameters: { id } });
    if (data.state === state) return;
    if (data.state !== 'waiting' && data.state !== 'running') throw new Error(`it ended as ${data.state}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${id} never was ${state}`);
};

describe('a client that knows nothing but the description', () => {
  test('takes in a job, changes it, loses a race, merges, goes back, puts away and brings back', async () => {
    const number = await takeIn('tall-drum');
    const parameters = { number };
    const first = await client.call('readJob', { parameters });
    const etag = first.headers.etag ?? '';
    const about = first.data.job as object;
    const changed = { ...first.data, job: { ...about, title: 'Changed' } };
    const revised = await client.call('reviseJob', {
      parameters,
      body: changed,
      headers: { ...json, 'If-Match': etag },
    });
    expect(revised.data).toEqual({ number, revision: 2 });
    const late = { ...first.data, job: { ...about, notes: 'Late' } };
    const headers = { ...json, 'If-Match': etag };
    const lost = await client.call('reviseJob', { parameters, body: late, headers });
    expect([lost.status, lost.data.code]).toEqual([412, 'lost-race']);
    const merged = await client.call('reviseJob', {
      parameters: { number, merge: 'fields' },
      body: late,
      headers,
    });
    expect(merged.data).toEqual({ number, revision: 3, merged: true });
    const back = await client.call('goBack', {
      parameters,
      body: { to: 1 },
      headers: { ...json, 'If-Match': '"3"' },
    });
    expect(back.data.revision).toBe(4);
    expect((await client.call('readJob', { parameters })).data).toEqual(first.data);
    const second = await client.call('readRevision', { parameters: { number, revision: 2 } });
    expect(second.data.job).toMatchObject({ title: 'Changed' });
    expect((await client.call('listRevisions', { parameters })).data.revisions).toHaveLength(4);
    const away = await client.call('putAwayJob', { parameters, headers: { 'If-Match': '"4"' } });
    expect(away.data.revision).toBe(5);
    const here = await client.call('bringBackJob', { parameters, headers: { 'If-Match': '"5"' } });
    expect(here.data.revision).toBe(6);
    const listed = await client.call('listJobs', { parameters: { words: 'drum', count: 5 } });
    expect(listed.data.total).toBe(1);
    expect((await client.call('readJob', { parameters: { number: 999_999 } })).status).toBe(404);
  });

  test('attaches a photograph, names it, fetches it and takes it off', async () => {
    const number = await takeIn('corner-box');
    const picture = {
      parameters: { number, caption: 'As found' },
      body: await telephonePicture(),
      headers: { 'Content-Type': 'image/jpeg' },
    };
    const attached = await client.call('attachPicture', picture);
    expect(attached.status).toBe(201);
    const again = await client.call('attachPicture', picture);
    expect([again.status, again.data]).toMatchObject([200, { id: attached.data.id, thereAlready: true }]);
    const parameters = { number, id: attached.data.id };
    const named = await client.call('captionPicture', {
      parameters,
      body: { caption: 'Lid' },
      headers: json,
    });
    expect(named.data.caption).toBe('Lid');
    expect((await client.call('readPicture', { parameters, raw: true })).status).toBe(200);
    expect((await client.call('readThumbnail', { parameters, raw: true })).status).toBe(200);
    expect((await client.call('listPictures', { parameters: { number } })).data.attachments).toHaveLength(1);
    expect((await client.call('removePicture', { parameters })).status).toBe(204);
  });

  test('enters readings, takes one back, and writes the books', async () => {
    const number = await takeIn('corner-box');
    const reading = { kind: 'nitrite', day: '2026-02-03', value: '0.1 mg/L' };
    const entered = await client.call('addReading', { parameters: { number }, body: reading, headers: json });
    expect(entered.status).toBe(201);
    expect((await client.call('listReadings', { parameters: { number } })).data.readings).toHaveLength(1);
    const parameters = { number, id: entered.data.id };
    expect((await client.call('removeReading', { parameters })).status).toBe(204);
    expect((await client.call('listReadings', { parameters: { number } })).data.readings).toEqual([]);
    for (const book of ['Shelf', 'Settings']) {
      const before = await client.call(`read${book}`);
      expect(before.headers.etag).toBe('"0"');
      const headers = { ...json, 'If-Match': '"0"' };
      const written = await client.call(`write${book}`, { body: {}, headers });
      expect(written.status).toBe(200);
    }
  });

  test('plans, and fetches what came out, which is what the command prints', async () => {
    const number = await takeIn('back-hanger');
    const asked = await client.call('askPlans', {
      parameters: { number },
      body: { budget: 15, cap: 80 },
      headers: json,
    });
    expect(asked.status).toBe(202);
    const parameters = { id: asked.data.id };
    const early = await client.call('readResult', { parameters });
    expect([200, 409]).toContain(early.status);
    await waitFor(asked.data.id, 'done');
    const result = await client.call('readResult', { parameters });
    const printed = await fettle('plan', demo('back-hanger'), '--json', '--budget', '15', '--cap', '80');
    expect(`${JSON.stringify(result.data, null, 2)}\n`).toBe(printed.out);
    const again = await client.call('askPlans', {
      parameters: { number },
      body: { cap: 80, budget: 15 },
      headers: json,
    });
    expect([again.status, again.data.id]).toEqual([200, asked.data.id]);
    expect((await client.call('listWork', { parameters: { job: number } })).data.work).toHaveLength(1);
    expect((await client.call('cancelWork', { parameters })).status).toBe(409);
  });

  test('asks how the server is, for tags, drawing and archive', async () => {
    expect((await client.call('readHealth')).data.ready).toBe(true);
    expect((await client.call('listTags')).status).toBe(200);
    const number = await takeIn('two-halves');
    const drawing = await client.call('drawJob', { parameters: { number, theme: 'dark' } });
    expect(drawing.headers['content-type']).toBe('image/svg+xml; charset=utf-8');
    expect((await client.call('exportAll', { raw: true })).headers['content-type']).toBe('application/zip');
    expect((await client.call('describe')).status).toBe(200);
  });

  test('forecasts a job, byte for byte as the command prints it, and says what of a pattern is wrong', async () => {
    const number = await takeIn('corner-box');
    const clean = 'mechanical/30, all/90';
    const parameters = { number, days: 45, clean };
    expect((await client.call('forecastJob', { parameters })).data.day).toHaveLength(46);
    const query = new URLSearchParams({ days: '45', clean });
    const answer = await fetch(`${server.address}/api/jobs/${number}/forecast?${query}`);
    const printed = await fettle('forecast', demo('corner-box'), '--json', '--days', '45', '--clean', clean);
    expect([answer.status, await answer.text()]).toEqual([200, printed.out]);
    const etag = answer.headers.get('etag')!;
    const same = await fetch(answer.url, { headers: { 'If-None-Match': etag } });
    expect(same.status).toBe(304);
    const asked = (words: string) => fetch(`${server.address}/api/jobs/${number}/forecast?${words}`);
    const wrong = await asked('clean=peat/30');
    expect(wrong.status).toBe(422);
    expect(await wrong.json()).toMatchObject({ problems: [{ code: 'pattern-place', path: 'clean' }] });
    expect((await asked('days=731')).status).toBe(400);
    expect((await asked('clean=now')).status).toBe(422);
  });

  test('fetches one document of a write-up, and all of it in one archive', async () => {
    const number = await takeIn('corner-box');
    const asked = { number, name: 'sheet.md' };
    const text = await client.call('readWriteUp', { parameters: asked, raw: true });
    expect([text.status, text.headers['content-type']]).toEqual([200, 'text/markdown; charset=utf-8']);
    const parameters = { number, paper: 'letter' };
    const archive = await client.call('downloadWriteUp', { parameters, raw: true });
    expect([archive.status, archive.headers['content-type']]).toEqual([200, 'application/zip']);
  });

  test('has called every operation on jobs, work, books and server', () => {
    const elsewhere = /account|session|owner|sheet|link|reminder|log|password|^sign/i;
    const left = client.operations.filter(
      (operation) => !client.called.has(operation) && !elsewhere.test(operation),
    );
    expect(left).toEqual(['assessJob', 'followWork']);
  });
});

describe.each(demos.map((path) => [basename(path), path]))('the assessment of %s', (_name, path) => {
  test('is, byte for byte, what the command prints', async () => {
    const number = await takeIn(basename(path, '.yaml'));
    for (const day of ['', '7.5']) {
      const query = day === '' ? '' : `?day=${day}`;
      const answer = await fetch(`${server.address}/api/jobs/${number}/assessment${query}`);
      const printed = await fettle('assess', path, '--json', ...(day === '' ? [] : ['--day', day]));
      expect([answer.status, await answer.text()]).toEqual([200, printed.out]);
    }
    await client.call('assessJob', { parameters: { number } });
  });
});
