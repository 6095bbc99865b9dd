import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';

/** Script that a browser with nothing kept loads for a page until it is at rest, compressed, bytes. */
export async function firstLoad(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const scripts: Promise<number>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script')
      scripts.push(response.body().then((body) => gzipSync(body).length));
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  const sizes = await Promise.all(scripts);
  await context.close();
  return sizes.reduce((sum, size) => sum + size, 0);
}
