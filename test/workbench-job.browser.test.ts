import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fettle } from './support/program.ts';
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
const thrown: string[] = [];

beforeAll(async () => {
  workbench = await startWorkbench();
  page = await workbench.open('/');
  page.on('pageerror', (error) => thrown.push(String(error)));
});

afterAll(async () => workbench?.close());

const button = (name: string | RegExp): Locator => page.getByRole('button', { name });

/** Goes to a part of the job by its link in the rail. */
const goTo = (part: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Parts of the job' }).getByRole('link', { name: part }).click();

/** The middle of something in the drawing, in pixels of the screen. */
const middleOf = async (shape: Locator): Promise<{ x: number; y: number }> => {
  await shape.scrollIntoViewIfNeeded();
  const box = await shape.boundingBox();
  if (box === null) throw new Error('it is not drawn');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

const bed = (tag: string): Locator => page.locator(`.overlay .bed[aria-label^="${tag},"]`);

/** Takes hold at one point and lets go at another, by way of points between. */
const drag = async (from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 12 });
  await page.mouse.up();
};

/** The figures of the packing that is looked at, by their names. */
const figures = (): Promise<Readonly<Record<string, string>>> =>
  page.evaluate(`Object.fromEntries([...document.querySelector('table.figures')?.tBodies[0].rows ?? []]
    .map(({ cells }) => [cells[0].textContent, cells[2].textContent]))`);

const inOneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

/** The button that takes a medium in hand: its name, then its price. */
const medium = (name: string): Locator => button(new RegExp(`^${name} \\d`));

const chamberTarget = (name: string): Locator =>
  page.getByRole('button', { name: new RegExp(`^Put .* into ${name}`) });

describe('a filter is taken in', () => {
  test('an empty bench tells what to do, and leads to taking in', async () => {
    const steps = page.getByRole('listitem').filter({ hasText: /findings|Take in|Re-pack|found in it/ });
    expect(await steps.count()).toBe(4);
    await page.locator('.empty').getByRole('link', { name: 'Take in a filter' }).click();
    await page.getByRole('heading', { level: 1, name: 'Take in a filter' }).waitFor();
  });

  test('with what a tape and the plate say it stands in the drawing before it is sent', async () => {
    await page.getByRole('radio', { name: /stack of baskets/ }).check();
    await typeInto(page.getByLabel('What you call the job'), 'Grey drum, slow');
    await typeInto(page.getByLabel('Net water volume'), '48 US gal');
    await typeInto(page.getByLabel('Dry feed given'), '1.5 g/d');
    await typeInto(page.getByLabel('Number of baskets'), '3');
    await typeInto(page.getByLabel('Basket width, inside'), '168 mm');
    await typeInto(page.getByLabel('Basket depth front to back, inside'), '16.8 cm');
    await typeInto(page.getByLabel('Usable height of a basket'), '2 1/4 in');
    await typeInto(page.getByLabel(/rated flow/), '850 L/h');
    await typeInto(page.getByLabel('Electrical power at the plug'), '13 W');
    for (const hose of ['intake', 'outlet']) {
      await typeInto(page.getByLabel(`Length of the ${hose} hose`), '1.5 m');
      await typeInto(page.getByLabel(`Bore of the ${hose} hose`), '5/8 in');
    }
    await page.locator('.preview svg').first().waitFor();
    await button('Take it in').click();
    await page.waitForURL(/\/jobs\/1\/map$/);
    expect((await recorded(workbench)).document).toMatchObject({
      job: { title: 'Grey drum, slow' },
      tank: { volume: '48 US gal' },
      filter: { measurements: { baskets: 3, basketHeight: '2 1/4 in' } },
    });
  });

  test('what was found in it is put into the chambers of the drawing', async () => {
    await button('All media of the catalogue').click();
    for (const [name, basket] of [
      ['loose floss', 'basket 1'],
      ['30 ppi foam', 'basket 1'],
      ['ceramic rings', 'basket 2'],
      ['20 ppi foam', 'basket 3'],
    ] as const) {
      await medium(name).click();
      await chamberTarget(basket).click();
      await medium(name).click();
    }
    await soon(() => bedsDrawn(page)).toHaveLength(4);
    await whenSaved(page);
    expect((await recorded(workbench)).document.packing).toEqual({
      'basket-1': [
        { medium: 'foam-30ppi', depth: '27 mm' },
        { medium: 'floss-loose', depth: '30 mm' },
      ],
      'basket-2': [{ medium: 'ceramic-rings-15mm', depth: '30 mm' }],
      'basket-3': [{ medium: 'foam-20ppi', depth: '30 mm' }],
    });
  });

  test('the findings say in every printed digit what the command says of the same records', async () => {
    await goTo('Findings');
    await page.getByRole('heading', { name: 'Worst first' }).waitFor();
    // Ranges come once they are drawn.
    await page.locator('.inshort p', { hasText: /\(.+ to .+\) at a normal stock/ }).waitFor();
    const sentences = await page.locator('.inshort p').allTextContents();
    const findings = await page.locator('.finding .says').allTextContents();
    const { out } = await fettle('assess', '1', '--data', workbench.folder);
    expect(sentences).toHaveLength(5);
    expect(findings.length).toBeGreaterThan(2);
    for (const said of [...sentences.slice(1), ...findings])
      expect(inOneLine(out)).toContain(inOneLine(said));
    const answer = await fetch(`${workbench.address}/api/jobs/1/assessment`);
    const assessed = (await answer.json()) as { dutyPoint: { flow: { value: number } } };
    const flow = Number(/([\d.]+) L\/h flows/.exec(sentences.join(' '))?.[1]);
    expect(flow).toBe(Number(assessed.dutyPoint.flow.value.toPrecision(3)));
  });
});

