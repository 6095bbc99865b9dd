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

/** Pixels by which a page is wider than its screen. */
export const tooWide = (page: Page): Promise<unknown> =>
  page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth');
