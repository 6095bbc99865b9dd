import { MODEL_EDITION } from '@fettle/engine/assessment/assess.ts';
import { residenceOf } from '@fettle/engine/assessment/residence/residence.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { toResidenceResult } from '@fettle/workflows/results/residence.ts';
import type { Command } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printResidence } from '../print/residence.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument } from '../records/jobSource.ts';
import { openJob, type StateOption, stateOption, withCommonOptions } from './common.ts';

const run = async (word: string, flags: CommonOptions & DataOptions & StateOption): Promise<void> => {
  const { model, units } = await openJob(word, flags);
  const output = outputFor(flags, units);
  const residence = residenceOf(model);
  if (output.json) {
    const of = { edition: MODEL_EDITION, state: model.packedState ?? 'as-found' } as const;
    writeJson(output, toResidenceResult(residence, of));
    return;
  }
  output.write(
    residence === undefined ? 'No water flows.' : printResidence(residence, printer(output.system)),
  );
};

export const addResidence = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('residence')))
    .summary('how long water stays in a filter, as a curve')
    .description(
      'How long water is under way through a filter with clean media: curve, first tenth, half, nine tenths, for all of the water and by route.',
    )
    .argument('<job>', jobArgument)
    .addOption(stateOption())
    .addHelpText('after', '\nExamples:\n  fettle residence job.yaml\n  fettle residence 12 --json')
    .action(run);
};
