import type { FieldNaming } from '@fettle/engine/doubt/doubtSaid.ts';
import { fieldInWords } from '../history/fieldInWords.ts';

/** What fields of a job are called within a sentence: `net water volume` for `tank.volume`. */
export const fieldNaming =
  (document: unknown): FieldNaming =>
  (path) => {
    const words = fieldInWords(document, path);
    const own = words.slice(words.indexOf(': ') + 1).trim();
    // An abbreviation stays as it is.
    return /^\p{Lu}\p{Ll}/u.test(own) ? own.charAt(0).toLowerCase() + own.slice(1) : own;
  };
