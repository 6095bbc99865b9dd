import type { OrderShares } from '@fettle/engine/assessment/assessment.ts';
import type { AssessedJob } from '../assessJob.ts';
import { inOneUnit, type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

/** What the heads of the table of beds mean. */
export const bedsKey =
  'catch: share of the solids in the water that one pass leaves here; filled: share of the pores that dirt fills; active: share of their full rate that dirt and cleaning leave the bacteria.';

const signed = (value: number): string => {
  const percent = Math.round(100 * value);
  return `${percent >= 0 ? '+' : '−'}${Math.abs(percent)} %`;
};

/** How much more would be carried without each way in which dirt works, largest first. */
export const orderSentence = (shares: OrderShares): string => {
  const ways = [
    { share: shares.clogging, without: 'if nothing clogged' },
    { share: shares.carbon, without: 'without organic carbon on the bacteria' },
    { share: shares.decay, without: 'if caught dirt did not rot' },
    { share: shares.cleaning, without: 'if cleaning cost no bacteria' },
  ].toSorted((a, b) => b.share - a.share);
  const parts = ways.map(({ share: value, without }) => `${signed(value)} ${without}`);
  return `What dirt costs here, and so what the order of the beds decides: the filter would carry ${parts.join(', ')}.`;
};

/** Said in place of the table where there are no beds. */
export const noBeds = 'There are no media in the filter yet.';

/** Beds in water order on the day of the comparison. */
export const bedsTable = (job: AssessedJob, print: Print): ReportTable => {
  const { beds } = job.assessment;
  const depth = inOneUnit(
    print,
    'length',
    beds.map(({ depthM }) => depthM),
  );
  const speed = inOneUnit(
    print,
    'velocity',
    beds.map(({ velocityMPerS }) => velocityMPerS),
  );
  return {
    columns: [
      { head: 'bed' },
      { head: 'medium' },
      { head: 'depth', align: 'right' },
      { head: 'speed', align: 'right' },
      { head: 'catch', align: 'right' },
      { head: 'filled', align: 'right' },
      { head: 'active', align: 'right' },
    ],
    rows: beds.map((bed) => [
      bed.id,
      `${bed.stage[0]!.toUpperCase()} ${job.model.media[bed.medium]!.name}`,
      depth(bed.depthM),
      speed(bed.velocityMPerS),
      share(bed.catchFraction),
      share(bed.dirtFraction),
      share(bed.carbonFactor * bed.cleaningFactor),
    ]),
  };
};
