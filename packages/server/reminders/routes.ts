import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { jobNumbered } from '../api/jobChange.ts';
import { addRoute } from '../api/route.ts';
import type { Environment, Services } from '../services.ts';
import { answerCalendar } from './answerCalendar.ts';

/** Reminders of a job for the technician's calendar. */
export const addReminders = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/reminders.ics',
      operationId: 'readReminders',
      summary: 'Promise, test days and cleaning as a file for a calendar',
      tag: 'Jobs',
      query: z.strictObject({}),
      answers: {
        200: { description: 'iCalendar.', content: { 'text/calendar': { schema: { type: 'string' } } } },
      },
      problems: [404],
    },
    async ({ context, path: { number } }) => {
      const job = await jobNumbered(services, number);
      const { title } = job.document.job ?? {};
      const name = `${title ?? job.document.filter.name ?? 'filter'} (job ${number})`;
      return answerCalendar(context, services, { job, name });
    },
  );