describe('it is packed anew', () => {
  test('a bed that is drawn onto one beside which it has no room changes places with it, and the figures follow', async () => {
    await goTo('Re-pack');
    await soon(figures).toMatchObject({ 'Flow, clean': expect.stringContaining('L/h') });
    const before = await figures();
    await drag(await middleOf(bed('M1')), await middleOf(bed('B3')));
    await soon(() => bedsDrawn(page)).toContainEqual(expect.stringMatching(/loose floss.* in basket 2/));
    await soon(figures).not.toEqual(before);
    await whenSaved(page);
    const { document } = await recorded(workbench);
    expect(document.planned).toMatchObject({
      packing: {
        'basket-1': [{ medium: 'foam-30ppi' }, { medium: 'ceramic-rings-15mm' }],
        'basket-2': [{ medium: 'floss-loose' }],
      },
    });
    expect(document.packing).toMatchObject({
      'basket-1': [{ medium: 'foam-30ppi' }, { medium: 'floss-loose' }],
    });
  });

  test('a bed is as deep as its edge is pulled, and no deeper than its chamber', async () => {
    const foam = page.locator('.overlay .bed[aria-label*="20 ppi foam"]');
    const edge = await edgeOf(foam);
    const from = await middleOf(edge);
    await drag(from, { x: from.x, y: from.y - 12 });
    await soon(async () => /(\d+) mm/.exec((await foam.getAttribute('aria-label')) ?? '')?.[1]).not.toBe(
      '30',
    );
    await drag(await middleOf(edge), { x: from.x, y: from.y - 300 });
    await soon(() => foam.getAttribute('aria-label')).toContain('57 mm');
  });

  test('a medium from the shelf comes where there is room, and a full chamber says so', async () => {
    await button('All media of the catalogue').click();
    await medium('10 ppi foam').click();
    await chamberTarget('basket 3').click();
    await page.getByText(/basket 3 is full: make a bed thinner/).waitFor();
    await chamberTarget('basket 2').click();
    await soon(() => bedsDrawn(page)).toContainEqual(expect.stringMatching(/10 ppi foam.* in basket 2/));
    await medium('10 ppi foam').click();
  });

  test('a bed is split in two, and one half of it taken out', async () => {
    const count = (await bedsDrawn(page)).length;
    const foam = async () => (await bedsDrawn(page)).filter((each) => each.includes('20 ppi foam'));
    await page
      .locator('.bedlist li')
      .filter({ hasText: '20 ppi foam' })
      .getByRole('button', { name: /^Split/ })
      .click();
    await soon(foam).toEqual([expect.stringContaining('28 mm'), expect.stringContaining('29 mm')]);
    await page
      .locator('.bedlist li')
      .filter({ hasText: '20 ppi foam' })
      .first()
      .getByRole('button', { name: /^Take .* out$/ })
      .click();
    await soon(foam).toHaveLength(1);
    expect(await bedsDrawn(page)).toHaveLength(count);
  });

  test('an alteration changes the figures, and without it they are as before', async () => {
    const before = await figures();
    await page.getByRole('checkbox', { name: 'change the hoses' }).check();
    await soon(figures).not.toEqual(before);
    await page.getByRole('checkbox', { name: 'change the hoses' }).uncheck();
    await soon(figures).toEqual(before);
    await whenSaved(page);
  });

  test('plans are searched within a budget, and one that is taken is in drawing, figures and records', async () => {
    await page.getByLabel(/Budget/).fill('40');
    await button('Search plans').click();
    await page
      .getByRole('row')
      .filter({ has: button(/^Take .* into the drawing/) })
      .first()
      .waitFor({ timeout: 60_000 });
    const row = page
      .getByRole('row')
      .filter({ has: button(/^Take .* into the drawing/) })
      .first();
    const cost = Number((await row.getByRole('cell').nth(4).textContent())?.split(' ')[0]);
    expect(cost).toBeLessThanOrEqual(40);
    const flow = Number.parseFloat((await row.getByRole('cell').first().textContent()) ?? '');
    const before = await bedsDrawn(page);
    await row.getByRole('button').click();
    await soon(() => bedsDrawn(page)).not.toEqual(before);
    await whenSaved(page);
    const ends = await fettle('assess', '1', '--state', 'planned', '--data', workbench.folder);
    const printed = await figures();
    expect(ends).toMatchObject({ code: 0 });
    expect(ends.out).toContain(`Clean, ${printed['Flow, clean']} flows`);
    expect(flow).toBeGreaterThan(0);
  });

  test('undo goes back to the filter as taken in, and redo on to the plan', async () => {
    const planned = (await recorded(workbench)).document;
    const undo = page.locator('.standing').getByRole('button', { name: 'Undo' });
    const redo = page.locator('.standing').getByRole('button', { name: 'Redo' });
    for (let steps = 0; await undo.isEnabled(); steps += 1) {
      expect(steps).toBeLessThan(60);
      await undo.click();
    }
    await whenSaved(page);
    await soon(async () => (await recorded(workbench)).document.packing).toEqual({});
    expect((await recorded(workbench)).document.planned).toBeUndefined();
    while (await redo.isEnabled()) await redo.click();
    await whenSaved(page);
    await soon(async () => (await recorded(workbench)).document).toEqual(planned);
  });

  test('the plan is held against the filter as found, in the figures that each has by itself', async () => {
    const planned = await figures();
    await goTo('Compare');
    await soon(figures).toMatchObject(planned);
    expect(await page.getByRole('img', { name: 'As found and Planned' }).count()).toBe(1);
    expect(await page.getByRole('img', { name: 'Dirt over time' }).count()).toBe(2);
    await page.getByLabel('against').selectOption('As found');
    await soon(figures).not.toMatchObject(planned);
    expect(await page.locator('table.figures tr.differs').count()).toBe(0);
    await goTo('Re-pack');
    await soon(figures).toEqual(planned);
  });

  test('a dimension of the drawing leads to the field that it is typed into', async () => {
    const planned = await figures();
    await goTo('Map');
    await button('Change the usable height of a basket').click();
    const path = `document.activeElement?.closest('[data-path]')?.getAttribute('data-path')`;
    await soon(() => page.evaluate(path)).toBe('filter.measurements.basketHeight');
    await goTo('Re-pack');
    // Until those of the plan are computed, the figures of the filter as found are still there.
    await soon(figures).toEqual(planned);
  });

  test('a reload keeps drawing, figures and the way back', async () => {
    await soon(figures).not.toEqual({});
    const before = { beds: await bedsDrawn(page), figures: await figures() };
    await page.reload();
    await soon(async () => ({ beds: await bedsDrawn(page), figures: await figures() })).toEqual(before);
    expect(await page.locator('.standing').getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
    await soon(() => page.getByLabel(/Budget/).inputValue()).toBe('40');
  });

  test('nothing was thrown in the page all the while', () => {
    expect(thrown).toEqual([]);
  });
});
