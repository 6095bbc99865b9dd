import { growthFigures } from '../laws/life/growth.ts';
import { temperatureFactor } from '../laws/life/nitrification.ts';
import { asNow, settledWith, type TankState, type Workplace } from './tankState.ts';

/** What happens when one of several filters on a tank stops. */
export interface Stop {
  /** Name of another filter; absent where it is the job's own. */
  readonly name?: string;
  /** Share of the tank's ammonia that it oxidises while it runs, 0 to 1. */
  readonly share: number;
  /** Where the tank goes with the bacteria that the others have. */
  readonly soon: TankState;
  /** Where it settles once theirs are as many as their area and water feed. */
  readonly madeUp: TankState;
}

/** Each filter stopped in turn; none where there is but one. The workers must stand at the settled levels. */
export const stopsOf = (place: Workplace): readonly Stop[] => {
  const { workers, terms } = place;
  const filters = workers.filter(({ kind }) => kind !== 'walls');
  if (filters.length < 2) return [];
  const limited = asNow(place);
  const work = filters.map(({ byBed }) => byBed().ammonia.reduce((sum, one) => sum + one, 0));
  return filters.map((filter, at) => {
    const isLeft = (_: unknown, index: number): boolean => workers[index] !== filter;
    return {
      ...(filter.name === undefined ? {} : { name: filter.name }),
      share: terms.loadKgNPerS > 0 ? work[at]! / terms.loadKgNPerS : 0,
      soon: settledWith(place, limited.filter(isLeft)),
      madeUp: settledWith(place, workers.filter(isLeft)),
    };
  });
};

/** Share of its bacteria that a new filter is to have before the old one is taken away. */
const READY_SHARE = 0.9;
/** Water in which the recovery time was taken, K. */
const RECOVERS_AT_K = 298.15;

/**
 * How long a new filter runs beside the old one until it has nine tenths of its bacteria: those that are missing dwindle
 * with the recovery time, which is longer in colder water as growth is slower.
 * @param of.recoveryS time constant at 25 °C, s
 * @returns s
 */
export const sideBySide = (of: { readonly recoveryS: number; readonly temperatureK: number }): number =>
  (of.recoveryS * -Math.log(1 - READY_SHARE)) /
  temperatureFactor({
    temperatureK: of.temperatureK,
    theta: growthFigures.ammoniaGrowthTheta.value,
    referenceK: RECOVERS_AT_K,
  });
