import { GROWTH_REFERENCE_K, growthFigures } from '../../laws/life/growth.ts';
import { temperatureFactor } from '../../laws/life/nitrification.ts';
import type { Model } from '../../model/model.ts';
import { compiledOf } from '../compile.ts';
import type { Compiled } from '../compiled.ts';
import { march } from '../dirt/march.ts';
import { keptPerS } from '../dirt/state.ts';
import { solveAt } from '../dirt/step.ts';
import { bacteriaShares } from '../life/bacteria.ts';
import { decayPerFeed } from '../life/carries.ts';
import { makePass, type Working } from '../life/oxidation.ts';
import { ratesOf } from '../life/rates.ts';
import { ammoniaMadeIn, ammoniaPerFeed, solidsMadeIn } from '../loads.ts';
import { addedReaeration } from './reaeration.ts';
import { tankFigures } from './tankFigures.ts';

/** Day after cleaning of whose dirt the filter's flows and what dirt leaves of the bacteria are taken. */
const DIRT_DAY_S = 60 * 86_400;

/** pH and alkalinity at which they take nothing off the rates: the run reckons with those of the day itself. */
const SUITS = { pH: 7.5, alkalinityKgPerM3: 1 } as const;

/** The bacteria of one step at one temperature. */
export interface Step {
  readonly growthPerS: number;
  readonly decayPerS: number;
  readonly halfKgNPerM3: number;
  /** Bacteria grown for nitrogen oxidised, kg COD/kg N. */
  readonly yieldRatio: number;
}

/** Where bacteria live, and what they can do there, at one temperature and at the flows of one state of dirt. */
export interface Habitat {
  readonly working: Working;
  /** Area per m³ of each bed in water that suits the bacteria, 1/m. */
  readonly areaPerM: Float64Array;
  /** Area of each bed, then of the walls, m². */
  readonly areaM2: Float64Array;
  readonly first: Step;
  readonly second: Step;
  /** Slopes of flux against level on the walls, m/s. */
  readonly wallSlopes: { readonly ammonia: number; readonly nitrite: number };
  readonly saturatedOxygenKgPerM3: number;
  /** kLa·V of all that brings oxygen in, m³/s. */
  readonly reaerationM3PerS: number;
  /** Ammonia nitrogen for each kg of feed: excreted, and from dirt that rots; kg/kg. */
  readonly nitrogenPerFeedRatio: number;
  readonly temperatureK: number;
}

/** A tank without anybody to measure it: twice as long as wide and high, five faces under water. */
export const facesOf = (volumeM3: number): number => 8 * (volumeM3 / 2) ** (2 / 3);

/** Growth of both steps at a temperature. */
export const stepsAt = (temperatureK: number): { readonly first: Step; readonly second: Step } => {
  const heat = (theta: number): number =>
    temperatureFactor({ temperatureK, theta, referenceK: GROWTH_REFERENCE_K });
  const f = growthFigures;
  const ammonia = heat(f.ammoniaGrowthTheta.value);
  const nitrite = heat(f.nitriteGrowthTheta.value);
  return {
    first: {
      growthPerS: f.ammoniaGrowthPerS.value * ammonia,
      decayPerS: f.ammoniaDecayPerS.value * ammonia,
      halfKgNPerM3: f.ammoniaHalfKgNPerM3.value,
      yieldRatio: f.ammoniaYieldRatio.value,
    },
    second: {
      growthPerS: f.nitriteGrowthPerS.value * nitrite,
      decayPerS: f.nitriteDecayPerS.value * nitrite,
      halfKgNPerM3: f.nitriteHalfKgNPerM3.value,
      yieldRatio: f.nitriteYieldRatio.value,
    },
  };
};

/** Oxygen that the tank uses in its everyday, kg/s: fish, both steps, rotting dirt. */
const everydayOxygen = (
  { model, constants }: Compiled,
  nitrogenPerFeed: number,
  dirtKgPerS: number,
): number =>
  model.tank.feedKgPerS *
    (tankFigures.fishOxygenPerFeedRatio.value + constants.oxygenPerNitrogenRatio * nitrogenPerFeed) +
  dirtKgPerS;

