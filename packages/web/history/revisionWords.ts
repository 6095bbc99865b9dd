import type { RevisionSummary } from '@fettle/store/contract/jobs.ts';

const kindWords: Readonly<Record<RevisionSummary['kind'], string>> = {
  'taken-in': 'taken in',
  edited: 'changed',
  'went-back': 'gone back',
  'put-away': 'put away',
  'brought-back': 'brought back',
  imported: 'imported',
};

/** How a revision came about, in a few words. */
export const revisionWords = ({ kind, wentBackTo }: RevisionSummary): string =>
  wentBackTo === undefined ? kindWords[kind] : `${kindWords[kind]} to revision ${wentBackTo}`;

/** A moment as people of this locale write it. */
export const momentInWords = (at: string, locale?: string): string =>
  new Date(at).toLocaleString(locale, { dateStyle: 'medium', timeStyle: 'short' });
