import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** What the rules of accessibility, or those that are named, find wrong in a page as it is drawn: where, and a cure. */
export const faultsIn = async (page: Page, rules?: readonly string[]): Promise<readonly string[]> => {
  await page.evaluate(axe.source);
  const only = rules === undefined ? '' : `, runOnly: ${JSON.stringify(rules)}`;
  const run = `axe.run(document, { resultTypes: ['violations']${only} }).then(({ violations }) =>
    violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => [id, html, failureSummary].join(': '))))`;
  return (await page.evaluate(run)) as readonly string[];
};

/** Pixels by which a page can be moved sideways. */
export const tooWide = (page: Page): Promise<unknown> =>
  page.evaluate(`(() => {
    scrollTo({ left: 1e6, top: scrollY, behavior: 'instant' });
    const moved = scrollX;
    scrollTo({ left: 0, top: scrollY, behavior: 'instant' });
    return moved;
  })()`);
