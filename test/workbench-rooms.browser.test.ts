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

const button = (name: string | RegExp): Locator => page.getByRole('button', { name });

const goTo = (path: string): Promise<unknown> => page.goto(`${workbench.address}/jobs/1/${path}`);

describe('a job is quoted', () => {
  test('with what the plan needs, and the sum is open until every line has a price', async () => {
    await goTo('re-pack');
    await page.getByLabel('seal the gaps').check();
    await whenSaved(page);
    await goTo('quote');
    await button('Take the plan into the quote').click();
    await page.getByText('What the plan needs stands among the parts').waitFor();
    await typeInto(page.getByLabel('How long it takes'), '1.5 h');
    await page.getByText('Part 1 has no price: write the price of one.').waitFor();
    await typeInto(page.getByLabel('Price of one'), '2.50 GBP');
    await soon(() => page.locator('.quotesum tfoot td').textContent()).toBe('£52.50');
    await typeInto(page.getByLabel('Promised back on'), '2026-12-12');
    await whenSaved(page);
    expect((await recorded(workbench)).document).toMatchObject({
      job: { promised: '2026-12-12' },
      quote: {
        labour: [{ work: 'Clean and re-pack as planned', time: '1.5 h' }],
        parts: [{ part: 'seal strip', count: 3, price: '2.50 GBP' }],
      },
    });
  });

  test('the owner agrees to the sum, and is told apart where the quote changes afterwards', async () => {
    await button('The owner agrees, today').click();
    await soon(() => page.getByLabel('Agreed to in all').inputValue()).toBe('52.50 GBP');
    await typeInto(page.getByLabel('Price of one'), '3.50 GBP');
    await page.getByText('The quote comes to £55.50 now; the owner agreed to 52.50 GBP.').waitFor();
    await whenSaved(page);
    expect((await recorded(workbench)).document).toMatchObject({
      job: { stage: 'approved' },
      approval: { amount: '52.50 GBP' },
    });
  });
});

test('nothing was thrown in the page all the while', () => {
  expect(thrown).toEqual([]);
});
