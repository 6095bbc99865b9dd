import { fillFromBooks } from '@fettle/job/books/fill.ts';
import { readSettings } from '@fettle/job/books/settings.ts';
import { readShelf } from '@fettle/job/books/shelf.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { DeedBeside } from '@fettle/store/contract/deeds.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { Environment, Services } from '../services.ts';
import { hasAlready, readIfMatch, revisionTag } from './conditions.ts';
import { beside } from './deeds.ts';
import { numberedFor, readDocumentBody } from './documents.ts';
import { answerWritten, jobNumbered } from './jobChange.ts';
import { bothChanges, lostRace } from './lostRace.ts';
import { documentAnswer, documentContent, json } from './media.ts';
import { formOf } from './negotiation.ts';
import { oneOf, shortText, wholeNumber } from './query.ts';
import { addRoute } from './route.ts';
import { jobPageSchema, takenInSchema, writtenSchema } from './schemas.ts';

const listQuery = z.strictObject({
  words: shortText({ says: 'Words that must all be found, the last one as a beginning.', most: 200 }),
  family: shortText({ says: 'Family of filter.', most: 60 }),
  stage: shortText({ says: 'Where the work stands, job.stage.', most: 60 }),
  tag: shortText({ says: 'A tag.', most: 200 }),
  putAway: oneOf(['true', 'false'], { says: 'Jobs that are put away, in place of those in hand.' }),
  order: oneOf(['promised', 'changed', 'number'], {
    says: 'Soonest promise, newest change or highest number first.',
  }),
  count: wholeNumber({ says: 'At most so many; 50 where left out.', least: 1, most: 1000 }),
  skip: wholeNumber({ says: 'Jobs to pass over.', least: 0, most: 1_000_000 }),
});

const addList = (app: OpenAPIHono<Environment>, { store }: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs',
      operationId: 'listJobs',
      summary: 'Jobs that match, a line each',
      tag: 'Jobs',
      query: listQuery,
      answers: { 200: json(jobPageSchema, 'The jobs.') },
    },
    async ({ context, query: { putAway, words, family, stage, tag, order, count, skip } }) =>
      context.json(
        await store.jobs.list({
          ...(words === undefined ? {} : { words }),
          ...(family === undefined ? {} : { family }),
          ...(stage === undefined ? {} : { stage }),
          ...(tag === undefined ? {} : { tag }),
          ...(order === undefined ? {} : { order }),
          ...(count === undefined ? {} : { count }),
          ...(skip === undefined ? {} : { skip }),
          putAway: putAway === 'true',
        }),
      ),
  );

/** The document with what it does not say itself taken from shelf and settings. */
const filled = async (
  { store }: Services,
  document: JobDocument,
): Promise<{ readonly document: JobDocument; readonly filled: readonly string[] }> => {
  const [shelf, settings] = await Promise.all([store.books.find('shelf'), store.books.find('settings')]);
  const onShelf = readShelf(shelf.body ?? {});
  const set = readSettings(settings.body ?? {});
  if (!onShelf.ok || !set.ok) throw new Error('a book in the records reads no more');
  return fillFromBooks(document, { shelf: onShelf.shelf, settings: set.settings });
};

const addCreate = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/jobs',
      operationId: 'takeInJob',
      summary: 'Take in a job',
      description: 'The document’s own number is kept where it is free; else the job gets the next one.',
      tag: 'Jobs',
      query: z.strictObject({
        fill: oneOf(['books'], { says: 'Take what the document does not say from shelf and settings.' }),
      }),
      body: documentContent,
      answers: { 201: { ...json(takenInSchema, 'Taken in.'), headers: locationHeaders } },
      problems: [413, 415, 422, 507],
    },
    async ({ context, query }) => {
      const read = await readDocumentBody(context, services);
      const whole = query.fill === 'books' ? await filled(services, read.document) : undefined;
      const { name } = context.get('visitor');
      const taken = await services.store.jobs.create({
        document: whole?.document ?? read.document,
        by: name,
        log: beside(context, { what: 'job-taken-in' }),
      });
      const { number, revision } = taken;
      const body = { number, revision, notes: read.notes, ...(whole && { filled: whole.filled }) };
      return context.json(body, 201, { Location: `/api/jobs/${number}`, ETag: revisionTag(revision) });
    },
  );

