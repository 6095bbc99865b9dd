import type { BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import {
  bedsDrawn,
  recorded,
  soon,
  startWorkbench,
  takeEdge,
  typeInto,
  type Workbench,
  whenSaved,
} from './support/workbench.ts';

let workbench: Workbench;
let context: BrowserContext;
let page: Page;
let other: Page;

const opened = async (): Promise<Page> => {
  const window = await context.newPage();
  await window.goto(`${workbench.address}/jobs/1/take-in`);
  await whenSaved(window);
  return window;
};

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
});

afterAll(async () => workbench?.close());

beforeEach(async () => {
  await context?.close();
  page = await workbench.open('/jobs/1/take-in');
  context = page.context();
  other = await opened();
});

const title = (of: Page): Locator => of.getByLabel('What the job is called');
const volume = (of: Page): Locator => of.getByLabel('Net water volume');

const recordedTitle = async (): Promise<unknown> => Object((await recorded(workbench)).document.job).title;

const alikeDrawn = async (pages: readonly Page[]): Promise<boolean> =>
  new Set((await Promise.all(pages.map(bedsDrawn))).map(String)).size === 1;

describe('two windows of one browser on one job', () => {
  test('are in step, and either takes back what the other did', async () => {
    const before = await title(page).inputValue();
    await typeInto(title(page), 'Seen in both windows');
    await soon(() => title(other).inputValue()).toBe('Seen in both windows');
    await whenSaved(page);
    await other.locator('.standing').getByRole('button', { name: 'Undo' }).click();
    await soon(() => title(page).inputValue()).toBe(before);
    await soon(recordedTitle).toBe(before);
    await whenSaved(page);
    await whenSaved(other);
  });

  test('in which is typed at the same time come to show both, and so do a third and the records', async () => {
    await title(page).fill('');
    await volume(other).fill('');
    await Promise.all([
      title(page).pressSequentially('Typed while the other was typed in', { delay: 30 }),
      volume(other).pressSequentially('181.25 L', { delay: 120 }),
    ]);
    await whenSaved(page);
    await whenSaved(other);
    const third = await opened();
    for (const each of [page, other, third]) {
      await soon(() => title(each).inputValue()).toBe('Typed while the other was typed in');
      await soon(() => volume(each).inputValue()).toBe('181.25 L');
    }
    await soon(async () => (await recorded(workbench)).document).toMatchObject({
      job: { title: 'Typed while the other was typed in' },
      tank: { volume: '181.25 L' },
    });
  });

  test('a bed that another one takes out is out of the hand that pulls it, and its neighbour stays as it is', async () => {
    for (const each of [page, other]) {
      await each.goto(`${workbench.address}/jobs/1/map`);
      await soon(() => bedsDrawn(each)).toHaveLength(4);
      await whenSaved(each);
    }
    const [first, second] = (await bedsDrawn(page)).filter((each) => each.includes('basket 1'));
    const { x, y } = await takeEdge(page.locator(`.overlay .bed[aria-label="${first}"]`));
    await page.mouse.move(x, y + 20, { steps: 4 });
    await soon(() => bedsDrawn(page)).not.toContain(first);
    // What two do to one bed in the same moment, the one who is heard last does; here it is seen first.
    await whenSaved(page);
    await page.waitForTimeout(500);
    await soon(async () => alikeDrawn([page, other])).toBe(true);
    await other
      .locator('.bedlist li')
      .filter({ hasText: first!.split(', ')[1]! })
      .getByRole('button', { name: /^Take .* out$/ })
      .click();
    await page.getByText(/was taken out of basket 1 .*meanwhile/).waitFor();
    await page.mouse.move(x, y + 35, { steps: 4 });
    await page.mouse.up();
    await whenSaved(page);
    const left = async (of: Page) => (await bedsDrawn(of)).map((each) => each.replace(/^\w+, /, ''));
    for (const each of [page, other]) {
      await soon(() => bedsDrawn(each)).toHaveLength(3);
      expect(await left(each)).toContain(second!.replace(/^\w+, /, ''));
    }
  });
});

test('a pull that the browser takes the pointer away from leaves the bed, and what can be undone, as they were', async () => {
  await page.goto(`${workbench.address}/jobs/1/map`);
  const bed = page.locator('.overlay .bed').first();
  const undo = page.locator('.standing').getByRole('button', { name: 'Undo' });
  const before = [await bed.getAttribute('aria-label'), await undo.getAttribute('title')];
  const { x, y } = await takeEdge(bed);
  await page.mouse.move(x, y + 20, { steps: 5 });
  await soon(() => bed.getAttribute('aria-label')).not.toBe(before[0]);
  await page.evaluate(
    "document.querySelector('.overlay.gripped').dispatchEvent(new PointerEvent('pointercancel', { bubbles: true, pointerId: 1 }))",
  );
  await soon(() => bed.getAttribute('aria-label')).toBe(before[0]);
  await page.mouse.up();
  expect([await bed.getAttribute('aria-label'), await undo.getAttribute('title')]).toEqual(before);
});
