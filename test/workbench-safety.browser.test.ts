import type { BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { killAtOnce } from '../scripts/records/serverProcess.ts';
import { recorded, soon, startWorkbench, typeInto, type Workbench, whenSaved } from './support/workbench.ts';

let workbench: Workbench;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
});

afterAll(async () => workbench?.close());

beforeEach(async () => {
  await context?.close();
  page = await workbench.open('/jobs/1/take-in');
  context = page.context();
  await whenSaved(page);
});

const title = (of = page) => of.getByLabel('What the job is called');
const volume = (of = page) => of.getByLabel('Net water volume');
const standing = (of = page) => of.locator('.standing [role=status]');

const recordedTitle = async (): Promise<unknown> => Object((await recorded(workbench)).document.job).title;

/** Changes the job from another machine, as its program would. */
const changeElsewhere = async (change: (document: Record<string, Record<string, unknown>>) => void) => {
  const { document, tag } = await recorded(workbench);
  const next = structuredClone(document) as Record<string, Record<string, unknown>>;
  change(next);
  const answer = await fetch(`${workbench.address}/api/jobs/1`, {
    method: 'PUT',
    headers: { 'Content-Type': 'application/json', 'If-Match': tag },
    body: JSON.stringify(next),
  });
  expect(answer.status).toBe(200);
};

