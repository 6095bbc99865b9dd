import type { Reading } from '@fettle/store/contract/readings.ts';
import { wrap } from './layout.ts';

/** A follow-up reading on a line of its own. */
export const readingLine = ({ day, kind, value, note, enteredBy }: Reading): string =>
  wrap(`  ${day}  ${kind} ${value}, by ${enteredBy}${note === '' ? '' : `: ${note}`}`, 4);
