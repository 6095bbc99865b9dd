import type { Attachment } from '@fettle/store/contract/attachments.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { digestOf, hashOf } from './canonical.ts';
import { documentDigest, type Ledger } from './ledger.ts';

/** Something acknowledged that is not there, or something there that is not whole. */
export interface Loss {
  readonly kind: 'lost' | 'torn';
  readonly says: string;
}

const lost = (says: string): Loss => ({ kind: 'lost', says });
const torn = (says: string): Loss => ({ kind: 'torn', says });

/** Everything in which the records differ from what was acknowledged, of the jobs given and all the rest. */
export async function lossesIn(
  store: Store,
  ledger: Ledger,
  numbers: Iterable<number> = ledger.revisions.keys(),
): Promise<readonly Loss[]> {
  const found: Loss[] = [];
  const health = await store.checkup({ thorough: true });
  found.push(...health.faults.map(torn));
  for (const number of numbers) found.push(...(await jobLosses(store, ledger, number)));
  found.push(...(await strangers(store, ledger)));
  found.push(...(await pictureLosses(store, ledger)));
  found.push(...(await readingLosses(store, ledger)));
  found.push(...(await shelfLosses(store, ledger)));
  for (const { id } of ledger.works)
    if ((await store.work.find(id)) === undefined) found.push(lost(`work ${id} is not known any more`));
  return found;
}

async function jobLosses(store: Store, ledger: Ledger, number: number): Promise<Loss[]> {
  const acknowledged = ledger.revisions.get(number) ?? new Map<number, string>();
  const [job, summaries] = await Promise.all([store.jobs.find(number), store.jobs.revisions(number)]);
  if (job === undefined || summaries === undefined) return [lost(`job ${number} is gone`)];
  const found: Loss[] = [];
  const order = summaries.map(({ revision }) => revision);
  if (order.some((revision, index) => revision !== index + 1) || order.at(-1) !== job.revision)
    found.push(torn(`the revisions of job ${number} are ${order.join(', ')} and its newest ${job.revision}`));
  for (const revision of acknowledged.keys())
    if (revision > job.revision) found.push(lost(`revision ${revision} of job ${number} is gone`));
  for (const revision of order) {
    const held = await store.jobs.revision(number, revision);
    const digest = documentDigest(held?.document);
    const expected = acknowledged.get(revision);
    if (expected !== undefined && digest !== expected)
      found.push(lost(`revision ${revision} of job ${number} is not what was acknowledged`));
    if (expected === undefined && !ledger.sent.has(digest))
      found.push(torn(`revision ${revision} of job ${number} is nothing that was ever sent`));
    if (revision === job.revision && documentDigest(job.document) !== digest)
      found.push(torn(`job ${number} is not its newest revision`));
  }
  return [...found, ...(await logLosses(store, number, job.revision))];
}

/** The log has one line for every revision of a job, since both are written together. */
async function logLosses(store: Store, number: number, revisions: number): Promise<Loss[]> {
  const lines = await store.deeds.list({ job: number, count: 1000 });
  const told = lines.filter(({ what }) => what.startsWith('job-')).length;
  return told === revisions
    ? []
    : [torn(`the log tells of ${told} revisions of job ${number}, which has ${revisions}`)];
}

/** Jobs that were written without an answer: each must be one that was sent, whole. */
async function strangers(store: Store, ledger: Ledger): Promise<Loss[]> {
  const found: Loss[] = [];
  for (const number of await store.jobs.numbers()) {
    if (ledger.revisions.has(number)) continue;
    const job = await store.jobs.find(number);
    if (job === undefined || !ledger.sent.has(documentDigest(job.document)))
      found.push(torn(`job ${number} is nothing that was ever sent`));
  }
  return found;
}

async function pictureLosses(store: Store, ledger: Ledger): Promise<Loss[]> {
  const found: Loss[] = [];
  for (const { job, id, hash } of ledger.pictures) {
    const listed = await store.attachments.find(job, id);
    const isListed = listed !== undefined && listed.removedAt === undefined;
    if (isListed && ledger.removed.has(id))
      found.push(lost(`picture ${id} of job ${job} is back on the list`));
    if (!isListed && !ledger.removalsAsked.has(id)) found.push(lost(`picture ${id} of job ${job} is gone`));
    if (listed !== undefined && listed.hash !== hash) found.push(torn(`picture ${id} has another hash`));
  }
  for (const number of ledger.revisions.keys())
    for (const picture of await store.attachments.list(number))
      found.push(...(await fileLosses(store, picture)));
  return found;
}

async function fileLosses(store: Store, picture: Attachment): Promise<Loss[]> {
  const says = `the file of picture ${picture.id} of job ${picture.job}`;
  try {
    const whole = await store.attachments.read(picture, 'whole');
    const small = await store.attachments.read(picture, 'thumbnail');
    if (hashOf(whole.bytes) !== picture.hash) return [torn(`${says} does not have its hash`)];
    return small.bytes.length > 0 ? [] : [torn(`${says} has an empty thumbnail`)];
  } catch (error) {
    return [lost(`${says} cannot be read: ${String(error)}`)];
  }
}

async function readingLosses(store: Store, ledger: Ledger): Promise<Loss[]> {
  const found: Loss[] = [];
  for (const { job, id, value } of ledger.readings) {
    const held = (await store.readings.list(job)).find((reading) => reading.id === id);
    if (held?.value !== value) found.push(lost(`reading ${id} of job ${job} is gone`));
  }
  return found;
}

async function shelfLosses(store: Store, ledger: Ledger): Promise<Loss[]> {
  const held = await store.books.revisions('shelf');
  const found: Loss[] = [];
  if (held.some(({ revision }, index) => revision !== index + 1))
    found.push(torn('the shelf has lost a revision'));
  for (const [revision, digest] of ledger.shelf) {
    const body = held.find((book) => book.revision === revision)?.body;
    if (digestOf(body) !== digest)
      found.push(lost(`revision ${revision} of the shelf is not what was acknowledged`));
  }
  return found;
}
