import type { DeedBeside } from '@fettle/store/contract/deeds.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';

/** The line of the log for a reading that is taken back: all that it said, since it stands nowhere else after that. */
export const readingRemoved = ({
  id,
  kind,
  value,
  day,
  enteredBy,
  note,
}: Reading): DeedBeside & { about: string } => ({
  what: 'reading-removed',
  about: `${id}: ${kind} ${value} on ${day}, by ${enteredBy}${note === '' ? '' : `: ${note}`}`,
});
