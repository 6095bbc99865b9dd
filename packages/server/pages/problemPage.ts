import type { Context } from 'hono';
import { html } from 'hono/html';
import { answerProblem, type ProblemDetails } from '../problems.ts';
import { page } from './page.ts';

/** Answers a problem as it was asked for: problem details for the API, a page for people. */
export const answerAsked = async (context: Context, problem: ProblemDetails): Promise<Response> => {
  const { path } = context.req;
  const forPeople = !path.startsWith('/api') && context.req.header('Accept')?.includes('text/html');
  if (!forPeople) return answerProblem(context, problem);
  const { title, detail, status } = problem;
  const body = html`
<header class="top"><p class="name"><a href="/bench">Fettle</a></p></header>
<main><h1>${title}</h1><p>${detail}</p><p><a href="/bench">To the bench</a></p></main>`;
  return context.html(page({ title, body }), status);
};
