import { assess } from '@fettle/engine/assessment/assess.ts';
import { holdClaimsOf } from '@fettle/workflows/assessJob.ts';
import { toClaims } from '@fettle/workflows/results/claims.ts';
import type { Command } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument } from '../records/jobSource.ts';
import { openJob, withCommonOptions } from './common.ts';

const run = async (word: string, flags: CommonOptions & DataOptions): Promise<void> => {
  const { model } = await openJob(word, flags);
  const output = outputFor(flags);
  const held = holdClaimsOf(model, assess(model));
  if (output.json) {
    writeJson(output, { claims: toClaims(held) });
    return;
  }
  if (held.length === 0) output.write('The job states no claims of the maker.');
  for (const claim of held) output.write(wrap(`${claim.verdict}: “${claim.says}” ${claim.detail}`, 2));
};

export const addClaims = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('claims')))
    .summary('what the maker states, held against itself and against us')
    .description(
      'Hold every statement of the maker against itself, against the others and against what is measured or computed.',
    )
    .argument('<job>', jobArgument)
    .addHelpText('after', '\nExamples:\n  fettle claims job.yaml\n  fettle claims 12')
    .action(run);
};
