import { familyById } from '@fettle/engine/families/families.ts';
import { isLate } from '@fettle/job/stages.ts';
import { html } from 'hono/html';
import { stageInWords } from '../owner/plainWords.ts';
import type { Markup } from './page.ts';

/** Where a job stands, as far as pages tell it in words. */
interface Standing {
  readonly promised?: string | undefined;
  readonly stage?: string | undefined;
}

/** A job's day of promise, marked where it has passed while the filter is still here; undefined where there is none. */
export const promise = ({ promised, stage }: Standing, today: string): Markup | undefined => {
  if (promised === undefined) return undefined;
  return isLate(promised, { stage, today })
    ? html`<strong class="fault">late: <time datetime="${promised}">${promised}</time></strong>`
    : html`<time datetime="${promised}">${promised}</time>`;
};

/** The stage of a job in words; one that states none was taken in and no more. */
export const stage = ({ stage: stated }: Standing): string => stageInWords(stated ?? 'taken-in');

/** What a family of filter is called. */
export const familyName = (id: string): string => familyById(id)?.name ?? id;
