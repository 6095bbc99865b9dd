import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import { besideDocument } from '@fettle/workflows/publishedPhotographs.ts';
import { fileNamed, mediaTypes } from '@fettle/writeup/fileNames.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { WriteUpTask } from '../computation/tasks.ts';
import type { Environment, Services } from '../services.ts';
import { jobNumbered } from './jobChange.ts';
import { oneOf } from './query.ts';
import { notFound } from './refusal.ts';
import { addRoute } from './route.ts';

/** A page that was made runs nothing and fetches nothing, wherever it is opened; its style stands in it. */
export const madeFileHeaders = (type: string, name: string): Record<string, string> => ({
  'Content-Type': type,
  'Content-Disposition': `inline; filename="${name}"`,
  'Content-Security-Policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
  'X-Content-Type-Options': 'nosniff',
  'Cache-Control': 'no-cache',
});

/** The task of writing a job up, whole or one file of it, with what the records know beside the job's document. */
export const toWriteUp = async (
  { store }: Pick<Services, 'store'>,
  { number, document }: Pick<StoredJob, 'number' | 'document'>,
  asked: Pick<WriteUpTask, 'file' | 'paper'>,
): Promise<Omit<WriteUpTask, 'task'>> => {
  const { file } = asked;
  const beside = await besideDocument(store, { number, document, ...(file === undefined ? {} : { file }) });
  return { document, ...beside, ...asked };
};

const anyFile = { schema: { type: 'string' as const, format: 'binary' } };

const addFile = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/write-up/{name}',
      operationId: 'readWriteUp',
      summary: 'One document of the write-up',
      description:
        'By the name of its file: sheet, build, care and quote as .pdf, .html or .md; a PDF on the paper that its name says, as in sheet-letter.pdf, else on A4.',
      tag: 'Computing',
      query: z.strictObject({}),
      answers: {
        200: {
          description: 'The document.',
          content: { 'application/pdf': anyFile, 'text/html': anyFile, 'text/markdown': anyFile },
        },
      },
      problems: [404, 422],
    },
    async ({ context, path: { number, name } }) => {
      const job = await jobNumbered(services, number);
      const file = fileNamed(name);
      if (file === undefined) throw notFound(`No document of the write-up is called ${name}.`);
      const [made] = await services.computation.writeUp(await toWriteUp(services, job, { file }));
      return context.body(bodyOf(made?.content ?? ''), 200, madeFileHeaders(mediaTypes[file.form], name));
    },
  );

/** What is sent: a copy whose memory nobody else holds. */
export const bodyOf = (content: string | Uint8Array): string | Uint8Array<ArrayBuffer> =>
  typeof content === 'string' ? content : new Uint8Array(content);

const addAll = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/write-up',
      operationId: 'downloadWriteUp',
      summary: 'The whole write-up in one archive',
      description: 'Exactly the files that the command writeup writes.',
      tag: 'Computing',
      query: z.strictObject({
        paper: oneOf(['a4', 'letter'], { says: 'Paper of what comes on one paper only; a4 where left out.' }),
      }),
      answers: { 200: { description: 'The archive.', content: { 'application/zip': anyFile } } },
      problems: [404, 422],
    },
    async ({ context, path: { number }, query: { paper = 'a4' } }) => {
      const job = await jobNumbered(services, number);
      const [made] = await services.computation.writeUp(await toWriteUp(services, job, { paper }));
      return context.body(bodyOf(made?.content ?? ''), 200, {
        'Content-Type': 'application/zip',
        'Content-Disposition': `attachment; filename="write-up-${number}.zip"`,
        'Cache-Control': 'no-cache',
      });
    },
  );

/** What is published of a job. */
export const addWriteUps = (app: OpenAPIHono<Environment>, services: Services): void => {
  addFile(app, services);
  addAll(app, services);
};
