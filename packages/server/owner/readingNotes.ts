import type { Basis } from '@fettle/engine/quantities/basis.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import type { Store } from '@fettle/store/contract/store.ts';
import { handedBackOn } from '../reminders/reminders.ts';
import { basisForms, readingFacts } from './readReading.ts';

/** What there is to know about a reading that was taken all the same. */
export interface ReadingNote {
  /** Stable. */
  readonly code: 'counted-as' | 'basis-not-said' | 'before-it-came-in' | 'before-hand-back';
  readonly path: 'value' | 'day';
  /** One sentence. */
  readonly says: string;
}

type Measured = Pick<Reading, 'kind' | 'value' | 'day'>;

/** What a reading says that it is counted as; undefined where it does not say. */
const basisOf = ({ kind, value }: Measured): Basis | undefined => {
  const read = readQuantity(value, readingFacts[kind].dimension);
  return read.ok ? read.basis : undefined;
};

/** What was measured with what it was understood to be counted as, as a table names it. */
export const measuredInWords = (reading: Measured): string => {
  const { label, countedAs } = readingFacts[reading.kind];
  if (countedAs.length === 0) return label;
  const basis = basisOf(reading);
  return basis === undefined ? `${label}, not said as what` : `${label} as ${basis}`;
};

const basisNotes = (reading: Measured): ReadingNote[] => {
  const { label, countedAs } = readingFacts[reading.kind];
  if (countedAs.length === 0) return [];
  const basis = basisOf(reading);
  if (basis !== undefined)
    return [{ code: 'counted-as', path: 'value', says: `${label}: understood to be counted as ${basis}.` }];
  const says = `${label}: ${reading.value} does not say as what it is counted, and nothing is assumed of it; where the test says so, write ${basisForms(reading.kind)} behind the unit.`;
  return [{ code: 'basis-not-said', path: 'value', says }];
};

/** Days of a job that are known; of those that are not nothing is said. */
interface JobDays {
  readonly received: string | undefined;
  readonly handedBack: string | undefined;
}

const dayNotes = ({ day }: Measured, { received, handedBack }: JobDays): ReadingNote[] => {
  if (received !== undefined && day < received) {
    const says = `The day ${day} is before the filter came in (${received}); it is kept so.`;
    return [{ code: 'before-it-came-in', path: 'day', says }];
  }
  if (handedBack === undefined || day >= handedBack) return [];
  const says = `The day ${day} is before the filter was handed back (${handedBack}); it is kept so.`;
  return [{ code: 'before-hand-back', path: 'day', says }];
};

/**
 * What there is to know about readings of a job that were taken: as what each is counted, and a day on which the
 * filter was not yet back. What holds for several of them is told once.
 */
export async function readingNotes(
  { jobs }: Pick<Store, 'jobs'>,
  job: StoredJob,
  readings: readonly Measured[],
): Promise<readonly ReadingNote[]> {
  const received = job.document.job?.received;
  const handedBack = handedBackOn(job, (await jobs.revisions(job.number)) ?? []);
  const notes = readings.flatMap((reading) => [
    ...basisNotes(reading),
    ...dayNotes(reading, { received, handedBack }),
  ]);
  return [...new Map(notes.map((note) => [note.says, note])).values()];
}
