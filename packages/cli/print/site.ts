import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { levelsTable, pressureTable, siteLines } from '@fettle/workflows/report/site.ts';
import { reportTable, wrap } from './layout.ts';

/** Leak side, levels, water on the floor and current; nothing where there is nothing to tell. */
export const printSite = ({ assessment }: AssessedJob, print: Print): string => {
  const table =
    assessment.site.pressures.length === 0
      ? []
      : [reportTable(pressureTable(assessment, print), [34, 11, 11, 18])];
  const levels = levelsTable(assessment, print);
  const box = levels === undefined ? [] : [reportTable(levels, [23, 9, 9, 9, 22])];
  return [...table, ...box, ...siteLines(assessment, print).map((text) => wrap(text, 2))].join('\n');
};
