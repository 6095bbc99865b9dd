import { type Chance, chanceFrom } from '../chance.ts';
import { documentDigest, type Ledger, noteRevision } from '../ledger.ts';
import type { ServerProcess } from '../serverProcess.ts';
import { type Endpoint, endpointsOf, pages } from './endpoints.ts';
import { faultOf } from './oracle.ts';
import { type FuzzRequest, inventedRequest, type Targets } from './requests.ts';
import { type Heard, send } from './send.ts';

/** What a run of hostile requests came to. */
export interface FuzzTally {
  readonly cases: number;
  /** Number of answers by endpoint and status. */
  readonly answers: ReadonlyMap<string, ReadonlyMap<number, number>>;
  readonly faults: readonly string[];
}

export interface FuzzRun {
  readonly server: ServerProcess;
  readonly cases: number;
  readonly seed: number;
  /** Takes up every revision that is acknowledged on the way. */
  readonly ledger: Ledger;
  readonly jobTexts: readonly string[];
  readonly jobs: readonly unknown[];
  readonly pictures: Targets['pictures'];
  readonly onProgress?: (done: number, faults: number) => void;
}

interface State extends FuzzRun {
  readonly chance: Chance;
  readonly endpoints: readonly Endpoint[];
  readonly ids: string[];
  readonly counts: Map<string, Map<number, number>>;
  readonly faults: string[];
}

/** At most this many ids are aimed at, the newest. */
const mostIds = 60;
const atOnce = 6;
const mostFaults = 60;

/** Sends requests by chance to every endpoint of a running server, several at once. */
export async function fuzzServer(run: FuzzRun): Promise<FuzzTally> {
  const described = await send(run.server.address, {
    method: 'GET',
    address: '/api/openapi.json',
    headers: {},
  });
  const endpoints = [...endpointsOf(JSON.parse(described.text)), ...pages];
  const state: State = {
    ...run,
    chance: chanceFrom(run.seed),
    endpoints,
    ids: [],
    counts: new Map(),
    faults: [],
  };
  let next = 0;
  const one = async (): Promise<void> => {
    while (next < run.cases && state.faults.length < mostFaults) {
      next++;
      if (next % 2000 === 0) run.onProgress?.(next, state.faults.length);
      await oneCase(state, inventedRequest(endpoints, targetsOf(state), state.chance));
    }
  };
  await Promise.all(Array.from({ length: atOnce }, one));
  return { cases: next, answers: state.counts, faults: state.faults };
}

function targetsOf({ ledger, ids, pictures, jobTexts, jobs }: State): Targets {
  const numbers = [...ledger.revisions.keys()];
  const revisions = new Map(
    numbers.map((number) => [number, Math.max(...(ledger.revisions.get(number) ?? new Map()).keys())]),
  );
  return { numbers, revisions, ids, pictures, jobTexts, jobs };
}

async function oneCase(state: State, asked: FuzzRequest): Promise<void> {
  const { server, counts, faults } = state;
  const name = `${asked.endpoint.method} ${asked.endpoint.path}`;
  try {
    const heard = await send(server.address, asked);
    const known = counts.get(name) ?? new Map<number, number>();
    counts.set(name, known);
    known.set(heard.status, (known.get(heard.status) ?? 0) + 1);
    const fault = faultOf(heard, !asked.endpoint.path.startsWith('/api'));
    if (fault !== undefined) faults.push(`${shown(asked)}: ${fault}`);
    await remember(state, asked, heard);
  } catch (error) {
    if (server.process.exitCode !== null || server.process.signalCode !== null)
      throw new Error(`the server ended at ${shown(asked)}:\n${server.written().slice(-2000)}`);
    if (!mayBreakOff(error, asked)) faults.push(`${shown(asked)}: ${String(error)}`);
  }
}

/** A connection may be closed on a body that is refused before it was read whole. */
const mayBreakOff = (error: unknown, { body }: FuzzRequest): boolean =>
  body !== undefined && Buffer.byteLength(body) > 60_000 && /ECONNRESET|EPIPE|hang up/.test(String(error));

const shown = ({ method, address, headers, body }: FuzzRequest): string =>
  `${method} ${address.slice(0, 160)} ${JSON.stringify(headers).slice(0, 200)} ${JSON.stringify(body?.toString().slice(0, 160) ?? '')}`;

function bodyOf({ type, text }: Heard): Readonly<Record<string, unknown>> {
  if (!type.includes('json') || text.length > 100_000) return {};
  const body: unknown = JSON.parse(text);
  return typeof body === 'object' && body !== null ? (body as Readonly<Record<string, unknown>>) : {};
}

/** Takes up ids as targets, and acknowledged revisions with the document that the server then shows. */
async function remember(state: State, asked: FuzzRequest, heard: Heard): Promise<void> {
  if (heard.status >= 300 || asked.method === 'GET' || asked.method === 'HEAD') return;
  const { number: said, revision, id } = bodyOf(heard);
  if (typeof id === 'string') state.ids.push(id);
  if (state.ids.length > mostIds) state.ids.shift();
  const number = said ?? Number(/^\/api\/jobs\/(\d+)/.exec(asked.address)?.[1]);
  if (typeof revision !== 'number' || typeof number !== 'number' || Number.isNaN(number)) return;
  const address = `/api/jobs/${number}/revisions/${revision}`;
  const document = await send(state.server.address, { method: 'GET', address, headers: {} });
  if (document.status !== 200)
    state.faults.push(`${shown(asked)} was acknowledged, but ${address} gives ${document.status}`);
  else noteRevision(state.ledger, { number, revision, digest: documentDigest(JSON.parse(document.text)) });
}
