import { lastTrueState } from '@fettle/job/packedStates.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { readingKinds } from '@fettle/store/contract/readings.ts';
import { storedSettings } from '@fettle/workflows/storedSettings.ts';
import { fileNamed, mediaTypes } from '@fettle/writeup/fileNames.ts';
import type { Context, Hono } from 'hono';
import { Refusal } from '../api/refusal.ts';
import { bodyOf, madeFileHeaders, toWriteUp } from '../api/writeUps.ts';
import { addressOf } from '../guard/address.ts';
import { readForm } from '../pages/form.ts';
import type { FieldProblem } from '../problems.ts';
import { answerCalendar } from '../reminders/answerCalendar.ts';
import type { Environment, Services } from '../services.ts';
import { enterReadings } from './enterReadings.ts';
import type { Opened, OpenLink } from './findLink.ts';
import type { FormState } from './readingForm.ts';
import { readingNotes } from './readingNotes.ts';
import { sheetOf } from './sheet.ts';
import { nowherePage, sheetPage } from './sheetPage.ts';

type Call = (context: Context<Environment, '/owner/:token'>, opened: Opened) => Promise<Response>;

/** Nothing of an owner's sheet is kept on the way, found by a search, or told to where a link leads. */
export const keepPrivate = (context: Context): void => {
  context.header('Cache-Control', 'no-store');
  context.header('Referrer-Policy', 'no-referrer');
  context.header('X-Robots-Tag', 'noindex, nofollow');
};

/** Runs with the job that the link leads to; a link that does not work is answered with a page. */
const opened =
  (open: OpenLink, call: Call) =>
  async (context: Context<Environment, '/owner/:token'>): Promise<Response> => {
    keepPrivate(context);
    try {
      return await call(context, await open(context, context.req.param('token')));
    } catch (error) {
      if (error instanceof Refusal && error.problem.status === 404) return context.html(nowherePage(), 404);
      throw error;
    }
  };

const today = ({ clock }: Services): string => clock().toISOString().slice(0, 10);

/** What there is to know about the readings that the owner entered last. */
const notesOfLast = async ({ store }: Services, job: Opened['job']): Promise<readonly string[]> => {
  const own = (await store.readings.list(job.number)).filter(({ enteredBy }) => enteredBy === 'owner');
  const last = own
    .map(({ enteredAt }) => enteredAt)
    .toSorted()
    .at(-1);
  const notes = await readingNotes(
    store,
    job,
    own.filter(({ enteredAt }) => enteredAt === last),
  );
  return notes.map(({ says }) => says);
};

const showSheet = async (
  context: Context<Environment, '/owner/:token'>,
  services: Services,
  { job, form }: { readonly job: Opened['job']; readonly form: FormState },
): Promise<Response> => {
  const sheet = await sheetOf(services, job);
  const at = `/owner/${context.req.param('token')}`;
  const isTaken = context.req.query('taken') === 'yes' && form.problems.length === 0;
  const taken = isTaken ? await notesOfLast(services, job) : undefined;
  return context.html(sheetPage({ sheet, at, form, taken }), form.problems.length > 0 ? 422 : 200);
};

const takeDown =
  (services: Services): Call =>
  async (context, { link, job }) => {
    const typed = await readForm(context);
    const { day = '', note = '' } = typed;
    const written = readingKinds.flatMap((kind) => {
      const value = typed[kind]?.trim() ?? '';
      return value === '' ? [] : [{ kind, value, day, note }];
    });
    const entered = await enterReadings(services, { link, written, from: addressOf(context) });
    const nothing: FieldProblem = {
      code: 'nothing-entered',
      path: '',
      says: 'Fill in at least one of the three readings.',
    };
    const problems = written.length === 0 ? [nothing] : entered.ok ? [] : entered.problems;
    if (problems.length > 0) return showSheet(context, services, { job, form: { typed, problems } });
    return context.redirect(`/owner/${context.req.param('token')}?taken=yes`, 303);
  };

/** A drawing never runs anything, wherever it is opened. */
const drawingHeaders = {
  'Content-Type': 'image/svg+xml; charset=utf-8',
  'Content-Security-Policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
};

const draw =
  (services: Services): Call =>
  async (context, { job: { document, number, revision } }) => {
    const theme = context.req.query('theme') === 'dark' ? 'dark' : 'light';
    const key = { job: number, revision };
    const { units = 'metric' } = await storedSettings(services.store);
    const svg = await services.computation.draw({
      document,
      state: lastTrueState(document),
      theme,
      units,
      key,
    });
    return context.body(svg, 200, drawingHeaders);
  };

const remind =
  (services: Services): Call =>
  (context, { job }) =>
    answerCalendar(context, services, { job, name: job.document.filter.name ?? 'your filter' });

/** Documents of the write-up that are meant for the owner; the quote is on the sheet's own page, the rest stays in the workshop. */
const ownersDocuments: ReadonlySet<string> = new Set(['sheet', 'care']);

/** What is planned is shown to the owner once it is offered to him. */
const asOffered = (document: JobDocument): JobDocument => {
  const { planned, ...rest } = document;
  return planned === undefined || document.quote !== undefined ? document : rest;
};

const writtenUp =
  (services: Services): Call =>
  async (context, { job }) => {
    const name = context.req.param('name') ?? '';
    const file = fileNamed(name);
    if (file === undefined || !ownersDocuments.has(file.name)) return context.html(nowherePage(), 404);
    const offered = { ...job, document: asOffered(job.document) };
    const [made] = await services.computation.writeUp(await toWriteUp(services, offered, { file }));
    const { 'Cache-Control': _, ...headers } = madeFileHeaders(mediaTypes[file.form], name);
    return context.body(bodyOf(made?.content ?? ''), 200, headers);
  };

/** The owner's sheet as pages without script. */
export function addSheetPages(app: Hono<Environment>, services: Services, open: OpenLink): void {
  const show: Call = (context, { job }) =>
    showSheet(context, services, { job, form: { typed: { day: today(services) }, problems: [] } });
  app.get('/owner/:token', opened(open, show));
  app.get('/owner/:token/drawing', opened(open, draw(services)));
  app.get('/owner/:token/write-up/:name', opened(open, writtenUp(services)));
  app.get('/owner/:token/reminders.ics', opened(open, remind(services)));
  app.post('/owner/:token/readings', opened(open, takeDown(services)));
}