/**
 * kLa·V that holds the tank at the oxygen that the job says it has, under the job's own feed; what surface, falling
 * water and bubbles bring by their laws where that is more.
 */
const reaerationOf = (compiled: Compiled, usedKgPerS: number): number => {
  const { oxygenFraction } = compiled.model.tank;
  const deficit = Math.max(1 - oxygenFraction, 0.01) * compiled.water.saturatedOxygenKgPerM3;
  return Math.max(usedKgPerS / deficit, addedReaeration(compiled));
};

interface Dirty {
  readonly shares: ReturnType<typeof bacteriaShares>;
  readonly caughtKgPerS: readonly number[];
  readonly ageS: number;
}

/** Marches the dirt to its day, and leaves the network solved there. */
const dirtOf = (compiled: Compiled): Dirty => {
  const marched = march(compiled, solidsMadeIn(compiled), DIRT_DAY_S);
  const shares = bacteriaShares(compiled, marched, ammoniaMadeIn(compiled));
  const dirt = marched.atDay;
  solveAt(compiled, dirt);
  return {
    // What cleaning costs is what a run tells; a bed that is thrown away before it ripens holds none in either.
    shares: { ...shares, cleaningFactor: shares.cleaningFactor.map((factor) => (factor > 0 ? 1 : 0)) },
    caughtKgPerS: keptPerS(compiled, dirt),
    ageS: dirt.timeS,
  };
};

/**
 * The habitat of a job's tank, with the dirt of the job's own feed.
 * @param walls whether bacteria live on glass and ground too
 */
export const habitatOf = (model: Model, walls: boolean): Habitat => {
  const compiled = compiledOf(model);
  const { constants } = compiled;
  const { tank } = model;
  const dirty = dirtOf(compiled);
  const suited: Compiled = { ...compiled, model: { ...model, tank: { ...tank, ...SUITS } } };
  const rates = ratesOf(suited, dirty.shares, { ...dirty, areaFactor: 1 });
  const steps = stepsAt(tank.temperatureK);
  const beds = compiled.beds.length;
  const bacteria = {
    ammoniaMost: new Float64Array(beds),
    nitriteMost: new Float64Array(beds),
    ammoniaHalf: steps.first.halfKgNPerM3,
    nitriteHalf: steps.second.halfKgNPerM3,
  };
  const areaPerM = rates.areaPerM.slice();
  const onWalls = walls ? facesOf(tank.volumeM3) * tankFigures.wallAreaRatio.value : 0;
  const still = tankFigures.wallSlopeRatio.value;
  const nitrogenPerFeedRatio =
    ammoniaPerFeed(compiled, tank.feedProteinFraction) +
    decayPerFeed(compiled, dirty.caughtKgPerS, dirty.ageS);
  const dirtOxygen = rates.dirtOxygenKgPerS.reduce((sum, one) => sum + one, 0);
  const used = everydayOxygen(compiled, nitrogenPerFeedRatio, dirtOxygen);
  return {
    working: { compiled, rates: { ...rates, bacteria }, pass: makePass(compiled) },
    areaPerM,
    areaM2: Float64Array.from([
      ...compiled.beds.map((bed, place) => areaPerM[place]! * bed.volumeM3),
      onWalls,
    ]),
    ...steps,
    wallSlopes: {
      ammonia: still * rates.kineticSlopeMPerS,
      nitrite:
        (still * constants.nitriteSlopeRatio * rates.kineticSlopeMPerS * rates.nitriteCeiling) /
        rates.ammoniaCeiling,
    },
    saturatedOxygenKgPerM3: compiled.water.saturatedOxygenKgPerM3,
    reaerationM3PerS: reaerationOf(compiled, used),
    nitrogenPerFeedRatio,
    temperatureK: tank.temperatureK,
  };
};

/** Nitrogen that rotting dirt gives back in a stopped filter, kg N/s, at its day's dirt. */
export const rottingNitrogen = ({ working }: Habitat): number => {
  const { constants } = working.compiled;
  const oxygen = working.rates.dirtOxygenKgPerS.reduce((sum, one) => sum + one, 0);
  return (oxygen * constants.solidsNitrogenRatio) / constants.oxygenPerSolidsRatio;
};
