import type { Command } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { dataWords, jobNumbered, tooLate, withRecords } from '../records/records.ts';
import { jobNumber, withCommonOptions } from './common.ts';

type Flags = CommonOptions & DataOptions;

const ways = {
  'put-away': {
    change: 'putAway',
    deed: 'job-put-away',
    done: (job: number, more: string) =>
      `Job ${job} is put away: it is in no list, and kept with everything. fettle bring-back ${job}${more} takes it up again.`,
  },
  'bring-back': {
    change: 'bringBack',
    deed: 'job-brought-back',
    done: (job: number) => `Job ${job} is back among the jobs in hand.`,
  },
} as const;

const runFor =
  (name: keyof typeof ways) =>
  async (number: number, flags: Flags): Promise<void> => {
    const { change, deed, done } = ways[name];
    const revision = await withRecords(flags, { begin: false }, async (records) => {
      const current = await jobNumbered(records, number);
      const asked = { number, base: current.revision, by: records.by, log: { what: deed } };
      const made = await records.store.jobs[change](asked);
      if (!made.ok) throw tooLate(number);
      return made.revision;
    });
    const output = outputFor(flags);
    if (output.json) writeJson(output, { number, revision });
    else output.write(wrap(done(number, dataWords(flags))));
  };

/** Putting jobs away and bringing them back. */
export const addPutAway = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('put-away')))
    .summary('take a job off the list; it is kept')
    .description(
      'Put a job away: it is in no list unless asked for, is kept with all its revisions, and can come back.',
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addHelpText('after', '\nExample:\n  fettle put-away 12')
    .action(runFor('put-away'));
  withDataOption(withCommonOptions(program.command('bring-back')))
    .summary('put a job that was put away on the list again')
    .description('Bring back a job that was put away.')
    .argument('<number>', 'number of the job', jobNumber)
    .addHelpText('after', '\nExample:\n  fettle bring-back 12')
    .action(runFor('bring-back'));
};
