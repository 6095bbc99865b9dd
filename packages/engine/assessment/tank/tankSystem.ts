import { FLUX_OXYGEN_PER_AMMONIA, FLUX_OXYGEN_PER_NITRITE } from '../../laws/life/nitrification.ts';
import { pHByAlkalinityHenderson1908 } from '../../laws/water/carbonate.ts';
import type { StiffSystem } from '../../numerics/rodas.ts';
import { passThrough } from '../life/oxidation.ts';
import { chemistryFactor } from '../life/rates.ts';
import type { Habitat, Step } from './habitat.ts';
import { plantUptake, usualPlants } from './plants.ts';
import { tankFigures } from './tankFigures.ts';
import { at, LEVELS } from './tankState.ts';

/** What a tank goes by between two events. */
export interface Regime {
  habitat: Habitat;
  readonly volumeM3: number;
  /** Water that changes put in: of the tank's own pH and alkalinity, without nitrogen, saturated. */
  readonly fresh: { readonly pH: number; readonly alkalinityKgPerM3: number };
  feedKgPerS: number;
  waterChangePerS: number;
  plants: boolean;
  /** Whether the filter's pump runs. */
  running: boolean;
  /** What a chemical in the water leaves of the bacteria's work, 0 to 1. */
  activity: number;
  /** False where bacteria are taken to be as many as the area feeds: the algebraic limit. */
  readonly countsBacteria: boolean;
}

/** Alkalinity that is taken for the logarithm where there is none, kg/m³. */
const TRACE_ALKALINITY = 1e-6;

/** pH of a tank whose alkalinity has changed, with carbon dioxide as air and fish hold it. */
export const pHNow = ({ fresh }: Regime, alkalinityKgPerM3: number): number =>
  pHByAlkalinityHenderson1908({
    pH: fresh.pH,
    beforeKgPerM3: Math.max(fresh.alkalinityKgPerM3, TRACE_ALKALINITY),
    alkalinityKgPerM3: Math.max(alkalinityKgPerM3, TRACE_ALKALINITY),
  });

/** What pH, alkalinity and chemicals leave of the bacteria's work. */
const activityNow = (regime: Regime, alkalinity: number): number => {
  const water = { pH: pHNow(regime, alkalinity), alkalinityKgPerM3: Math.max(alkalinity, 0) };
  return regime.activity * chemistryFactor(regime.habitat.working.compiled, water);
};

/** Greatest flux that a mass of bacteria on an area makes, kg N/(m²·s). */
const mostOf = (step: Step, massKg: number, areaM2: number): number =>
  areaM2 > 0 ? ((step.growthPerS / step.yieldRatio) * Math.max(massKg, 0)) / areaM2 : 0;

/** Nitrogen oxidised in each place and by each step, kg N/s, and what the filter does to the oxygen. */
interface Work {
  readonly first: Float64Array;
  readonly second: Float64Array;
  oxygenKgPerS: number;
}

const throughFilter = (regime: Regime, y: Float64Array, work: Work): void => {
  const { working, areaPerM, areaM2, first, second } = regime.habitat;
  const { rates, pass, compiled } = working;
  const beds = compiled.beds.length;
  work.oxygenKgPerS = 0;
  if (!regime.running) {
    work.first.fill(0);
    work.second.fill(0);
    return;
  }
  const activity = activityNow(regime, y[at.alkalinity]!);
  const most = rates.bacteria!;
  for (let bed = 0; bed < beds; bed += 1) {
    rates.areaPerM[bed] = areaPerM[bed]! * activity;
    const [a, n] = [y[LEVELS + bed]!, y[LEVELS + beds + 1 + bed]!];
    most.ammoniaMost[bed] = regime.countsBacteria ? mostOf(first, a, areaM2[bed]!) : Number.POSITIVE_INFINITY;
    most.nitriteMost[bed] = regime.countsBacteria
      ? mostOf(second, n, areaM2[bed]!)
      : Number.POSITIVE_INFINITY;
  }
  const oxygenKgPerM3 = Math.max(y[at.oxygen]!, 0);
  passThrough(working, { ammoniaKgNPerM3: y[at.ammonia]!, nitriteKgNPerM3: y[at.nitrite]!, oxygenKgPerM3 });
  work.first.set(pass.byBedKgNPerS);
  work.second.set(pass.nitriteByBedKgNPerS);
  work.oxygenKgPerS = pass.outFlowM3PerS * (pass.outletOxygenKgPerM3 - oxygenKgPerM3);
};

