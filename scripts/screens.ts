/**
 * Takes pictures of the server's pages for the docs, from the demo jobs in a throw-away data folder:
 * `tsx scripts/screens.ts`. They are looked at, not compared: another browser draws letters a little otherwise.
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { readJob } from '@fettle/job/read.ts';
import { startServer } from '@fettle/server/start.ts';
import { openStore } from '@fettle/store/open.ts';
import type { Browser } from 'playwright-core';
import { openBrowser } from '../test/support/browser.ts';
import { projectRoot } from './sources.ts';

interface Screen {
  readonly name: string;
  readonly path: string;
  readonly widthPx: number;
  readonly theme: 'light' | 'dark';
}

const outFolder = resolve(projectRoot, 'docs', 'pictures', 'screens');

/** Takes in the demo jobs that read. */
async function takeInDemos(folder: string): Promise<void> {
  const store = await openStore({ folder });
  try {
    for (const file of readdirSync(resolve(projectRoot, 'demo')).toSorted()) {
      const reading = readJob(readFileSync(resolve(projectRoot, 'demo', file)));
      if (reading.ok) await store.jobs.create({ document: reading.document, by: 'anna' });
    }
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
    { name: 'bench', path: '/', widthPx: 1000, theme: 'light' },
    { name: 'bench-phone-dark', path: '/', widthPx: 390, theme: 'dark' },
    { name: 'job', path: '/jobs/1', widthPx: 1000, theme: 'light' },
    { name: 'job-phone', path: '/jobs/1', widthPx: 390, theme: 'light' },
    { name: 'owner', path: owner, widthPx: 1000, theme: 'light' },
    { name: 'owner-phone-dark', path: owner, widthPx: 390, theme: 'dark' },
  ];
  for (const screen of screens) await take(browser, server.address, screen);
  await browser.close();
  await server.stop();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
