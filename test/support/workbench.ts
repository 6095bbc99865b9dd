import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import {
  type ServerProcess,
  startServerProcess,
  stopServerProcess,
} from '../../scripts/records/serverProcess.ts';
import { openBrowser } from './browser.ts';
import { keptFolder } from './keptFolder.ts';
import { demo, fettle } from './program.ts';

/** How long a page may take till what was done is seen, ms: two slow cores also run other tests. */
const patienceMs = 20_000;

/** Expects of something that the page gets to it in the end. */
export const soon = <Seen>(look: () => Seen) => expect.poll(look, { timeout: patienceMs, interval: 40 });

/** A job as the records have it. */
export interface Recorded {
  readonly document: Readonly<Record<string, unknown>>;
  /** As `If-Match` wants it. */
  readonly tag: string;
}

/** A server over records of its own and a browser that opens its workbench. */
export interface Workbench {
  readonly address: string;
  readonly folder: string;
  readonly browser: Browser;
  readonly server: ServerProcess;
  /** Starts a server again where the one before was, over the same records. */
  startAgain(): Promise<void>;
  /** Opens a room in a window of its own. */
  open(path: string, options?: BrowserContextOptions): Promise<Page>;
  close(): Promise<void>;
}

/** Starts a server and a browser; the demo jobs that are named are in the records, numbered from 1. */
export async function startWorkbench(demoNames: readonly string[] = []): Promise<Workbench> {
  const data = keptFolder();
  for (const name of demoNames)
    expect(await fettle('import', demo(name), '--new', '--data', data.path)).toMatchObject({ code: 0 });
  let server = await startServerProcess(data.path);
  const browser = await openBrowser();
  const { address } = server;
  return {
    address,
    folder: data.path,
    browser,
    get server() {
      return server;
    },
    startAgain: async () => {
      server = await startServerProcess(data.path, ['--port', new URL(address).port]);
    },
    open: async (path, options = {}) => {
      const context = await browser.newContext({ viewport: { width: 1200, height: 900 }, ...options });
      const page = await context.newPage();
      page.setDefaultTimeout(patienceMs);
      await page.goto(`${address}${path}`);
      await page.getByRole('heading', { level: 1 }).waitFor();
      return page;
    },
    close: async () => {
      await browser.close();
      await stopServerProcess(server);
      data.remove();
    },
  };
}

/** A job as the records have it now. */
export async function recorded({ address }: Pick<Workbench, 'address'>, number = 1): Promise<Recorded> {
  const answer = await fetch(`${address}/api/jobs/${number}`);
  expect(answer.status).toBe(200);
  const document = (await answer.json()) as Recorded['document'];
  return { document, tag: answer.headers.get('ETag') ?? '' };
}

/** Types into a field as hands do: its text goes, the new one comes, and the field is left. */
export async function typeInto(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.blur();
}

/** Waits until the records have what stands in the room. */
export const whenSaved = (page: Page): Promise<void> =>
  page.locator('.standing').getByText('Saved', { exact: true }).waitFor();

/** The edge by which a bed of the drawing is pulled. */
export const edgeOf = async (bed: Locator): Promise<Locator> =>
  bed.page().locator(`.overlay [data-edge="${await bed.getAttribute('data-bed')}"]`);

/** Takes a bed by its edge with the mouse, and says at which point of the screen. */
export async function takeEdge(bed: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const edge = await edgeOf(bed);
  await edge.hover();
  const box = await edge.boundingBox();
  if (box === null) throw new Error('the bed has no edge');
  await bed.page().mouse.down();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The beds in the drawing in the words that are read out for each: `M1, 20 ppi foam, 30 mm in basket 1`. */
export const bedsDrawn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    `[...document.querySelectorAll('.overlay .bed')].map((bed) => bed.getAttribute('aria-label'))`,
  );
