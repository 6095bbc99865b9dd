import type { OwnerLink } from '@fettle/store/contract/people.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { fieldsRefused, readJson } from '../api/body.ts';
import { writeDown } from '../api/deeds.ts';
import { jobNumbered } from '../api/jobChange.ts';
import { json } from '../api/media.ts';
import { notFound } from '../api/refusal.ts';
import { addRoute } from '../api/route.ts';
import { hashOfToken, newToken } from '../people/token.ts';
import type { Environment, Services } from '../services.ts';
import { readLinkEnd } from './linkEnd.ts';
import { type linkSchema, linksSchema, madeLinkSchema, newLinkSchema } from './schemas.ts';

const noQuery = z.strictObject({});

/** The end of a link, or that it has none. */
const endOf = (text: string | undefined, now: Date): string | undefined => {
  if (text === undefined) return undefined;
  const end = readLinkEnd(text, { now, field: 'endsAt' });
  if (end.ok) return end.endsAt;
  throw fieldsRefused([{ code: end.code, path: 'endsAt', says: end.says }]);
};

const isOwnName = (host: string): boolean => /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d+)?$/.test(host);

/** Where an owner reaches this server: as it was just reached, or by the first name that others can use. */
const reachedAt = (context: Context<Environment>, { config }: Services): string => {
  const env: Environment['Bindings'] | undefined = context.env;
  const asked = `${env?.overTls === true ? 'https' : 'http'}://${new URL(context.req.url).host}`;
  const others = [...config.origins].filter((origin) => !isOwnName(new URL(origin).host));
  return isOwnName(new URL(asked).host) ? (others[0] ?? asked) : asked;
};

const shown = (link: OwnerLink): z.infer<typeof linkSchema> => ({ ...link });

const addMake = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/jobs/{number}/owner-links',
      operationId: 'makeOwnerLink',
      summary: 'Make a link by which the owner sees the sheet of this job',
      description: 'The address is told this once; it cannot be told again.',
      tag: 'Owners',
      query: noQuery,
      body: { required: false, content: { 'application/json': { schema: newLinkSchema } } },
      answers: { 201: json(madeLinkSchema, 'Made.') },
      problems: [404, 413, 415, 422],
    },
    async ({ context, path: { number: job } }) => {
      await jobNumbered(services, job);
      const wanted = await readJson(context, newLinkSchema, { mayBeEmpty: true });
      const endsAt = endOf(wanted.endsAt, services.clock());
      const token = newToken();
      const by = context.get('visitor').name;
      const tokenHash = hashOfToken(token);
      const ends = endsAt === undefined ? {} : { endsAt };
      const link = await services.store.ownerLinks.add({ job, tokenHash, by, ...ends });
      await writeDown(context, services, { what: 'link-made', job, about: link.id });
      const url = `${reachedAt(context, services)}/owner/${token}`;
      return context.json({ id: link.id, url, ...ends }, 201);
    },
  );

const addList = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/owner-links',
      operationId: 'listOwnerLinks',
      summary: 'Links for the owner of this job, without what is secret in them',
      tag: 'Owners',
      query: noQuery,
      answers: { 200: json(linksSchema, 'The links, withdrawn ones too.') },
      problems: [404],
    },
    async ({ context, path: { number } }) => {
      await jobNumbered(services, number);
      return context.json({ links: (await services.store.ownerLinks.list(number)).map(shown) });
    },
  );

const addWithdraw = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'delete',
      path: '/api/jobs/{number}/owner-links/{id}',
      operationId: 'withdrawOwnerLink',
      summary: 'Withdraw a link; it leads nowhere from now on',
      tag: 'Owners',
      query: noQuery,
      answers: { 204: { description: 'Withdrawn.' } },
      problems: [404],
    },
    async ({ context, path: { number: job, id } }) => {
      const by = context.get('visitor').name;
      const done = await services.store.ownerLinks.withdraw({ job, id, by });
      if (!done) throw notFound(`Job ${job} has no link ${id} that could be withdrawn.`);
      await writeDown(context, services, { what: 'link-withdrawn', job, about: id });
      return context.body(null, 204);
    },
  );

/** Making, listing and withdrawing links for owners. */
export function addLinks(app: OpenAPIHono<Environment>, services: Services): void {
  addMake(app, services);
  addList(app, services);
  addWithdraw(app, services);
}
