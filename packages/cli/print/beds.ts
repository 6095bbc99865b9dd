import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { bedsKey, bedsTable, noBeds, orderSentence } from '@fettle/workflows/report/beds.ts';
import { reportTable, wrap } from './layout.ts';

const WIDTHS = [11, 16, 8, 13, 7, 6, 6] as const;

/** Beds in water order on the day of the comparison. */
export const printBeds = (job: AssessedJob, print: Print): string => {
  const { beds, orderShares } = job.assessment;
  if (beds.length === 0) return noBeds;
  return [reportTable(bedsTable(job, print), WIDTHS), wrap(bedsKey), wrap(orderSentence(orderShares))].join(
    '\n',
  );
};
