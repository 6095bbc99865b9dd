import { restart } from '../../numerics/stiff.ts';
import type { CompiledBed } from '../compiled.ts';
import { habitatAt, type TankMarch } from './beginTank.ts';
import { rottingNitrogen } from './habitat.ts';
import type { Beds, Happening, TankScenario } from './scenario.ts';
import { tankFigures } from './tankFigures.ts';
import { at, LEVELS } from './tankState.ts';

const DAY_S = 86_400;
const HOUR_S = 3600;

/** One change of a tank, at one time. */
export interface Change {
  readonly timeS: number;
  readonly make: (tank: TankMarch) => void;
}

const isNamed = (bed: CompiledBed, beds: Beds): boolean =>
  beds === 'all' ||
  bed.medium.stage === beds ||
  bed.chamber === beds ||
  bed.id === beds ||
  bed.medium.id === beds;

/** Places of the beds that something is done to, in water order. */
export const placesNamed = (beds: readonly CompiledBed[], named: Beds): readonly number[] =>
  beds.flatMap((bed, place) => (isNamed(bed, named) ? [place] : []));

/** Leaves a share of the bacteria of a bed. */
const leave = ({ march, regime }: TankMarch, place: number, kept: number): void => {
  const places = regime.habitat.areaM2.length;
  for (const entry of [LEVELS + place, LEVELS + places + place]) march.y[entry] = march.y[entry]! * kept;
};

const bedsOf = (tank: TankMarch): readonly CompiledBed[] => tank.regime.habitat.working.compiled.beds;

const replaceMedia = (tank: TankMarch, of: { beds: Beds; share: number }): void => {
  for (const place of placesNamed(bedsOf(tank), of.beds)) leave(tank, place, 1 - of.share);
};

const cleanMedia = (tank: TankMarch, of: { beds: Beds; water: 'tank' | 'tap' }): void => {
  const beds = bedsOf(tank);
  const byWater = of.water === 'tap' ? tankFigures.tapKeptRatio.value : 1;
  for (const place of placesNamed(beds, of.beds)) {
    const { medium } = beds[place]!;
    leave(tank, place, medium.care === 'replace' ? 0 : medium.bacteriaKept.value * byWater);
  }
};

/** Puts fresh water in the place of some: what it takes along goes into the ledger. */
const changeWater = ({ march: { y }, regime }: TankMarch, share: number): void => {
  const { fresh, habitat } = regime;
  for (const entry of [at.ammonia, at.nitrite, at.nitrate]) {
    const gone = share * y[entry]!;
    y[entry] = y[entry]! - gone;
    y[at.changed] = y[at.changed]! + gone;
  }
  y[at.oxygen] = y[at.oxygen]! + share * (habitat.saturatedOxygenKgPerM3 - y[at.oxygen]!);
  y[at.alkalinity] = y[at.alkalinity]! + share * (fresh.alkalinityKgPerM3 - y[at.alkalinity]!);
};

const addAmmonia = ({ march: { y } }: TankMarch, riseKgNPerM3: number): void => {
  y[at.ammonia] = y[at.ammonia]! + riseKgNPerM3;
  y[at.fed] = y[at.fed]! + riseKgNPerM3;
};

/** Kills a share of the bacteria everywhere, on the walls too. */
const kill = (tank: TankMarch, share: number): void => {
  for (let place = 0; place < tank.regime.habitat.areaM2.length; place += 1) leave(tank, place, 1 - share);
};

/** Runs the filter again: what rotted in it meanwhile comes along where nobody poured it away. */
const runAgain = (tank: TankMarch, stopped: { readonly hours: number; readonly rinsed: boolean }): void => {
  const { regime } = tank;
  regime.running = true;
  if (stopped.rinsed) return;
  const rottedKg = rottingNitrogen(regime.habitat) * stopped.hours * HOUR_S;
  addAmmonia(tank, rottedKg / regime.volumeM3);
};

const untilDay = (happening: { day: number; forDays?: number }, make: Change['make']): readonly Change[] =>
  happening.forDays === undefined ? [] : [{ timeS: (happening.day + happening.forDays) * DAY_S, make }];

const changesOf = (happening: Happening): readonly Change[] => {
  const timeS = happening.day * DAY_S;
  const now = (make: Change['make']): Change => ({ timeS, make });
  switch (happening.kind) {
    case 'replace':
      return [now((tank) => replaceMedia(tank, happening))];
    case 'clean':
      return [now((tank) => cleanMedia(tank, happening))];
    case 'feed':
      return [now(feedTimes(happening.factor)), ...untilDay(happening, feedTimes(1))];
    case 'temperature':
      return [now(warmTo(happening.temperatureK)), ...untilDay(happening, warmTo(undefined))];
    case 'harm':
      return [
        now((tank) => {
          kill(tank, happening.killed);
          tank.regime.activity = happening.activity;
        }),
        ...untilDay(happening, (tank) => {
          tank.regime.activity = 1;
        }),
      ];
    case 'stop':
      return [
        now((tank) => {
          tank.regime.running = false;
        }),
        { timeS: timeS + happening.hours * HOUR_S, make: (tank) => runAgain(tank, happening) },
      ];
    case 'change':
      return [now((tank) => changeWater(tank, happening.share))];
    case 'dose':
      return [now((tank) => addAmmonia(tank, happening.riseKgNPerM3))];
  }
};

const feedTimes =
  (factor: number): Change['make'] =>
  ({ model, regime }) => {
    regime.feedKgPerS = factor * model.tank.feedKgPerS;
  };

const warmTo =
  (temperatureK: number | undefined): Change['make'] =>
  (tank) => {
    tank.regime.habitat = habitatAt(tank, temperatureK ?? tank.model.tank.temperatureK);
  };

/** Everything that changes a tank in a scenario, in time. */
export const changesIn = ({ happenings, changes, days }: TankScenario): readonly Change[] => {
  const water: Change[] = [];
  if (changes) {
    for (let day = changes.everyDays; day < days; day += changes.everyDays)
      water.push({ timeS: day * DAY_S, make: (tank) => changeWater(tank, changes.share) });
  }
  return [...water, ...happenings.flatMap(changesOf)].sort((a, b) => a.timeS - b.timeS);
};

/** Makes a change, after which the march chooses its step anew. */
export const makeChange = (tank: TankMarch, change: Change): void => {
  change.make(tank);
  restart(tank.march);
};
