import type { BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, test } from 'vitest';
import { recorded, soon, startWorkbench, typeInto, type Workbench, whenSaved } from './support/workbench.ts';

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
});
