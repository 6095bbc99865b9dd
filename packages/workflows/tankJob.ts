import type { StagedChange } from '@fettle/engine/assessment/tank/stagedChange.ts';
import type { TankForecast } from '@fettle/engine/assessment/tank/tankForecast.ts';

/** A tank's water in time, and how the media of its filter may be changed. */
export interface TankJob {
  readonly forecast: TankForecast;
  readonly staged: readonly StagedChange[];
}
