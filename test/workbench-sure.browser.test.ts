import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recorded, soon, startWorkbench, type Workbench, whenSaved } from './support/workbench.ts';

/** Draws of a few hundred filters, beside other work on two slow cores. */
const drawnWithin = { timeout: 60_000 };

let workbench: Workbench;
let page: Page;
const thrown: string[] = [];

beforeAll(async () => {
  workbench = await startWorkbench(['handed-back']);
  page = await workbench.open('/jobs/1/findings?state=as-found', { locale: 'en-GB' });
  page.on('pageerror', (error) => thrown.push(String(error)));
});

afterAll(async () => workbench?.close());

const part = (): Locator => page.getByRole('region', { name: 'How sure' });
const summary = (): Locator => page.getByRole('region', { name: 'In short' });

describe('how sure the figures are', () => {
  test('is told below the findings once it is drawn, in words, in a table and in a plot', async () => {
    await part().getByText('Ranges are being drawn').or(part().getByRole('table')).first().waitFor();
    await page.getByRole('heading', { name: 'Worst first' }).waitFor();
    await part().getByRole('table').waitFor(drawnWithin);
    expect(await part().getByRole('status').textContent()).toBe('');
    expect(await part().textContent()).toMatch(/At the end of the cleaning interval it serves \d+ L/);
    expect(await part().getByRole('row').count()).toBe(10);
    await part().getByRole('img', { name: 'How far each figure may lie from its middle' }).waitFor();
  });

  test('stands behind the served volume of the summary', async () => {
    expect(await summary().textContent()).toMatch(/: \d+ L \(\d+ to \d+\) at a normal stock/);
  });

  test('leads to the bench test that would narrow it most', async () => {
    const before = ((await recorded(workbench)).document.tests as unknown[]).length;
    await part()
      .getByRole('button', { name: /^Add this bench test ?: Run the filter on a tub/ })
      .click();
    await page.getByRole('heading', { level: 2, name: 'As found' }).waitFor();
    await soon(() =>
      page.evaluate("document.activeElement.closest('[data-path]')?.dataset.path ?? ''"),
    ).toMatch(`tests[${before}].`);
    expect(await page.evaluate("document.activeElement.closest('fieldset').textContent")).toContain(
      'Ammonia challenge',
    );
  });

  test('is dropped when the job changes, and drawn anew once it reads again', async () => {
    await page.getByRole('button', { name: 'Undo' }).click();
    await whenSaved(page);
    await page.goBack();
    await part().getByRole('table').waitFor(drawnWithin);
    const field = part()
      .getByRole('link', { name: /^Open its field/ })
      .first();
    await field.click();
    await soon(() =>
      page.evaluate("document.activeElement.closest('[data-path]')?.dataset.path ?? ''"),
    ).toMatch(/^filter\./);
  });

  test('throws nothing', () => expect(thrown).toEqual([]));
});
