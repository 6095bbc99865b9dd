import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recorded, soon, startWorkbench, typeInto, type Workbench, whenSaved } from './support/workbench.ts';

let workbench: Workbench;
let page: Page;
const thrown: string[] = [];

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
  page = await workbench.open('/', { locale: 'en-GB' });
  page.on('pageerror', (error) => thrown.push(String(error)));
});

afterAll(async () => workbench?.close());

describe('a job is written up', () => {
  const written = (): Locator => page.getByRole('document');

  test('with a live preview of each document, in both systems of units', async () => {
    await page.goto(`${workbench.address}/jobs/1/write-up`);
    await written().getByRole('heading', { name: 'What was found' }).waitFor();
    await soon(() => written().locator('#summary').textContent()).toMatch(/L\/\u2060h \(\d.*US\u00a0gal/);
    await page.getByRole('radio', { name: 'Care plan' }).check();
    await written().getByRole('heading', { name: 'Is it time to clean?' }).first().waitFor();
    expect(new URL(page.url()).searchParams.get('document')).toBe('care');
    await page.getByRole('radio', { name: 'Sheet', exact: true }).check();
  });

  test('in the technician’s own words, which stay when it is made anew, and go again', async () => {
    await written().getByRole('heading', { name: 'What was found' }).waitFor();
    await written().locator('#summary').click();
    await typeInto(page.getByLabel('In its place'), 'It came in slow.');
    await written()
      .locator('#summary', { hasText: /^It came in slow\.$/ })
      .waitFor();
    await whenSaved(page);
    expect((await recorded(workbench)).document.writeUp).toEqual({
      words: { summary: { instead: 'It came in slow.' } },
    });
    await page.reload();
    await written()
      .locator('#summary', { hasText: /^It came in slow\.$/ })
      .waitFor();
    const file = await page.request.get(`${workbench.address}/api/jobs/1/write-up/sheet.md`);
    expect(await file.text()).toContain('\n\nIt came in slow.\n\n');
    await typeInto(page.getByLabel('In its place'), '');
    await written()
      .getByText(/gave .* as found/)
      .last()
      .waitFor();
    await whenSaved(page);
    expect((await recorded(workbench)).document.writeUp).toBeUndefined();
  });

  test('in another language, drawing and all', async () => {
    await page.getByLabel('Language').selectOption({ index: 2 });
    await written().getByRole('heading', { name: 'Befund' }).waitFor();
    await page.getByLabel('Language').selectOption('');
    await written().getByRole('heading', { name: 'What was found' }).waitFor();
  });

  test('as files that are had from there', async () => {
    const links = page.getByRole('navigation', { name: 'As files' }).getByRole('link');
    for (const link of await links.all()) {
      const answer = await page.request.get(new URL((await link.getAttribute('href'))!, page.url()).href);
      expect(answer.status()).toBe(200);
      expect((await answer.body()).length).toBeGreaterThan(5_000);
    }
    expect(await links.count()).toBe(5);
  });
});

test('nothing was thrown in the page all the while', () => {
  expect(thrown).toEqual([]);
});
