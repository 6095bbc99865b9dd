import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { type Fact, said } from '@fettle/engine/wording/said.ts';
import { duration, share } from './quantities.ts';

/** Whether any water flows: where none does, nothing clogs and nothing misses the media. */
export const flows = ({ dutyPoint }: Assessment): boolean => dutyPoint.flowM3PerS > 0;

/** Whether a time until cleaning was found, and not only that nothing asks for it within a year. */
export const hasInterval = (assessment: Assessment): boolean =>
  flows(assessment) && !assessment.cleaning.beyond && assessment.cleaning.endedBy !== 'none';

/** Time until it wants cleaning. */
export const interval = (assessment: Assessment): Fact =>
  flows(assessment)
    ? duration(assessment.cleaning.timeS, assessment.cleaning.beyond)
    : said('figure.no-water');

/** Whether there are mechanical media that water could miss. */
export const hasMechanical = ({ beds }: Assessment): boolean =>
  beds.some(({ stage }) => stage === 'mechanical');

/** Share of the water that misses the mechanical media. */
export const missed = (assessment: Assessment): Fact => {
  if (!flows(assessment)) return said('figure.no-water');
  return hasMechanical(assessment) ? share(assessment.bypass.mechanical) : said('figure.no-mechanical');
};
