import {
  type Attached,
  type Attachment,
  mostCaption,
  mostPictureBytes,
} from '@fettle/store/contract/attachments.ts';
import { type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { Environment, Services } from '../services.ts';
import { type BodyRules, readBody, readJson } from './body.ts';
import { hasAlready } from './conditions.ts';
import { writeDown } from './deeds.ts';
import { jobNumbered } from './jobChange.ts';
import { json, jsonBody } from './media.ts';
import { oneOf, shortText } from './query.ts';
import { notFound, Refusal } from './refusal.ts';
import { addRoute } from './route.ts';
import { attachedSchema, attachmentsSchema, captionSchema, thereAlreadySchema } from './schemas.ts';
import { newSlots } from './slots.ts';

const nothing = z.strictObject({});

const pictureBody: BodyRules = { types: ['image/*'], mostBytes: mostPictureBytes };

const shown = ({ removedAt: _, ...attachment }: Attachment) => attachment;

const refusedStatus = {
  'not-a-picture': 415,
  'kind-not-taken': 415,
  'too-large': 413,
  'too-many-pixels': 413,
  'no-such-job': 404,
  'too-many': 409,
} as const;

const refusedPicture = ({ code, says, allowed }: Extract<Attached, { ok: false }>): Refusal =>
  new Refusal({
    status: refusedStatus[code],
    code: `picture-${code}`,
    title: 'The picture is not taken',
    detail: `${says.replace(/\.$/, '')}; allowed: ${allowed.replace(/\.$/, '')}.`,
  });

const answerAttached = async (
  context: Context<Environment>,
  services: Services,
  { attachment, thereAlready }: Extract<Attached, { ok: true }>,
) => {
  const { id, job } = attachment;
  const headers = { Location: `/api/jobs/${job}/attachments/${id}` };
  if (thereAlready) return context.json({ ...shown(attachment), thereAlready }, 200, headers);
  await writeDown(context, services, { what: 'picture-attached', job, about: id });
  return context.json(shown(attachment), 201, headers);
};

const attachQuery = z.strictObject({
  name: shortText({ says: 'What the file is called.', most: 200 }),
  caption: shortText({ says: 'What it shows.', most: mostCaption }),
  keepPlace: oneOf(['true', 'false'], { says: 'Whether the place where it was taken stays with it.' }),
});

const addAttach = (app: OpenAPIHono<Environment>, services: Services): void => {
  // Each may take 25 MB here and a hundred or more while it is decoded.
  const slots = newSlots({ atOnce: 4, inLine: 100 });
  addRoute(
    app,
    {
      method: 'post',
      path: '/api/jobs/{number}/attachments',
      operationId: 'attachPicture',
      summary: 'Attach a photograph',
      description:
        'The picture is written anew; where it was taken is kept only where that is asked for. A picture that the job has already is not attached again: the answer is 200 with the photograph as it stands, caption and all.',
      tag: 'Photographs',
      query: attachQuery,
      body: {
        required: true,
        content: Object.fromEntries(
          ['image/jpeg', 'image/png', 'image/webp', 'image/*'].map((type) => [
            type,
            { schema: { type: 'string' as const, format: 'binary' } },
          ]),
        ),
      },
      answers: {
        200: json(thereAlreadySchema, 'The job has the same picture already.'),
        201: json(attachedSchema, 'Attached.'),
      },
      problems: [404, 409, 413, 415, 503, 507],
    },
    async ({ context, path: { number }, query }) => {
      await jobNumbered(services, number);
      const attached = await slots.within(async () =>
        services.store.attachments.add({
          job: number,
          bytes: await readBody(context, pictureBody),
          name: query.name ?? '',
          ...(query.caption === undefined ? {} : { caption: query.caption }),
          keepPlace: query.keepPlace === 'true',
          once: true,
          by: context.get('visitor').name,
        }),
      );
      if (!attached.ok) throw refusedPicture(attached);
      return answerAttached(context, services, attached);
    },
  );
};

const addList = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'get',
      path: '/api/jobs/{number}/attachments',
      operationId: 'listPictures',
      summary: 'Photographs of a job',
      tag: 'Photographs',
      query: nothing,
      answers: { 200: json(attachmentsSchema, 'The photographs.') },
      problems: [404],
    },
    async ({ context, path: { number } }) => {
      await jobNumbered(services, number);
      const attachments = await services.store.attachments.list(number);
      return context.json({ attachments: attachments.map(shown) });
    },
  );

