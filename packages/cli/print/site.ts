import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { pressureTable, siteLines } from '@fettle/workflows/report/site.ts';
import { reportTable, wrap } from './layout.ts';

/** Leak side, water on the floor and current; nothing where there is nothing to tell. */
export const printSite = ({ assessment }: AssessedJob, print: Print): string => {
  const table =
    assessment.site.pressures.length === 0
      ? []
      : [reportTable(pressureTable(assessment, print), [34, 11, 11, 18])];
  return [...table, ...siteLines(assessment, print).map((text) => wrap(text, 2))].join('\n');
};
