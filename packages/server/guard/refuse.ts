import type { Context } from 'hono';
import { answerProblem, type ProblemDetails } from '../problems.ts';

/** Turns a request away: problem details for the API, for a page the sentence alone. */
export const refuse = (context: Context, problem: ProblemDetails): Response =>
  context.req.path.startsWith('/api')
    ? answerProblem(context, problem)
    : context.text(`${problem.title}. ${problem.detail}\n`, problem.status);
