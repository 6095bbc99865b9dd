import { ICE_POINT_K } from '../constants.ts';
import type { ValidRange } from '../range.ts';

export const weirDeficitRatioGameson1957Range = {
  fallM: { least: 0, most: 4 },
  temperatureK: { least: 273.15, most: 303.15 },
} as const satisfies ValidRange;

/** Air between clean and slightly dirty water, 1: 1.25 slightly polluted, 1.8 clean. From memory. */
const WATER_QUALITY = 1.5;
/** A free fall into a pool; a row of small holes does about as well, 1. From memory. */
const FREE_FALL = 1;
/** Oxygen in a volume of air at 20 °C and one atmosphere, kg/m³: 0.2095·101 325 Pa·M/(R·293.15 K). */
const OXYGEN_IN_AIR_KG_PER_M3 = 0.2787;
/** Share of a coarse bubble's oxygen that water takes up for each metre of depth, 1/m. From memory, 0.015–0.035. */
const BUBBLE_UPTAKE_PER_M = 0.025;

/**
 * How much water that falls through air closes its gap to saturation.
 *
 * r = 1 + 0.38·a·b·h(1 − 0.11h)(1 + 0.046t), a 1.5, b 1, t in °C; the deficit falls to 1/r.
 *
 * @param fall.fallM h, height of the fall, m; 0 to 4
 * @param fall.temperatureK temperature, K; 273 to 303
 * @returns deficit before over deficit behind, 1; 1 or more
 * Accuracy: ×/÷ 1.5 in r − 1.
 * @source Gameson 1957, J. Inst. Water Eng. 11, 477–490, in the form of the Water Research Laboratory 1973, from memory
 * @example weirDeficitRatioGameson1957({ fallM: 0.1, temperatureK: 298.15 }) // 1.12
 */
export const weirDeficitRatioGameson1957 = (fall: {
  readonly fallM: number;
  readonly temperatureK: number;
}): number => {
  const { fallM: h } = fall;
  const warmth = 1 + 0.046 * (fall.temperatureK - ICE_POINT_K);
  return 1 + 0.38 * WATER_QUALITY * FREE_FALL * h * (1 - 0.11 * h) * warmth;
};

/**
 * Oxygen that bubbles bring into water without any, over the level that is saturated: the flow of water that they would
 * saturate.
 *
 * K = e·h·Q·c_air/C_s, e 0.025 per metre.
 *
 * @param air.airFlowM3PerS Q, air, m³/s; 0 or more
 * @param air.depthM h, depth at which it leaves, m; 0 to 5
 * @param air.saturatedKgPerM3 C_s, oxygen of saturated water, kg/m³; above 0
 * @returns kLa·V, m³/s: times the deficit it is the oxygen taken up
 * Accuracy: ×/÷ 2; fine bubbles take up twice as much.
 * @source share for each metre from memory of coarse-bubble aerators
 * @example bubbleReaeration({ airFlowM3PerS: 4e-5, depthM: 0.4, saturatedKgPerM3: 0.00826 }) // 1.35e-5
 */
export const bubbleReaeration = (air: {
  readonly airFlowM3PerS: number;
  readonly depthM: number;
  readonly saturatedKgPerM3: number;
}): number =>
  (BUBBLE_UPTAKE_PER_M * air.depthM * air.airFlowM3PerS * OXYGEN_IN_AIR_KG_PER_M3) / air.saturatedKgPerM3;
