import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bedsDrawn, recorded, soon, startWorkbench, type Workbench, whenSaved } from './support/workbench.ts';

let workbench: Workbench;
let page: Page;

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
  page = await workbench.open('/');
});

afterAll(async () => workbench?.close());

/** What has the focus, as it is read out: its label, else its text, else the name over it. */
const focused = (): Promise<string> =>
  page.evaluate(`(() => {
    const at = document.activeElement;
    const named = at.getAttribute('aria-label') ?? at.labels?.[0]?.textContent ?? at.textContent;
    return at === document.body ? 'the page' : named.trim();
  })()`);

/** Whether what has the focus can be told by sight: an outline, or, on a shape, a line round it. */
const focusIsSeen = (): Promise<boolean> =>
  page.evaluate(`(() => {
    const at = document.activeElement;
    const { outlineStyle, outlineWidth, stroke, strokeWidth } = getComputedStyle(at);
    const isShape = at instanceof SVGElement;
    const isIn = at.getBoundingClientRect();
    const isOnScreen = isIn.bottom > 0 && isIn.top < innerHeight && isIn.right > 0 && isIn.left < innerWidth;
    const isLined = isShape ? stroke !== 'none' && parseFloat(strokeWidth) > 0 : outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
    return isOnScreen && isLined;
  })()`);

