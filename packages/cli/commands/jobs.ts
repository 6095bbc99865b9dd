import { families } from '@fettle/engine/families/families.ts';
import { jobStages } from '@fettle/job/stages.ts';
import type { JobQuery } from '@fettle/store/contract/jobs.ts';
import { type Command, Option } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printJobs } from '../print/jobList.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, dataFolder, withDataOption } from '../records/dataFolder.ts';
import { dataWords, hasRecords, withRecords } from '../records/records.ts';
import { numberBetween, withCommonOptions } from './common.ts';

interface JobsFlags extends CommonOptions, DataOptions {
  readonly stage?: string;
  readonly tag?: string;
  readonly family?: string;
  readonly putAway?: boolean;
  readonly order?: NonNullable<JobQuery['order']>;
  readonly count: number;
  readonly skip: number;
}

const queryOf = (words: readonly string[], flags: JobsFlags): JobQuery => {
  const { stage, tag, family, putAway, order, count, skip } = flags;
  return {
    ...(words.length === 0 ? {} : { words: words.join(' ') }),
    ...(stage === undefined ? {} : { stage }),
    ...(tag === undefined ? {} : { tag }),
    ...(family === undefined ? {} : { family }),
    ...(order === undefined ? {} : { order }),
    putAway: putAway ?? false,
    count,
    skip,
  };
};

/** What an empty list says: how to begin, or that the question was too narrow. */
const nothingFound = (query: JobQuery, flags: JobsFlags, inAll: number): string => {
  const more = dataWords(flags);
  if (inAll === 0)
    return `There are no jobs in ${dataFolder(flags).folder} yet. Take one in: fettle new --out job.yaml writes a file to fill in, and fettle import job.yaml${more} takes it in.`;
  if (flags.skip > 0) return `There are no jobs so far down the list; leave out --skip ${flags.skip}.`;
  const { words, stage, tag, family } = query;
  if ([words, stage, tag, family].some((asked) => asked !== undefined))
    return `No job matches. fettle jobs${more} lists all of them.`;
  return flags.putAway
    ? 'No job is put away.'
    : `All jobs are put away. fettle jobs --put-away${more} lists them.`;
};

const none = { page: { jobs: [], total: 0 }, inAll: 0 };

const run = async (words: readonly string[], flags: JobsFlags): Promise<void> => {
  const output = outputFor(flags);
  const query = queryOf(words, flags);
  const { page, inAll } = hasRecords(flags)
    ? await withRecords(flags, { begin: true }, async ({ store }) => {
        const found = await store.jobs.list(query);
        return { page: found, inAll: found.total || (await store.jobs.numbers()).length };
      })
    : none;
  if (output.json) writeJson(output, page);
  else if (page.jobs.length > 0) output.write(printJobs(page, query));
  else output.write(wrap(nothingFound(query, flags, inAll)));
};

export const addJobs = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('jobs')))
    .summary('the jobs in the records')
    .description(
      'List the jobs in the records, those promised soonest first. Words must all be found somewhere in a job; the last one may be the beginning of a word.',
    )
    .argument('[words...]', 'words to find')
    .addOption(new Option('--stage <stage>', 'where the work stands').choices(jobStages))
    .option('--tag <tag>', 'jobs with this tag')
    .addOption(new Option('--family <family>', 'kind of construction').choices(families.map(({ id }) => id)))
    .option('--put-away', 'the jobs that are put away, in place of those in hand')
    .addOption(
      new Option('--order <order>', 'soonest promise, newest change or highest number first').choices([
        'promised',
        'changed',
        'number',
      ]),
    )
    .addOption(
      new Option('--count <number>', 'at most so many').argParser(numberBetween(1, 1000, true)).default(50),
    )
    .addOption(
      new Option('--skip <number>', 'jobs to pass over').argParser(numberBetween(0, 1e6, true)).default(0),
    )
    .addHelpText('after', '\nExamples:\n  fettle jobs\n  fettle jobs drum --stage planned --order promised')
    .action(run);
};
