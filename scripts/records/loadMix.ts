import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { LoadContext, LoadOptions, LoadRequest } from 'autocannon';
import type { Chance } from './chance.ts';
import { inventedJob, lookedAtAgain } from './inventedJobs.ts';

/** Where each job stands, as the load knows it. */
export type Standing = Map<number, number>;

/** Requests of one kind. */
export interface LoadKind {
  readonly name: string;
  readonly isWrite: boolean;
  /** Share of all requests, 0 to 1. */
  readonly share: number;
  readonly requests: LoadOptions['requests'];
}

const orders = ['promised', 'changed', 'number'];
const searches = [
  'drum kitchen',
  'quillm',
  'loud at night',
  'waiting room clog',
  'urgent',
  'orlinde tarnholt',
];
const stages = ['planned', 'built', 'handed-back'];

/** Jobs that lie open in a few windows, of which the assessment is asked for again and again. */
const inHand = 5;

/** What is read: shares of a workshop that looks much, searches some, and now and then opens a job anew. */
function readKinds(numbers: readonly number[], chance: Chance): readonly LoadKind[] {
  const open = numbers.slice(-inHand);
  const fresh = numbers.slice(0, -inHand);
  let next = 0;
  const kind = (name: string, share: number, path: () => string): LoadKind => {
    const setupRequest = (request: LoadRequest): LoadRequest => ({ ...request, method: 'GET', path: path() });
    return { name, share, isWrite: false, requests: [{ setupRequest }] };
  };
  const page = (): string => `count=50&skip=${50 * chance.below(40)}&order=${chance.among(orders)}`;
  return [
    kind('a job', 0.26, () => `/api/jobs/${chance.among(numbers)}`),
    kind('a page of the list', 0.08, () => `/api/jobs?${page()}`),
    kind('a page of one stage', 0.06, () => `/api/jobs?${page()}&stage=${chance.among(stages)}`),
    kind('a search', 0.14, () => `/api/jobs?words=${encodeURIComponent(chance.among(searches))}`),
    kind('the history of a job', 0.08, () => `/api/jobs/${chance.among(numbers)}/revisions`),
    kind('an assessment asked for before', 0.07, () => `/api/jobs/${chance.among(open)}/assessment`),
    kind('an assessment made anew', 0.01, () => `/api/jobs/${fresh[next++ % fresh.length]}/assessment`),
  ];
}

/** Every kind of request, reads and writes, with its share of all. */
export function loadKinds(standing: Standing, chance: Chance): readonly LoadKind[] {
  const documents = Array.from({ length: 200 }, () => inventedJob(chance));
  const next = (): JobDocument => lookedAtAgain(chance.among(documents), chance);
  return [
    ...readKinds([...standing.keys()], chance),
    { name: 'a new job', share: 0.1, isWrite: true, requests: [takeIn(next)] },
    {
      name: 'a change',
      share: 0.2,
      isWrite: true,
      requests: [change(standing, next, chance)],
    },
  ];
}

const type = { 'Content-Type': 'application/json' };

const takeIn = (next: () => JobDocument): LoadOptions['requests'][number] => ({
  setupRequest: (request) => ({
    ...request,
    method: 'POST',
    path: '/api/jobs',
    headers: type,
    body: JSON.stringify(next()),
  }),
});

/** A change of a job that nobody else changes at the moment, at its newest revision. */
function change(
  standing: Standing,
  next: () => JobDocument,
  chance: Chance,
): LoadOptions['requests'][number] {
  const numbers = [...standing.keys()].slice(0, -inHand);
  const busy = new Set<number>();
  const free = (): number => {
    const number = chance.among(numbers);
    return busy.has(number) ? free() : number;
  };
  return {
    setupRequest: (request: LoadRequest, context: LoadContext) => {
      const number = free();
      const document = next();
      busy.add(number);
      context.job = number;
      return {
        ...request,
        method: 'PUT',
        path: `/api/jobs/${number}`,
        headers: { ...type, 'If-Match': `"${standing.get(number)}"` },
        body: JSON.stringify({ ...document, job: { ...document.job, number } }),
      };
    },
    onResponse: (status, _body, { job }) => {
      if (job === undefined) return;
      busy.delete(job);
      if (status === 200) standing.set(job, (standing.get(job) ?? 0) + 1);
    },
  };
}
