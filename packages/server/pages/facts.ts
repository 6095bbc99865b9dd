import { html } from 'hono/html';
import type { Markup } from './page.ts';

/** A line of a list of facts; nothing where there is nothing to say. */
export const fact = (term: string, says: string | Markup | undefined): Markup | '' =>
  says === undefined || says === '' ? '' : html`<div><dt>${term}</dt><dd>${says}</dd></div>`;
