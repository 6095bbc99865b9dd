import { readFileSync } from 'node:fs';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { expect } from 'vitest';
import type { TestServer } from './testServer.ts';

/** The text of a demo job. */
export const demoText = (name: string): string =>
  readFileSync(new URL(`../../../demo/${name}.yaml`, import.meta.url), 'utf8');

/** What answers tell, as far as tests look into it. */
export interface Told {
  readonly number: number;
  readonly revision: number;
  readonly code: string;
  readonly detail: string;
  readonly id: string;
  readonly state: string;
  readonly notes: readonly unknown[];
  readonly filled: readonly string[];
  readonly problems: readonly { readonly code: string; readonly path: string }[];
  readonly jobs: readonly { readonly number: number }[];
  readonly revisions: readonly { readonly kind: string; readonly by: string }[];
  readonly readings: readonly { readonly value: string }[];
  readonly attachments: readonly { readonly id: string }[];
  readonly work: readonly { readonly id: string; readonly state: string }[];
  readonly current: { readonly revision: number };
  readonly changes: readonly unknown[];
  readonly conflicts: readonly unknown[];
  readonly merged?: JobDocument;
  readonly mergedProblems: readonly { readonly code: string }[];
}

/** What an answer tells. */
export const told = async (answer: Response): Promise<Told> => JSON.parse(await answer.text());

/** What a request carries beside its address. */
export interface Sent {
  readonly body?: RequestInit['body'];
  readonly type?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Ways of working on the jobs of a server. */
export const jobClientOf = (server: () => TestServer) => {
  const send = (method: string, path: string, { body, type, headers = {} }: Sent = {}): Promise<Response> =>
    server().ask(path, {
      method,
      headers: { ...(type === undefined ? {} : { 'Content-Type': type }), ...headers },
      ...(body === undefined ? {} : { body }),
    });
  return {
    send,
    post: (path: string, value: unknown, headers = {}): Promise<Response> =>
      send('POST', path, { body: JSON.stringify(value), type: 'application/json', headers }),
    takeIn: async (text = demoText('tall-drum')): Promise<number> => {
      const answer = await send('POST', '/api/jobs', { body: text, type: 'application/yaml' });
      expect(answer.status).toBe(201);
      return (await told(answer)).number;
    },
    put: (number: number, document: unknown, { match = '"1"', query = '' } = {}): Promise<Response> =>
      send('PUT', `/api/jobs/${number}${query}`, {
        body: JSON.stringify(document),
        type: 'application/json',
        headers: { 'If-Match': match },
      }),
    read: async (number: number): Promise<JobDocument> =>
      JSON.parse(await (await send('GET', `/api/jobs/${number}`)).text()),
  };
};
