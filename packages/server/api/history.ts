import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { readJson } from './body.ts';
import { readIfMatch, revisionTag } from './conditions.ts';
import { changeJob, jobNumbered } from './jobChange.ts';
import { answerDocument } from './jobs.ts';
import { documentAnswer, json, jsonBody } from './media.ts';
import { formOf } from './negotiation.ts';
import { notFound } from './refusal.ts';
import { addRoute } from './route.ts';
import { goBackSchema, revisionsSchema, writtenSchema } from './schemas.ts';

const nothing = z.strictObject({});

const addRevisions = (app: OpenAPIHono<Environment>, { store }: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/revisions',
      operationId: 'listRevisions',
      summary: 'Who changed what of a job, and when',
      tag: 'History',
      query: nothing,
      answers: { 200: json(revisionsSchema, 'The revisions.') },
      problems: [404],
    },
    async ({ context, path: { number } }) => {
      const revisions = await store.jobs.revisions(number);
      if (revisions === undefined) throw notFound(`There is no job ${number}.`);
      return context.json({ revisions });
    },
  );

const addRevision = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/revisions/{revision}',
      operationId: 'readRevision',
      summary: 'The document of a job as it was',
      tag: 'History',
      query: nothing,
      headers: ['Accept', 'If-None-Match'],
      answers: { 200: documentAnswer, 304: { description: 'The same as before.' } },
      problems: [404, 406],
    },
    async ({ context, path: { number, revision } }) => {
      const form = formOf(context);
      const found = await services.store.jobs.revision(number, revision);
      if (found === undefined) {
        await jobNumbered(services, number);
        throw notFound(`Job ${number} has no revision ${revision}.`);
      }
      return answerDocument(context, services, {
        document: found.document,
        etag: revisionTag(revision, form),
        form,
      });
    },
  );

const addGoBack = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/jobs/{number}/go-back',
      operationId: 'goBack',
      summary: 'Take up the document of an earlier revision again',
      tag: 'History',
      query: nothing,
      headers: ['If-Match'],
      body: jsonBody(goBackSchema),
      answers: { 200: json(writtenSchema, 'Written, as a new revision.') },
      problems: [404, 412, 413, 415, 422, 428, 507],
    },
    async ({ context, path: { number } }) => {
      const wanted = readIfMatch(context);
      const { to } = await readJson(context, goBackSchema);
      return changeJob(context, services, {
        number,
        wanted,
        done: { what: 'job-went-back', about: `to revision ${to}` },
        make: async (change) => {
          const revised = await services.store.jobs.goBack({ ...change, to });
          if (!revised.ok && revised.reason === 'no-such-revision')
            throw notFound(`Job ${number} has no revision ${to}.`);
          return revised;
        },
      });
    },
  );

const putAwayRoute = {
  tag: 'Jobs',
  query: nothing,
  headers: ['If-Match'],
  answers: { 200: json(writtenSchema, 'Done.') },
  problems: [404, 412, 428, 507],
} as const;

const addPutAway = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      ...putAwayRoute,
      method: 'delete',
      path: '/api/jobs/{number}',
      operationId: 'putAwayJob',
      summary: 'Put a job away',
      description:
        'It is kept with all its revisions, is in no list unless asked for, and can be brought back.',
    },
    ({ context, path: { number } }) =>
      changeJob(context, services, {
        number,
        wanted: readIfMatch(context),
        done: { what: 'job-put-away' },
        make: (change) => services.store.jobs.putAway(change),
      }),
  );

const addBringBack = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      ...putAwayRoute,
      method: 'post',
      path: '/api/jobs/{number}/bring-back',
      operationId: 'bringBackJob',
      summary: 'Bring a job back that was put away',
    },
    ({ context, path: { number } }) =>
      changeJob(context, services, {
        number,
        wanted: readIfMatch(context),
        done: { what: 'job-brought-back' },
        make: (change) => services.store.jobs.bringBack(change),
      }),
  );

/** Revisions of jobs, and changes that are no new document. */
export const addHistory = (app: OpenAPIHono<Environment>, services: Services): void => {
  addRevisions(app, services);
  addRevision(app, services);
  addGoBack(app, services);
  addPutAway(app, services);
  addBringBack(app, services);
};
