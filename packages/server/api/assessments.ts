import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import { packedStates } from '@fettle/job/packedStates.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import { hasAlready } from './conditions.ts';
import { jobNumbered } from './jobChange.ts';
import { component, json } from './media.ts';
import { oneOf, plainNumber, shortText, wholeNumber } from './query.ts';
import { notFound } from './refusal.ts';
import { addRoute } from './route.ts';

/** A revision's document with what names it. */
export interface AtRevision {
  readonly document: JobDocument;
  readonly revision: number;
}

/**
 * A job's document at a revision, or as it stands.
 * @throws Refusal 404
 */
export const documentAt = async (
  services: Services,
  { number, revision }: { readonly number: number; readonly revision?: number | undefined },
): Promise<AtRevision> => {
  if (revision === undefined) return jobNumbered(services, number);
  const found = await services.store.jobs.revision(number, revision);
  if (found !== undefined) return found;
  await jobNumbered(services, number);
  throw notFound(`Job ${number} has no revision ${revision}.`);
};

const revision = wholeNumber({
  says: 'A revision; the newest where left out.',
  least: 1,
  most: 999_999_999,
});

const day = plainNumber({
  says: 'Day on which packings are compared, counted since every bed was cleaned.',
  least: 1,
  most: 365,
});

const addAssessment = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/assessment',
      operationId: 'assessJob',
      summary: 'What the filter does for its tank, and what is wrong with it',
      description: 'Exactly what the command assess prints with --json.',
      tag: 'Computing',
      query: z.strictObject({ day, revision }),
      headers: ['If-None-Match'],
      answers: {
        200: json(component('assessment'), 'The assessment.'),
        304: { description: 'The same as before.' },
      },
      problems: [404, 422],
    },
    async ({ context, path: { number }, query }) => {
      const at = await documentAt(services, { number, revision: query.revision });
      const etag = `"a-${at.revision}-${query.day ?? ''}-${MODEL_EDITION}"`;
      const headers = { ETag: etag, 'Cache-Control': 'no-cache' };
      if (hasAlready(context, etag)) return context.body(null, 304, headers);
      const text = await services.computation.assessmentText({
        document: at.document,
        day: query.day,
        key: { job: number, revision: at.revision },
      });
      return context.body(text, 200, { ...headers, 'Content-Type': 'application/json' });
    },
  );

const forecastQuery = z.strictObject({
  revision,
  days: wholeNumber({ says: 'How far ahead; 180 where left out.', least: 1, most: 730 }),
  clean: shortText({
    says: 'Pattern of cleaning: never, usual, flow 25 %, or what/days as all/90 or mechanical/30, all/90; never where left out.',
    most: 300,
  }),
  state: oneOf(packedStates, { says: 'Which packing; as found where left out.' }),
});

/** Names what was asked for in an entity tag, where a pattern's own letters cannot stand. */
const tagged = (clean: string | undefined): string => Buffer.from(clean ?? '').toString('base64url');

const addForecast = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/forecast',
      operationId: 'forecastJob',
      summary: 'How flow and dirt go over the coming days, and what each pattern of cleaning gives',
      description: 'Exactly what the command forecast prints with --json.',
      tag: 'Computing',
      query: forecastQuery,
      headers: ['If-None-Match'],
      answers: {
        200: json(component('forecast'), 'The forecast.'),
        304: { description: 'The same as before.' },
      },
      problems: [404, 422],
    },
    async ({ context, path: { number }, query }) => {
      const at = await documentAt(services, { number, revision: query.revision });
      const { days, clean, state } = query;
      const etag = `"f-${at.revision}-${state ?? ''}-${days ?? ''}-${tagged(clean)}-${MODEL_EDITION}"`;
      const headers = { ETag: etag, 'Cache-Control': 'no-cache' };
      if (hasAlready(context, etag)) return context.body(null, 304, headers);
      const key = { job: number, revision: at.revision };
      const text = await services.computation.forecastText({
        document: at.document,
        days,
        clean,
        state,
        key,
      });
      return context.body(text, 200, { ...headers, 'Content-Type': 'application/json' });
    },
  );

/** A drawing never runs anything, wherever it is opened. */
const drawingHeaders = {
  'Content-Type': 'image/svg+xml; charset=utf-8',
  'Content-Security-Policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
  'X-Content-Type-Options': 'nosniff',
  'Cache-Control': 'no-cache',
};

const addDrawing = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/drawing',
      operationId: 'drawJob',
      summary: 'Section drawing with the way of the water',
      tag: 'Computing',
      query: z.strictObject({
        revision,
        theme: oneOf(['light', 'dark', 'print'], { says: 'The inks; light where left out.' }),
        state: oneOf(packedStates, { says: 'Which packing; as found where left out.' }),
        units: oneOf(['metric', 'us'], { says: 'Units of the inscriptions; metric where left out.' }),
      }),
      headers: ['If-None-Match'],
      answers: {
        200: { description: 'The drawing.', content: { 'image/svg+xml': { schema: { type: 'string' } } } },
        304: { description: 'The same as before.' },
      },
      problems: [404, 422],
    },
    async ({ context, path: { number }, query }) => {
      const at = await documentAt(services, { number, revision: query.revision });
      const { theme = 'light', units = 'metric', state = 'as-found' } = query;
      const etag = `"d-${at.revision}-${state}-${theme}-${units}-${MODEL_EDITION}"`;
      if (hasAlready(context, etag)) return context.body(null, 304, { ...drawingHeaders, ETag: etag });
      const key = { job: number, revision: at.revision };
      const svg = await services.computation.draw({ document: at.document, state, theme, units, key });
      return context.body(svg, 200, { ...drawingHeaders, ETag: etag });
    },
  );

/** What is computed at once. */
export const addAssessments = (app: OpenAPIHono<Environment>, services: Services): void => {
  addAssessment(app, services);
  addForecast(app, services);
  addDrawing(app, services);
};
