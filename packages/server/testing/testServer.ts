import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Role } from '@fettle/store/contract/people.ts';
import { openStore } from '@fettle/store/open.ts';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { buildApp } from '../app.ts';
import { startComputation } from '../computation/computation.ts';
import { addAccount } from '../people/accounts.ts';
import type { Bindings, Environment, ServerConfig, Services } from '../services.ts';
import { startWorks } from '../work/works.ts';

/** A whole server without its socket, on records in a folder of its own. */
export interface TestServer {
  readonly app: OpenAPIHono<Environment>;
  readonly services: Services;
  /** Moves the clock of the server. */
  pass(ms: number): void;
  /** Asks as if it came over a connection. */
  ask(path: string, init?: RequestInit, env?: Bindings): Promise<Response>;
  /** Makes an account and gives the cookie of a session of it. */
  signedIn(name: string, role: Role): Promise<string>;
  end(): Promise<void>;
}

export const testOrigin = 'http://127.0.0.1:4747';
/** Passes the rule for passwords. */
export const testPassword = 'four damp slates ahead';

const config = (share: boolean): ServerConfig => ({
  share,
  hosts: new Set(['127.0.0.1:4747', 'bench.example']),
  origins: new Set([testOrigin, 'https://bench.example']),
  user: 'bench',
  version: '0.0.0',
});

const cookieOf = (answer: Response): string => (answer.headers.get('set-cookie') ?? '').split(';')[0] ?? '';

/** Starts a server for a test. */
export async function testServer({
  share,
  workbench = false,
}: {
  readonly share: boolean;
  /** Whether a workbench is built, of one empty page. */
  readonly workbench?: boolean;
}): Promise<TestServer> {
  const folder = await mkdtemp(join(tmpdir(), 'fettle-server-'));
  const built = join(folder, 'workbench');
  if (workbench) {
    await mkdir(built);
    await writeFile(join(built, 'index.html'), '<!doctype html><title>Fettle</title>');
  }
  let passedMs = 0;
  const clock = (): Date => new Date(Date.now() + passedMs);
  const store = await openStore({ folder, clock });
  const computation = startComputation();
  const report = (says: string, error: unknown): void => {
    throw new Error(says, { cause: error });
  };
  const works = startWorks({ store, computation, report });
  const services: Services = {
    store,
    computation,
    works,
    clock,
    config: { ...config(share), ...(workbench ? { workbench: built } : {}) },
  };
  const app = buildApp(services);
  const ask: TestServer['ask'] = async (path, init = {}, env = { from: '198.51.100.7' }) =>
    app.request(`${testOrigin}${path}`, init, env);
  return {
    app,
    services,
    ask,
    pass: (ms) => {
      passedMs += ms;
    },
    signedIn: async (name, role) => {
      await addAccount(store, { name, role, password: testPassword });
      const body = JSON.stringify({ name, password: testPassword });
      const headers = { 'Content-Type': 'application/json' };
      return cookieOf(await ask('/api/session', { method: 'POST', headers, body }));
    },
    end: async () => {
      await works.close();
      await computation.close();
      await store.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
