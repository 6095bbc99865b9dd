/**
 * Takes pictures of the server's pages for the docs, from the demo jobs in a throw-away data folder:
 * `tsx scripts/screens.ts`. They are looked at, not compared: another browser draws letters a little otherwise.
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { readJob } from '@fettle/job/read.ts';
import { startServer } from '@fettle/server/start.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import type { Browser } from 'playwright-core';
import { openBrowser } from '../test/support/browser.ts';
import { inventedPicture } from './records/inventedPictures.ts';
import { projectRoot } from './sources.ts';

interface Screen {
  readonly name: string;
  readonly path: string;
  readonly widthPx: number;
  readonly theme: 'light' | 'dark';
}

const outFolder = resolve(projectRoot, 'docs', 'pictures', 'screens');

/** What an owner was offered, and what hangs on the first job beside its document. */
const quote = {
  day: '2026-11-05',
  validUntil: '2026-12-05',
  labour: [{ work: 'Re-pack and leak test', price: '40 GBP' }],
  parts: [{ part: 'seal strip', count: 2, price: '2 GBP' }],
  warranty: '6 months on seals',
};

async function hangOn(store: Store, job: number): Promise<void> {
  const by = 'anna';
  for (const [place, caption] of ['The gap above basket 2', 'As it came', ''].entries()) {
    const [widthPx, heightPx] = place === 1 ? [360, 480] : [480, 360];
    const bytes = inventedPicture(place + 3, widthPx, heightPx);
    await store.attachments.add({ job, bytes, name: `photograph-${place + 1}.png`, caption, by });
  }
  await store.readings.addTogether([
    { job, kind: 'jug-flow', day: '2026-11-12', value: '8 L/min', note: '', by: 'owner' },
    { job, kind: 'ammonia', day: '2026-11-14', value: '0.25 mg/L', note: 'two hours after a feed', by },
  ]);
}

/** Takes in the demo jobs that read; the first with a quote, readings and photographs. */
async function takeInDemos(folder: string): Promise<void> {
  const store = await openStore({ folder });
  try {
    for (const file of readdirSync(resolve(projectRoot, 'demo')).toSorted()) {
      const reading = readJob(readFileSync(resolve(projectRoot, 'demo', file)));
      if (!reading.ok) continue;
      const { document } = reading;
      const isFirst = document.job?.number === 1;
      await store.jobs.create({ document: isFirst ? { ...document, quote } : document, by: 'anna' });
    }
    await hangOn(store, 1);
  } finally {
    await store.close();
  }
}

/** The path of a new owner's link to the first job. */
async function ownerPath(address: string): Promise<string> {
  const made = await fetch(`${address}/api/jobs/1/owner-links`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: '{}',
  });
  const link: unknown = await made.json();
  if (typeof link !== 'object' || link === null || !('url' in link))
    throw new Error('the server made no link');
  return new URL(String(link.url), address).pathname;
}

async function take(browser: Browser, address: string, screen: Screen): Promise<void> {
  const page = await browser.newPage({
    viewport: { width: screen.widthPx, height: 800 },
    colorScheme: screen.theme,
  });
  await page.goto(new URL(screen.path, address).href, { waitUntil: 'networkidle' });
  const path = join(outFolder, `${screen.name}.png`);
  await page.screenshot({ path, fullPage: true });
  console.log(path);
  await page.close();
}

const folder = mkdtempSync(join(tmpdir(), 'fettle-screens-'));
try {
  await takeInDemos(folder);
  const server = await startServer({ folder, port: 0 });
  const browser = await openBrowser();
  mkdirSync(outFolder, { recursive: true });
  const owner = await ownerPath(server.address);
  const screens: readonly Screen[] = [
    { name: 'bench', path: '/plain', widthPx: 1000, theme: 'light' },
    { name: 'bench-phone-dark', path: '/plain', widthPx: 390, theme: 'dark' },
    { name: 'job', path: '/plain/jobs/1', widthPx: 1000, theme: 'light' },
    { name: 'job-phone', path: '/plain/jobs/1', widthPx: 390, theme: 'light' },
    { name: 'owner', path: owner, widthPx: 1000, theme: 'light' },
    { name: 'owner-phone-dark', path: owner, widthPx: 390, theme: 'dark' },
  ];
  for (const screen of screens) await take(browser, server.address, screen);
  await browser.close();
  await server.stop();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
