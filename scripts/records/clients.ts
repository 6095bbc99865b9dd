import type { JobDocument } from '@fettle/job/schema/job.ts';
import { digestOf } from './canonical.ts';
import type { Chance } from './chance.ts';
import { inventedJob, inventedReading, inventedShelf, lookedAtAgain } from './inventedJobs.ts';
import { inventedPicture } from './inventedPictures.ts';
import { documentDigest, type Ledger, noteRevision } from './ledger.ts';

/** One of several clients that write to a server at the same time. */
export interface Client {
  readonly address: string;
  readonly ledger: Ledger;
  readonly chance: Chance;
  /** What the clients know of the jobs that they share: where each stands now. */
  readonly desk: Desk;
}

/** Jobs as the clients last saw them. */
export interface Desk {
  readonly jobs: Map<number, JobOnDesk>;
  /** Revision of the shelf. */
  shelf: number;
}

interface JobOnDesk {
  readonly revision: number;
  /** Of that revision; undefined where another client wrote it. */
  readonly document: JobDocument | undefined;
  readonly away: boolean;
}

export const newDesk = (): Desk => ({ jobs: new Map(), shelf: 0 });

/** An answer that arrived whole. */
interface Answer {
  readonly status: number;
  readonly body: unknown;
}

interface Asked {
  readonly path: string;
  readonly method?: string;
  readonly revision?: number;
  readonly body?: unknown;
  readonly picture?: Buffer;
}

async function ask(
  client: Client,
  { path, method = 'GET', revision, body, picture }: Asked,
): Promise<Answer> {
  const headers = {
    ...(picture === undefined ? {} : { 'Content-Type': 'image/png' }),
    ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
    ...(revision === undefined ? {} : { 'If-Match': `"${revision}"` }),
  };
  const sent = picture === undefined ? JSON.stringify(body) : new Uint8Array(picture);
  const response = await fetch(`${client.address}/api${path}`, {
    method,
    headers,
    ...(sent === undefined ? {} : { body: sent }),
  });
  const text = await response.text();
  const isJson = response.headers.get('content-type')?.includes('json') === true;
  if (response.status >= 500) throw new Error(`${method} ${path} was answered ${response.status}: ${text}`);
  return { status: response.status, body: isJson ? JSON.parse(text) : text };
}

/** A member of an answer's body, where it has it. */
function member(body: unknown, ...names: readonly string[]): unknown {
  let value = body;
  for (const name of names) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = Reflect.get(value, name);
  }
  return value;
}

const numberIn = (body: unknown, ...names: readonly string[]): number => {
  const value = member(body, ...names);
  if (typeof value !== 'number')
    throw new Error(`an answer lacks ${names.join('.')}: ${JSON.stringify(body)}`);
  return value;
};

const textIn = (body: unknown, ...names: readonly string[]): string => {
  const value = member(body, ...names);
  if (typeof value !== 'string')
    throw new Error(`an answer lacks ${names.join('.')}: ${JSON.stringify(body)}`);
  return value;
};

function unexpected(what: string, { status, body }: Answer): never {
  throw new Error(`${what} was answered ${status}: ${JSON.stringify(body)}`);
}

/** Takes in a new job. */
export async function takeIn(client: Client): Promise<void> {
  const { ledger, desk } = client;
  const document = inventedJob(client.chance);
  const digest = documentDigest(document);
  ledger.sent.add(digest);
  const answer = await ask(client, { path: '/jobs', method: 'POST', body: document });
  if (answer.status !== 201) unexpected('a new job', answer);
  const number = numberIn(answer.body, 'number');
  noteRevision(ledger, { number, revision: numberIn(answer.body, 'revision'), digest });
  desk.jobs.set(number, { revision: 1, document, away: false });
}

/** One of the newest jobs on the desk, so that clients often meet on the same one. */
function someJob(client: Client): readonly [number, JobOnDesk] {
  const jobs = [...client.desk.jobs].slice(-12);
  return client.chance.among(jobs);
}

/** Sends a change of a job and writes down how it ended. */
async function change(
  client: Client,
  number: number,
  { document, away, ...asked }: Asked & { readonly document: JobDocument; readonly away: boolean },
): Promise<void> {
  const { ledger, desk } = client;
  ledger.touched.add(number);
  const digest = documentDigest(document);
  ledger.sent.add(digest);
  const answer = await ask(client, asked);
  if (answer.status === 412) {
    ledger.outrun++;
    const known = desk.jobs.get(number);
    const revision = numberIn(answer.body, 'current', 'revision');
    if (known !== undefined && known.revision < revision)
      desk.jobs.set(number, { ...known, revision, document: undefined });
    return;
  }
  if (answer.status !== 200) unexpected(`a change of job ${number}`, answer);
  const revision = numberIn(answer.body, 'revision');
  noteRevision(ledger, { number, revision, digest });
  if ((desk.jobs.get(number)?.revision ?? 0) < revision) desk.jobs.set(number, { revision, document, away });
}