const locationHeaders = {
  Location: { schema: { type: 'string' as const }, description: 'Where it stands from now on.' },
  ETag: { schema: { type: 'string' as const }, description: 'Its revision in quotes.' },
};

const addRead = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}',
      operationId: 'readJob',
      summary: 'The document of a job',
      tag: 'Jobs',
      query: z.strictObject({}),
      headers: ['Accept', 'If-None-Match'],
      answers: { 200: documentAnswer, 304: { description: 'The same as before.' } },
      problems: [404, 406],
    },
    async ({ context, path }) => {
      const form = formOf(context);
      const { document, revision } = await jobNumbered(services, path.number);
      return answerDocument(context, services, { document, etag: revisionTag(revision, form), form });
    },
  );

/** A document as JSON or YAML, or that it is still the same. */
export const answerDocument = async (
  context: Context<Environment>,
  { computation }: Services,
  of: { readonly document: JobDocument; readonly etag: string; readonly form: 'json' | 'yaml' },
): Promise<Response> => {
  const headers = { ETag: of.etag, Vary: 'Accept', 'Cache-Control': 'no-cache' };
  if (hasAlready(context, of.etag)) return context.body(null, 304, headers);
  return of.form === 'json'
    ? context.json(of.document, 200, headers)
    : context.body(await computation.write(of.document), 200, {
        ...headers,
        'Content-Type': 'application/yaml; charset=utf-8',
      });
};

const addReplace = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'put',
      path: '/api/jobs/{number}',
      operationId: 'reviseJob',
      summary: 'Write a new revision of a job',
      tag: 'Jobs',
      query: z.strictObject({
        merge: oneOf(['fields'], {
          says: 'Where somebody was quicker, take both changes if no field conflicts.',
        }),
      }),
      headers: ['If-Match'],
      body: documentContent,
      answers: { 200: json(writtenSchema, 'Written.') },
      problems: [404, 412, 413, 415, 422, 428, 507],
    },
    async ({ context, path, query }) => {
      const wanted = readIfMatch(context);
      const current = await jobNumbered(services, path.number);
      const { document } = await readDocumentBody(context, services);
      const yours = numberedFor(path.number, document);
      const written = await reviseJob(services, {
        racing: { current, wanted, yours },
        merge: query.merge === 'fields',
        by: context.get('visitor').name,
        log: beside(context, { what: 'job-revised' }),
      });
      return answerWritten(context, { number: path.number, ...written });
    },
  );

interface Revision {
  readonly racing: {
    readonly current: StoredJob;
    readonly wanted: ReturnType<typeof readIfMatch>;
    readonly yours: JobDocument;
  };
  readonly merge: boolean;
  readonly by: string;
  readonly log: DeedBeside;
}

/** Somebody may be quicker again and again. */
const MOST_TRIES = 5;

/** Writes the document where the change began from what stands; else both together, where that is asked for. */
const reviseJob = async (
  services: Services,
  { racing, merge, by, log }: Revision,
): Promise<{ readonly revision: number; readonly merged?: boolean }> => {
  let { current } = racing;
  const { wanted, yours } = racing;
  for (let tries = 0; ; tries++) {
    const direct = wanted.includes(current.revision);
    const both = direct ? undefined : await bothChanges(services, { current, wanted, yours });
    const document = direct ? yours : merge ? both?.document : undefined;
    if (document === undefined || tries >= MOST_TRIES)
      throw lostRace({ current, wanted }, both?.members ?? {});
    const revised = await services.store.jobs.revise({
      number: current.number,
      base: current.revision,
      document,
      by,
      log,
    });
    if (revised.ok) return { revision: revised.revision, ...(direct ? {} : { merged: true }) };
    current = revised.reason === 'stale' ? revised.current : await jobNumbered(services, current.number);
  }
};

/** Jobs: list, take in, read, revise. */
export const addJobs = (app: OpenAPIHono<Environment>, services: Services): void => {
  addList(app, services);
  addCreate(app, services);
  addRead(app, services);
  addReplace(app, services);
};
