import { toPage } from '@fettle/writeup/forms/html/page.ts';
import { type DocumentName, documentMakers, writeUpDocument } from '@fettle/writeup/writeUp.ts';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from './support/browser.ts';
import { faultsIn, tooWide } from './support/pageFaults.ts';
import { demoSources } from './support/writeUps.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const names = Object.keys(documentMakers) as DocumentName[];
const pages = demoSources.flatMap(({ name: of, source }) =>
  names.map((name) => ({
    of,
    what: `${name} of ${of}`,
    page: toPage(writeUpDocument(source, { name, theme: 'page' })),
  })),
);

/** Parts and marks of pages are the same in all jobs: a canister, a sump and an air-lift have all of them. */
const kinds = ['everything-wrong', 'under-stairs', 'bubbling-sponge'];
const ofKinds = pages.filter(({ of }) => kinds.some((kind) => of.startsWith(`${kind} with`)));

test('the jobs whose pages are looked at are among the demos', () => {
  expect(ofKinds).toHaveLength(kinds.length * names.length);
});

describe.each([
  { widthPx: 390, theme: 'dark' },
  { widthPx: 1000, theme: 'light' },
] as const)('on a screen of $widthPx pixels, $theme', ({ widthPx, theme }) => {
  let page: Page;
  beforeAll(async () => {
    page = await browser.newPage({ viewport: { width: widthPx, height: 800 }, colorScheme: theme });
  });
  afterAll(() => page?.close());

  test.each(ofKinds)('$what can be used by everybody', async ({ page: markup }) => {
    await page.setContent(markup);
    expect(await faultsIn(page)).toEqual([]);
    expect(await tooWide(page)).toBe(0);
  });
});

describe('on a phone', () => {
  let page: Page;
  beforeAll(async () => {
    page = await browser.newPage({ viewport: { width: 390, height: 800 } });
  });
  afterAll(() => page?.close());

  test.each(demoSources)('no page of $name needs moving sideways', async ({ name }) => {
    for (const { what, page: markup } of pages.filter(({ of }) => of === name)) {
      await page.setContent(markup);
      expect(await tooWide(page), what).toBe(0);
    }
  });
});

test('a page shows all of itself with scripts off, asks nothing of any server, and prints black on white', async () => {
  const context = await browser.newContext({ javaScriptEnabled: false, colorScheme: 'dark' });
  const page = await context.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.setContent(pages[0]!.page);
  expect(await page.getByRole('heading', { level: 2 }).count()).toBeGreaterThan(5);
  expect(await page.getByRole('img').first().isVisible()).toBe(true);
  expect(asked.filter((url) => !url.startsWith('about:') && !url.startsWith('data:'))).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  expect(await page.evaluate('getComputedStyle(document.body).backgroundColor')).toBe('rgb(255, 255, 255)');
  expect(await page.evaluate('getComputedStyle(document.body).color')).toBe('rgb(0, 0, 0)');
  await context.close();
});
