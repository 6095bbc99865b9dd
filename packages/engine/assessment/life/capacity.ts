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
  /** TAN in each space against the tank's. */
  readonly ammoniaBySpaceRatio: readonly number[];
}

/** Nitrite made less nitrite oxidised in one pass, kg N/s; rises with TAN, falls with nitrite. */
const nitriteSurplus = (working: Working, ammoniaKgNPerM3: number, nitriteKgNPerM3: number): number => {
  const { oxygenKgPerM3 } = working.compiled.water;
  passThrough(working, { ammoniaKgNPerM3, nitriteKgNPerM3, oxygenKgPerM3 });
  return working.pass.ammoniaKgNPerS - working.pass.nitriteKgNPerS;
};

/**
 * Where a rising function that is nearly straight crosses zero, by false position with the standing end halved
 * (Dowell & Jarratt 1971). Leaves the function last called at or next to the answer.
 */
const crossing = (of: (x: number) => number, low: number, high: number): number => {
  let [left, right] = [low, high];
  let atLeft = of(left);
  let atRight = of(right);
  const small = 1e-9 * Math.max(Math.abs(atLeft), Math.abs(atRight));
  if (Math.abs(atLeft) <= small) {
    of(left);
    return left;
  }
  let middle = right;
  for (let trial = 0; trial < 60 && right - left > 1e-12 * right; trial += 1) {
    middle = left - (atLeft * (right - left)) / (atRight - atLeft);
    const atMiddle = of(middle);
    if (Math.abs(atMiddle) <= small) break;
    if (atMiddle > 0) {
      right = middle;
      atRight = atMiddle;
      atLeft *= 0.5;
    } else {
      left = middle;
      atLeft = atMiddle;
      atRight *= 0.5;
    }
  }
  return middle;
};

/** Levels of TAN and nitrite that a tank settles at. */
interface Levels {
  readonly ammonia: number;
  readonly nitrite: number;
  readonly boundByNitrite: boolean;
}

/** The highest steady levels with TAN at most `ammoniaMost` and nitrite at its target; the pass stands at them. */
const highestLevels = (working: Working, ammoniaMost: number): Levels => {
  if (nitriteSurplus(working, ammoniaMost, NITRITE_TARGET) > 0) {
    const ammonia = crossing((one) => nitriteSurplus(working, one, NITRITE_TARGET), 0, ammoniaMost);
    return { ammonia, nitrite: NITRITE_TARGET, boundByNitrite: true };
  }
  const nitrite = crossing((one) => -nitriteSurplus(working, ammoniaMost, one), 0, NITRITE_TARGET);
  return { ammonia: ammoniaMost, nitrite, boundByNitrite: false };
};

/** Greatest share of `ammoniaMost` that leaves oxygen enough behind the filter; 0 where none does. */
const shareForOxygen = (working: Working, ammoniaMost: number): number => {
  const short = (share: number): boolean => {
    highestLevels(working, share * ammoniaMost);
    return working.pass.outletOxygenKgPerM3 < OUTLET_OXYGEN_LEAST;
  };
  let enough = 0;
  let tooMuch = 1;
  for (let trial = 0; trial < 30; trial += 1) {
    const middle = 0.5 * (enough + tooMuch);
    if (short(middle)) tooMuch = middle;
    else enough = middle;
  }
  return enough;
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
  let levels = highestLevels(working, allowed.level);
  let limit: Capacity['limit'] = allowed.toxic ? 'ammonia-toxicity' : 'area';
  if (levels.boundByNitrite) limit = 'nitrite';
  if (pass.outletOxygenKgPerM3 < OUTLET_OXYGEN_LEAST) {
    limit = 'oxygen';
    levels = highestLevels(working, shareForOxygen(working, allowed.level) * allowed.level);
  }
  return {
    oxidisedKgNPerS: levels.ammonia > 0 ? pass.ammoniaKgNPerS : 0,
    limit,
    ammoniaKgNPerM3: levels.ammonia,
    nitriteKgNPerM3: levels.nitrite,
    outletOxygenKgPerM3: pass.outletOxygenKgPerM3,
    byBedKgNPerS: [...pass.byBedKgNPerS],
    ammoniaBySpaceRatio: compiled.spaces.map((_, space) =>
      levels.ammonia > 0 ? pass.level[3 * space]! / levels.ammonia : 1,
    ),
  };
};
