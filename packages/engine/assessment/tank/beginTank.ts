import type { Model } from '../../model/model.ts';
import { beginStiff, marchStiff, type StiffMarch } from '../../numerics/stiff.ts';
import { type Habitat, habitatOf } from './habitat.ts';
import type { TankScenario } from './scenario.ts';
import { tankFigures } from './tankFigures.ts';
import { at, LEVELS } from './tankState.ts';
import { type Regime, tankSystem } from './tankSystem.ts';

const DAY_S = 86_400;

/** Error of a step as share of the state, and the level below which it does not count, kg/m³: 0.001 mg/L. */
const RELATIVE = 1e-4;
const SMALL_LEVEL = 1e-9;
/** Share of a mature tank's bacteria that counts as nothing. */
const SMALL_BACTERIA = 1e-9;
/** How long a mature tank is taken to have run as the job says, s. */
const RIPENED_S = 400 * DAY_S;

/** A tank that is being marched. */
export interface TankMarch {
  readonly model: Model;
  readonly regime: Regime;
  readonly march: StiffMarch;
  readonly system: ReturnType<typeof tankSystem>;
  /** Habitats by temperature, made as they are needed. */
  readonly habitats: Map<number, Habitat>;
  readonly walls: boolean;
  /** Bacteria that the job's own load feeds in the long run, kg COD of each step. */
  readonly fullKg: { readonly first: number; readonly second: number };
}

export interface TankCloseness {
  readonly relative?: number;
}

/** The habitat at another temperature, with the same dirt. */
export const habitatAt = (tank: Omit<TankMarch, 'march' | 'system'>, temperatureK: number): Habitat => {
  const known = tank.habitats.get(temperatureK);
  if (known) return known;
  const { model } = tank;
  // What brings in oxygen stays as it is.
  const { reaerationM3PerS } = tank.regime.habitat;
  const made = {
    ...habitatOf({ ...model, tank: { ...model.tank, temperatureK } }, tank.walls),
    reaerationM3PerS,
  };
  tank.habitats.set(temperatureK, made);
  return made;
};

/** Bacteria that a load of nitrogen feeds where growth is decay, kg COD. */
const fedBy = (habitat: Habitat, loadKgNPerS: number): TankMarch['fullKg'] => ({
  first: (habitat.first.yieldRatio * loadKgNPerS) / habitat.first.decayPerS,
  second: (habitat.second.yieldRatio * loadKgNPerS) / habitat.second.decayPerS,
});

/** Load that full bacteria are reckoned from where the job feeds nothing, kg N/(m³·s): the normal stock's. */
const USUAL_LOAD = (0.8e-2 * 0.45 * 0.092) / DAY_S;

/** Bacteria that drift in everywhere, and a share of a mature tank's in the beds. */
const startMasses = (
  habitat: Habitat,
  of: { readonly fullKg: number; readonly share: number },
  into: Float64Array,
): void => {
  const { areaM2 } = habitat;
  const walls = areaM2.length - 1;
  const all = areaM2.reduce((sum, area) => sum + area, 0);
  const inBeds = all - areaM2[walls]!;
  for (let place = 0; place < areaM2.length; place += 1) {
    const drifted = all > 0 ? tankFigures.inoculumRatio.value * (areaM2[place]! / all) : 0;
    const seeded = place < walls && inBeds > 0 ? of.share * (areaM2[place]! / inBeds) : 0;
    into[place] = of.fullKg * (drifted + seeded);
  }
};

const startState = (tank: Omit<TankMarch, 'march' | 'system'>, share: number): Float64Array => {
  const { habitat, fresh } = tank.regime;
  const places = habitat.areaM2.length;
  const y = new Float64Array(LEVELS + 2 * places);
  y[at.oxygen] = habitat.saturatedOxygenKgPerM3;
  y[at.alkalinity] = fresh.alkalinityKgPerM3;
  startMasses(habitat, { fullKg: tank.fullKg.first, share }, y.subarray(LEVELS, LEVELS + places));
  startMasses(habitat, { fullKg: tank.fullKg.second, share }, y.subarray(LEVELS + places));
  return y;
};

const scaleOf = (tank: Omit<TankMarch, 'march' | 'system'>): Float64Array => {
  const places = tank.regime.habitat.areaM2.length;
  const scale = new Float64Array(LEVELS + 2 * places).fill(SMALL_LEVEL);
  scale.fill(SMALL_BACTERIA * tank.fullKg.first, LEVELS, LEVELS + places);
  scale.fill(SMALL_BACTERIA * tank.fullKg.second, LEVELS + places);
  return scale;
};

const regimeOf = (model: Model, scenario: TankScenario, habitat: Habitat): Regime => {
  const { tank } = model;
  return {
    habitat,
    volumeM3: tank.volumeM3,
    fresh: { pH: tank.pH, alkalinityKgPerM3: tank.alkalinityKgPerM3 },
    feedKgPerS: tank.feedKgPerS,
    waterChangePerS: scenario.changes ? 0 : tank.waterChangePerS,
    plants: scenario.plants ?? tank.planted,
    running: true,
    activity: 1,
    countsBacteria: true,
  };
};

/** Counts of the ledger from here on. */
const clearLedger = (y: Float64Array): void => {
  y.fill(0, at.fed, LEVELS);
};

/**
 * Begins a tank as a scenario starts it: a mature one has run for over a year as the job says before day 0.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const beginTank = (model: Model, scenario: TankScenario, close: TankCloseness = {}): TankMarch => {
  const walls = scenario.walls ?? true;
  const habitat = habitatOf(model, walls);
  const load = habitat.nitrogenPerFeedRatio * model.tank.feedKgPerS || USUAL_LOAD * model.tank.volumeM3;
  const base = {
    model,
    regime: regimeOf(model, scenario, habitat),
    habitats: new Map([[model.tank.temperatureK, habitat]]),
    walls,
    fullKg: fedBy(habitat, load),
  };
  const scale = scaleOf(base);
  const system = tankSystem(base.regime, scale);
  const { start } = scenario;
  const share = start.kind === 'new' ? 0 : start.kind === 'seeded' ? start.share : 1;
  const closeness = { relative: close.relative ?? RELATIVE, absolute: scale };
  let march = beginStiff(system, { time: 0, y: startState(base, share) }, closeness);
  if (start.kind === 'mature') {
    base.regime.waterChangePerS = model.tank.waterChangePerS;
    marchStiff(march, RIPENED_S);
    clearLedger(march.y);
    base.regime.waterChangePerS = scenario.changes ? 0 : model.tank.waterChangePerS;
    march = beginStiff(system, { time: 0, y: march.y }, closeness);
    system.count = 0;
  }
  return { ...base, march, system };
};
