import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { tooWide } from './support/pageFaults.ts';
import {
  bedsDrawn,
  edgeOf,
  recorded,
  soon,
  startWorkbench,
  typeInto,
  type Workbench,
  whenSaved,
} from './support/workbench.ts';

let workbench: Workbench;
let page: Page;

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

beforeAll(async () => {
  workbench = await startWorkbench(['tall-drum']);
  page = await workbench.open('/', phone);
});

afterAll(async () => workbench?.close());

const tap = (name: string | RegExp): Promise<void> => page.getByRole('button', { name }).first().tap();

/** Longer than a finger has to rest until it holds what lies under it, ms. */
const restMs = 400;

/** Draws a finger from one point of the screen to another, after a rest that takes hold. */
const draw = async (
  from: { x: number; y: number },
  to: { x: number; y: number },
  rest = restMs,
): Promise<void> => {
  const screen = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove', x: number, y: number) =>
    screen.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] });
  await touch('touchStart', from.x, from.y);
  await page.waitForTimeout(rest);
  for (let step = 1; step <= 10; step += 1)
    await touch('touchMove', from.x + ((to.x - from.x) * step) / 10, from.y + ((to.y - from.y) * step) / 10);
  await screen.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await screen.detach();
};

const middleOf = async (shape: Locator): Promise<{ x: number; y: number }> => {
  const box = await shape.boundingBox();
  if (box === null) throw new Error('it is not drawn');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

const bed = (name: string): Locator => page.locator(`.overlay .bed[aria-label*="${name}"]`);

/** Brings the drawing into the middle of the screen. */
const lookAtDrawing = (): Promise<unknown> =>
  page.evaluate("document.querySelector('.overlay').scrollIntoView({ block: 'center' })");

describe('at 390 pixels by touch', () => {
  test('a hang-on-back box is taken in', async () => {
    await page.getByRole('link', { name: 'Take in a filter' }).first().tap();
    await page.getByRole('radio', { name: /hang-on-back/ }).tap();
    for (const [label, text] of [
      ['What you call the job', 'Box by thumb'],
      ['Net water volume', '40 L'],
      ['Dry feed given', '0.3 g/d'],
      ['Inner width of the box across the flow', '12 cm'],
      ['Water depth at the slots while running', '10 cm'],
      ['Number of slots', '2'],
      ['Thickness of a slot along the flow', '2 cm'],
      ['Width of the outlet edge', '10 cm'],
      ['Width of the overflow lip', '4 cm'],
      ['Electrical power at the plug', '4 W'],
      ['Length of the intake hose', '20 cm'],
      ['Bore of the intake hose', '14 mm'],
    ] as const)
      await typeInto(page.getByLabel(label), text);
    await typeInto(page.getByLabel(/rated flow/), '300 L/h');
    await tap('Take it in');
    await page.waitForURL(/\/jobs\/2\/map$/);
    expect((await recorded(workbench, 2)).document).toMatchObject({ filter: { family: 'hang-on-back' } });
  });

  test('a medium is put into a slot, moved to the other and made deeper by the buttons of the list', async () => {
    await tap('All media of the catalogue');
    await tap(/^30 ppi foam \d/);
    await tap('Put what is in hand here');
    await soon(() => bedsDrawn(page)).toHaveLength(1);
    const lies = async () => (await bedsDrawn(page))[0];
    const before = await lies();
    await page.getByLabel(/^Move .* to a chamber$/).selectOption({ index: 1 });
    await soon(lies).not.toBe(before);
    await typeInto(page.getByLabel(/^Depth of/), '8 mm');
    await soon(lies).toContain('8 mm');
    await whenSaved(page);
    expect(Object.values(Object((await recorded(workbench, 2)).document.packing)).flat()).toEqual([
      { medium: 'foam-30ppi', depth: '8 mm' },
    ]);
  });

  test('a bed of the drawing goes where a finger draws it, and is as deep as its edge is pulled', async () => {
    await page.goto(`${workbench.address}/jobs/1/re-pack`);
    await soon(() => bedsDrawn(page)).toHaveLength(4);
    await lookAtDrawing();
    await draw(await middleOf(bed('ceramic rings')), await middleOf(bed('20 ppi foam')));
    await soon(() => bedsDrawn(page)).toContainEqual(expect.stringMatching(/ceramic rings.* in basket 3/));
    await lookAtDrawing();
    const edge = await edgeOf(bed('20 ppi foam'));
    const from = await middleOf(edge);
    await draw(from, { x: from.x, y: from.y + 14 });
    await soon(() => bedsDrawn(page)).not.toContainEqual(expect.stringContaining('20 ppi foam, 50 mm'));
    await whenSaved(page);
    expect((await recorded(workbench)).document.planned).toMatchObject({
      packing: { 'basket-3': [{ medium: 'ceramic-rings-15mm', depth: '55 mm' }] },
    });
  });

  test('the edge of a bed is as large as a fingertip, or as the beds beside it allow', async () => {
    await lookAtDrawing();
    const heightOf = async (shape: Locator): Promise<number> => (await shape.boundingBox())?.height ?? 0;
    const beds = await page.locator('.overlay .bed').all();
    const reach = await Promise.all(beds.map(async (each) => heightOf(await edgeOf(each))));
    const thirds = await Promise.all(beds.map(async (each) => (await heightOf(each)) / 3));
    expect(reach.length).toBeGreaterThan(2);
    for (const [index, height] of reach.entries()) {
      expect(height).toBeLessThanOrEqual(44.1);
      expect(height).toBeGreaterThanOrEqual(Math.min(22, thirds[index]!) + Math.min(...thirds) - 0.1);
    }
    expect(Math.max(...reach)).toBeGreaterThan(20);
  });

  test('a finger that wipes over a bed scrolls the page, and changes nothing', async () => {
    const before = await bedsDrawn(page);
    await lookAtDrawing();
    const top = (): Promise<number> => page.evaluate('scrollY');
    const [was, from] = [await top(), await middleOf(bed('ceramic rings'))];
    await draw(from, { x: from.x, y: from.y - 200 }, 0);
    await soon(top).toBeGreaterThan(was + 50);
    expect(await bedsDrawn(page)).toEqual(before);
  });

  test('plans are searched, and one is taken', async () => {
    await page.getByLabel(/Budget/).fill('20');
    await tap('Search plans');
    const take = page.getByRole('button', { name: /^Take .* into the drawing/ }).first();
    await take.waitFor({ timeout: 60_000 });
    const before = JSON.stringify((await recorded(workbench)).document.planned);
    await take.tap();
    await soon(async () => JSON.stringify((await recorded(workbench)).document.planned)).not.toBe(before);
  });
});

const rooms = [
  '/',
  '/take-in',
  ...[
    'take-in',
    'as-found',
    'as-found?bench',
    'map',
    'findings',
    'forecast',
    're-pack',
    'as-left',
    'history',
  ].map((part) => `/jobs/1/${part}`),
  '/shelf',
  '/reckoner',
  '/reckoner/bed-loss',
  '/settings',
] as const;

/**
 * What is touched and smaller than 44 pixels a side, each with its size. Links within a sentence are as high as its
 * line, what is hidden is not touched, and boxes that belong to a label are as large as the label.
 */
const smallTargets = (): Promise<readonly string[]> =>
  page.evaluate(`[...document.querySelectorAll('a[href], button, input, select, textarea, summary, [role=button]:not(rect)')].flatMap((each) => {
    const label = each.matches('input[type=radio], input[type=checkbox]') ? each.closest('label') : null;
    const { width, height, right, bottom } = (label ?? each).getBoundingClientRect();
    const isInSentence = each.matches('a') && getComputedStyle(each).display === 'inline' && each.parentElement.textContent.trim() !== each.textContent.trim();
    const isHidden = width <= 1 || height <= 1 || right < 0 || bottom < 0;
    if (isHidden || isInSentence || (width >= 43.9 && height >= 43.9)) return [];
    return [(each.getAttribute('aria-label') ?? each.textContent ?? each.id) + ': ' + Math.round(width) + ' × ' + Math.round(height)];
  })`);

describe('on a phone', () => {
  test.each(rooms)('%s needs no moving sideways, and what is touched is large enough', async (path) => {
    await page.goto(`${workbench.address}${path}`, { waitUntil: 'networkidle' });
    await page.getByRole('heading', { level: 1 }).waitFor();
    if (/map|re-pack|as-left|findings/.test(path)) await page.locator('.section svg').first().waitFor();
    expect(await tooWide(page)).toBe(0);
    expect(await smallTargets()).toEqual([]);
  });
});
