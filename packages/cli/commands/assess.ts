import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { toAssessmentResult } from '@fettle/workflows/results/assessment.ts';
import { type Command, Option } from 'commander';
import { EXIT } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printAssessment } from '../print/assessment.ts';
import { dayOption, openJob, withCommonOptions } from './common.ts';

const SEVERITIES: readonly Finding['severity'][] = ['grave', 'marked', 'slight', 'note'];

interface AssessFlags extends CommonOptions {
  readonly day?: number;
  readonly failOn?: Finding['severity'];
}

const reaches = (findings: readonly Finding[], failOn: Finding['severity'] | undefined): boolean => {
  if (failOn === undefined) return false;
  const asked = SEVERITIES.slice(0, SEVERITIES.indexOf(failOn) + 1);
  return findings.some((finding) => asked.includes(finding.severity));
};

const run = (file: string, flags: AssessFlags): void => {
  const { model, notes } = openJob(file);
  const output = outputFor(flags);
  const options = flags.day === undefined ? {} : { day: flags.day };
  // JSON keeps its words in metric whatever the screen shows, so that it never depends on --units.
  const job = assessJob(model, output.json ? options : { ...options, system: output.system });
  if (output.json)
    writeJson(
      output,
      toAssessmentResult(
        job,
        notes.map((note) => ({ ...note })),
      ),
    );
  else output.write(printAssessment(job, output));
  if (reaches(job.findings, flags.failOn)) process.exitCode = EXIT.findings;
};

export const addAssess = (program: Command): void => {
  withCommonOptions(program.command('assess'))
    .summary('what a filter does for its tank, and what is wrong with it')
    .description('Assess one job: flow, routes, bypass, what it carries, cleaning, cost, claims, findings.')
    .argument('<file>', 'job file, or - for standard input')
    .addOption(dayOption())
    .addOption(
      new Option('--fail-on <severity>', 'exit with 1 where a finding is at least this severe').choices(
        SEVERITIES,
      ),
    )
    .addHelpText(
      'after',
      '\nExamples:\n  fettle assess job.yaml --fail-on grave\n  fettle assess - --json < job.yaml',
    )
    .action(run);
};
