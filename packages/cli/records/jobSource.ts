import type { JobSource } from '@fettle/workflows/openJob.ts';
import { readInput } from '../input.ts';
import type { DataOptions } from './dataFolder.ts';
import { jobNumbered, withRecords } from './records.ts';

/** How commands that work on one job name it. */
export const jobArgument = 'job file, - for standard input, or the number of a job in the records';

/** Digits alone are a number of the records; a file of such a name is `./12`. */
export const isJobNumber = (word: string): boolean => /^\d{1,9}$/.test(word);

/**
 * The job that a word names: a file's bytes, or the document of a job in the records.
 * @throws BadInput
 */
export const jobSource = async (word: string, options: DataOptions): Promise<JobSource> => {
  if (!isJobNumber(word)) return readInput(word);
  return withRecords(options, { begin: false }, async (records) => {
    const { document } = await jobNumbered(records, Number(word));
    return { document };
  });
};
