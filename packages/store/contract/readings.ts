import type { DeedBeside } from './deeds.ts';

/** What an owner can measure at home after the filter is back. */
export type ReadingKind = 'jug-flow' | 'ammonia' | 'nitrite';

export const readingKinds: readonly ReadingKind[] = ['jug-flow', 'ammonia', 'nitrite'];

/** One follow-up reading. */
export interface Reading {
  readonly id: string;
  readonly job: number;
  readonly kind: ReadingKind;
  /** Day of the calendar on which it was taken. */
  readonly day: string;
  /** As it was written, with its unit: `480 L/h`, `0.25 mg/L`. The caller has read it as a quantity. */
  readonly value: string;
  readonly note: string;
  readonly enteredAt: string;
  /** `owner` where it came by an owner's link. */
  readonly enteredBy: string;
}

/** A reading to be entered. */
export type NewReading = Pick<Reading, 'job' | 'kind' | 'day' | 'value' | 'note'> & { readonly by: string };

/** A reading that is to be taken back. */
export interface RemovedReading {
  readonly job: number;
  readonly id: string;
  readonly by: string;
  /** For the log of who did what; not written where there was no such reading. */
  readonly log?: DeedBeside;
}

export interface Readings {
  add(reading: NewReading): Promise<Reading>;
  /** Enters all of them or, where one cannot be, none. */
  addTogether(readings: readonly NewReading[]): Promise<readonly Reading[]>;
  /** By day, then as entered. */
  list(job: number): Promise<readonly Reading[]>;
  /** Takes a reading back, together with its line in the log; false where the job has none of this id. */
  remove(reading: RemovedReading): Promise<boolean>;
  lay(readings: readonly Reading[]): Promise<void>;
}
