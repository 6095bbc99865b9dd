import { compiledOf } from '@fettle/engine/assessment/compile.ts';
import { stagedChanges } from '@fettle/engine/assessment/tank/stagedChange.ts';
import { forecastTank } from '@fettle/engine/assessment/tank/tankForecast.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { Outcome } from './assessDocument.ts';
import type { JobSource } from './openJob.ts';
import { openState } from './openState.ts';
import { type TankResult, toTankResult } from './results/tank.ts';
import type { TankJob } from './tankJob.ts';
import { readTankScenario, type TankHow } from './tankScenario.ts';

export interface TankAsked extends TankHow {
  /** Which packing; as found where left out. */
  readonly state?: PackedState | undefined;
}

/** Reads a job and forecasts its tank: figures and words as they are, for the screen. */
export const openTank = (source: JobSource, how: TankAsked = {}): Outcome<TankJob> => {
  const opened = openState(source, how.state);
  if (!opened.ok) return opened;
  const { model } = opened;
  const read = readTankScenario(how, compiledOf(model).beds);
  if ('problems' in read) return { ok: false, problems: read.problems };
  return { ok: true, result: { forecast: forecastTank(model, read.scenario), staged: stagedChanges(model) } };
};

/**
 * Reads a job and forecasts its tank.
 * @returns exactly what `fettle forecast --tank --json` prints
 */
export const tankDocument = (source: JobSource, how: TankAsked = {}): Outcome<TankResult> => {
  const tank = openTank(source, how);
  return tank.ok ? { ok: true, result: toTankResult(tank.result) } : tank;
};