/** Writes another document of a job on the desk. */
export async function rewrite(client: Client): Promise<void> {
  const [number, { revision, document = inventedJob(client.chance), away }] = someJob(client);
  const next = lookedAtAgain(document, client.chance);
  const body = { ...next, job: { ...next.job, number } };
  await change(client, number, {
    path: `/jobs/${number}`,
    method: 'PUT',
    revision,
    body,
    document: next,
    away,
  });
}

/** Puts a job on the desk away, or brings it back. */
export async function putAwayOrBringBack(client: Client): Promise<void> {
  const [number, { revision, document, away }] = someJob(client);
  // What another client wrote stays in the records as it is, and cannot be told from here.
  if (document === undefined) return;
  const asked = away
    ? { path: `/jobs/${number}/bring-back`, method: 'POST' }
    : { path: `/jobs/${number}`, method: 'DELETE' };
  await change(client, number, { ...asked, revision, document, away: !away });
}

async function attach(client: Client): Promise<void> {
  const [job] = someJob(client);
  const picture = inventedPicture(client.chance.below(2 ** 31), client.chance.between(20, 200));
  const answer = await ask(client, {
    path: `/jobs/${job}/attachments?name=seen.png`,
    method: 'POST',
    picture,
  });
  if (answer.status !== 201) unexpected(`a picture of job ${job}`, answer);
  client.ledger.pictures.push({ job, id: textIn(answer.body, 'id'), hash: textIn(answer.body, 'hash') });
  client.ledger.acknowledged++;
}

async function detach(client: Client): Promise<void> {
  const { ledger } = client;
  const picture = ledger.pictures.at(-1);
  if (picture === undefined || ledger.removalsAsked.has(picture.id)) return;
  ledger.removalsAsked.add(picture.id);
  const answer = await ask(client, {
    path: `/jobs/${picture.job}/attachments/${picture.id}`,
    method: 'DELETE',
  });
  if (answer.status >= 300) unexpected(`taking off picture ${picture.id}`, answer);
  ledger.removed.add(picture.id);
  ledger.acknowledged++;
}

async function read(client: Client): Promise<void> {
  const [job] = someJob(client);
  const reading = inventedReading(client.chance);
  const answer = await ask(client, { path: `/jobs/${job}/readings`, method: 'POST', body: reading });
  if (answer.status !== 201) unexpected(`a reading of job ${job}`, answer);
  client.ledger.readings.push({ job, id: textIn(answer.body, 'id'), value: reading.value });
  client.ledger.acknowledged++;
}

async function restock(client: Client): Promise<void> {
  const { ledger, desk } = client;
  const body = inventedShelf(client.chance);
  const answer = await ask(client, { path: '/shelf', method: 'PUT', revision: desk.shelf, body });
  if (answer.status === 412) {
    ledger.outrun++;
    desk.shelf = numberIn(answer.body, 'current', 'revision');
    return;
  }
  if (answer.status !== 200) unexpected('the shelf', answer);
  desk.shelf = Math.max(desk.shelf, numberIn(answer.body, 'revision'));
  ledger.shelf.set(numberIn(answer.body, 'revision'), digestOf(body));
  ledger.acknowledged++;
}

async function askForPlans(client: Client): Promise<void> {
  const [job] = someJob(client);
  const answer = await ask(client, {
    path: `/jobs/${job}/plans`,
    method: 'POST',
    body: { budget: 15, cap: 400 },
  });
  if (answer.status === 429) return;
  if (answer.status !== 202 && answer.status !== 200) unexpected(`plans of job ${job}`, answer);
  client.ledger.works.push({ job, id: textIn(answer.body, 'id') });
  client.ledger.acknowledged++;
}

const deeds: readonly (readonly [share: number, deed: (client: Client) => Promise<void>])[] = [
  [0.3, takeIn],
  [0.38, rewrite],
  [0.02, putAwayOrBringBack],
  [0.12, attach],
  [0.03, detach],
  [0.07, read],
  [0.05, restock],
  [0.03, askForPlans],
];

/** A deed by chance; the first of all takes in a job, since the others need one, and the next adds a picture. */
function chosenDeed({ chance, desk, ledger }: Client): (client: Client) => Promise<void> {
  if (desk.jobs.size === 0) return takeIn;
  if (ledger.pictures.length === 0) return attach;
  let left = chance.share();
  for (const [share, deed] of deeds) {
    left -= share;
    if (left < 0) return deed;
  }
  return takeIn;
}

/** Writes one thing after another until the server is gone; whatever else goes wrong is thrown. */
export async function writeUntilGone(client: Client, isGone: () => boolean): Promise<void> {
  try {
    while (!isGone()) await chosenDeed(client)(client);
  } catch (error) {
    if (!isGone()) throw error;
  }
}
