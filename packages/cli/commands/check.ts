import type { Command } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument } from '../records/jobSource.ts';
import { openJob, withCommonOptions } from './common.ts';

const run = async (word: string, flags: CommonOptions & DataOptions): Promise<void> => {
  const { model, notes } = await openJob(word, flags);
  const output = outputFor(flags);
  if (output.json) {
    writeJson(output, { problems: [], notes });
    return;
  }
  const assumed = model.givens.filter((given) => given.assumedBecause !== undefined).length;
  output.write(
    wrap(`No problems. ${assumed} values are not stated and were assumed; fettle assess lists them.`),
  );
  for (const note of notes) output.write(wrap(`${note.path}: ${note.says}`, 2));
};

export const addCheck = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('check')))
    .summary('problems of a job file, and nothing else')
    .description('Read a job file and tell every problem in it; exit with 2 where there is one.')
    .argument('<job>', jobArgument)
    .addHelpText('after', '\nExamples:\n  fettle check job.yaml\n  fettle check 12')
    .action(run);
};
