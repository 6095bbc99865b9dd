import { unionizedAmmoniaFraction } from '../../laws/water/ammonia.ts';
import { type AmmoniaCriteria, ammoniaCriteriaEpa2013 } from '../../laws/water/criteria.ts';
import type { Model } from '../../model/model.ts';
import { marchStiff } from '../../numerics/stiff.ts';
import type { Compiled } from '../compiled.ts';
import { beginTank, type TankCloseness, type TankMarch } from './beginTank.ts';
import { changesIn, makeChange } from './happen.ts';
import { type ReaerationParts, reaerationParts } from './reaeration.ts';
import type { TankScenario } from './scenario.ts';
import { type StoppedFilter, stoppedFilter } from './stopped.ts';
import { type Extreme, type Held, type TankDays, tankRecorder } from './tankRecord.ts';
import { at, ledgerError } from './tankState.ts';

const DAY_S = 86_400;

/** Where the nitrogen of a run came from and went, kg N. */
export interface NitrogenLedger {
  /** In the water at the start, and at the end. */
  readonly startKg: number;
  readonly endKg: number;
  /** Excreted, from dirt that rots, and dosed. */
  readonly fedKg: number;
  /** Out with water changes, and into plants. */
  readonly changedKg: number;
  readonly takenKg: number;
  /** Oxidised to nitrite, and on to nitrate: within the water, so no part of the balance. */
  readonly firstKg: number;
  readonly secondKg: number;
  /** What the balance leaves over, as share of what came in: rounding. */
  readonly error: number;
}

/** How a tank's water goes over the coming days. */
export interface TankForecast {
  readonly model: Model;
  readonly compiled: Compiled;
  readonly scenario: TankScenario;
  readonly days: TankDays;
  readonly ammonia: Held;
  readonly nitrite: Held;
  readonly unionized: Held;
  readonly leastOxygen: Extreme;
  readonly leastAlkalinity: Extreme;
  readonly ledger: NitrogenLedger;
  /** The filter stopped as it stands at the end. */
  readonly stopped: StoppedFilter;
  /** Share of the ammonia that walls and ground oxidise at the end, 0 to 1. */
  readonly wallShare: number;
  readonly reaeration: ReaerationParts & { readonly allM3PerS: number };
  /** Regulator's criteria for the tank's own pH and temperature. */
  readonly criteria: AmmoniaCriteria;
  /** Of total ammonia, the share that is un-ionized in the tank's own water. */
  readonly unionizedFraction: number;
  /** Derivatives and steps that were taken. */
  readonly work: { readonly derivatives: number; readonly steps: number };
}

const nitrogenIn = (y: Float64Array): number => y[at.ammonia]! + y[at.nitrite]! + y[at.nitrate]!;

const ledgerOf = (tank: TankMarch, start: Float64Array): NitrogenLedger => {
  const { y } = tank.march;
  const { volumeM3 } = tank.regime;
  const kg = (perM3: number): number => perM3 * volumeM3;
  const moved = nitrogenIn(start) + y[at.fed]!;
  return {
    startKg: kg(nitrogenIn(start)),
    endKg: kg(nitrogenIn(y)),
    fedKg: kg(y[at.fed]!),
    changedKg: kg(y[at.changed]!),
    takenKg: kg(y[at.taken]!),
    firstKg: kg(y[at.first]!),
    secondKg: kg(y[at.second]!),
    error: moved > 0 ? ledgerError(start, y) / moved : 0,
  };
};

const wallShareOf = ({ system, march }: TankMarch): number => {
  const { first } = system.work;
  system.derivative(march.time, march.y, new Float64Array(system.size));
  const all = first.reduce((sum, one) => sum + one, 0);
  return all > 0 ? first.at(-1)! / all : 0;
};

/** Marches a tank through its scenario, with every change met at its time. */
const marchThrough = (tank: TankMarch, scenario: TankScenario) => {
  const record = tankRecorder(tank);
  const endS = scenario.days * DAY_S;
  record.jump();
  for (const change of changesIn(scenario)) {
    if (change.timeS >= endS) break;
    marchStiff(tank.march, change.timeS, record.look);
    makeChange(tank, change);
    record.jump();
  }
  marchStiff(tank.march, endS, record.look);
  return record.told();
};

/**
 * Forecasts a tank's water under a scenario.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const forecastTank = (
  model: Model,
  scenario: TankScenario,
  closeness: TankCloseness = {},
): TankForecast => {
  const tank = beginTank(model, scenario, closeness);
  const start = tank.march.y.slice();
  const told = marchThrough(tank, scenario);
  const { habitat } = tank.regime;
  const { compiled } = habitat.working;
  return {
    model,
    compiled,
    scenario,
    ...told,
    ledger: ledgerOf(tank, start),
    stopped: stoppedFilter(tank),
    wallShare: wallShareOf(tank),
    reaeration: { ...reaerationParts(compiled), allM3PerS: habitat.reaerationM3PerS },
    criteria: ammoniaCriteriaEpa2013(model.tank),
    unionizedFraction: unionizedAmmoniaFraction(model.tank),
    work: {
      derivatives: tank.march.counts.derivatives + tank.system.count,
      steps: tank.march.counts.steps,
    },
  };
};
