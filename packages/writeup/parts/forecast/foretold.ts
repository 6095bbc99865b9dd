import type { BedDays } from '@fettle/engine/assessment/forecast/record.ts';
import { HIDDEN_FROM } from '@fettle/engine/assessment/intervalEnd.ts';
import { isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import { flows, hasInterval } from '../interval.ts';
import { lastState, type Writer } from '../writer.ts';

/** Days that stand for one month, two and three. */
export const monthDays = [30, 60, 90] as const;

/**
 * What of the days to come can be told: all of it; nothing, where no water flows or there are no media; or only why not:
 * the tank is not fed, nothing is caught, or bubbles lift a flow that nobody timed.
 */
export type Foretold = 'all' | 'nothing' | 'unfed' | 'caught-nothing' | 'untimed-air';

export const foretold = ({ source }: Pick<Writer, 'source'>): Foretold => {
  const { model, assessment, outlook } = lastState(source);
  if (!flows(assessment) || assessment.beds.length === 0) return 'nothing';
  if (model.tank.feedKgPerS <= 0) return 'unfed';
  if (outlook.forecast().days.beds.every(({ dirtKg }) => dirtKg.at(-1)! <= 0)) return 'caught-nothing';
  const isTimed = model.tests.some(({ kind }) => kind === 'timed-volume');
  return isDrivenByAir(model) && !isTimed ? 'untimed-air' : 'all';
};

/** The bed whose water is least of clean on any day. */
export const mostLosing = (beds: readonly BedDays[]): BedDays | undefined =>
  beds.toSorted((one, other) => Math.min(...one.flowRatio) - Math.min(...other.flowRatio))[0];

/** Whether anything is to be seen of it: within the days cleaning is due, or the water through a bed is much less than clean. */
export const isEventful = ({ source }: Pick<Writer, 'source'>): boolean => {
  const { assessment, outlook } = lastState(source);
  const losing = mostLosing(outlook.forecast().days.beds);
  return hasInterval(assessment) || Math.min(...(losing?.flowRatio ?? [1])) < HIDDEN_FROM;
};