describe('what was typed is not lost', () => {
  test('when the server dies under the hands, and it gets into the records once it is there again', async () => {
    await title().fill('');
    await title().pressSequentially('Tall drum, be', { delay: 15 });
    await killAtOnce(workbench.server);
    await title().pressSequentially('fore the power went', { delay: 15 });
    await title().blur();
    await standing().getByText('the records cannot be reached').waitFor();
    await page.reload().catch(() => undefined);
    await workbench.startAgain();
    await page.goto(`${workbench.address}/jobs/1/take-in`);
    await soon(() => title().inputValue()).toBe('Tall drum, before the power went');
    await whenSaved(page);
    await soon(recordedTitle).toBe('Tall drum, before the power went');
    expect(await page.locator('.standing').getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
  });

  test('when the page is left before it is written', async () => {
    await title().fill('Tall drum, half a wor');
    await standing().getByText('Saving in a moment').waitFor();
    await page.goto('about:blank');
    await page.goto(`${workbench.address}/jobs/1/take-in`);
    await soon(() => title().inputValue()).toBe('Tall drum, half a wor');
    await soon(recordedTitle).toBe('Tall drum, half a wor');
  });

  test('when the page is left in the middle of a word', async () => {
    await title().fill('Tall drum, in the middle of a wo');
    await page.goto('about:blank');
    await page.goto(`${workbench.address}/jobs/1/take-in`);
    await soon(() => title().inputValue()).toBe('Tall drum, in the middle of a wo');
    await soon(recordedTitle).toBe('Tall drum, in the middle of a wo');
  });

  test('without a network: the page opens again, the change is in it, and goes out when the network is back', async () => {
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
    await page.reload();
    await whenSaved(page);
    await context.setOffline(true);
    await typeInto(volume(), '175 L');
    await standing().getByText('the records cannot be reached').waitFor();
    await page.reload();
    await soon(() => volume().inputValue()).toBe('175 L');
    expect(Object((await recorded(workbench)).document.tank).volume).not.toBe('175 L');
    await context.setOffline(false);
    await soon(async () => Object((await recorded(workbench)).document.tank).volume).toBe('175 L');
    await whenSaved(page);
  });
});

/** Types a title, and lets another machine write before that is written. */
const typeWhileElsewhere = async (text: string, change: Parameters<typeof changeElsewhere>[0]) => {
  let letGo = (): void => undefined;
  const isHeld = new Promise<void>((settle) => {
    letGo = settle;
  });
  await page.route('**/api/jobs/1?merge=fields', async (route) => {
    await isHeld;
    await route.continue();
  });
  await typeInto(title(), text);
  await standing().getByText('Saving', { exact: true }).waitFor();
  await changeElsewhere(change);
  letGo();
};

describe('more than one at the same job', () => {
  test('another machine changed another field: both changes are kept, and seen', async () => {
    await typeWhileElsewhere('Changed here', ({ tank }) => {
      tank!.feed = '1.7 g/d';
    });
    await soon(async () => (await recorded(workbench)).document).toMatchObject({
      job: { title: 'Changed here' },
      tank: { feed: '1.7 g/d' },
    });
    await soon(() => page.getByLabel('Dry feed given').inputValue()).toBe('1.7 g/d');
    await whenSaved(page);
  });

  test.each([
    { chosen: 'Yours', stands: 'Typed here: Yours' },
    { chosen: 'Theirs', stands: 'Of the other machine' },
  ])(
    'another machine changed the same field: $chosen can be chosen, and stands',
    async ({ chosen, stands }) => {
      await typeWhileElsewhere(`Typed here: ${chosen}`, ({ job, tank }) => {
        job!.title = 'Of the other machine';
        tank!.pH = chosen === 'Yours' ? '7.1' : '7.2';
      });
      await page.getByRole('heading', { name: 'Somebody else changed the same fields' }).waitFor();
      expect(await recordedTitle()).toBe('Of the other machine');
      await page.getByRole('radio', { name: new RegExp(`^${chosen}`) }).check();
      await page.getByRole('button', { name: 'Keep these' }).click();
      await whenSaved(page);
      await soon(async () => (await recorded(workbench)).document).toMatchObject({
        job: { title: stands },
        tank: { pH: chosen === 'Yours' ? '7.1' : '7.2' },
      });
      await soon(() => title().inputValue()).toBe(stands);
    },
  );

  test('a change that waits for a choice is still there after a reload', async () => {
    await typeWhileElsewhere('Ours again', ({ job }) => {
      job!.title = 'Theirs again';
    });
    await page.getByRole('heading', { name: 'Somebody else changed the same fields' }).waitFor();
    await page.reload();
    await page.getByRole('heading', { name: 'Somebody else changed the same fields' }).waitFor();
    await soon(() => title().inputValue()).toBe('Ours again');
    await page.getByRole('button', { name: 'Keep these' }).click();
    await soon(recordedTitle).toBe('Ours again');
  });
});

/** A field, and what is typed into it with what the sentence beside it must say. */
interface WrongInput {
  readonly room: string;
  readonly label: string;
  readonly typed: readonly (readonly [typed: string, says: RegExp])[];
}

const outside = /too (small|large).*; allowed:/;

const wrongInputs: readonly WrongInput[] = [
  {
    room: '/jobs/1/take-in',
    label: 'Net water volume',
    typed: [
      ['-180 L', outside],
      ['NaN', /NaN/],
      ['Infinity L', /Infinity/],
      ['3 buckets', /buckets/],
      ['1e30 L', outside],
      ['40 gal', /US gal/],
    ],
  },
  {
    room: '/jobs/1/take-in',
    label: 'What the job is called',
    typed: [['w'.repeat(300), /200|characters|long/]],
  },
  {
    room: '/jobs/1/map',
    label: 'Basket width, inside',
    typed: [
      ['-168 mm', outside],
      ['9 km', outside],
      ['168 furlongs', /furlongs/],
    ],
  },
  {
    room: '/jobs/1/map',
    label: 'Number of baskets',
    typed: [
      ['NaN', /NaN/],
      ['2.5', /2\.5 is not a whole number/],
    ],
  },
  { room: '/jobs/1/as-found', label: 'Volume filled in each run', typed: [['1 gal', /US gal/]] },
  { room: '/jobs/1/as-found', label: 'Power at the plug', typed: [['-3 W', outside]] },
  {
    room: '/settings',
    label: 'Price of electricity',
    typed: [
      ['-0.2 GBP/kWh', outside],
      ['dear', /dear/],
    ],
  },
];

/** Job and settings as the records have them. */
const allRecorded = async (): Promise<unknown> => ({
  job: (await recorded(workbench)).document,
  settings: await (await fetch(`${workbench.address}/api/settings`)).text(),
});

const problemAt = async (field: Locator): Promise<string> =>
  (await field.locator('xpath=following-sibling::p[contains(@id, "-problem")]').textContent()) ?? '';

describe('wrong input', () => {
  test.each(wrongInputs)(
    'in $label of $room: one sentence at the field, kept as typed, and not in the records',
    async ({ room, label, typed }) => {
      const before = await allRecorded();
      await page.goto(`${workbench.address}${room}`);
      if (room.endsWith('/map')) await page.locator('.overlay .bed').first().waitFor();
      const field = page.getByLabel(label, { exact: true });
      const was = await field.inputValue();
      for (const [text, says] of typed) {
        await typeInto(field, text);
        await soon(() => problemAt(field)).toMatch(says);
        const sentence = await problemAt(field);
        expect(sentence).toMatch(/^\S.*[.!?]$/s);
        expect(sentence).not.toMatch(/undefined|\[object|Error:/);
        expect(await field.getAttribute('aria-invalid')).toBe('true');
        await soon(() => standing().textContent()).toMatch(/Kept in this browser/);
        expect(await allRecorded()).toEqual(before);
      }
      await page.reload();
      await soon(() => field.inputValue()).toBe(typed.at(-1)![0]);
      await typeInto(field, was);
      await whenSaved(page);
    },
  );

  test('a budget for plans that is no sum of money says so, and nothing is searched', async () => {
    await page.goto(`${workbench.address}/jobs/1/re-pack`);
    const field = page.getByLabel(/Budget/);
    for (const typed of ['-5', 'NaN', 'a lot', '5 gal']) {
      await field.fill(typed);
      await page.getByText(`${typed} is no sum of money`).waitFor();
      await page.getByRole('button', { name: 'Search plans' }).click();
      expect(await page.getByRole('button', { name: 'Search plans' }).isEnabled()).toBe(true);
    }
  });

  test('the depth of a bed that is none leaves the bed and the records as they were', async () => {
    await page.goto(`${workbench.address}/jobs/1/re-pack`);
    const { document } = await recorded(workbench);
    const field = page.getByLabel('Depth of M1');
    for (const typed of ['-3 mm', 'NaN', '1 gal', 'deep']) {
      await typeInto(field, typed);
      expect(await field.getAttribute('aria-invalid')).toBe('true');
      const described = (await field.getAttribute('aria-describedby')) ?? '';
      await soon(() => page.locator(`[id="${described}"]`).textContent()).not.toBe('');
    }
    expect((await recorded(workbench)).document).toEqual(document);
  });
});
