import type { Hono, NotFoundHandler } from 'hono';
import { answerAsked, isForPeople } from '../pages/problemPage.ts';
import type { Environment } from '../services.ts';

const methods = ['GET', 'POST', 'PUT', 'PATCH', 'DELETE'] as const;

/** The methods for which a route, not only what stands before every route, answers at a path. */
const methodsAt = (app: Hono<Environment>, path: string): string[] => {
  const found = methods.filter((method) =>
    app.router.match(method, path)[0].some(([[, route]]) => route.method === method),
  );
  return found.flatMap((method) => (method === 'GET' ? ['GET', 'HEAD'] : [method]));
};

/** Answers where no route does: 405 with what is allowed where there is a route by another method, else 404. */
export const answerElsewhere =
  (app: Hono<Environment>): NotFoundHandler<Environment> =>
  (context) => {
    const { method, path } = context.req;
    const allowed = methodsAt(app, path);
    // A route that answers by this method has looked, and there was nothing.
    if (allowed.length > 0 && !allowed.includes(method)) {
      context.header('Allow', allowed.join(', '));
      if (method === 'OPTIONS') return context.body(null, 204);
      return answerAsked(context, {
        status: 405,
        code: 'method-not-allowed',
        title: 'Not with this method',
        detail: `${method.slice(0, 20)} is not possible here; allowed: ${allowed.join(', ')}.`,
      });
    }
    return answerAsked(context, {
      status: 404,
      code: 'not-found',
      title: 'Not found',
      detail: `There is nothing at ${path.slice(0, 200)}; ${isForPeople(context) ? 'every job stands on the bench' : '/api/openapi.json describes what there is'}.`,
    });
  };
