import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { headTable, routesTable } from '@fettle/workflows/report/water.ts';
import { reportTable } from './layout.ts';

/** Every route with its share, what it meets and for how long. */
export const printRoutes = (job: AssessedJob): string => reportTable(routesTable(job), [9, 7, 46, 9]);

/** Where the pump's head goes, by kind of part. */
export const printHeadBudget = (assessment: Assessment, print: Print): string =>
  reportTable(headTable(assessment, print), [30, 12, 9]);
