import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { fieldsRefused, readJson } from '../api/body.ts';
import { json } from '../api/media.ts';
import { addRoute } from '../api/route.ts';
import { addressOf } from '../guard/address.ts';
import type { Environment, Services } from '../services.ts';
import { enterReadings } from './enterReadings.ts';
import type { OpenLink } from './findLink.ts';
import { keepPrivate } from './pageRoutes.ts';
import { readingNotes } from './readingNotes.ts';
import { enteredSchema, newReadingSchema, sheetSchema } from './schemas.ts';
import { sheetOf, shownReading } from './sheet.ts';

const noQuery = z.strictObject({});

const addSheet = (app: OpenAPIHono<Environment>, services: Services, open: OpenLink): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/owner/{token}',
      operationId: 'readOwnerSheet',
      summary: 'The sheet that the owner of a filter sees',
      description: 'The token of the link lets in; nobody need sign in.',
      tag: 'Owners',
      query: noQuery,
      answers: { 200: json(sheetSchema, 'The sheet.') },
      problems: [404],
    },
    async ({ context, path: { token } }) => {
      keepPrivate(context);
      const { job } = await open(context, token);
      return context.json(await sheetOf(services, job));
    },
  );

const addReading = (app: OpenAPIHono<Environment>, services: Services, open: OpenLink): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/owner/{token}/readings',
      operationId: 'enterOwnerReading',
      summary: 'Enter a reading that the owner took at home',
      tag: 'Owners',
      query: noQuery,
      body: { required: true, content: { 'application/json': { schema: newReadingSchema } } },
      answers: { 201: json(enteredSchema, 'Taken down.') },
      problems: [404, 413, 415, 422],
    },
    async ({ context, path: { token } }) => {
      keepPrivate(context);
      const { link, job } = await open(context, token);
      const { kind, value, day, note } = await readJson(context, newReadingSchema);
      const today = services.clock().toISOString().slice(0, 10);
      const written = [{ kind, value, day: day ?? today, note }];
      const entered = await enterReadings(services, { link, written, from: addressOf(context) });
      if (!entered.ok) {
        throw fieldsRefused(
          entered.problems.map(({ code, path, says, allowed }) => ({
            code,
            path,
            says,
            ...(allowed === undefined ? {} : { allowed }),
          })),
        );
      }
      // The reading stands: it must not be entered again because nothing can be said of it at the moment.
      const notes = await readingNotes(services.store, job, entered.readings).catch(() => []);
      return context.json({ reading: entered.readings.map(shownReading)[0], notes }, 201);
    },
  );

/** The owner's sheet as data. */
export function addSheetApi(app: OpenAPIHono<Environment>, services: Services, open: OpenLink): void {
  addSheet(app, services, open);
  addReading(app, services, open);
}