const onWalls = (regime: Regime, y: Float64Array, work: Work): void => {
  const { areaM2, first, second, wallSlopes, working } = regime.habitat;
  const { rates } = working;
  const walls = working.compiled.beds.length;
  const area = areaM2[walls]!;
  const oxygenKgPerM3 = Math.max(y[at.oxygen]!, 0);
  const oxygenFactor = oxygenKgPerM3 / (rates.oxygenHalfSaturationKgPerM3 + oxygenKgPerM3);
  const share = oxygenFactor * activityNow(regime, y[at.alkalinity]!) * area;
  const fluxOf = (
    level: number,
    by: { step: Step; mass: number; slope: number; ceiling: number; perNitrogen: number },
  ): number => {
    const bySupply = (by.slope * oxygenKgPerM3) / by.perNitrogen;
    const most = mostOf(by.step, by.mass, area);
    const byMass = regime.countsBacteria
      ? (most * level) / (by.step.halfKgNPerM3 + Math.max(level, 0))
      : Number.POSITIVE_INFINITY;
    return share * Math.min(by.slope * level, by.ceiling, bySupply, byMass);
  };
  work.first[walls] = fluxOf(y[at.ammonia]!, {
    step: first,
    mass: y[LEVELS + walls]!,
    slope: wallSlopes.ammonia,
    ceiling: rates.ammoniaCeiling,
    perNitrogen: FLUX_OXYGEN_PER_AMMONIA,
  });
  work.second[walls] = fluxOf(y[at.nitrite]!, {
    step: second,
    mass: y[LEVELS + 2 * walls + 1]!,
    slope: wallSlopes.nitrite,
    ceiling: rates.nitriteCeiling,
    perNitrogen: FLUX_OXYGEN_PER_NITRITE,
  });
  work.oxygenKgPerS -=
    FLUX_OXYGEN_PER_AMMONIA * work.first[walls]! + FLUX_OXYGEN_PER_NITRITE * work.second[walls]!;
};

const sum = (values: Float64Array): number => {
  let all = 0;
  for (const value of values) all += value;
  return all;
};

const water = (regime: Regime, y: Float64Array, of: { work: Work; into: Float64Array }): void => {
  const { work, into } = of;
  const { habitat, volumeM3, waterChangePerS: change, feedKgPerS } = regime;
  const first = sum(work.first) / volumeM3;
  const second = sum(work.second) / volumeM3;
  const fed = (habitat.nitrogenPerFeedRatio * feedKgPerS) / volumeM3;
  const taken = regime.plants
    ? plantUptake(usualPlants(habitat.working.compiled.model.tank), {
        ammonia: y[at.ammonia]!,
        nitrate: y[at.nitrate]!,
      })
    : { ammonia: 0, nitrate: 0 };
  into[at.ammonia] = fed - first - taken.ammonia - change * y[at.ammonia]!;
  into[at.nitrite] = first - second - change * y[at.nitrite]!;
  into[at.nitrate] = second - taken.nitrate - change * y[at.nitrate]!;
  into[at.fed] = fed;
  into[at.changed] = change * (y[at.ammonia]! + y[at.nitrite]! + y[at.nitrate]!);
  into[at.taken] = taken.ammonia + taken.nitrate;
  into[at.first] = first;
  into[at.second] = second;
  const deficit = habitat.saturatedOxygenKgPerM3 - y[at.oxygen]!;
  const breathed = feedKgPerS * tankFigures.fishOxygenPerFeedRatio.value;
  into[at.oxygen] =
    (habitat.reaerationM3PerS * deficit + work.oxygenKgPerS - breathed) / volumeM3 + change * deficit;
  into[at.alkalinity] =
    habitat.working.compiled.constants.alkalinityPerNitrogenRatio *
      (0.5 * (taken.nitrate - taken.ammonia) - first) +
    change * (regime.fresh.alkalinityKgPerM3 - y[at.alkalinity]!);
};

