import { existsSync, readFileSync } from 'node:fs';
import { beforeAfterDrawing } from '@fettle/drawing/beforeAfterDrawing.ts';
import { beforeAfterText } from '@fettle/drawing/textDrawing.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { readJob } from '@fettle/job/read.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { toAssessmentResult } from '@fettle/workflows/results/assessment.ts';
import { toPlansResult } from '@fettle/workflows/results/plans.ts';
import type { Command } from 'commander';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { printAssessment } from '../print/assessment.ts';
import { heading, wrap } from '../print/layout.ts';
import { printPlans } from '../print/plans.ts';
import { progressLine } from '../print/progress.ts';
import { writeMadeFile } from '../writeFile.ts';
import { withCommonOptions } from './common.ts';

/** What the demo spends on media and parts, in the demo job's currency. */
const BUDGET = 15;

/** The demo job, beside the bundled program or in the repository. */
const demoText = (): string => {
  const places = ['./demo/tall-drum.yaml', '../../../demo/tall-drum.yaml'];
  const found = places.map((place) => new URL(place, import.meta.url)).find((place) => existsSync(place));
  if (!found) throw new Error('the demo job is not beside the program');
  return readFileSync(found, 'utf8');
};

interface DemoFlags extends CommonOptions {
  readonly out: string;
}

const run = (flags: DemoFlags): void => {
  const output = outputFor(flags);
  const reading = readJob(demoText());
  if (!reading.ok) throw new Error(`the demo job does not read: ${reading.problems[0]?.says}`);
  const { model } = reading;
  const job = assessJob(model, output.json ? {} : { system: output.system });
  const progress = progressLine('candidates assessed');
  const plans = searchPlans(model, { budget: BUDGET, onProgress: progress.show });
  progress.clear();
  const best = plans.plans[0];
  const before = state('As found', plans.asFound, model.packing);
  const after = best ? state('As planned', best.assessment, best.packing) : before;
  const drawn = { before, after, media: model.media, units: output.system };
  writeMadeFile(flags.out, beforeAfterDrawing({ ...drawn, theme: 'light', title: model.filter.name }));
  if (output.json) {
    const assessment = toAssessmentResult(job);
    writeJson(output, { assessment, plans: toPlansResult(plans, model.money.currency), drawing: flags.out });
    return;
  }
  output.write(printAssessment(job, output));
  output.write(heading(output, `Plans for at most ${BUDGET} ${model.money.currency} of media and parts`));
  output.write(printPlans(plans, model, output));
  printWaterPath(output, drawn, flags.out);
};

const state = (
  caption: string,
  assessment: ReturnType<typeof searchPlans>['asFound'],
  packing: Parameters<typeof beforeAfterText>[0]['before']['packing'],
) => ({ caption, assessment, packing, layout: assessment.layout });

const printWaterPath = (output: Output, drawn: Parameters<typeof beforeAfterText>[0], file: string): void => {
  output.write(heading(output, 'Water path, before and after'));
  output.write(beforeAfterText(drawn));
  output.write(wrap(`The section drawing of both stands in ${file}.`));
};

export const addDemo = (program: Command): void => {
  withCommonOptions(program.command('demo'))
    .summary('the demo job through assess and plan')
    .description('Take the demo job through assess and plan, and draw its water path before and after.')
    .option('--out <file>', 'file for the section drawing (SVG)', 'fettle-demo.svg')
    .addHelpText('after', '\nExample:\n  fettle demo --out drawing.svg')
    .action(run);
};
