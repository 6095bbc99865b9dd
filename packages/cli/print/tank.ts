import { printer } from '@fettle/workflows/printing.ts';
import {
  stagedKey,
  stagedTable,
  tankKey,
  tankSentencesOf,
  tankTable,
} from '@fettle/workflows/report/tank.ts';
import type { TankJob } from '@fettle/workflows/tankJob.ts';
import type { Output } from '../output.ts';
import { heading, reportTable, wrap } from './layout.ts';

/** A tank's forecast as a technician reads it, at most 80 columns wide. */
export const printTank = (job: TankJob, output: Output): string => {
  const { model, scenario } = job.forecast;
  const staged =
    job.staged.length === 0
      ? []
      : [
          heading(output, 'Changing media a part at a time'),
          reportTable(stagedTable(job), [32, 8, 9, 8, 6, 6]),
          wrap(stagedKey),
        ];
  return [
    wrap(`${model.filter.name}: the tank's water over ${scenario.days} days`),
    ...tankSentencesOf(job, printer(output.system)).map((text) => wrap(text)),
    heading(output, 'By day'),
    reportTable(tankTable(job), [4, 6, 6, 6, 7, 7, 7, 5, 9]),
    wrap(tankKey),
    ...staged,
  ].join('\n');
};
