import { OpenAPIHono } from '@hono/zod-openapi';
import { addAbout } from './api/about.ts';
import { addAssessments } from './api/assessments.ts';
import { addAttachments } from './api/attachments.ts';
import { addBooks } from './api/books.ts';
import { addDescription } from './api/description.ts';
import { answerElsewhere } from './api/elsewhere.ts';
import { answerError } from './api/errors.ts';
import { addHistory } from './api/history.ts';
import { addJobs } from './api/jobs.ts';
import { addReadings } from './api/readings.ts';
import { addWork } from './api/work.ts';
import { guardApp } from './guard/guard.ts';
import { addPages } from './pages/pages.ts';
import { addPeople } from './people/routes.ts';
import type { Environment, Services } from './services.ts';

/** The whole server without its socket: what keeps people out, API, pages. */
export const buildApp = (services: Services): OpenAPIHono<Environment> => {
  const app = new OpenAPIHono<Environment>();
  app.onError(answerError);
  app.notFound(answerElsewhere(app));
  guardApp(app, services);
  addJobs(app, services);
  addHistory(app, services);
  addAssessments(app, services);
  addWork(app, services);
  addAttachments(app, services);
  addReadings(app, services);
  addBooks(app, services);
  addAbout(app, services);
  addPeople(app, services);
  addDescription(app, services);
  addPages(app, services);
  return app;
};
