import type { DyeComparison } from '@fettle/engine/assessment/residence/dye.ts';
import type { AssessedJob } from '../assessJob.ts';
import { share } from '../printing.ts';

const seconds = (timeS: number): string => `${Number(timeS.toPrecision(2))} s`;

const pair = (
  { measured, doubt, computed }: DyeComparison,
  key: 't10S' | 't50S' | 't90S' | 'meanS',
): string => {
  const ours = computed === undefined ? '' : `, by the map ${seconds(computed[key])}`;
  return `${seconds(measured[key])} ± ${seconds(doubt[key])}${ours}`;
};

const sentence = (one: DyeComparison): string => {
  const { test, measured, doubt, deadShare, isCutOff } = one;
  const index = `Morrill index ${measured.morrillIndex.toFixed(1)} ± ${doubt.morrillIndex.toFixed(1)}`;
  const dead =
    deadShare !== undefined && deadShare > 0 && !isCutOff
      ? ` Mean against volume over flow leaves ${share(deadShare)} of the water standing.`
      : '';
  const cut = isCutOff
    ? ' The readings end before the colour is gone, so mean and nine tenths are too small: read longer.'
    : '';
  return `dye, ${test.state}: a tenth after ${pair(one, 't10S')}; half after ${pair(one, 't50S')}; nine tenths after ${pair(one, 't90S')}; mean ${pair(one, 'meanS')}; ${index}.${dead}${cut}`;
};

/** What media do to a dye, and where it must not go; said once where a dye test stands in the job. */
const CAUTION =
  'Never put dye into an occupied tank without need. Carbon adsorbs it, zeolite exchanges salt, floss holds colour: with these in the filter the curve comes late and small.';

/** Each dye test beside what the map says of the same flow, and what to mind about it. */
export const dyeLines = ({ dye }: Pick<AssessedJob, 'dye'>): readonly string[] =>
  dye === undefined || dye.length === 0 ? [] : [...dye.map(sentence), CAUTION];
