import { FLUX_OXYGEN_PER_AMMONIA, FLUX_OXYGEN_PER_NITRITE } from '../../laws/life/nitrification.ts';
import type { Compiled } from '../compiled.ts';

/** The most that the bacteria there are can oxidise, by bed: where media are new they bind before the area does. */
export interface BacteriaLimits {
  /** Flux at plenty of everything, kg N/(m²·s) of the area in `areaPerM`. */
  readonly ammoniaMost: Float64Array;
  readonly nitriteMost: Float64Array;
  /** Levels at which they work at half that, kg N/m³. */
  readonly ammoniaHalf: number;
  readonly nitriteHalf: number;
}

/** One packing's power to oxidise, by bed, in one state. */
export interface Rates {
  /** Area of bacteria at work per m³ of bed, m⁻¹: open area times what carbon and cleaning leave of them. */
  readonly areaPerM: Float64Array;
  /** Slope of flux against TAN, in series with the water film, m/s. */
  readonly ammoniaSlopeMPerS: Float64Array;
  readonly nitriteSlopeMPerS: Float64Array;
  /** Greatest flux of nitrogen, kg N/(m²·s). */
  readonly ammoniaCeiling: number;
  readonly nitriteCeiling: number;
  /** Slope of the kinetics alone, m/s: bounds the flux where oxygen is short. */
  readonly kineticSlopeMPerS: number;
  /** Oxygen at which bacteria work at half their rate, kg/m³. */
  readonly oxygenHalfSaturationKgPerM3: number;
  /** Oxygen that caught dirt takes up, by bed, kg/s. */
  readonly dirtOxygenKgPerS: Float64Array;
  /** Absent where the bacteria are as many as the area feeds. */
  readonly bacteria?: BacteriaLimits;
}

/** What one pass does to the water of a tank held at given levels. */
export interface Pass {
  /** TAN oxidised and nitrite oxidised, kg N/s. */
  ammoniaKgNPerS: number;
  nitriteKgNPerS: number;
  outletOxygenKgPerM3: number;
  /** TAN and nitrite that each bed oxidises, kg N/s. */
  readonly byBedKgNPerS: Float64Array;
  readonly nitriteByBedKgNPerS: Float64Array;
  /** Water that the filter gives back, m³/s. */
  outFlowM3PerS: number;
  readonly level: Float64Array;
  readonly inflow: Float64Array;
  readonly water: Float64Array;
}

export interface TankLevels {
  readonly ammoniaKgNPerM3: number;
  readonly nitriteKgNPerM3: number;
  readonly oxygenKgPerM3: number;
}

/** A compiled job with the rates of its bacteria and the room for a pass. */
export interface Working {
  readonly compiled: Compiled;
  readonly rates: Rates;
  readonly pass: Pass;
}

export const makePass = (compiled: Compiled): Pass => ({
  ammoniaKgNPerS: 0,
  nitriteKgNPerS: 0,
  outletOxygenKgPerM3: 0,
  byBedKgNPerS: new Float64Array(compiled.beds.length),
  nitriteByBedKgNPerS: new Float64Array(compiled.beds.length),
  outFlowM3PerS: 0,
  level: new Float64Array(3 * compiled.spaces.length),
  inflow: new Float64Array(3 * compiled.spaces.length),
  water: new Float64Array(compiled.spaces.length),
});

const AMMONIA = 0;
const NITRITE = 1;
const OXYGEN = 2;
const STEPS_PER_BED = 6;
const TRACE = 1e-12;

/** Ammonia, nitrite and oxygen in the water that moves along a way; reused. */
const parcel = new Float64Array(3);
/** TAN and nitrite that a bed oxidises of each m³ of water, kg N/m³; reused. */
const oxidised = new Float64Array(2);

/** Flux of nitrogen by whichever of level, area, bacteria and oxygen allows the least, kg N/(m²·s). */
export const flux = (
  slope: number,
  level: number,
  limits: { ceiling: number; oxygenFlux: number; oxygenFactor: number },
): number => Math.min(slope * level, limits.ceiling, limits.oxygenFlux) * limits.oxygenFactor;

const monod = (most: number, level: number, half: number): number => {
  const there = Math.max(level, TRACE);
  return (most * there) / (half + there);
};

/** Moves `parcel` through a slice of a bed: both steps by their rate constants at the slice's start. */
const throughSlice = (
  rates: Rates,
  bed: number,
  contact: { areaPerFlow: number; dirtOxygen: number },
): void => {
  const ammonia = parcel[AMMONIA]!;
  const nitrite = parcel[NITRITE]!;
  const oxygen = parcel[OXYGEN]!;
  const oxygenFactor = oxygen / (rates.oxygenHalfSaturationKgPerM3 + oxygen);
  const supply = rates.kineticSlopeMPerS * oxygen;
  const { bacteria } = rates;
  const first = flux(rates.ammoniaSlopeMPerS[bed]!, Math.max(ammonia, TRACE), {
    ceiling: bacteria
      ? Math.min(rates.ammoniaCeiling, monod(bacteria.ammoniaMost[bed]!, ammonia, bacteria.ammoniaHalf))
      : rates.ammoniaCeiling,
    oxygenFlux: supply / FLUX_OXYGEN_PER_AMMONIA,
    oxygenFactor,
  });
  const second = flux(rates.nitriteSlopeMPerS[bed]!, Math.max(nitrite, TRACE), {
    ceiling: bacteria
      ? Math.min(rates.nitriteCeiling, monod(bacteria.nitriteMost[bed]!, nitrite, bacteria.nitriteHalf))
      : rates.nitriteCeiling,
    oxygenFlux: supply / FLUX_OXYGEN_PER_NITRITE,
    oxygenFactor,
  });
  const a = (first / Math.max(ammonia, TRACE)) * contact.areaPerFlow;
  const b = (second / Math.max(nitrite, TRACE)) * contact.areaPerFlow;
  const lostA = -Math.expm1(-a);
  const lostB = -Math.expm1(-b);
  const chain = Math.abs(a - b) > 1e-9 * (a + b) + 1e-300 ? (a * (lostB - lostA)) / (b - a) : a * (1 - lostA);
  const ammoniaGone = ammonia * lostA;
  const nitriteGone = ammoniaGone - ammonia * chain + nitrite * lostB;
  oxidised[AMMONIA] = oxidised[AMMONIA]! + ammoniaGone;
  oxidised[NITRITE] = oxidised[NITRITE]! + nitriteGone;
  parcel[AMMONIA] = ammonia - ammoniaGone;
  parcel[NITRITE] = nitrite + ammoniaGone - nitriteGone;
  const used =
    FLUX_OXYGEN_PER_AMMONIA * ammoniaGone + FLUX_OXYGEN_PER_NITRITE * nitriteGone + contact.dirtOxygen;
  parcel[OXYGEN] = Math.max(oxygen - used, 0);
};

