import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { readReading } from '../owner/readReading.ts';
import type { Environment, Services } from '../services.ts';
import { fieldsRefused, readJson } from './body.ts';
import { writeDown } from './deeds.ts';
import { jobNumbered } from './jobChange.ts';
import { json, jsonBody } from './media.ts';
import { addRoute } from './route.ts';
import { newReadingSchema, readingSchema, readingsSchema } from './schemas.ts';

const nothing = z.strictObject({});

/** Readings that were taken after the filter went back. */
export const addReadings = (app: OpenAPIHono<Environment>, services: Services): void => {
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/readings',
      operationId: 'listReadings',
      summary: 'Follow-up readings of a job',
      tag: 'Readings',
      query: nothing,
      answers: { 200: json(readingsSchema, 'The readings.') },
      problems: [404],
    },
    async ({ context, path: { number } }) => {
      await jobNumbered(services, number);
      return context.json({ readings: await services.store.readings.list(number) });
    },
  );
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/jobs/{number}/readings',
      operationId: 'addReading',
      summary: 'Enter a follow-up reading',
      tag: 'Readings',
      query: nothing,
      body: jsonBody(newReadingSchema),
      answers: { 201: json(readingSchema, 'Entered.') },
      problems: [404, 413, 415, 422, 507],
    },
    async ({ context, path: { number } }) => {
      const entered = await readJson(context, newReadingSchema);
      const read = readReading(entered, services.clock());
      if (!read.ok) throw fieldsRefused(read.problems);
      await jobNumbered(services, number);
      const by = context.get('visitor').name;
      const reading = await services.store.readings.add({ ...read.reading, job: number, by });
      await writeDown(context, services, { what: 'reading-entered', job: number, about: entered.kind });
      return context.json(reading, 201);
    },
  );
};
