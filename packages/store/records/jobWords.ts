import type { JobDocument } from '@fettle/job/schema/job.ts';
import { plainlyTyped } from './plainLetters.ts';

/** Longer texts are searched to here only, characters; only thousands of bench tests reach it. */
const MOST = 200_000;

const collect = (value: unknown, into: string[]): void => {
  if (typeof value === 'string') into.push(value);
  else if (Array.isArray(value)) for (const entry of value) collect(entry, into);
  else if (typeof value === 'object' && value !== null)
    for (const entry of Object.values(value)) collect(entry, into);
};

/**
 * Everything in a document that one might look for: its number, every text, and the short names of its own media; words
 * such as `Ørsted` once more as somebody types them who has no such key. Names of fields are left out: every job has a
 * pump and a tank.
 */
export const wordsOf = (document: JobDocument, number: number): string => {
  const found: string[] = [String(number), ...Object.keys(document.media ?? {})];
  collect(document, found);
  const text = found.join('\n').slice(0, MOST);
  return [text, ...plainlyTyped(text)].join('\n');
};
