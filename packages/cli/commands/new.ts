import { families } from '@fettle/engine/families/families.ts';
import { newJob } from '@fettle/job/newJob.ts';
import { type Command, Option } from 'commander';
import { BadInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { writeNewFile } from '../writeFile.ts';
import { withCommonOptions } from './common.ts';

interface NewFlags extends CommonOptions {
  readonly family: string;
  readonly out?: string;
}

const run = (flags: NewFlags): void => {
  const output = outputFor(flags);
  const made = newJob(flags.family);
  if (!made.ok) throw new BadInput([made.problem]);
  const { text } = made;
  if (flags.out !== undefined) {
    writeNewFile(flags.out, text);
    if (output.json) writeJson(output, { file: flags.out });
    else output.write(wrap(`Wrote ${flags.out}. Fill it in and run: fettle assess ${flags.out}`));
    return;
  }
  if (output.json) writeJson(output, { family: flags.family, text });
  else output.write(text);
};

export const addNew = (program: Command): void => {
  withCommonOptions(program.command('new'))
    .summary('a commented job file to fill in')
    .description('Write a commented job file for a family of filter.')
    .addOption(
      new Option('--family <family>', 'kind of construction')
        .choices(families.map(({ id }) => id))
        .default('basket-stack-canister'),
    )
    .option('--out <file>', 'file to write; never overwritten')
    .addHelpText('after', '\nExample:\n  fettle new --family hang-on-back --out job.yaml')
    .action(run);
};
