import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from './support/browser.ts';
import { fettle, fileWith, inProject, newFolder } from './support/program.ts';

let browser: Browser;
let svg: string;

beforeAll(async () => {
  browser = await openBrowser();
  const file = join(newFolder(), 'drawing.svg');
  expect(await fettle('demo', '--out', file)).toMatchObject({ code: 0, err: '' });
  svg = readFileSync(file, 'utf8');
}, 120_000);

afterAll(async () => browser?.close());

const opened = async (file: string, width: number): Promise<Page> => {
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  await page.goto(pathToFileURL(file).href);
  return page;
};

interface Extent {
  readonly content: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where the browser puts every text, and the whole sheet, in pixels of the screen. */
const extents = (page: Page) =>
  page.evaluate(`(() => {
    const extent = (element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      return { content: element.textContent, left, right, top, bottom };
    };
    const root = document.querySelector('svg');
    const shapes = 'path, rect, line, circle, ellipse, polygon, polyline, text, use';
    const inDefs = (element) => element.closest('defs, pattern, marker, clipPath, mask') !== null;
    return {
      sheet: extent(root),
      texts: [...root.querySelectorAll('text')].map(extent),
      shapes: [...root.querySelectorAll(shapes)].filter((each) => !inDefs(each)).map(extent),
    };
  })()`) as Promise<{ sheet: Extent; texts: Extent[]; shapes: Extent[] }>;

/** Pixels by which two extents overlap, the smaller way. */
const overlap = (one: Extent, other: Extent): number =>
  Math.min(
    Math.min(one.right, other.right) - Math.max(one.left, other.left),
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top),
  );

/** Words that stand over each other. */
const collisionsOf = (texts: readonly Extent[]): readonly string[] =>
  texts.flatMap((one, place) =>
    texts.slice(place + 1).flatMap((other) => {
      // Boxes of a browser hold the room for accents and tails, a fifth of the letters' height.
      const room = 0.2 * Math.min(one.bottom - one.top, other.bottom - other.top);
      return overlap(one, other) > room ? [`${one.content} | ${other.content}`] : [];
    }),
  );

const outsideOf = (sheet: Extent, shapes: readonly Extent[]): readonly Extent[] =>
  shapes.filter(
    (one) =>
      one.left < sheet.left - 0.5 ||
      one.right > sheet.right + 0.5 ||
      one.top < sheet.top - 0.5 ||
      one.bottom > sheet.bottom + 0.5,
  );

const pictures = readdirSync(inProject('docs/pictures')).filter((name) => name.endsWith('.svg'));

describe('pictures of the docs', () => {
  let page: Page;
  beforeAll(async () => {
    page = await browser.newPage();
  });
  afterAll(() => page?.close());

  test.each(pictures)('in %s no word stands over another and nothing outside of the sheet', async (name) => {
    await page.goto(pathToFileURL(inProject(`docs/pictures/${name}`)).href);
    for (const width of [1200, 390]) {
      await page.setViewportSize({ width, height: 900 });
      const { sheet, texts, shapes } = await extents(page);
      expect(sheet.right).toBeLessThanOrEqual(width);
      expect(texts.length).toBeGreaterThan(8);
      expect(collisionsOf(texts)).toEqual([]);
      expect(outsideOf(sheet, shapes)).toEqual([]);
    }
  });
});

describe.each([1200, 390])('the drawing of the demo as a page of its own, %i pixels wide', (width) => {
  test('no word stands over another and nothing outside of the sheet', async () => {
    const page = await opened(fileWith(svg, 'drawing.svg'), width);
    const { sheet, texts, shapes } = await extents(page);
    await page.close();
    expect(texts.length).toBeGreaterThan(20);
    expect(shapes.length).toBeGreaterThan(50);
    expect(collisionsOf(texts)).toEqual([]);
    expect(outsideOf(sheet, shapes)).toEqual([]);
  });

  test('it has a title and a text alternative that tells the water path', async () => {
    const page = await opened(fileWith(svg, 'drawing.svg'), width);
    const said = (await page.evaluate(`(() => {
      const root = document.querySelector('svg');
      const ids = root.getAttribute('aria-labelledby').split(' ');
      return { role: root.getAttribute('role'), words: ids.map((id) => document.getElementById(id).textContent) };
    })()`)) as { role: string; words: string[] };
    await page.close();
    expect(said.role).toBe('img');
    expect(said.words).toHaveLength(2);
    expect(said.words[0]).toBe('Tall drum');
    expect(said.words[1]).toMatch(/Cleaned, packed as before: .*basket 1.*As planned: .*basket 1/s);
  });

  test('as a picture in a page it loads, and fits the page', async () => {
    const file = fileWith(svg, 'drawing.svg');
    const page = await opened(
      fileWith(
        `<!doctype html><body style="margin:0"><img src="${pathToFileURL(file).href}" style="max-width:100%"></body>`,
        'page.html',
      ),
      width,
    );
    const picture = (await page.evaluate(`(async () => {
      const image = document.querySelector('img');
      await image.decode();
      return { width: image.width, height: image.height, natural: image.naturalWidth, scroll: document.documentElement.scrollWidth };
    })()`)) as { width: number; height: number; natural: number; scroll: number };
    await page.close();
    expect(picture.natural).toBeGreaterThan(300);
    expect(picture.width).toBeLessThanOrEqual(width);
    expect(picture.scroll).toBeLessThanOrEqual(width);
    expect(picture.height).toBeGreaterThan(100);
  });
});

