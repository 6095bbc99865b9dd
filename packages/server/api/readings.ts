import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { readingNotes } from '../owner/readingNotes.ts';
import { readingRemoved } from '../owner/readingRemoved.ts';
import { readReading } from '../owner/readReading.ts';
import type { Environment, Services } from '../services.ts';
import { fieldsRefused, readJson } from './body.ts';
import { beside, writeDown } from './deeds.ts';
import { jobNumbered } from './jobChange.ts';
import { json, jsonBody } from './media.ts';
import { notFound } from './refusal.ts';
import { addRoute } from './route.ts';
import { addedReadingSchema, newReadingSchema, readingsSchema } from './schemas.ts';

const nothing = z.strictObject({});

const addList = (app: OpenAPIHono<Environment>, services: Services): void =>
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

const addEnter = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/jobs/{number}/readings',
      operationId: 'addReading',
      summary: 'Enter a follow-up reading',
      description: 'The answer says in `notes` what there is to know about it.',
      tag: 'Readings',
      query: nothing,
      body: jsonBody(newReadingSchema),
      answers: { 201: json(addedReadingSchema, 'Entered.') },
      problems: [404, 413, 415, 422, 507],
    },
    async ({ context, path: { number } }) => {
      const entered = await readJson(context, newReadingSchema);
      const read = readReading(entered, services.clock());
      if (!read.ok) throw fieldsRefused(read.problems);
      const job = await jobNumbered(services, number);
      const by = context.get('visitor').name;
      const notes = await readingNotes(services.store, job, [read.reading]);
      const reading = await services.store.readings.add({ ...read.reading, job: number, by });
      await writeDown(context, services, { what: 'reading-entered', job: number, about: entered.kind });
      return context.json({ ...reading, notes }, 201);
    },
  );

const addRemove = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'delete',
      path: '/api/jobs/{number}/readings/{id}',
      operationId: 'removeReading',
      summary: 'Take a follow-up reading back',
      description: 'What it said stays in the log.',
      tag: 'Readings',
      query: nothing,
      answers: { 204: { description: 'Taken back.' } },
      problems: [404, 507],
    },
    async ({ context, path: { number, id } }) => {
      const { readings } = services.store;
      const reading = (await readings.list(number)).find((each) => each.id === id);
      const by = context.get('visitor').name;
      const removed =
        reading !== undefined &&
        (await readings.remove({ job: number, id, by, log: beside(context, readingRemoved(reading)) }));
      if (!removed) throw notFound(`Job ${number} has no reading ${id}.`);
      return context.body(null, 204);
    },
  );

/** Readings that were taken after the filter went back. */
export const addReadings = (app: OpenAPIHono<Environment>, services: Services): void => {
  addList(app, services);
  addEnter(app, services);
  addRemove(app, services);
};
