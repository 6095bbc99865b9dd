import { unionizedAmmoniaFraction } from '../../laws/water/ammonia.ts';
import type { BindingLimit } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { makePass, passThrough, type Rates, type Working } from './oxidation.ts';

/** Levels that a tank is to stay under (our own choice): what a drop test reads as nothing, kg N/m³. */
export const AMMONIA_TARGET = 1e-4;
export const NITRITE_TARGET = 1e-4;
/** Un-ionized ammonia never above this, kg NH3-N/m³ (our own choice, below published no-effect levels). */
export const UNIONIZED_LIMIT = 2e-5;
/** Oxygen that has to be left in the water behind the filter, kg/m³. */
export const OUTLET_OXYGEN_LEAST = 2e-3;

/** What a packing oxidises at most while the tank stays within its targets. */
export interface Capacity {
  readonly oxidisedKgNPerS: number;
  readonly limit: Exclude<BindingLimit, 'flow' | 'alkalinity'>;
  readonly ammoniaKgNPerM3: number;
  readonly nitriteKgNPerM3: number;
  readonly outletOxygenKgPerM3: number;
  readonly byBedKgNPerS: readonly number[];
}

/** Nitrite at which the filter oxidises as much of it as it makes, for a tank held at this TAN. */
const steadyNitrite = (working: Working, ammoniaKgNPerM3: number): number => {
  const { pass } = working;
  const { oxygenKgPerM3 } = working.compiled.water;
  const surplus = (nitriteKgNPerM3: number): number => {
    passThrough(working, { ammoniaKgNPerM3, nitriteKgNPerM3, oxygenKgPerM3 });
    return pass.ammoniaKgNPerS - pass.nitriteKgNPerS;
  };
  let low = 0;
  let atLow = surplus(low);
  if (atLow <= 0) return 0;
  let high = 2 * ammoniaKgNPerM3;
  let atHigh = surplus(high);
  while (atHigh > 0 && high < 1) {
    low = high;
    atLow = atHigh;
    high *= 4;
    atHigh = surplus(high);
  }
  // Nearly straight in nitrite, so that false position with halved ends lands within a few steps.
  for (let trial = 0; trial < 40 && high - low > 1e-9 * high; trial += 1) {
    const middle = low + ((high - low) * atLow) / (atLow - atHigh);
    const atMiddle = surplus(middle);
    if (Math.abs(atMiddle) <= 1e-9 * pass.ammoniaKgNPerS) return middle;
    if (atMiddle > 0) {
      low = middle;
      atLow = atMiddle;
      atHigh *= 0.5;
    } else {
      high = middle;
      atHigh = atMiddle;
      atLow *= 0.5;
    }
  }
  return 0.5 * (low + high);
};

/** Greatest share (0 to 1) that keeps `excess` at or below zero; `excess` rises with the share and is positive at 1. */
const greatestShare = (excess: (share: number) => number, atOne: number): number => {
  let low = 0;
  let high = 1;
  let atLow = excess(0);
  let atHigh = atOne;
  if (atLow >= 0) return 0;
  for (let trial = 0; trial < 60 && high - low > 1e-9; trial += 1) {
    const middle = low + ((high - low) * -atLow) / (atHigh - atLow);
    const atMiddle = excess(middle);
    if (Math.abs(atMiddle) < 1e-9 * Math.abs(atOne)) return middle;
    if (atMiddle > 0) {
      high = middle;
      atHigh = atMiddle;
      atLow *= 0.5;
    } else {
      low = middle;
      atLow = atMiddle;
      atHigh *= 0.5;
    }
  }
  return low;
};

/** The TAN that the tank may reach: the target, or less where much of it would be un-ionized. */
export const ammoniaAllowed = (compiled: Compiled): { readonly level: number; readonly toxic: boolean } => {
  const { temperatureK, pH, salinity } = compiled.model.tank;
  const byToxicity = UNIONIZED_LIMIT / unionizedAmmoniaFraction({ temperatureK, pH, salinity });
  return byToxicity < AMMONIA_TARGET
    ? { level: byToxicity, toxic: true }
    : { level: AMMONIA_TARGET, toxic: false };
};

/**
 * The greatest load that a packing oxidises in steady state while TAN, nitrite and the oxygen behind the
 * filter stay within their limits. The tank is well mixed; plants, walls and water changes are not counted.
 */
export const capacityOf = (compiled: Compiled, rates: Rates): Capacity => {
  const pass = makePass(compiled);
  const working = { compiled, rates, pass };
  const allowed = ammoniaAllowed(compiled);
  let limit: Capacity['limit'] = allowed.toxic ? 'ammonia-toxicity' : 'area';
  let ammonia = allowed.level;
  let nitrite = steadyNitrite(working, ammonia);
  if (nitrite > NITRITE_TARGET) {
    limit = 'nitrite';
    const excess = (one: number): number => steadyNitrite(working, one * allowed.level) - NITRITE_TARGET;
    const share = greatestShare(excess, nitrite - NITRITE_TARGET);
    ammonia = share * allowed.level;
    nitrite = steadyNitrite(working, ammonia);
  }
  if (pass.outletOxygenKgPerM3 < OUTLET_OXYGEN_LEAST) {
    limit = 'oxygen';
    const upper = ammonia;
    const shortAtUpper = OUTLET_OXYGEN_LEAST - pass.outletOxygenKgPerM3;
    const share = greatestShare((one) => {
      steadyNitrite(working, one * upper);
      return OUTLET_OXYGEN_LEAST - pass.outletOxygenKgPerM3;
    }, shortAtUpper);
    ammonia = share * upper;
    nitrite = steadyNitrite(working, ammonia);
  }
  return {
    oxidisedKgNPerS: ammonia > 0 ? pass.ammoniaKgNPerS : 0,
    limit,
    ammoniaKgNPerM3: ammonia,
    nitriteKgNPerM3: nitrite,
    outletOxygenKgPerM3: pass.outletOxygenKgPerM3,
    byBedKgNPerS: [...pass.byBedKgNPerS],
  };
};
