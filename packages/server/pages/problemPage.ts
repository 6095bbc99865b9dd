import type { Context } from 'hono';
import { html } from 'hono/html';
import { answerProblem, type ProblemDetails } from '../problems.ts';
import { type Markup, page } from './page.ts';

interface Way {
  readonly to: string;
  readonly says: string;
}

/** Where a person goes on from here; undefined where the server was asked by a name that is not its own. */
const wayBack = (path: string, { status, code }: ProblemDetails): Way | undefined => {
  if (status === 421 || code === 'host-not-clear') return undefined;
  // Whoever has an owner's link sees nothing but the sheet.
  const [, token] = /^\/owner\/([\w-]+)/.exec(path) ?? [];
  if (token !== undefined) return { to: `/owner/${token}`, says: 'To the sheet' };
  if (status === 401 || path.startsWith('/sign-')) return { to: '/sign-in', says: 'To the sign-in' };
  const isAmongPages = status !== 404 || /^\/plain(?:\/|$)/.test(path);
  return { to: isAmongPages ? '/plain' : '/', says: 'To the bench' };
};

const problemPage = ({ title, detail }: ProblemDetails, way: Way | undefined): Markup => {
  const bench = way?.to === '/plain' || way?.to === '/' ? way.to : undefined;
  const link = way === undefined ? '' : html`<p><a href="${way.to}">${way.says}</a></p>`;
  return page({
    title,
    body: html`<header class="top"><p class="name">${bench === undefined ? 'Fettle' : html`<a href="${bench}">Fettle</a>`}</p></header>
<main class="narrow"><h1>${title}</h1>
<p>${detail}</p>
${link}</main>`,
  });
};

/** Whether a person asks, who looks at pages, and no program. */
export const isForPeople = ({ req }: Context): boolean =>
  !req.path.startsWith('/api') && (req.header('Accept')?.includes('text/html') ?? false);

/** Answers a problem as it was asked for: a page for whoever looks at pages, problem details for all others. */
export const answerAsked = async (context: Context, problem: ProblemDetails): Promise<Response> => {
  if (!isForPeople(context)) return answerProblem(context, problem);
  return context.html(problemPage(problem, wayBack(context.req.path, problem)), problem.status);
};
