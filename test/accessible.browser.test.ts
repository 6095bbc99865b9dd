import { readdirSync, readFileSync } from 'node:fs';
import { readDocument, readJob } from '@fettle/job/read.ts';
import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { addAccount } from '@fettle/server/people/accounts.ts';
import { hashOfToken, newToken } from '@fettle/server/people/token.ts';
import { type Running, startServer } from '@fettle/server/start.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import { openBrowser } from './support/browser.ts';
import { keptFolder } from './support/keptFolder.ts';
import { faultsIn, tooWide } from './support/pageFaults.ts';
import { inProject } from './support/program.ts';

const data = keptFolder();
const password = 'four damp slates ahead';
const token = newToken();
let full: number;
let server: Running;
let browser: Browser;

/** Everything that a page can show: demo jobs, one with a quote, a photograph, readings and a link for its owner. */
const fill = async (store: Store): Promise<number> => {
  const by = 'anna';
  for (const name of readdirSync(inProject('demo'))) {
    const reading = readJob(readFileSync(inProject(`demo/${name}`)));
    if (reading.ok) await store.jobs.create({ document: reading.document, by });
  }
  const reading = readDocument({ ...fullJob, job: { ...fullJob.job, number: undefined } });
  if (!reading.ok) throw new Error(reading.problems[0]?.says);
  const { number: job } = await store.jobs.create({ document: reading.document, by });
  await store.attachments.add({ job, bytes: inventedPicture(4), name: 'gap.png', caption: 'The gap', by });
  await store.attachments.add({ job, bytes: inventedPicture(5), name: 'bare.png', by });
  const measured = {
    job,
    kind: 'ammonia',
    day: '2026-11-20',
    value: '0.25 mg/L',
    note: 'after a feed',
  } as const;
  await store.readings.addTogether([
    { ...measured, by },
    { ...measured, kind: 'jug-flow', value: '8 L/min', by: 'owner' },
  ]);
  await store.ownerLinks.add({ job, tokenHash: hashOfToken(token), by });
  await addAccount(store, { name: by, role: 'technician', password });
  return job;
};

beforeAll(async () => {
  const store = await openStore({ folder: data.path });
  full = await fill(store);
  await store.close();
  server = await startServer({ folder: data.path, port: 0, share: true });
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
  data.remove();
});

const signIn = async (context: BrowserContext): Promise<void> => {
  const page = await context.newPage();
  await page.goto(`${server.address}/sign-in`);
  await page.getByLabel('Name').fill('anna');
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL(`${server.address}/`);
  await page.close();
};

const screens = [
  { widthPx: 390, theme: 'dark' },
  { widthPx: 1000, theme: 'light' },
] as const;

const pages: readonly (readonly [string, () => string, 'anna' | 'nobody'])[] = [
  ['the bench', () => '/plain', 'anna'],
  ['the bench without what was looked for', () => '/plain?words=nothing-of-the-kind', 'anna'],
  ['a job with faults', () => '/plain/jobs/1', 'anna'],
  ['a job with quote, readings and photographs', () => `/plain/jobs/${full}`, 'anna'],
  ['the page of an error', () => '/plain/jobs/999999', 'anna'],
  ['the sign-in', () => '/sign-in', 'nobody'],
  ['the owner’s sheet', () => `/owner/${token}`, 'nobody'],
  ['a link that leads nowhere', () => '/owner/nowhere', 'nobody'],
];

describe.each(screens)('on a screen of $widthPx pixels, $theme', ({ widthPx, theme }) => {
  const contexts = new Map<'anna' | 'nobody', BrowserContext>();

  beforeAll(async () => {
    for (const who of ['anna', 'nobody'] as const)
      contexts.set(
        who,
        await browser.newContext({ viewport: { width: widthPx, height: 800 }, colorScheme: theme }),
      );
    await signIn(contexts.get('anna')!);
  });

  afterAll(async () => {
    for (const context of contexts.values()) await context.close();
  });

  test.each(pages)('%s can be used by everybody and needs no moving sideways', async (_what, path, who) => {
    const page = await contexts.get(who)!.newPage();
    await page.goto(`${server.address}${path()}`, { waitUntil: 'networkidle' });
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(await faultsIn(page)).toEqual([]);
    expect(await tooWide(page)).toBe(0);
    await page.close();
  });
});

test('a page with planted faults is found out', async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 800 } });
  await page.setContent(
    '<p style="color:#bbb;background:#fff">pale</p><img src="data:,"><input><div style="width:500px">wide</div>',
  );
  const rules = (await faultsIn(page)).map((fault) => fault.split(':')[0]);
  expect(rules).toEqual(expect.arrayContaining(['color-contrast', 'html-has-lang', 'image-alt', 'label']));
  expect(await tooWide(page)).toBeGreaterThan(100);
  await page.close();
});
