import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  recorded,
  soon,
  startWorkbench,
  takeEdge,
  typeInto,
  type Workbench,
  whenSaved,
} from './support/workbench.ts';

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

describe('a filter that is taken in before all is filled in', () => {
  test('has the focus where something is lacking, in the order in which it is read', async () => {
    await page.goto(`${workbench.address}/take-in`);
    await page.getByRole('radio', { name: /stack of baskets/ }).check();
    await typeInto(page.getByLabel('Net water volume'), '180 L');
    await button('Take it in').click();
    await soon(() => page.evaluate('document.activeElement.labels[0].textContent')).toMatch(
      /^Number of baskets/,
    );
    await typeInto(page.getByRole('textbox', { name: 'Number of baskets' }), '99');
    await page.getByText('Number of baskets says 99: 99 is too large. Allowed: 6 or less.').waitFor();
    await typeInto(page.getByLabel('Net water volume'), '180');
    await button('Take it in').click();
    await soon(() => page.evaluate('document.activeElement.labels[0].textContent')).toBe('Net water volume');
    await page
      .getByRole('alert')
      .getByText(/to be filled in or mended: .*Tank: net water volume/)
      .waitFor();
  });
});

/** The depth of the plan's foam in the highest basket, and the height of the baskets, set so that it no longer fits. */
const planTooMuch = async (): Promise<void> => {
  await goTo('re-pack');
  const foam = page.locator('.bedlist li').filter({ hasText: '20 ppi foam' });
  await typeInto(foam.getByRole('textbox'), '58 mm');
  await whenSaved(page);
  await goTo('map');
  await page.locator('.overlay .bed').first().waitFor();
  await typeInto(page.getByRole('textbox', { name: 'Usable height of a basket' }), '56 mm');
  await page.getByText('1 field is to be mended.').waitFor();
};

describe('a plan that no longer fits into its chamber', () => {
  test('is named with chamber and room after a reload, and mended there', async () => {
    await planTooMuch();
    await goTo('re-pack');
    await page.reload();
    const wrong = page.getByText(
      /^basket 3 .*has beds 58.0 mm deep in all, but the chamber is only 56.0 mm deep: 2.00 mm too much\. Allowed: at most 56.0 mm in all\.$/,
    );
    await wrong.waitFor();
    await page.getByText('This is the filter as found: what is planned cannot be drawn').waitFor();
    expect(await page.locator('.section svg').count()).toBe(1);
    await typeInto(page.getByRole('textbox', { name: 'Depth of 20 ppi foam' }), '50 mm');
    await page.locator('.overlay .bed').first().waitFor();
    await whenSaved(page);
    const { document } = await recorded(workbench);
    expect(document.planned).toMatchObject({ packing: { 'basket-3': [{ depth: '50 mm' }] } });
  });

  test('leaves the other rooms their figures, and can be thrown away', async () => {
    await page.locator('.standing').getByRole('button', { name: 'Undo' }).click();
    await button('Throw what is planned away').waitFor();
    await goTo('map');
    await page.locator('.overlay .bed').first().waitFor();
    await goTo('compare');
    await page.getByText(/^Planned cannot be computed: .*basket 3 .*58\.0 mm deep in all/).waitFor();
    await goTo('re-pack');
    await button('Throw what is planned away').click();
    await page.locator('.overlay .bed').first().waitFor();
    await whenSaved(page);
    expect((await recorded(workbench)).document.planned).toBeUndefined();
  });
});

describe('the map', () => {
  test('keeps the focus in the field that is typed in when the drawing comes', async () => {
    await goTo('map');
    const height = page.getByRole('textbox', { name: 'Usable height of a basket' });
    await typeInto(height, '');
    await page.getByText('1 field is to be mended.').waitFor();
    await page.reload();
    await page.getByText('The drawing comes when the measurements are filled in').waitFor();
    await height.focus();
    await page.keyboard.type('58');
    await page.keyboard.type(' mm');
    await page.locator('.section svg').first().waitFor();
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Backspace');
    await page.keyboard.type('mm ± 1 mm');
    await soon(async () => (await recorded(workbench)).document).toMatchObject({
      filter: { measurements: { basketHeight: '58 mm ± 1 mm' } },
    });
  });

  test('with fewer baskets than are packed names the one that went, and what lies in it can be moved', async () => {
    await typeInto(page.getByRole('textbox', { name: 'Number of baskets' }), '2');
    await page.getByText(/By the map the filter has no basket 3, and something lies in it/).waitFor();
    await button(/^Move it to basket 2/).click();
    await page.getByText(/basket 2 has beds 10.5 cm deep in all/).waitFor();
    await button('Take 20 ppi foam out').click();
    await whenSaved(page);
    const { document } = await recorded(workbench);
    expect(document).toMatchObject({ filter: { measurements: { baskets: 2 } } });
    expect(Object.keys(Object(document.packing)).toSorted()).toEqual(['basket-1', 'basket-2']);
  });
});

