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

describe('why a flow has faded', () => {
  const part = (): Locator => page.locator('details.faded');

  test('is folded away until it is asked', async () => {
    await page.goto(`${workbench.address}/jobs/1/as-found`);
    await part().getByRole('heading', { name: 'The flow has faded: why?' }).click();
    await part().getByText('What may lie behind it').waitFor();
  });

  test('is ranked by what is typed, and asks what would settle most', async () => {
    await typeInto(part().getByLabel(/^Flow now/), '380 L/h');
    await typeInto(part().getByLabel(/^Flow when it was new/), '630 L/h ± 3 %');
    await part()
      .getByText(/^60 % of the flow is left: 380 L\/h of 630 L\/h\./)
      .waitFor();
    await part().getByLabel('The hoses are brown inside').selectOption('yes');
    await part()
      .getByText(/Most likely a film has grown in the hoses\./)
      .waitFor();
    const first = part().locator('.questions li').first();
    await first.waitFor();
    expect(await first.textContent()).toMatch(/It settles \d+ % of what is open, in about \d+ min\./);
  });

  test('takes what was done with the flow after it, and says when it is settled', async () => {
    const brushing = part().locator('.questions li', { hasText: 'brush the hoses' });
    await brushing.getByRole('button', { name: 'It is done: type the flow' }).click();
    const after = part().getByLabel('Flow after it');
    await soon(() => page.locator(':focus').getAttribute('id')).toBe(await after.getAttribute('id'));
    await typeInto(after, '615 L/h');
    await part()
      .getByText(/^The flow has come back: 98 % of what it was\. It was most likely this: a film has grown/)
      .waitFor();
    await whenSaved(page);
    expect((await recorded(workbench)).document.faded).toEqual({
      flowNow: '380 L/h',
      flowBefore: '630 L/h ± 3 %',
      signs: { 'brown-hoses': true },
      done: [{ did: 'brush-hoses', flow: '615 L/h' }],
    });
    expect(thrown).toEqual([]);
  });
});
