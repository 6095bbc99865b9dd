import { type Favour, favours } from '@fettle/engine/planning/plan.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { planDocument } from '@fettle/workflows/planDocument.ts';
import { type Command, Option } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printPlans } from '../print/plans.ts';
import { progressLine } from '../print/progress.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument, namedJob } from '../records/jobSource.ts';
import { dayOption, numberBetween, openJob, resultOf, withCommonOptions } from './common.ts';

interface PlanFlags extends CommonOptions, DataOptions {
  readonly budget?: number;
  readonly favour: Favour;
  readonly cap: number;
  readonly count: number;
  readonly day?: number;
}

const run = async (word: string, flags: PlanFlags): Promise<void> => {
  const progress = progressLine('candidates assessed');
  const { budget, favour, cap, count, day } = flags;
  const hooks = { onProgress: progress.show };
  if (flags.json) {
    const { source } = await namedJob(word, flags);
    const result = resultOf(planDocument(source, { budget, favour, cap, count, day }, hooks));
    progress.clear();
    writeJson(outputFor(flags), result);
    return;
  }
  const { model, units } = await openJob(word, flags);
  const plans = searchPlans(model, {
    favour,
    cap,
    count,
    ...(budget === undefined ? {} : { budget }),
    ...(day === undefined ? {} : { day }),
    ...hooks,
  });
  progress.clear();
  const output = outputFor(flags, units);
  output.write(printPlans(plans, model, output));
};

export const addPlan = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('plan')))
    .summary('better packings, for nothing or for a budget')
    .description(
      'Search alterations, orders and amounts for better packings. Without a budget only what costs nothing is looked at: permitted alterations without parts, and other orders of what is in the filter.',
    )
    .argument('<job>', jobArgument)
    .addOption(
      new Option('--budget <money>', 'money for media and parts, in the job’s currency').argParser(
        numberBetween(0, 1e6),
      ),
    )
    .addOption(
      new Option('--favour <what>', 'what a plan is to be good for').choices(favours).default('balance'),
    )
    .addOption(
      new Option('--cap <number>', 'most candidates to assess')
        .argParser(numberBetween(1, 1e7, true))
        .default(3000),
    )
    .addOption(
      new Option('--count <number>', 'plans to show').argParser(numberBetween(1, 20, true)).default(5),
    )
    .addOption(dayOption())
    .addHelpText(
      'after',
      '\nExamples:\n  fettle plan job.yaml\n  fettle plan job.yaml --budget 15 --favour feed\n  fettle plan 12 --cap 200',
    )
    .action(run);
};
