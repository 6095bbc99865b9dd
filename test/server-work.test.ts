import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import {
  killAtOnce,
  type ServerProcess,
  startServerProcess,
  stopServerProcess,
} from '../scripts/records/serverProcess.ts';
import { keptFolder } from './support/keptFolder.ts';
import { demo, fettle } from './support/program.ts';

const folder = keptFolder();
let server: ServerProcess;
let drum: number;
beforeAll(async () => {
  server = await startServerProcess(folder.path);
  drum = (await send('POST', '/api/jobs', readFileSync(demo('tall-drum'), 'utf8'), 'application/yaml'))
    .number;
}, 60_000);
afterAll(async () => {
  await stopServerProcess(server);
  folder.remove();
}, 60_000);

interface Told {
  readonly number: number;
  readonly id: string;
  readonly state: string;
  readonly ready: boolean;
}

const send = async (
  method: string,
  path: string,
  body?: string,
  type = 'application/json',
): Promise<Told> => {
  const answer = await fetch(`${server.address}${path}`, {
    method,
    ...(body === undefined ? {} : { body, headers: { 'Content-Type': type } }),
  });
  return JSON.parse(await answer.text());
};

/** So many candidates that it never ends within a test, on any machine. */
const ENDLESS = '{ "budget": 500, "cap": 1000000 }';

const ask = async (request: string): Promise<string> =>
  (await send('POST', `/api/jobs/${drum}/plans`, request)).id;

interface Event {
  readonly event: string;
  readonly data: { readonly assessed?: number; readonly planned?: number; readonly state?: string };
}

/** Events of a piece of work as they come, with a way to leave. */
async function* events(id: string, signal?: AbortSignal): AsyncGenerator<Event> {
  const answer = await fetch(`${server.address}/api/work/${id}/events`, {
    headers: { 'Last-Event-ID': 'nothing of ours' },
    ...(signal === undefined ? {} : { signal }),
  });
  expect(answer.headers.get('Content-Type')).toMatch(/^text\/event-stream/);
  let text = '';
  for await (const chunk of answer.body ?? []) {
    text += Buffer.from(chunk).toString();
    const whole = text.split('\n\n');
    text = whole.pop() ?? '';
    for (const block of whole) {
      const event = /^event: (.*)$/m.exec(block)?.[1];
      const data = /^data: (.*)$/m.exec(block)?.[1];
      if (event !== undefined && data !== undefined) yield { event, data: JSON.parse(data) };
    }
  }
}

/** Waits until a piece of work has got somewhere. */
const firstProgress = async (id: string): Promise<Event> => {
  for await (const event of events(id)) return event;
  throw new Error('the stream ended without an event');
};

const cancelled: string[] = [];
afterEach(async () => {
  for (const id of cancelled.splice(0)) await send('DELETE', `/api/work/${id}`);
});

describe('while a plan is searched', () => {
  test('the server answers: documents, lists, assessments, writes', async () => {
    const id = await ask(ENDLESS);
    cancelled.push(id);
    await firstProgress(id);
    const taken = await send(
      'POST',
      '/api/jobs',
      readFileSync(demo('two-halves'), 'utf8'),
      'application/yaml',
    );
    const assessed = await fetch(`${server.address}/api/jobs/${taken.number}/assessment?day=3`);
    expect(assessed.status).toBe(200);
    expect((await assessed.json()) as object).toHaveProperty('dutyPoint');
    expect((await send('GET', '/api/health')).ready).toBe(true);
    expect((await send('GET', `/api/work/${id}`)).state).toBe('running');
  });

  test('its progress is told as it comes, and its end', async () => {
    const id = await ask('{ "budget": 15, "cap": 150 }');
    const told: Event[] = [];
    for await (const event of events(id)) told.push(event);
    const progress = told.filter(({ event }) => event === 'progress').map(({ data }) => data.assessed ?? 0);
    expect(progress.length).toBeGreaterThan(0);
    expect(progress).toEqual(progress.toSorted((one, other) => one - other));
    expect(told.at(-1)).toEqual({ event: 'end', data: { state: 'done' } });
    const after: Event[] = [];
    for await (const event of events(id)) after.push(event);
    expect(after).toEqual([{ event: 'end', data: { state: 'done' } }]);
  });

  test('it can be called off, and whoever follows is told', async () => {
    const id = await ask(ENDLESS);
    const told: Event[] = [];
    for await (const event of events(id)) {
      told.push(event);
      if (told.length === 1) await send('DELETE', `/api/work/${id}`);
    }
    expect(told.at(-1)).toEqual({ event: 'end', data: { state: 'cancelled' } });
    expect((await send('GET', `/api/work/${id}`)).state).toBe('cancelled');
    const next = await ask('{ "cap": 60 }');
    for await (const { event, data } of events(next)) if (event === 'end') expect(data.state).toBe('done');
  });

  test('those who follow may leave at any time', async () => {
    const id = await ask(ENDLESS);
    cancelled.push(id);
    const leaving = new AbortController();
    const follow = async (): Promise<void> => {
      for await (const _ of events(id, leaving.signal)) leaving.abort();
    };
    await expect(follow()).rejects.toThrow(/abort/i);
    expect((await send('GET', `/api/work/${id}`)).state).toBe('running');
  });
});

describe('a server that is killed while it searches', () => {
  test('goes on after the next start, and comes to what the command prints', async () => {
    const request = { budget: 15, cap: 700 };
    const id = await ask(JSON.stringify(request));
    await firstProgress(id);
    await killAtOnce(server);
    server = await startServerProcess(folder.path);
    const told: Event[] = [];
    for await (const event of events(id)) told.push(event);
    expect(told.at(-1)).toEqual({ event: 'end', data: { state: 'done' } });
    const result = await fetch(`${server.address}/api/work/${id}/result`);
    const printed = await fettle('plan', demo('tall-drum'), '--json', '--budget', '15', '--cap', '700');
    expect(await result.text()).toBe(printed.out);
  });

  test('that is asked to stop ends at once, though somebody follows and a plan runs', async () => {
    const id = await ask(ENDLESS);
    cancelled.push(id);
    const told: Event[] = [];
    for await (const event of events(id)) {
      told.push(event);
      if (told.length === 1) server.process.kill('SIGTERM');
    }
    expect(told.every(({ event }) => event === 'progress')).toBe(true);
    expect(await server.ended).toBe(0);
    server = await startServerProcess(folder.path);
    expect(['waiting', 'running']).toContain((await send('GET', `/api/work/${id}`)).state);
  });
});