describe('what was built', () => {
  test('is the plan and no more until somebody says so', async () => {
    await goTo('re-pack');
    await page.getByRole('checkbox', { name: 'seal the gaps' }).check();
    await whenSaved(page);
    await goTo('as-left');
    await page.getByRole('heading', { name: 'This is the plan' }).waitFor();
    await page.getByRole('columnheader', { name: 'Planned' }).waitFor();
    expect((await recorded(workbench)).document.asLeft).toBeUndefined();
    await button('Built as planned').click();
    await page.getByRole('columnheader', { name: 'As left' }).waitFor();
    expect(await page.getByRole('heading', { name: 'This is the plan' }).count()).toBe(0);
    await soon(async () => (await recorded(workbench)).document.asLeft).toMatchObject({
      made: ['seal-gaps'],
      day: new Date().toLocaleDateString('en-CA'),
    });
    expect(await page.getByLabel('Built on').inputValue()).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  test('leads to where its flow is timed, as left', async () => {
    await page.getByRole('link', { name: 'Time the flow as left' }).click();
    await page.getByText('What you add here now is of the filter as left.').waitFor();
    const before = await page.locator('.benchtest').count();
    await button('Time a filling at the bench').click();
    expect(await page.getByRole('radio', { name: 'as left, packed anew' }).isChecked()).toBe(true);
    await button('Back to the form').click();
    await page.getByRole('button', { name: 'Flow by a timed filling', exact: true }).click();
    await soon(() => page.locator('.benchtest').last().getByLabel('State').inputValue()).toBe('as-left');
    await page.keyboard.press('Control+z');
    await soon(() => page.locator('.benchtest').count()).toBe(before);
  });

  test('has findings of its own, beside those of the plan and of the filter as found', async () => {
    await goTo('findings');
    await page.getByRole('heading', { name: 'Findings, as left' }).waitFor();
    const said = (): Promise<string | null> => page.locator('.inshort').textContent();
    await page.getByText(/^As left: /).waitFor();
    const left = await said();
    await page.getByRole('link', { name: 'as found', exact: true }).click();
    await page.waitForURL(/findings\?state=as-found$/);
    await page.getByRole('heading', { name: 'Findings, as found' }).waitFor();
    await page.getByText(/^As found: /).waitFor();
    expect(await said()).not.toBe(left);
    await page.goBack();
    await page.getByRole('heading', { name: 'Findings, as left' }).waitFor();
  });
});

describe('two packings of a job', () => {
  const heads = (): Promise<readonly string[]> =>
    page.locator('table.packings th[scope=col]').allInnerTexts();

  test('are told apart from an earlier revision that cannot be had, and no others stand in its place', async () => {
    await goTo('compare');
    await soon(heads).toEqual(['As found', 'As left']);
    const revision = '**/api/jobs/1/revisions/1';
    await page.route(revision, (route) => route.abort());
    await page.getByLabel('against').selectOption('revision-1');
    await page
      .getByRole('alert')
      .getByText('Revision 1 cannot be shown: The server cannot be reached')
      .waitFor();
    expect(await heads()).toEqual([]);
    await page.unroute(revision);
    await page.reload();
    await soon(heads).toEqual(['As found', expect.stringMatching(/^Revision 1, taken in /)]);
  });

  test('keep their names until those of another choice are computed', async () => {
    let goOn = (): void => undefined;
    const held = new Promise<void>((settle) => {
      goOn = settle;
    });
    await goTo('compare');
    await soon(heads).toEqual(['As found', 'As left']);
    await page.route('**/api/jobs/1/revisions/2', async (route) => {
      await held;
      await route.continue();
    });
    await page.getByLabel('against').selectOption('revision-2');
    await page.getByText('They are being computed anew.').waitFor();
    expect(await heads()).toEqual(['As found', 'As left']);
    goOn();
    await soon(heads).toEqual(['As found', expect.stringMatching(/^Revision 2, changed /)]);
  });

  test('are asked for from the server of this machine though the browser has no network', async () => {
    await goTo('compare');
    await soon(heads).toEqual(['As found', 'As left']);
    await page.evaluate("window.dispatchEvent(new Event('offline'))");
    await page.getByLabel('against').selectOption('revision-3');
    await soon(heads).toEqual(['As found', expect.stringMatching(/^Revision 3, changed /)]);
  });
});

test('a bed is as deep as the hand was when it let go, though nothing was drawn in between', async () => {
  await goTo('map');
  const bed = page.locator('.overlay .bed[aria-label^="M2,"]');
  const before = await bed.getAttribute('aria-label');
  await page.locator('.bedlist').waitFor();
  const at = await takeEdge(bed);
  await page.evaluate(`for (const type of ['pointermove', 'pointerup'])
    document.querySelector('.overlay.gripped').dispatchEvent(new PointerEvent(type,
      { bubbles: true, pointerId: 1, clientX: ${at.x}, clientY: ${at.y + 20} }))`);
  await page.mouse.up();
  await soon(() => bed.getAttribute('aria-label')).not.toBe(before);
});

test('a budget that is written while plans are searched with another one stays', async () => {
  await goTo('re-pack');
  const budget = page.getByLabel(/^Budget/);
  await budget.fill('12');
  await button('Search plans').click();
  await button('Cancel').waitFor();
  await budget.fill('25');
  await page.getByText(/^These plans were searched with a budget of £12\.00/).waitFor({ timeout: 60_000 });
  expect(await budget.inputValue()).toBe('25');
  await page.reload();
  await soon(() => budget.inputValue()).toBe('12');
});

test('a window of an older edition keeps no job from being opened', async () => {
  const older = await workbench.open('/plain');
  await older.evaluate(`new Promise((settle) => {
    const asked = indexedDB.open('fettle', 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore('sessions', { keyPath: 'number' });
    asked.onsuccess = () => settle(true);
  })`);
  const newer = await older.context().newPage();
  await newer.goto(`${workbench.address}/jobs/1/map`);
  await newer.locator('.overlay .bed').first().waitFor({ timeout: 10_000 });
  await older.context().close();
});

test('nothing was thrown in the page all the while', () => {
  expect(thrown).toEqual([]);
});
