import type { Note } from '@fettle/job/notes.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Context } from 'hono';
import type { FieldProblem } from '../problems.ts';
import type { Environment, Services } from '../services.ts';
import { type BodyRules, bodyType, demandJson, readBody } from './body.ts';
import { Refusal } from './refusal.ts';

/** How a job document may come. */
export const documentBody: BodyRules = {
  types: ['application/json', 'application/yaml', 'application/x-yaml', 'text/yaml', 'text/x-yaml'],
  mostBytes: 2_000_000,
};

/** So many problems are listed; the rest is counted. */
const MOST_PROBLEMS = 200;

const plain = ({ code, path, says, allowed, at }: Problem): FieldProblem => ({
  code,
  path,
  says,
  ...(allowed === undefined ? {} : { allowed }),
  ...(at === undefined ? {} : { at }),
});

/** 422 with what is wrong with a document. */
export const documentRefused = (problems: readonly Problem[]): Refusal => {
  const [first] = problems;
  const more = problems.length - 1;
  const rest =
    more > MOST_PROBLEMS
      ? ` There are ${problems.length} problems in all; the first ${MOST_PROBLEMS} are listed.`
      : more > 0
        ? ` There ${more === 1 ? 'is 1 problem' : `are ${more} problems`} more.`
        : '';
  return new Refusal({
    status: 422,
    code: 'document',
    title: 'The document has problems',
    detail: `${first?.says ?? 'The document cannot be read.'}${rest}`,
    problems: problems.slice(0, MOST_PROBLEMS).map(plain),
  });
};

/**
 * The bytes of a document that a request carries. YAML would read what is nearly JSON too, and make of a slip of the
 * pen another document than was meant.
 * @throws Refusal 400 where they came as JSON and are none, 413 or 415
 */
export const readDocumentBytes = async (context: Context<Environment>): Promise<Uint8Array> => {
  const bytes = await readBody(context, documentBody);
  if (bodyType(context, documentBody) === 'application/json')
    demandJson(bytes, 'YAML is sent as application/yaml');
  return bytes;
};

/**
 * The job document that a request carries, read and checked.
 * @throws Refusal 400, 413, 415 or 422
 */
export const readDocumentBody = async (
  context: Context<Environment>,
  services: Services,
): Promise<{ readonly document: JobDocument; readonly notes: readonly Note[] }> => {
  const reading = await services.computation.read(await readDocumentBytes(context));
  if (!reading.ok) throw documentRefused(reading.problems);
  return reading;
};

/**
 * The document with the number of the job that it is put to.
 * @throws Refusal 422 where it says another
 */
export const numberedFor = (number: number, document: JobDocument): JobDocument => {
  const { fettle, job, ...rest } = document;
  if (job?.number === number) return document;
  if (job?.number === undefined) return { fettle, job: { ...job, number }, ...rest };
  const says = `job.number says ${job.number}, but the document is put to job ${number}.`;
  throw new Refusal({
    status: 422,
    code: 'document',
    title: 'The document has problems',
    detail: says,
    problems: [{ code: 'other-number', path: 'job.number', says, allowed: `${number}, or left out` }],
  });
};
