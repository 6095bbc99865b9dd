import type { ProblemCode } from '../problemCodes.ts';
import type { ProblemDetails } from '../problems.ts';

/** A request that is not carried out because of what it says; answered with its problem details. */
export class Refusal extends Error {
  readonly problem: ProblemDetails;
  readonly headers: Readonly<Record<string, string>>;

  constructor(problem: ProblemDetails, headers: Readonly<Record<string, string>> = {}) {
    super(problem.detail);
    this.name = 'Refusal';
    this.problem = problem;
    this.headers = headers;
  }
}

/** There is nothing of that name here. */
export const notFound = (detail: string): Refusal =>
  new Refusal({ status: 404, code: 'not-found', title: 'Not found', detail });

/** What was asked for cannot be understood. */
export const badRequest = (code: ProblemCode, detail: string): Refusal =>
  new Refusal({ status: 400, code, title: 'The request cannot be understood', detail });
