import type { Work } from '@fettle/store/contract/work.ts';
import { resultText } from '@fettle/workflows/resultText.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Environment, Services } from '../services.ts';
import type { WorkKind } from '../work/kinds/kind.ts';
import { workKinds } from '../work/kinds/kinds.ts';
import type { WorkLine } from '../work/sameWork.ts';
import { mostWaiting } from '../work/works.ts';
import { documentAt } from './assessments.ts';
import { readJson } from './body.ts';
import { writeDown } from './deeds.ts';
import { component, json, jsonBody } from './media.ts';
import { wholeNumber } from './query.ts';
import { notFound, Refusal } from './refusal.ts';
import { addRoute } from './route.ts';
import { workListSchema, workSchema } from './schemas.ts';
import { streamWork } from './workEvents.ts';

const nothing = z.strictObject({});

const shown = ({ works }: Services, work: WorkLine) => {
  const { id, kind, job, revision, request, state, by, askedAt, startedAt, endedAt, failure } = work;
  const progress = works.progress(id);
  return {
    id,
    kind,
    job,
    revision,
    request,
    state,
    by,
    askedAt,
    ...(startedAt === undefined ? {} : { startedAt }),
    ...(endedAt === undefined ? {} : { endedAt }),
    ...(failure === undefined ? {} : { failure }),
    ...(progress === undefined || state !== 'running' ? {} : { progress }),
  };
};

const workNamed = async ({ store }: Services, id: string): Promise<Work> => {
  const work = await store.work.find(id);
  if (work === undefined) throw notFound(`There is no work ${id}.`);
  return work;
};

const tooMany = (): Refusal =>
  new Refusal(
    {
      status: 429,
      code: 'too-much-waits',
      title: 'Too much waits already',
      detail: `${mostWaiting} pieces of work wait already; ask again when some are done, or cancel some.`,
    },
    { 'Retry-After': '60' },
  );

/** Asks for work of one kind. */
const addAsk = (app: OpenAPIHono<Environment>, services: Services, kind: WorkKind): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: `/api/jobs/{number}/${kind.path}` as '/api/jobs/{number}/plans',
      operationId: `ask${kind.path.replace(/^./, (letter) => letter.toUpperCase())}`,
      summary: kind.says,
      description:
        'It is done in the background, on the document as it stands now. The same request about the same revision gives the work that there is already: 200 in place of 202.',
      tag: 'Work',
      query: nothing,
      body: jsonBody(kind.requestSchema, false),
      answers: { 200: json(workSchema, 'Asked for before.'), 202: json(workSchema, 'In line.') },
      problems: [404, 413, 415, 422, 507],
    },
    async ({ context, path: { number } }) => {
      const request = await readJson(context, kind.requestSchema, { mayBeEmpty: true });
      const { revision } = await documentAt(services, { number });
      const by = context.get('visitor').name;
      const asked = await services.works.ask({ kind: kind.kind, job: number, revision, request, by });
      if (!asked.ok) throw tooMany();
      if (asked.isNew)
        await writeDown(context, services, {
          what: 'work-asked',
          job: number,
          about: `${kind.kind} ${asked.work.id}`,
        });
      const headers = { Location: `/api/work/${asked.work.id}` };
      return context.json(shown(services, asked.work), asked.isNew ? 202 : 200, headers);
    },
  );

const addLook = (app: OpenAPIHono<Environment>, services: Services): void => {
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/work',
      operationId: 'listWork',
      summary: 'Long work, newest first',
      tag: 'Work',
      query: z.strictObject({ job: wholeNumber({ says: 'Of this job only.', least: 1, most: 999_999_999 }) }),
      answers: { 200: json(workListSchema, 'The work.') },
    },
    async ({ context, query: { job } }) => {
      const work = await services.store.work.list(job === undefined ? {} : { job });
      return context.json({ work: work.map((each) => shown(services, each)) });
    },
  );
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/work/{id}',
      operationId: 'readWork',
      summary: 'Where a piece of work stands',
      tag: 'Work',
      query: nothing,
      answers: { 200: json(workSchema, 'The work.') },
      problems: [404],
    },
    async ({ context, path: { id } }) => context.json(shown(services, await workNamed(services, id))),
  );
};

const notDone = ({ id, state, failure }: Work): Refusal =>
  new Refusal({
    status: 409,
    code: 'no-result',
    title: 'There is no result',
    detail:
      state === 'failed'
        ? `The work ${id} failed: ${failure ?? 'no reason is known'}`
        : `The work ${id} is ${state}; a result is there when it is done.`,
    more: { state },
  });

const addResult = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/work/{id}/result',
      operationId: 'readResult',
      summary: 'What came out',
      description: 'Exactly what the command prints with --json.',
      tag: 'Work',
      query: nothing,
      answers: {
        200: {
          description: 'The result.',
          content: {
            'application/json': { schema: { anyOf: workKinds.map(({ result }) => component(result)) } },
          },
        },
      },
      problems: [404, 409],
    },
    async ({ context, path: { id } }) => {
      const work = await workNamed(services, id);
      if (work.state !== 'done') throw notDone(work);
      return context.body(resultText(work.result), 200, { 'Content-Type': 'application/json' });
    },
  );

const addEvents = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/work/{id}/events',
      operationId: 'followWork',
      summary: 'Progress and end of a piece of work, as server-sent events',
      description:
        'Events progress with { assessed, planned } while it runs, and one event end with { state }; then the stream ends.',
      tag: 'Work',
      query: nothing,
      headers: ['Last-Event-ID'],
      answers: {
        200: { description: 'Events.', content: { 'text/event-stream': { schema: { type: 'string' } } } },
      },
      problems: [404],
    },
    async ({ context, path: { id } }) => {
      await workNamed(services, id);
      return streamWork(context, services, id);
    },
  );

const addCancel = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'delete',
      path: '/api/work/{id}',
      operationId: 'cancelWork',
      summary: 'Call a piece of work off',
      tag: 'Work',
      query: nothing,
      answers: { 200: json(workSchema, 'Called off.') },
      problems: [404, 409, 507],
    },
    async ({ context, path: { id } }) => {
      const work = await workNamed(services, id);
      if (!(await services.works.cancel(id)))
        throw new Refusal({
          status: 409,
          code: 'ended-already',
          title: 'It has ended already',
          detail: `The work ${id} has ended already.`,
        });
      await writeDown(context, services, {
        what: 'work-cancelled',
        job: work.job,
        about: `${work.kind} ${id}`,
      });
      return context.json(shown(services, await workNamed(services, id)));
    },
  );

/** Long work of every kind. */
export const addWork = (app: OpenAPIHono<Environment>, services: Services): void => {
  for (const kind of workKinds) addAsk(app, services, kind);
  addLook(app, services);
  addResult(app, services);
  addEvents(app, services);
  addCancel(app, services);
};
