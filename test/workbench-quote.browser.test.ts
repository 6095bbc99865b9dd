import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recorded, soon, startWorkbench, typeInto, type Workbench, whenSaved } from './support/workbench.ts';

let workbench: Workbench;
let page: Page;

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
  page = await workbench.open('/', { locale: 'en-GB' });
});

afterAll(async () => workbench?.close());

const button = (name: string | RegExp): Locator => page.getByRole('button', { name });

const goTo = (path: string): Promise<unknown> => page.goto(`${workbench.address}/jobs/1/${path}`);

describe('a job is quoted', () => {
  interface Part {
    readonly part: string;
    readonly count?: number;
    readonly price: string;
  }
  const parts = async (): Promise<readonly Part[]> =>
    ((await recorded(workbench)).document as { quote: { parts: Part[] } }).quote.parts;
  /** What the fresh media of the plan come to, which stand beside the strips. */
  let fresh = 0;
  let sealPrice: Locator;

  test('with what the plan needs, and the sum is open until every line has a price', async () => {
    await goTo('re-pack');
    await page.getByRole('checkbox', { name: 'seal the gaps' }).check();
    await whenSaved(page);
    await goTo('quote');
    await button('Take the plan into the quote').click();
    await page.getByText('What the plan needs stands among the parts').waitFor();
    await typeInto(page.getByLabel('How long it takes'), '1.5 h');
    await page.getByText('Part 1 has no price: write the price of one.').waitFor();
    await page
      .getByText(/The plan was reckoned with prices of the catalogue.*seal strip \d+\.\d\d GBP/)
      .waitFor();
    await button('Quote these prices').click();
    await whenSaved(page);
    const quoted = await parts();
    const strips = quoted.findIndex(({ part }) => part === 'seal strip');
    fresh = quoted.reduce(
      (sum, { count = 1, price }, place) => (place === strips ? sum : sum + count * Number.parseFloat(price)),
      0,
    );
    sealPrice = page.getByLabel('Price of one').nth(strips);
    await soon(() => sealPrice.inputValue()).toMatch(/^\d+\.\d\d GBP$/);
    await typeInto(sealPrice, '2.50 GBP');
    // An hour and a half at 30 GBP an hour, three strips, and fresh floss in place of what is used up.
    await soon(() => page.locator('.quotesum tfoot td').textContent()).toBe(`£${(52.5 + fresh).toFixed(2)}`);
    await typeInto(page.getByLabel('Promised back on'), '2026-12-12');
    await whenSaved(page);
    expect((await recorded(workbench)).document).toMatchObject({
      job: { promised: '2026-12-12' },
      quote: {
        labour: [{ work: 'Clean and re-pack as planned', time: '1.5 h' }],
        parts: expect.arrayContaining([{ part: 'seal strip', count: 3, price: '2.50 GBP', from: 'plan' }]),
      },
    });
  });

  test('the owner agrees to the sum, and is told apart where the quote changes afterwards', async () => {
    await button('The owner agrees, today').click();
    await soon(() => page.getByLabel('Agreed to in all').inputValue()).toBe(
      `${(52.5 + fresh).toFixed(2)} GBP`,
    );
    await typeInto(sealPrice, '3.50 GBP');
    await page
      .getByText(
        `The quote comes to £${(55.5 + fresh).toFixed(2)} now; the owner agreed to ${(52.5 + fresh).toFixed(2)} GBP.`,
      )
      .waitFor();
    await whenSaved(page);
    expect((await recorded(workbench)).document).toMatchObject({
      job: { stage: 'approved' },
      approval: { amount: `${(52.5 + fresh).toFixed(2)} GBP` },
    });
  });
});
