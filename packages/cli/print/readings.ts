import type { Reading } from '@fettle/store/contract/readings.ts';
import { wrap } from './layout.ts';

/** What a follow-up reading says, without its id. */
export const readingWords = ({ day, kind, value, note, enteredBy }: Reading): string =>
  `${day}  ${kind} ${value}, by ${enteredBy}${note === '' ? '' : `: ${note}`}`;

/** A follow-up reading on a line of its own, by the id that names it. */
export const readingLine = (reading: Reading): string => wrap(`  ${reading.id}  ${readingWords(reading)}`, 4);
