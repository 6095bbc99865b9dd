import { writeJob } from '@fettle/job/write.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { laterStates } from '@fettle/workflows/laterStates.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { toAssessmentResult } from '@fettle/workflows/results/assessment.ts';
import { toEffect } from '@fettle/workflows/results/effect.ts';
import { storedSettings } from '@fettle/workflows/storedSettings.ts';
import { type Command, Option } from 'commander';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { wrap } from '../print/layout.ts';
import { printOpenedJob } from '../print/openedJob.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { editableFile } from '../records/jobFile.ts';
import { layPhotographs } from '../records/layPhotographs.ts';
import { nextStep } from '../records/nextStep.ts';
import { type OpenedJob, openedJob } from '../records/openedJob.ts';
import { asWord, dataWords, type Records, withRecords } from '../records/records.ts';
import { writeNewFile } from '../writeFile.ts';
import { jobNumber, numberBetween, withCommonOptions } from './common.ts';

interface OpenFlags extends CommonOptions, DataOptions {
  readonly yaml?: boolean;
  readonly out?: string;
  readonly revision?: number;
  readonly photographs?: string;
}

/** JSON says the same wherever the records lie. */
const nextOf = ({ job, shown }: OpenedJob, flags: OpenFlags): string =>
  nextStep(shown.document, {
    number: job.number,
    putAway: job.putAwayAt !== undefined,
    more: flags.json ? '' : dataWords(flags),
  });

/** The assessment of the filter as found, and what the later states make of it; or why there is none. */
const computedOf = (document: OpenedJob['shown']['document']) => {
  const reading = openJob({ document });
  if (!reading.ok) return { problems: reading.problems };
  const job = assessJob(reading.model);
  const later = laterStates(reading.document, job.assessment);
  return {
    assessment: toAssessmentResult(
      job,
      reading.notes.map((note) => ({ ...note })),
    ),
    ...(later.length === 0
      ? {}
      : { later: later.map(({ state, effect }) => ({ state, effect: toEffect(effect) })) }),
  };
};

const jsonOf = (opened: OpenedJob, next: string) => {
  const { job, shown, revisions, photographs, readings, quote } = opened;
  const { number, createdAt, changedAt, changedBy, putAwayAt } = job;
  const { document, revision } = shown;
  return {
    number,
    revision,
    newest: job.revision,
    createdAt,
    changedAt,
    changedBy,
    ...(putAwayAt === undefined ? {} : { putAwayAt }),
    document,
    revisions,
    photographs,
    readings,
    ...(quote === undefined ? {} : { quote }),
    ...computedOf(document),
    next,
  };
};

const writeOut = (
  opened: OpenedJob,
  file: string,
  { output, more }: { output: Output; more: string },
): void => {
  const { number } = opened.job;
  const { revision } = opened.shown;
  writeNewFile(file, editableFile(number, opened.shown));
  if (output.json) writeJson(output, { number, revision, file });
  else
    output.write(
      wrap(
        `Wrote revision ${revision} of job ${number} to ${file}. Edit it, then: fettle import ${asWord(file)}${more}`,
      ),
    );
};

const writePhotographs = async (
  records: Records,
  opened: OpenedJob,
  { output, folder }: { output: Output; folder: string },
): Promise<void> => {
  const { number } = opened.job;
  const files = await layPhotographs(records, opened.photographs, folder);
  if (output.json) writeJson(output, { number, files });
  else if (files.length === 0) output.write(`Job ${number} has no photographs; nothing was written.`);
  else
    output.write(
      wrap(
        `Wrote ${files.length} ${files.length === 1 ? 'photograph' : 'photographs'} of job ${number} to ${folder}.`,
      ),
    );
};

const run = async (number: number, flags: OpenFlags): Promise<void> => {
  const asked = flags.revision === undefined ? { number } : { number, revision: flags.revision };
  await withRecords(flags, { begin: false }, async (records) => {
    const opened = await openedJob(records, asked);
    const output = outputFor(flags, (await storedSettings(records.store)).units);
    if (flags.out !== undefined) writeOut(opened, flags.out, { output, more: dataWords(flags) });
    else if (flags.photographs !== undefined)
      await writePhotographs(records, opened, { output, folder: flags.photographs });
    else if (flags.yaml) output.write(writeJob(opened.shown.document));
    else if (output.json) writeJson(output, jsonOf(opened, nextOf(opened, flags)));
    else output.write(printOpenedJob(opened, output, nextOf(opened, flags)));
  });
};

export const addOpen = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('open')))
    .summary('where a job stands: stage, promise, revisions, what the filter does')
    .description(
      'Open one job of the records: where it stands, what the filter does, who changed what, and what comes next.',
    )
    .argument('<number>', 'number of the job', jobNumber)
    .addOption(
      new Option('--revision <number>', 'as it was at this revision').argParser(
        numberBetween(1, 999_999_999, true),
      ),
    )
    .addOption(new Option('--yaml', 'print the document alone').conflicts(['json', 'out', 'photographs']))
    .addOption(
      new Option('--out <file>', 'write the document to a new file, for editing and fettle import').conflicts(
        'photographs',
      ),
    )
    .option('--photographs <folder>', 'write its photographs to a folder')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle open 12\n  fettle open 12 --out job-12.yaml\n  fettle open 12 --revision 1 --yaml\n  fettle open 12 --photographs pictures',
    )
    .action(run);
};
