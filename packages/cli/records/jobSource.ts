import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { JobSource } from '@fettle/workflows/openJob.ts';
import { storedSettings } from '@fettle/workflows/storedSettings.ts';
import { readInput } from '../input.ts';
import type { DataOptions } from './dataFolder.ts';
import { jobNumbered, withRecords } from './records.ts';

/** How commands that work on one job name it. */
export const jobArgument = 'job file, - for standard input, or the number of a job in the records';

/** Digits alone are a number of the records; a file of such a name is `./12`. */
export const isJobNumber = (word: string): boolean => /^\d{1,9}$/.test(word);

/** A job as a word named it. */
export interface NamedJob {
  /** A file's bytes, or the document of a job in the records. */
  readonly source: JobSource;
  /** In which its figures are shown unless an option says otherwise: a file knows nothing of anybody's settings. */
  readonly units: System;
}

/**
 * The job that a word names, in a file or in the records.
 * @throws BadInput
 */
export const namedJob = async (word: string, options: DataOptions): Promise<NamedJob> => {
  if (!isJobNumber(word)) return { source: await readInput(word), units: 'metric' };
  return withRecords(options, { begin: false }, async (records) => {
    const { document } = await jobNumbered(records, Number(word));
    const { units = 'metric' } = await storedSettings(records.store);
    return { source: { document }, units };
  });
};
