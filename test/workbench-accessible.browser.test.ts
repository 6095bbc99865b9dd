import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { faultsIn, tooWide } from './support/pageFaults.ts';
import { startWorkbench, typeInto, type Workbench } from './support/workbench.ts';

let workbench: Workbench;
let empty: Workbench;

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum', 'back-hanger', 'corner-box', 'two-halves']);
  empty = await startWorkbench();
});

afterAll(async () => {
  await workbench?.close();
  await empty?.close();
});

const searchPlans = async (page: Page, budget: string): Promise<void> => {
  await page.getByLabel(/Budget/).fill(budget);
  await page.getByRole('button', { name: 'Search plans' }).click();
};

const takePlan = (page: Page) => page.getByRole('button', { name: /^Take .* into the drawing/ }).first();

/** A state of a room: its address and what is done there first. */
interface RoomState {
  readonly state: string;
  readonly path: string;
  readonly first?: (page: Page) => Promise<unknown>;
}

const drawn = (page: Page): Promise<void> => page.locator('.section svg').first().waitFor();

const found = async (page: Page): Promise<void> => {
  await page.getByRole('heading', { name: 'Worst first' }).waitFor();
  for (const summary of await page.locator('details > summary').all()) await summary.click();
};

const states: readonly RoomState[] = [
  { state: 'the bench', path: '/' },
  { state: 'the bench without what was looked for', path: '/?words=nothing-of-the-kind' },
  { state: 'taking in', path: '/take-in' },
  {
    state: 'taking in, sent with nothing filled in',
    path: '/take-in',
    first: async (page) => {
      await page.getByRole('radio', { name: /stack of baskets/ }).check();
      await page.getByRole('button', { name: 'Take it in' }).click();
      await page.getByRole('alert').waitFor();
    },
  },
  { state: 'the record of a job', path: '/jobs/1/take-in' },
  {
    state: 'a field that is wrong',
    path: '/jobs/1/take-in',
    first: async (page) => {
      await typeInto(page.getByLabel('Net water volume'), '40 gal');
      await page.locator('.rail .fault').waitFor();
    },
  },
  {
    state: 'findings that wait for a field',
    path: '/jobs/1/findings',
    first: (page) => page.getByRole('heading', { name: 'One field is to be mended first' }).waitFor(),
  },
  {
    state: 'the field mended',
    path: '/jobs/1/take-in',
    first: (page) => typeInto(page.getByLabel('Net water volume'), '180 L'),
  },
  { state: 'bench tests', path: '/jobs/1/as-found' },
  {
    state: 'a flow that has faded',
    path: '/jobs/1/as-found',
    first: async (page) => {
      await page.getByRole('heading', { name: 'The flow has faded: why?' }).click();
      await page.locator('.questions li').first().waitFor({ timeout: 60_000 });
    },
  },
  {
    state: 'the days to come',
    path: '/jobs/1/forecast',
    first: (page) => page.getByRole('img', { name: /Flow at the tank/ }).waitFor({ timeout: 60_000 }),
  },
  { state: 'the bench mode', path: '/jobs/1/as-found?bench' },
  { state: 'the map', path: '/jobs/1/map', first: drawn },
  { state: 'the map of a hang-on-back box', path: '/jobs/2/map', first: drawn },
  { state: 'findings with their working', path: '/jobs/1/findings', first: found },
  {
    state: 'findings with how sure they are',
    path: '/jobs/1/findings',
    first: (page) =>
      page.getByRole('region', { name: 'How sure' }).getByRole('table').waitFor({ timeout: 60_000 }),
  },
  {
    state: 're-packing with a medium in hand',
    path: '/jobs/1/re-pack',
    first: async (page) => {
      await drawn(page);
      await page.getByRole('button', { name: /loose floss \d/ }).click();
      await page.locator('.overlay .chamber').first().waitFor();
    },
  },
  {
    state: 'a search that found nothing better',
    path: '/jobs/3/re-pack',
    first: async (page) => {
      await searchPlans(page, '');
      await page.getByText('Nothing better was found.').waitFor({ timeout: 60_000 });
    },
  },
  {
    state: 'plans that were found',
    path: '/jobs/3/re-pack',
    first: async (page) => {
      await searchPlans(page, '30 USD');
      await takePlan(page).waitFor({ timeout: 60_000 });
    },
  },
  {
    state: 'a plan that was found against the filter as found',
    path: '/jobs/3/compare?second=plan-1',
    first: async (page) => {
      await page.getByLabel('Dirt over time, as found').waitFor();
      await page.getByLabel('Dirt over time, plan 1').waitFor();
    },
  },
  { state: 'nothing to compare yet', path: '/jobs/2/compare' },
  {
    state: 'the write-up, with room for own words',
    path: '/jobs/2/write-up',
    first: (page) => page.getByRole('document').getByRole('heading', { name: 'What was found' }).waitFor(),
  },
  {
    state: 'the build sheet of a write-up',
    path: '/jobs/2/write-up?document=build',
    first: (page) => page.getByRole('document').getByRole('heading').first().waitFor(),
  },
  {
    state: 'a quote with open prices, agreed to',
    path: '/jobs/4/quote',
    first: async (page) => {
      await page.getByRole('heading', { name: 'The owner agrees' }).waitFor();
      for (const name of ['Add work', 'Add part', 'The owner agrees, today']) {
        const one = page.getByRole('button', { name });
        if (await one.isVisible()) await one.click();
      }
      await page.getByLabel('Agreed on').waitFor();
    },
  },
  { state: 'as left', path: '/jobs/4/as-left', first: drawn },
  { state: 'the history', path: '/jobs/1/history' },
  { state: 'the shelf', path: '/shelf' },
  { state: 'the reckoner', path: '/reckoner' },
  { state: 'a formula', path: '/reckoner/bed-loss' },
  { state: 'the settings', path: '/settings' },
  { state: 'an address that leads nowhere', path: '/jobs/999999' },
];

