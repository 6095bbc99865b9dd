import type { ServedEffect } from '@fettle/engine/doubt/servedEffects.ts';
import { printDay } from '@fettle/engine/quantities/printShort.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type Print, printer } from '@fettle/workflows/printing.ts';
import { assumedLines } from '@fettle/workflows/report/assumed.ts';
import { balanceLines } from '@fettle/workflows/report/balance.ts';
import { doubtSentences, doubtTable, effectsTable } from '@fettle/workflows/report/doubt.ts';
import { dyeLines } from '@fettle/workflows/report/dye.ts';
import {
  chemicalLines,
  claimLines,
  costSentence,
  testLines,
  warningLines,
} from '@fettle/workflows/report/lines.ts';
import { residenceSentences } from '@fettle/workflows/report/residence.ts';
import { filterTitle, summarySentences } from '@fettle/workflows/report/summary.ts';
import { bypassSentence, loopSentence } from '@fettle/workflows/report/water.ts';
import type { Output } from '../output.ts';
import { printBeds } from './beds.ts';
import { printFindings } from './findings.ts';
import { heading, reportTable, wrap } from './layout.ts';
import { printSite } from './site.ts';
import { printHeadBudget, printRoutes } from './water.ts';

/** What is said first of a filter: flow, what it carries, when it wants cleaning, its worst fault. */
export const summary = (job: AssessedJob, print: Print): string =>
  summarySentences(job, print)
    .map((text) => wrap(text))
    .join('\n');

/** Every figure with its range, what makes the range of the served volume, and what to measure next. */
const howSure = (job: AssessedJob, print: Print): string => {
  const table = doubtTable(job, print);
  if (table === undefined) return '';
  return [reportTable(table, [33, 13, 13, 13]), ...doubtSentences(job, print).map((text) => wrap(text))].join(
    '\n',
  );
};

const lines = (texts: readonly string[]): string => texts.map((text) => wrap(text, 2)).join('\n');

const section = (output: Output, title: string, text: string): string[] =>
  text === '' ? [] : [heading(output, title), text];

/** The assessment as a technician reads it, at most 80 columns wide. */
export const printAssessment = (
  job: AssessedJob,
  output: Output,
  effects?: readonly ServedEffect[],
): string => {
  const print = printer(output.system);
  const { assessment, model } = job;
  return [
    wrap(filterTitle(job, print)),
    summary(job, print),
    ...section(output, 'How sure, and what to measure next', howSure(job, print)),
    ...section(
      output,
      'What each input makes of the range of the served volume',
      effects === undefined ? '' : reportTable(effectsTable(effects, job, print), [60, 8, 8]),
    ),
    ...section(output, 'Findings, worst first', printFindings(job, output.system)),
    ...section(
      output,
      'Routes',
      [
        printRoutes(job),
        ...[bypassSentence(job), ...residenceSentences(job, print)].map((text) => wrap(text)),
      ].join('\n'),
    ),
    ...section(output, 'Head', `${printHeadBudget(assessment, print)}\n${wrap(loopSentence(job, print))}`),
    ...section(
      output,
      `Beds, on ${printDay(assessment.carries.day.dayS)} after cleaning`,
      printBeds(job, print),
    ),
    ...section(output, 'The tank', lines(balanceLines(job, print))),
    ...section(output, 'Chemical media', lines(chemicalLines(job, print))),
    ...section(output, 'Bench tests', lines([...testLines(job, print), ...dyeLines(job)])),
    ...section(output, 'Claims', lines(claimLines(job))),
    ...section(output, 'Leaks, water on the floor, current', printSite(job, print)),
    ...section(output, 'Money', wrap(costSentence(job))),
    ...section(output, 'Assumed, with wide doubt', lines(assumedLines(model, print))),
    ...section(output, 'Warnings', lines(warningLines(job))),
    '',
    wrap(`Model edition ${assessment.edition}.`),
  ].join('\n');
};
