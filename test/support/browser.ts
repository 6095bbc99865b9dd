import { type Browser, chromium } from 'playwright-core';
import { findBrowser, thisMachine } from '../../scripts/find-browser.ts';

/** Keeps the browser to the page it is given: no network, no sandbox that needs rights, no drawing by hardware. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Starts the browser that is found on this machine.
 * @throws Error with the finder's own sentence where there is none
 */
export async function openBrowser(): Promise<Browser> {
  const search = findBrowser(thisMachine());
  if (!search.found) throw new Error(search.advice);
  return chromium.launch({ executablePath: search.path, args: flags });
}
