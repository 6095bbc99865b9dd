import { StoreFailure } from '@fettle/store/contract/failure.ts';
import type { Context, ErrorHandler } from 'hono';
import { HTTPException } from 'hono/http-exception';
import { UnreadableDocument } from '../computation/computation.ts';
import { ComputationBusy } from '../computation/quickThreads.ts';
import { answerAsked } from '../pages/problemPage.ts';
import type { ProblemDetails } from '../problems.ts';
import type { Environment } from '../services.ts';
import { documentRefused } from './documents.ts';
import { Refusal } from './refusal.ts';

const fault = (requestId: string | undefined): ProblemDetails => ({
  status: 500,
  code: 'fault',
  title: 'A fault of the server',
  detail: `This is a fault of the program, not of the request. It stands on the error output of the server${requestId === undefined ? '' : ` as ${requestId}`}.`,
  more: requestId === undefined ? {} : { request: requestId },
});

const failedStore = (error: StoreFailure): Refusal =>
  new Refusal(
    {
      status: error.code === 'disk-full' ? 507 : 503,
      code: `records-${error.code}`,
      title: 'The records cannot be used at the moment',
      detail: [error.message, error.advice].filter(Boolean).join(' '),
    },
    error.code === 'busy' ? { 'Retry-After': '1' } : {},
  );

const busy = (error: ComputationBusy): Refusal =>
  new Refusal(
    {
      status: 503,
      code: error.code,
      title: error.code === 'busy' ? 'Too much at once' : 'It took too long',
      detail: error.message,
    },
    { 'Retry-After': '2' },
  );

/** Errors that have an answer of their own; undefined for faults. */
const asRefusal = (error: unknown): Refusal | undefined => {
  if (error instanceof Refusal) return error;
  if (error instanceof StoreFailure) return failedStore(error);
  if (error instanceof ComputationBusy) return busy(error);
  if (error instanceof UnreadableDocument) return documentRefused(error.problems);
  // What the framework itself refuses is said without its own words.
  if (error instanceof HTTPException && error.status === 400)
    return new Refusal({
      status: 400,
      code: 'malformed',
      title: 'The request cannot be understood',
      detail: 'The request is malformed.',
    });
  return undefined;
};

/** The client broke off while it was still sending: nobody is there to be answered. */
const brokeOff = (context: Context, error: unknown): boolean =>
  context.req.raw.signal.aborted ||
  (error instanceof Error && 'code' in error && error.code === 'ECONNRESET');

/** A path for the error output: on one line, and without the secret of an owner's link. */
const loggedPath = (path: string): string =>
  JSON.stringify(path.slice(0, 200).replace(/(\/owner\/)[^/]+/, '$1…'));

/** Answers for whatever a route throws, with problem details; faults go to the error output with the request's name. */
export const answerError: ErrorHandler<Environment> = (error, context) => {
  const refusal = asRefusal(error);
  if (refusal !== undefined) {
    for (const [name, value] of Object.entries(refusal.headers)) context.header(name, value);
    return answerAsked(context, refusal.problem);
  }
  const requestId: string | undefined = context.get('requestId');
  if (!brokeOff(context, error)) {
    const { method, path } = context.req;
    process.stderr.write(
      `Fault ${requestId ?? ''} at ${method} ${loggedPath(path)}: ${error.stack ?? error.message}\n`,
    );
  }
  return answerAsked(context, fault(requestId));
};
