import { beforeAfterDrawing } from '@fettle/drawing/beforeAfterDrawing.ts';
import { beforeAfterText } from '@fettle/drawing/textDrawing.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { plannedState } from '@fettle/workflows/plannedState.ts';
import { toAssessmentResult } from '@fettle/workflows/results/assessment.ts';
import { toPlansResult } from '@fettle/workflows/results/plans.ts';
import { type Command, Option } from 'commander';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { printAssessment } from '../print/assessment.ts';
import { heading, wrap } from '../print/layout.ts';
import { printPlans } from '../print/plans.ts';
import { progressLine } from '../print/progress.ts';
import type { DataOptions } from '../records/dataFolder.ts';
import { demoFolder, demoNamed, layDemoRecords, mainDemo } from '../records/demoRecords.ts';
import { usualPort } from '../records/usualPort.ts';
import { writeMadeFile } from '../writeFile.ts';
import { numberBetween, withCommonOptions } from './common.ts';
import { serveUntilStopped } from './serve.ts';

/** What the demo spends on media and parts, in the demo job's currency. */
const BUDGET = 15;

interface DemoFlags extends CommonOptions, DataOptions {
  readonly out: string;
  readonly workbench?: boolean;
  readonly port: number;
}

const run = async (flags: DemoFlags): Promise<void> => {
  const output = outputFor(flags);
  const { document, model } = demoNamed(mainDemo);
  const job = assessJob(model, output.json ? {} : { system: output.system });
  const progress = progressLine('candidates assessed');
  const plans = searchPlans(model, { budget: BUDGET, onProgress: progress.show });
  progress.clear();
  const best = plans.plans[0];
  const before = state('Cleaned, packed as before', plans.asFound, model.packing);
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
  if (flags.workbench) {
    const [found] = toPlansResult(plans, model.money.currency).plans;
    await openWorkbench(
      found === undefined ? document : { ...document, planned: plannedState(found, model) },
      flags,
    );
  }
};

/** Serves the demo jobs, the main one with its plan taken, until it is asked to stop. */
const openWorkbench = async (worked: JobDocument, flags: DemoFlags): Promise<void> => {
  const output = outputFor(flags);
  const folder = demoFolder(flags);
  const number = await layDemoRecords(folder, worked);
  await serveUntilStopped({ folder, port: flags.port }, ({ address }) => {
    output.write(heading(output, 'The workbench is open'));
    output.write(`${address}/jobs/${number}/re-pack`);
    output.write(wrap(`Open this address in a browser. The demo jobs are in ${folder}. Ctrl-C stops it.`));
  });
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
    .addOption(
      new Option('--workbench', 'then open the workbench on the demo jobs, until Ctrl-C').conflicts('json'),
    )
    .addOption(
      new Option('--port <number>', 'port of the workbench; 0 for any that is free')
        .argParser(numberBetween(0, 65_535, true))
        .default(usualPort),
    )
    .option('--data <folder>', 'folder for the demo jobs of the workbench; else one of their own')
    .addHelpText('after', '\nExamples:\n  fettle demo --out drawing.svg\n  fettle demo --workbench')
    .action(run);
};