/** Growth, decay, and what is shed and settles anew over all areas alike. */
const growth = (
  habitat: Habitat,
  y: Float64Array,
  of: { step: Step; from: number; oxidised: Float64Array; into: Float64Array },
): void => {
  const { step, from, oxidised, into } = of;
  const { areaM2 } = habitat;
  const shed = tankFigures.settlingPerS.value;
  let mass = 0;
  let area = 0;
  for (let place = 0; place < areaM2.length; place += 1) {
    mass += y[from + place]!;
    area += areaM2[place]!;
  }
  for (let place = 0; place < areaM2.length; place += 1) {
    const own = y[from + place]!;
    const settled = area > 0 ? (mass * areaM2[place]!) / area : own;
    into[from + place] = step.yieldRatio * oxidised[place]! - step.decayPerS * own + shed * (settled - own);
  }
};

/** Rows of ∂f/∂y whose sum is nothing: the ammonia's row is what the others leave, so that no nitrogen is lost. */
const closeLedger = (jacobian: Float64Array, size: number): void => {
  for (let column = 0; column < size; column += 1) {
    const of = (row: number): number => jacobian[row * size + column]!;
    jacobian[at.ammonia * size + column] =
      of(at.fed) - of(at.changed) - of(at.taken) - of(at.nitrite) - of(at.nitrate);
  }
};

const isLedger = (column: number): boolean => column >= at.fed && column < LEVELS;
const STEP = Math.sqrt(2 ** -52);

/**
 * A tank with its filter as a system of equations: ammonia, nitrite, nitrate, oxygen, alkalinity, the ledger of
 * nitrogen, and the bacteria of both steps in each bed and on the walls. What the regime says may change between
 * marches.
 * @param scale size of each entry below which it counts as nothing, for differences
 */
export const tankSystem = (
  regime: Regime,
  scale: Float64Array,
): StiffSystem & { readonly work: Work; count: number } => {
  const places = regime.habitat.areaM2.length;
  const size = LEVELS + 2 * places;
  const work: Work = { first: new Float64Array(places), second: new Float64Array(places), oxygenKgPerS: 0 };
  const plain = new Float64Array(size);
  const moved = new Float64Array(size);
  const system = {
    size,
    work,
    /** Derivatives taken for Jacobians. */
    count: 0,
    derivative: (_: number, y: Float64Array, into: Float64Array): void => {
      const { habitat } = regime;
      throughFilter(regime, y, work);
      onWalls(regime, y, work);
      water(regime, y, { work, into });
      growth(habitat, y, { step: habitat.first, from: LEVELS, oxidised: work.first, into });
      growth(habitat, y, { step: habitat.second, from: LEVELS + places, oxidised: work.second, into });
    },
    jacobian: (time: number, y: Float64Array, into: Float64Array): void => {
      system.derivative(time, y, plain);
      into.fill(0);
      for (let column = 0; column < size; column += 1) {
        if (isLedger(column)) continue;
        const kept = y[column]!;
        y[column] = kept + STEP * Math.max(Math.abs(kept), scale[column]!);
        const by = y[column]! - kept;
        system.derivative(time, y, moved);
        y[column] = kept;
        for (let row = 0; row < size; row += 1) into[row * size + column] = (moved[row]! - plain[row]!) / by;
      }
      closeLedger(into, size);
      system.count += size - 4;
    },
  };
  return system;
};
