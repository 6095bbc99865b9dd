import { fadedFlow } from '@fettle/workflows/fadedFlow.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import {
  causeTable,
  chanceText,
  fadedFootnote,
  fadedSentences,
  questionsWorthAsking,
  questionText,
} from '@fettle/workflows/report/faded.ts';
import { toFaded } from '@fettle/workflows/results/faded.ts';
import type { Command } from 'commander';
import { BadInput, badInput } from '../exits.ts';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { heading, reportTable, wrap } from '../print/layout.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument, namedJob } from '../records/jobSource.ts';
import { withCommonOptions } from './common.ts';

const CAUSE_WIDTHS = [36, 10, 9, 19];

const write = (output: Output, faded: NonNullable<ReturnType<typeof fadedFlow>>): void => {
  const print = printer(output.system);
  output.write(wrap(fadedSentences(faded, print).join(' ')));
  if (faded.found.causes.length === 0) return;
  output.write(heading(output, 'What may lie behind it'));
  output.write(reportTable(causeTable(faded, print), CAUSE_WIDTHS));
  output.write(`\n${wrap(fadedFootnote(print))}`);
  const questions = questionsWorthAsking(faded);
  if (questions.length === 0) return;
  output.write(heading(output, 'What to ask next'));
  questions.forEach((one, place) => {
    const settles = `It settles ${chanceText(one.settles)} of what is open, in about ${one.minutes} min.`;
    output.write(wrap(`${place + 1}. ${questionText(one, print)} ${settles}`, 3));
  });
};

const run = async (word: string, flags: CommonOptions & DataOptions): Promise<void> => {
  const { source, units } = await namedJob(word, flags);
  const reading = openJob(source);
  if (!reading.ok) throw new BadInput(reading.problems);
  const faded = fadedFlow(reading.document, reading.model);
  if (faded === undefined) {
    throw badInput({
      code: 'flow-now-unknown',
      path: 'faded.flowNow',
      says: 'faded.flowNow: nobody has told the flow now, and none was timed as found.',
      allowed: 'a flow such as 380 L/h, or a bench test of kind timed-volume in the state as-found',
    });
  }
  const output = outputFor(flags, units);
  if (output.json) writeJson(output, toFaded(faded));
  else write(output, faded);
};

export const addFaded = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('faded')))
    .summary('why the flow has faded, by elimination')
    .description(
      'Rank what may lie behind a flow that has faded, by what was read, heard, seen and tried (the job’s part faded), and say which question would settle most.',
    )
    .argument('<job>', jobArgument)
    .addHelpText('after', '\nExamples:\n  fettle faded job.yaml\n  fettle faded 12')
    .action(run);
};