/** Tabs on until something has the focus. */
const tabTo = async (wanted: RegExp, most = 90): Promise<void> => {
  for (let steps = 0; steps < most; steps += 1) {
    if (wanted.test(await focused())) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the Tab key does not come to ${wanted}; it ended on ${await focused()}`);
};

const typeOver = async (text: string): Promise<void> => {
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
};

describe('a filter is taken in by keys alone', () => {
  test('the first Tab leads past the list of rooms', async () => {
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('Skip to the room');
    expect(await focusIsSeen()).toBe(true);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('Take in a filter');
    expect(await focusIsSeen()).toBe(true);
  });

  test('from the bench to a job on its map', async () => {
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Take in a filter' }).waitFor();
    await tabTo(/^canister with a stack/);
    for (let steps = 0; !/^internal box/.test(await focused()); steps += 1) {
      expect(steps).toBeLessThan(6);
      await page.keyboard.press('ArrowDown');
    }
    await page.keyboard.press('Space');
    for (const [field, text] of [
      [/^What you call the job/, 'Corner box by keys'],
      [/^Net water volume/, '60 L'],
      [/^Dry feed given/, '0.4 g/d'],
      [/^Inner width/, '8 cm'],
      [/^Inner depth/, '8 cm'],
      [/^Inner height/, '240 mm'],
      [/^Number of chambers/, '2'],
      [/^Area of the slots/, '12 cm2'],
      [/rated flow/, '300 L/h'],
      [/^Electrical power/, '4 W'],
    ] as const) {
      await tabTo(field);
      expect(await focusIsSeen()).toBe(true);
      await typeOver(text);
    }
    await tabTo(/^Take it in/);
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/jobs\/2\/map$/);
    expect((await recorded(workbench, 2)).document).toMatchObject({
      job: { title: 'Corner box by keys' },
      filter: { family: 'internal-box', measurements: { chambers: 2, innerHeight: '240 mm' } },
    });
  });

  test('media are taken in hand and put into chambers', async () => {
    await tabTo(/^All media/);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Shift+Tab');
    for (let steps = 0; !/^M?20 ppi foam \d/.test(await focused()); steps += 1) {
      expect(steps).toBeLessThan(90);
      await page.keyboard.press('Shift+Tab');
    }
    await page.keyboard.press('Enter');
    await tabTo(/^Put what is in hand here/);
    await page.keyboard.press('Enter');
    await soon(() => bedsDrawn(page)).toHaveLength(1);
    await whenSaved(page);
    expect(Object.values(Object((await recorded(workbench, 2)).document.packing)).flat()).toEqual([
      { medium: 'foam-20ppi', depth: '30 mm' },
    ]);
  });
});

describe('a bed of the drawing is worked on by keys', () => {
  beforeAll(async () => {
    await page.goto(`${workbench.address}/jobs/1/re-pack`);
    await page.locator('.overlay .bed').first().waitFor();
  });

  const ceramics = (beds: readonly string[]): readonly string[] =>
    beds.filter((each) => each.includes('ceramic rings'));

  test('plus and minus change its depth by a millimetre with each press, however quick', async () => {
    await tabTo(/^B3, ceramic rings, 55 mm/);
    expect(await focusIsSeen()).toBe(true);
    for (let presses = 0; presses < 5; presses += 1) await page.keyboard.press('-');
    await soon(focused).toMatch(/^B3, ceramic rings, 50 mm/);
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await soon(focused).toMatch(/^B3, ceramic rings, 52 mm/);
    await page.keyboard.press('Shift+-');
    await soon(focused).toMatch(/^B3, ceramic rings, 42 mm/);
  });

  test('S splits it, and the key is the same with capitals on', async () => {
    await page.keyboard.press('S');
    await soon(async () => ceramics(await bedsDrawn(page))).toHaveLength(2);
    await page.keyboard.press('ControlOrMeta+z');
    await soon(async () => ceramics(await bedsDrawn(page))).toHaveLength(1);
    expect(await focused()).toMatch(/ceramic rings, 42 mm/);
    await page.keyboard.press('s');
    await soon(async () => ceramics(await bedsDrawn(page))).toEqual([
      expect.stringContaining('21 mm'),
      expect.stringContaining('21 mm'),
    ]);
  });

  test('arrows move it, as often as they are pressed, and the focus goes with it', async () => {
    await tabTo(/^M1, loose floss, 25 mm/);
    await page.keyboard.press('ArrowUp');
    await soon(focused).toMatch(/^M2, loose floss, 25 mm/);
    for (const key of ['ArrowDown', 'ArrowUp', 'ArrowDown', 'ArrowUp']) await page.keyboard.press(key);
    await soon(focused).toMatch(/^M2, loose floss, 25 mm/);
    const position = async (): Promise<number> =>
      (await bedsDrawn(page)).findIndex((each) => each.includes('loose floss'));
    await soon(position).toBe(1);
    await page.keyboard.press('ArrowDown');
    await soon(position).toBe(0);
    expect(await focused()).toMatch(/loose floss, 25 mm/);
    expect(await focusIsSeen()).toBe(true);
  });

  test('Delete takes it out, and the focus stays at the drawing', async () => {
    await page.keyboard.press('Delete');
    await soon(() => bedsDrawn(page)).toEqual(
      expect.not.arrayContaining([expect.stringContaining('loose floss')]),
    );
    expect(await focused()).not.toBe('the page');
    await page.keyboard.press('Delete');
    await soon(() => bedsDrawn(page)).toEqual(
      expect.not.arrayContaining([expect.stringContaining('30 ppi foam')]),
    );
    expect(await focused()).not.toBe('the page');
    await page.keyboard.press('ControlOrMeta+z');
    await page.keyboard.press('ControlOrMeta+z');
    await soon(() => bedsDrawn(page)).toContainEqual(expect.stringContaining('loose floss'));
  });

  test('what was done is told in words, and is in the records', async () => {
    await whenSaved(page);
    expect((await recorded(workbench)).document.planned).toMatchObject({
      packing: { 'basket-2': [{ depth: '21 mm' }, { depth: '21 mm' }] },
    });
    expect(await page.locator('.told').getAttribute('role')).toBe('status');
    expect(await page.locator('.told').textContent()).not.toBe('');
  });
});

test.each([
  '/',
  '/jobs/1/take-in',
  '/jobs/1/re-pack',
  '/jobs/1/findings',
  '/shelf',
  '/reckoner',
  '/settings',
])('at %s the Tab key goes through everything and out again, and each stop can be seen', async (path) => {
  await page.goto(`${workbench.address}${path}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  if (path.includes('re-pack')) await soon(() => bedsDrawn(page)).not.toHaveLength(0);
  const stops: string[] = [];
  const unseen: string[] = [];
  for (let steps = 0; steps < 400; steps += 1) {
    await page.keyboard.press('Tab');
    const stop = await focused();
    if (stops.length > 3 && (stop === 'the page' || stop === stops[0])) break;
    stops.push(stop);
    if (!(await focusIsSeen())) unseen.push(stop);
  }
  expect(stops.length).toBeLessThan(400);
  expect(unseen).toEqual([]);
  await page.keyboard.press('Shift+Tab');
  expect(await focused()).not.toBe(stops.at(0));
});
