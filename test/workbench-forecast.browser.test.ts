import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { soon, startWorkbench, typeInto, type Workbench } from './support/workbench.ts';

let workbench: Workbench;
let page: Page;
const thrown: string[] = [];

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
  page = await workbench.open('/', { locale: 'en-GB' });
  page.on('pageerror', (error) => thrown.push(String(error)));
});

afterAll(async () => workbench?.close());

const sought = (name: string): string | null => new URL(page.url()).searchParams.get(name);

describe('the days to come', () => {
  test('are drawn as dated sections and as curves, with what each pattern of cleaning gives', async () => {
    await page.goto(`${workbench.address}/jobs/1/forecast?clean=never`);
    await page
      .getByText(/The water through a bed is first down by a third after/)
      .waitFor({ timeout: 60_000 });
    await page.getByRole('img', { name: /Flow at the tank, day by day/ }).waitFor({ timeout: 60_000 });
    await page.getByRole('img', { name: /Where the head goes, day by day/ }).waitFor({ timeout: 60_000 });
    const patterns = page.getByRole('table', { name: /What each comes to/ });
    await soon(() => patterns.getByRole('row').count()).toBeGreaterThan(5);
  });

  test('follow the pattern that is chosen, and the address keeps it', async () => {
    await page.getByLabel('What is cleaned, and when').selectOption('everything monthly');
    await page.getByText(/are cleaned out/).waitFor({ timeout: 60_000 });
    expect(sought('clean')).toBe('all/30');
    await page.getByLabel('How far ahead').selectOption('365 days');
    await page.getByText('What each comes to over 365 days').waitFor({ timeout: 60_000 });
    await page.reload();
    await page.getByText('What each comes to over 365 days').waitFor({ timeout: 60_000 });
    expect(await page.getByLabel('What is cleaned, and when').inputValue()).toBe('all/30');
  });

  test('take a pattern as it is written, and say what is wrong with it', async () => {
    await page.getByLabel('What is cleaned, and when').selectOption('another pattern …');
    await typeInto(page.getByLabel('The pattern'), 'basket-9/14');
    await page
      .getByText(/basket-9/)
      .and(page.locator('.fault'))
      .waitFor({ timeout: 60_000 });
    await typeInto(page.getByLabel('The pattern'), 'basket-1/14');
    await soon(() => page.locator('.fault').count()).toBe(0);
    await page.getByRole('rowheader', { name: 'basket-1/14' }).waitFor({ timeout: 60_000 });
    expect(thrown).toEqual([]);
  });
});