/** A name that may stand in a header and on any disk. */
const fileName = ({ name, id, mediaType }: Attachment): string => {
  const stem = name
    .replace(/\.[A-Za-z0-9]{1,5}$/, '')
    .replaceAll(/[^A-Za-z0-9 _-]+/g, '-')
    .slice(0, 60);
  return `${stem.trim() || id}.${mediaType === 'image/png' ? 'png' : 'jpg'}`;
};

interface Wanted {
  readonly number: number;
  readonly id: string;
  readonly size: 'whole' | 'thumbnail';
}

const answerPicture = async (
  context: Context<Environment>,
  { store }: Services,
  { number, id, size }: Wanted,
): Promise<Response> => {
  const attachment = await store.attachments.find(number, id);
  if (attachment === undefined || attachment.removedAt !== undefined)
    throw notFound(`Job ${number} has no photograph ${id}.`);
  const etag = size === 'whole' ? `"${attachment.hash}"` : `"${attachment.hash}-thumbnail"`;
  const headers = {
    ETag: etag,
    // Asked for again each time, so that after a sign-out no browser shows it from its cache.
    'Cache-Control': 'private, no-cache',
    'Content-Security-Policy': "default-src 'none'; sandbox",
    'X-Content-Type-Options': 'nosniff',
    'Content-Disposition': `inline; filename="${fileName(attachment)}"`,
  };
  if (hasAlready(context, etag)) return context.body(null, 304, headers);
  const picture = await store.attachments.read(attachment, size);
  // A copy of its own: the bytes may be a view of a larger piece of memory.
  const bytes = new Uint8Array(picture.bytes);
  return context.body(bytes, 200, { ...headers, 'Content-Type': picture.mediaType });
};

const pictureAnswers = {
  200: {
    description: 'The picture.',
    content: Object.fromEntries(
      ['image/jpeg', 'image/png'].map((type) => [
        type,
        { schema: { type: 'string' as const, format: 'binary' } },
      ]),
    ),
  },
  304: { description: 'The same as before.' },
};

const addShow = (app: OpenAPIHono<Environment>, services: Services): void => {
  const common = {
    method: 'get',
    tag: 'Photographs',
    query: nothing,
    headers: ['If-None-Match'],
    answers: pictureAnswers,
    problems: [404],
  } as const;
  addRoute(
    app,
    {
      ...common,
      path: '/api/jobs/{number}/attachments/{id}',
      operationId: 'readPicture',
      summary: 'A photograph',
    },
    ({ context, path }) => answerPicture(context, services, { ...path, size: 'whole' }),
  );
  addRoute(
    app,
    {
      ...common,
      path: '/api/jobs/{number}/attachments/{id}/thumbnail',
      operationId: 'readThumbnail',
      summary: 'A photograph in small',
    },
    ({ context, path }) => answerPicture(context, services, { ...path, size: 'thumbnail' }),
  );
};

const addCaption = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'patch',
      path: '/api/jobs/{number}/attachments/{id}',
      operationId: 'captionPicture',
      summary: 'Say what a photograph shows',
      tag: 'Photographs',
      query: nothing,
      body: jsonBody(captionSchema),
      answers: { 200: json(attachedSchema, 'Written.') },
      problems: [404, 413, 415, 422, 507],
    },
    async ({ context, path: { number, id } }) => {
      const { caption } = await readJson(context, captionSchema);
      const { attachments } = services.store;
      const did = await attachments.caption({ job: number, id, caption });
      const attachment = did ? await attachments.find(number, id) : undefined;
      if (attachment === undefined) throw notFound(`Job ${number} has no photograph ${id}.`);
      await writeDown(context, services, { what: 'picture-captioned', job: number, about: id });
      return context.json(shown(attachment));
    },
  );

const addRemove = (app: OpenAPIHono<Environment>, services: Services): void =>
  addRoute(
    app,
    {
      method: 'delete',
      path: '/api/jobs/{number}/attachments/{id}',
      operationId: 'removePicture',
      summary: 'Take a photograph off a job',
      tag: 'Photographs',
      query: nothing,
      answers: { 204: { description: 'Taken off.' } },
      problems: [404, 507],
    },
    async ({ context, path: { number, id } }) => {
      if (!(await services.store.attachments.remove({ job: number, id })))
        throw notFound(`Job ${number} has no photograph ${id}.`);
      await writeDown(context, services, { what: 'picture-removed', job: number, about: id });
      return context.body(null, 204);
    },
  );

/** Photographs of jobs. */
export const addAttachments = (app: OpenAPIHono<Environment>, services: Services): void => {
  addAttach(app, services);
  addList(app, services);
  addShow(app, services);
  addCaption(app, services);
  addRemove(app, services);
};