/** Mean and spread of grey, and how often it changes along lines and down columns, of each swatch. */
const hatchings = (page: Page) =>
  page.evaluate(`(async () => {
    const root = document.querySelector('svg');
    const fills = [...new Set([...root.querySelectorAll('[fill^="url("]')].map((each) => each.getAttribute('fill')))];
    const size = 240;
    const measured = [];
    for (const fill of fills) {
      const defs = [...root.querySelectorAll('defs, pattern')].filter((each) => each.parentNode === root || each.tagName === 'defs');
      const sheet = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 30" width="' + size + '" height="' + size + '">'
        + defs.map((each) => new XMLSerializer().serializeToString(each)).join('')
        + '<rect width="30" height="30" fill="#fff"/><rect width="30" height="30" fill="' + fill + '"/></svg>';
      const image = new Image();
      image.src = 'data:image/svg+xml,' + encodeURIComponent(sheet);
      await image.decode();
      const canvas = document.createElementNS('http://www.w3.org/1999/xhtml', 'canvas');
      canvas.width = canvas.height = size;
      const context = canvas.getContext('2d');
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, size, size);
      const grey = Array.from({ length: size * size }, (_, at) => 0.2126 * data[4 * at] + 0.7152 * data[4 * at + 1] + 0.0722 * data[4 * at + 2]);
      const mean = grey.reduce((sum, each) => sum + each, 0) / grey.length;
      const spread = Math.sqrt(grey.reduce((sum, each) => sum + (each - mean) ** 2, 0) / grey.length);
      const turns = (step) => grey.reduce((sum, each, at) => sum + (at >= step && Math.abs(each - grey[at - step]) > 40 ? 1 : 0), 0) / grey.length;
      measured.push({ fill, mean, spread, across: turns(1), down: turns(size) });
    }
    return measured;
  })()`) as Promise<{ fill: string; mean: number; spread: number; across: number; down: number }[]>;

test('hatchings are told apart without colour', async () => {
  const page = await opened(fileWith(svg, 'drawing.svg'), 1200);
  const measured = await hatchings(page);
  await page.close();
  const byMedium = [
    ...new Map(measured.map((each) => [`${each.mean} ${each.across} ${each.down}`, each])).values(),
  ];
  expect(byMedium.length).toBeGreaterThanOrEqual(4);
  for (const each of measured) expect(each.spread, `${each.fill} shows nothing`).toBeGreaterThan(5);
  const alike = byMedium.flatMap((one, place) =>
    byMedium.slice(place + 1).flatMap((other) => {
      const apart = (a: number, b: number) => Math.abs(a - b) / Math.max(a, b, 1e-9);
      const grey = Math.abs(one.mean - other.mean) / 255;
      const texture = Math.max(apart(one.across, other.across), apart(one.down, other.down));
      return grey < 0.02 && texture < 0.15 ? [`${one.fill} | ${other.fill}`] : [];
    }),
  );
  expect(alike).toEqual([]);
});

test('in grey it is drawn with light paper and dark ink', async () => {
  const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  await page.setContent(`<body style="margin:0;filter:grayscale(1)">${svg}</body>`);
  const shot = (await page.screenshot()).toString('base64');
  const greys = (await page.evaluate(`(async () => {
    const image = new Image();
    image.src = 'data:image/png;base64,${shot}';
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    const counts = { paper: 0, ink: 0, coloured: 0, all: data.length / 4 };
    for (let at = 0; at < data.length; at += 4) {
      if (Math.max(data[at], data[at + 1], data[at + 2]) - Math.min(data[at], data[at + 1], data[at + 2]) > 2) counts.coloured++;
      if (data[at] > 235) counts.paper++;
      if (data[at] < 90) counts.ink++;
    }
    return counts;
  })()`)) as { paper: number; ink: number; coloured: number; all: number };
  await page.close();
  expect(greys.coloured).toBe(0);
  expect(greys.paper / greys.all).toBeGreaterThan(0.3);
  expect(greys.ink / greys.all).toBeGreaterThan(0.005);
});
