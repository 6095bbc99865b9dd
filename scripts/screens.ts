/**
 * Takes pictures of the workbench and the server's pages for the docs, from the demo jobs in a throw-away data folder:
 * `tsx scripts/screens.ts`. They are looked at, not compared: another browser draws letters a little otherwise.
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Model } from '@fettle/engine/model/model.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { startServer } from '@fettle/server/start.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import { plannedState } from '@fettle/workflows/plannedState.ts';
import { toPlansResult } from '@fettle/workflows/results/plans.ts';
import type { Browser } from 'playwright-core';
import { build as buildPages } from 'vite';
import { openBrowser } from '../test/support/browser.ts';
import { inventedPicture } from './records/inventedPictures.ts';
import { projectRoot } from './sources.ts';

interface Screen {
  readonly name: string;
  readonly path: string;
  readonly widthPx: number;
  readonly theme: 'light' | 'dark';
  /** Only so much of it from the top; the whole page where left out. */
  readonly heightPx?: number;
  /** What must be seen before the picture is taken. */
  readonly when?: string;
  /** The only element to be in the picture. */
  readonly part?: string;
}

/** The workbench, as a desk and a phone show it. */
const rooms: readonly Screen[] = [
  { name: 'workbench-bench', path: '/', widthPx: 1200, theme: 'light', when: '.card' },
  { name: 'workbench-take-in-phone', path: '/take-in', widthPx: 390, theme: 'light', when: '.families' },
  { name: 'workbench-map', path: '/jobs/2/map', widthPx: 1300, theme: 'light', when: '.overlay .bed' },
  { name: 'workbench-findings', path: '/jobs/5/findings', widthPx: 1300, theme: 'light', when: '.finding' },
  {
    name: 'workbench-findings-phone-dark',
    path: '/jobs/1/findings',
    widthPx: 390,
    theme: 'dark',
    when: '.finding',
  },
  {
    name: 'workbench-forecast',
    path: '/jobs/1/forecast?clean=mechanical/30,%20all/90',
    widthPx: 1300,
    theme: 'light',
    when: '.plots svg',
  },
  {
    name: 'workbench-plots',
    path: '/jobs/1/findings',
    widthPx: 1300,
    theme: 'light',
    when: '.plots svg',
    part: '.plots',
  },
  {
    name: 'workbench-write-up',
    path: '/jobs/6/write-up',
    widthPx: 1300,
    heightPx: 1500,
    theme: 'light',
    when: '.written',
  },
  {
    name: 'workbench-write-up-phone-dark',
    path: '/jobs/6/write-up?document=care',
    widthPx: 390,
    heightPx: 1800,
    theme: 'dark',
    when: '.written',
  },
  {
    name: 'workbench-re-pack',
    path: '/jobs/1/re-pack',
    widthPx: 1300,
    theme: 'light',
    when: 'table.figures',
  },
  {
    name: 'workbench-re-pack-phone-dark',
    path: '/jobs/2/re-pack',
    widthPx: 390,
    theme: 'dark',
    when: 'table.figures',
  },
  {
    name: 'workbench-as-found-phone',
    path: '/jobs/1/as-found',
    widthPx: 390,
    theme: 'light',
    when: '.field',
  },
  {
    name: 'workbench-compare',
    path: '/jobs/1/compare',
    widthPx: 1300,
    theme: 'light',
    when: '.dirt + .dirt',
  },
  { name: 'workbench-quote', path: '/jobs/1/quote', widthPx: 1200, theme: 'light', when: 'main h2' },
  { name: 'workbench-history', path: '/jobs/1/history', widthPx: 1200, theme: 'light', when: 'main h2' },
  { name: 'workbench-shelf', path: '/shelf', widthPx: 1200, theme: 'light', when: 'main h2' },
  { name: 'workbench-reckoner', path: '/reckoner', widthPx: 1200, theme: 'light', when: 'main a' },
  { name: 'workbench-settings-dark', path: '/settings', widthPx: 1200, theme: 'dark', when: '.field' },
];

const workbench = rooms.map((screen) => ({ heightPx: screen.widthPx < 500 ? 1200 : 1000, ...screen }));

const outFolder = resolve(projectRoot, 'docs', 'pictures', 'screens');

/** What an owner was offered, and what hangs on the first job beside its document. */
const quote = {
  day: '2026-11-05',
  validUntil: '2026-12-05',
  labour: [{ work: 'Re-pack and leak test', price: '40 GBP' }],
  parts: [{ part: 'seal strip', count: 2, price: '2 GBP' }],
  warranty: '6 months on seals',
};

/** The best plan for a small budget, taken. */
function bestPlan(model: Model): Pick<JobDocument, 'planned'> {
  const [best] = toPlansResult(searchPlans(model, { budget: 15 }), model.money.currency).plans;
  return best === undefined ? {} : { planned: plannedState(best, model) };
}

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
      const { document, model } = reading;
      const isFirst = document.job?.number === 1;
      const worked = isFirst ? { ...document, quote, ...bestPlan(model) } : document;
      await store.jobs.create({ document: worked, by: 'anna' });
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
    viewport: { width: screen.widthPx, height: screen.heightPx ?? 800 },
    colorScheme: screen.theme,
  });
  await page.goto(new URL(screen.path, address).href, { waitUntil: 'networkidle' });
  if (screen.when !== undefined) await page.locator(screen.when).first().waitFor();
  const path = join(outFolder, `${screen.name}.png`);
  if (screen.part !== undefined) await page.locator(screen.part).screenshot({ path });
  else await page.screenshot({ path, fullPage: screen.heightPx === undefined });
  console.log(path);
  await page.close();
}

const folder = mkdtempSync(join(tmpdir(), 'fettle-screens-'));
try {
  await buildPages({ configFile: resolve(projectRoot, 'packages/web/vite.config.ts'), logLevel: 'error' });
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
    ...workbench,
    { name: 'owner', path: owner, widthPx: 1000, theme: 'light' },
    { name: 'owner-phone-dark', path: owner, widthPx: 390, theme: 'dark' },
  ];
  for (const screen of screens) await take(browser, server.address, screen);
  await browser.close();
  await server.stop();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