describe.each([390, 1200])('on a screen of %i pixels', (width) => {
  let page: Page;
  beforeAll(async () => {
    page = await workbench.open('/', { viewport: { width, height: 900 } });
  });
  afterAll(async () => page?.context().close());

  /** What differs between the themes is colour alone, so the second is held to the rule about that. */
  const faultsInBothThemes = async (of: Page): Promise<readonly string[]> => {
    await of.emulateMedia({ colorScheme: 'light' });
    const light = await faultsIn(of);
    await of.emulateMedia({ colorScheme: 'dark' });
    return [...light, ...(await faultsIn(of, ['color-contrast']))];
  };

  test.each(states)(
    '$state can be used by everybody, light or dark, and needs no moving sideways',
    async ({ path, first }) => {
      await page.goto(`${workbench.address}${path}`);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await first?.(page);
      expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
      expect(await faultsInBothThemes(page)).toEqual([]);
      expect(await tooWide(page)).toBe(0);
    },
  );

  test('an empty bench can be used by everybody, light or dark', async () => {
    const bench = await empty.open('/', { viewport: { width, height: 900 } });
    await bench.getByRole('heading', { name: 'Nothing is on the bench yet' }).waitFor();
    expect(await faultsInBothThemes(bench)).toEqual([]);
    await bench.context().close();
  });
});

test('at 200 % nothing is cut off, and all that can be used can still be reached', async () => {
  const controls = (page: Page): Promise<number> =>
    page.getByRole('button').or(page.getByRole('link')).or(page.getByRole('textbox')).count();
  const [whole, zoomed] = [
    await workbench.open('/jobs/1/re-pack', { viewport: { width: 1280, height: 900 } }),
    await workbench.open('/jobs/1/re-pack', { viewport: { width: 640, height: 450 } }),
  ];
  for (const page of [whole, zoomed]) await drawn(page);
  await whole.locator('.overlay .bed').first().waitFor();
  await zoomed.locator('.overlay .bed').first().waitFor();
  expect(await controls(zoomed)).toBe(await controls(whole));
  expect(await tooWide(zoomed)).toBe(0);
  for (const page of [whole, zoomed]) await page.context().close();
});

test('where people asked for less movement nothing moves', async () => {
  const page = await workbench.open('/jobs/1/re-pack', { reducedMotion: 'reduce' });
  await drawn(page);
  const moving = await page.evaluate(
    "document.getAnimations().filter(({ playState }) => playState === 'running').length",
  );
  const moves = await page.evaluate(
    "document.querySelectorAll('animate, animateTransform, animateMotion').length",
  );
  expect([moving, moves]).toEqual([0, 0]);
  await page.context().close();
});
