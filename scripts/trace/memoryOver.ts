import type { Page } from 'playwright-core';

/** What a page holds after so many edits, once what nobody needs has been thrown away. */
export interface MemoryLeft {
  readonly edits: number;
  /** Of script. */
  readonly bytes: number;
  /** Of the page. */
  readonly nodes: number;
}

/** Makes edits by keys on the first two beds of the drawing, in turns so that each is a step of its own. */
export async function memoryOver(page: Page, edits: number): Promise<readonly MemoryLeft[]> {
  const control = await page.context().newCDPSession(page);
  await control.send('HeapProfiler.enable');
  await control.send('Performance.enable');
  const left: MemoryLeft[] = [];
  const look = async (made: number): Promise<void> => {
    await control.send('HeapProfiler.collectGarbage');
    const { metrics } = await control.send('Performance.getMetrics');
    const value = (name: string): number => metrics.find((metric) => metric.name === name)?.value ?? 0;
    left.push({ edits: made, bytes: value('JSHeapUsedSize'), nodes: value('Nodes') });
  };
  const beds = page.locator('.overlay .bed');
  await look(0);
  for (let made = 1; made <= edits; made += 1) {
    const key = made % 4 < 2 ? '-' : '+';
    await beds.nth(made % 2).press(key);
    if (made % 100 === 0) {
      await page.locator('.standing').getByText('Saved', { exact: true }).waitFor();
      await look(made);
    }
  }
  return left;
}
