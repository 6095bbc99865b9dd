import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { type ServedEffect, servedEffects } from '@fettle/engine/doubt/servedEffects.ts';
import { NITRATE_PER_NITROGEN } from '@fettle/engine/lineup/tankBalance.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { assessDocument } from '@fettle/workflows/assessDocument.ts';
import { assessJob, USUAL_DRAWS } from '@fettle/workflows/assessJob.ts';
import { type Command, Option } from 'commander';
import { EXIT } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printAssessment } from '../print/assessment.ts';
import { progressLine } from '../print/progress.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument, namedJob } from '../records/jobSource.ts';
import {
  dayOption,
  numberBetween,
  openJob,
  resultOf,
  type StateOption,
  stateOption,
  withCommonOptions,
} from './common.ts';

const SEVERITIES: readonly Finding['severity'][] = ['grave', 'marked', 'slight', 'note'];

interface AssessFlags extends CommonOptions, DataOptions, StateOption {
  readonly day?: number;
  readonly effects?: boolean;
  readonly failOn?: Finding['severity'];
  /** Nitrate, mg/L as NO3. */
  readonly nitrate?: number;
}

const reaches = (
  findings: readonly Pick<Finding, 'severity'>[],
  failOn: Finding['severity'] | undefined,
): boolean => {
  if (failOn === undefined) return false;
  const asked = SEVERITIES.slice(0, SEVERITIES.indexOf(failOn) + 1);
  return findings.some((finding) => asked.includes(finding.severity));
};

/** Finds what every input makes of the range, and shows meanwhile how far it has come. */
const effectsOf = (model: Model, { effects, day }: AssessFlags): readonly ServedEffect[] | undefined => {
  if (!effects) return undefined;
  const progress = progressLine('draws assessed');
  const found = servedEffects(model, {
    ...(day === undefined ? {} : { day }),
    onProgress: (done, all) => void progress.show(done, all),
  });
  progress.clear();
  return found;
};

/** The nitrate that is asked for, kg N/m³. */
const nitrateTarget = ({ nitrate }: AssessFlags): number | undefined =>
  nitrate === undefined ? undefined : (nitrate * 1e-3) / NITRATE_PER_NITROGEN;

const run = async (word: string, flags: AssessFlags): Promise<void> => {
  const options = flags.day === undefined ? {} : { day: flags.day };
  const tank = { nitrateTargetKgNPerM3: nitrateTarget(flags) };
  if (flags.json) {
    // JSON keeps its words in metric whatever the screen shows, so that it never depends on units.
    const { source } = await namedJob(word, flags);
    const result = resultOf(assessDocument(source, { ...options, ...tank, state: flags.state }));
    const effects = flags.effects ? effectsOf((await openJob(word, flags)).model, flags) : undefined;
    writeJson(outputFor(flags), effects === undefined ? result : { ...result, effects });
    if (reaches(result.findings, flags.failOn)) process.exitCode = EXIT.findings;
    return;
  }
  const { model, units } = await openJob(word, flags);
  const output = outputFor(flags, units);
  const job = assessJob(model, { ...options, tank, system: output.system, draws: USUAL_DRAWS });
  output.write(printAssessment(job, output, effectsOf(model, flags)));
  if (reaches(job.findings, flags.failOn)) process.exitCode = EXIT.findings;
};

export const addAssess = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('assess')))
    .summary('what a filter does for its tank, and what is wrong with it')
    .description('Assess one job: flow, routes, bypass, what it carries, cleaning, cost, claims, findings.')
    .argument('<job>', jobArgument)
    .addOption(dayOption())
    .addOption(stateOption())
    .addOption(
      new Option(
        '--nitrate <mg/L>',
        'nitrate as NO3 that water changes are to hold; 40 where left out (common practice, no source)',
      ).argParser(numberBetween(1, 500)),
    )
    .option('--effects', 'also find what each input makes of the range, alone and with others')
    .addOption(
      new Option('--fail-on <severity>', 'exit with 1 where a finding is at least this severe').choices(
        SEVERITIES,
      ),
    )
    .addHelpText(
      'after',
      '\nExamples:\n  fettle assess job.yaml --fail-on grave\n  fettle assess - --json < job.yaml\n  fettle assess 12',
    )
    .action(run);
};
