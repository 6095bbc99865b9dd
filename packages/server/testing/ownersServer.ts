import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { clientOf } from '../testing/client.ts';
import { type TestServer, testServer } from '../testing/testServer.ts';

/** A link for an owner, as it was told. */
export interface MadeLink {
  readonly id: string;
  readonly url: string;
  /** Path of the sheet. */
  readonly at: string;
}

/** A job of an invented workshop, with all that an owner must not see. */
export const jobCalled = (title: string) => ({
  ...fullJob,
  job: { title, promised: '2026-12-20', received: '2026-11-02', stage: 'planned', notes: 'INTERNAL-NOTE' },
});

/** A shared server with a technician signed in, jobs, and links to them. */
export async function ownersServer() {
  const server: TestServer = await testServer({ share: true });
  const technician = await server.signedIn('rosalind', 'technician');
  const client = clientOf(() => server);
  const told = async (path: string, body: unknown): Promise<Record<string, string>> => {
    const answer = await client.send('POST', path, { cookie: technician, body });
    return (await answer.json()) as Record<string, string>;
  };
  return {
    server,
    technician,
    ...client,
    takeIn: async (document: unknown): Promise<number> => Number((await told('/api/jobs', document)).number),
    linkTo: async (job: number, body: unknown = {}): Promise<MadeLink> => {
      const { id = '', url = '' } = await told(`/api/jobs/${job}/owner-links`, body);
      return { id, url, at: new URL(url).pathname };
    },
    /** Sends the form of a sheet. */
    enter: (
      at: string,
      fields: Record<string, string>,
      headers: Record<string, string> = {},
    ): Promise<Response> =>
      server.ask(`${at}/readings`, {
        method: 'POST',
        headers: { 'Content-Type': 'application/x-www-form-urlencoded', ...headers },
        body: String(new URLSearchParams(fields)),
      }),
    today: (): string => server.services.clock().toISOString().slice(0, 10),
  };
}
