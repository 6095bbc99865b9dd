import type { OrderShares } from '@fettle/engine/assessment/assessment.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type Print, share } from '../output.ts';
import { table, wrap } from './layout.ts';

const COLUMNS = [
  { head: 'bed', width: 11 },
  { head: 'medium', width: 16 },
  { head: 'depth', width: 8, align: 'right' },
  { head: 'speed', width: 13, align: 'right' },
  { head: 'catch', width: 7, align: 'right' },
  { head: 'filled', width: 6, align: 'right' },
  { head: 'active', width: 6, align: 'right' },
] as const;

const KEY =
  'catch: share of the solids in the water that one pass leaves here; filled: share of the pores that dirt fills; active: share of their full rate that dirt and cleaning leave the bacteria.';

/** How much more would be carried without each way in which dirt works, largest first. */
const orderText = (shares: OrderShares): string => {
  const ways = [
    { share: shares.clogging, without: 'if nothing clogged' },
    { share: shares.carbon, without: 'without organic carbon on the bacteria' },
    { share: shares.decay, without: 'if caught dirt did not rot' },
    { share: shares.cleaning, without: 'if cleaning cost no bacteria' },
  ].toSorted((a, b) => b.share - a.share);
  const parts = ways.map(({ share: value, without }) => `${signed(value)} ${without}`);
  return `What dirt costs here, and so what the order of the beds decides: the filter would carry ${parts.join(', ')}.`;
};

const signed = (value: number): string => {
  const percent = Math.round(100 * value);
  return `${percent >= 0 ? '+' : '−'}${Math.abs(percent)} %`;
};

/** Beds in water order on the comparison day. */
export const printBeds = (job: AssessedJob, print: Print): string => {
  const { beds, orderShares } = job.assessment;
  if (beds.length === 0) return 'There are no media in the filter yet.';
  const rows = beds.map((bed) => [
    bed.id,
    `${bed.stage[0]!.toUpperCase()} ${job.model.media[bed.medium]!.name}`,
    print(bed.depthM, 'length'),
    print(bed.velocityMPerS, 'velocity'),
    share(bed.catchFraction),
    share(bed.dirtFraction),
    share(bed.carbonFactor * bed.cleaningFactor),
  ]);
  return [table(COLUMNS, rows), wrap(KEY), wrap(orderText(orderShares))].join('\n');
};