const throughBed = (working: Working, bed: number): void => {
  const { compiled, rates, pass } = working;
  const { volumeM3, link, trickles } = compiled.beds[bed]!;
  const flow = compiled.network.flow[link]!;
  const contact = {
    areaPerFlow: (rates.areaPerM[bed]! * volumeM3) / flow / STEPS_PER_BED,
    dirtOxygen: rates.dirtOxygenKgPerS[bed]! / flow / STEPS_PER_BED,
  };
  oxidised.fill(0);
  for (let step = 0; step < STEPS_PER_BED; step += 1) {
    // The thin film between pieces and air takes up oxygen as fast as bacteria use it.
    if (trickles) parcel[OXYGEN] = compiled.water.saturatedOxygenKgPerM3;
    throughSlice(rates, bed, contact);
  }
  pass.byBedKgNPerS[bed] = flow * oxidised[AMMONIA]!;
  pass.nitriteByBedKgNPerS[bed] = flow * oxidised[NITRITE]!;
  pass.ammoniaKgNPerS += flow * oxidised[AMMONIA]!;
  pass.nitriteKgNPerS += flow * oxidised[NITRITE]!;
};

const mixSpace = (pass: Pass, space: number): void => {
  const water = pass.water[space]!;
  for (let kind = 0; kind < 3; kind += 1) {
    pass.level[3 * space + kind] = water > 0 ? pass.inflow[3 * space + kind]! / water : 0;
  }
};

/** Takes the tank's water once through the filter and says what the bacteria did to it. */
export const passThrough = (working: Working, tank: TankLevels): void => {
  const { compiled, pass } = working;
  const { ways, network } = compiled;
  pass.inflow.fill(0);
  pass.water.fill(0);
  pass.byBedKgNPerS.fill(0);
  pass.nitriteByBedKgNPerS.fill(0);
  pass.ammoniaKgNPerS = 0;
  pass.nitriteKgNPerS = 0;
  pass.level[AMMONIA] = tank.ammoniaKgNPerM3;
  pass.level[NITRITE] = tank.nitriteKgNPerM3;
  pass.level[OXYGEN] = tank.oxygenKgPerM3;
  let outFlow = 0;
  let outOxygen = 0;
  let at = 0;
  for (const way of ways) {
    if (way.from !== at) {
      at = way.from;
      mixSpace(pass, at);
    }
    const flow = network.flow[way.link]!;
    if (flow <= 0) continue;
    for (let kind = 0; kind < 3; kind += 1) parcel[kind] = pass.level[3 * at + kind]!;
    for (const bed of way.beds) throughBed(working, bed);
    if (way.to >= 0) {
      pass.water[way.to] = pass.water[way.to]! + flow;
      for (let kind = 0; kind < 3; kind += 1) {
        pass.inflow[3 * way.to + kind] = pass.inflow[3 * way.to + kind]! + flow * parcel[kind]!;
      }
    } else {
      outFlow += flow;
      outOxygen += flow * parcel[OXYGEN]!;
    }
  }
  pass.outFlowM3PerS = outFlow;
  pass.outletOxygenKgPerM3 = outFlow > 0 ? outOxygen / outFlow : 0;
};

/**
 * Takes water of the tank once over an area of which no more is known than its flow, and says what the bacteria do.
 * @param rates of one bed: what it lets bacteria do in place 0; its area counts only through `areaM2`
 * @returns TAN oxidised and nitrite oxidised, kg N/s
 */
export const passOverArea = (
  rates: Rates,
  plain: { readonly areaM2: number; readonly flowM3PerS: number },
  tank: TankLevels,
): { readonly ammoniaKgNPerS: number; readonly nitriteKgNPerS: number } => {
  const { areaM2, flowM3PerS } = plain;
  if (flowM3PerS <= 0) return { ammoniaKgNPerS: 0, nitriteKgNPerS: 0 };
  parcel[AMMONIA] = tank.ammoniaKgNPerM3;
  parcel[NITRITE] = tank.nitriteKgNPerM3;
  parcel[OXYGEN] = tank.oxygenKgPerM3;
  oxidised.fill(0);
  const contact = { areaPerFlow: areaM2 / flowM3PerS / STEPS_PER_BED, dirtOxygen: 0 };
  for (let step = 0; step < STEPS_PER_BED; step += 1) throughSlice(rates, 0, contact);
  return {
    ammoniaKgNPerS: flowM3PerS * oxidised[AMMONIA]!,
    nitriteKgNPerS: flowM3PerS * oxidised[NITRITE]!,
  };
};
