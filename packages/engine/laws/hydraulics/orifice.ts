import type { ValidRange } from '../range.ts';

/** A round hole in a thin wall, under water on both sides. */
export interface Orifice {
  /** Diameter of the hole, m; above 0. */
  readonly diameterM: number;
  /** Area of the jet's throat over the hole's, 1; 0.5 to 1, 0.61 for a sharp edge. */
  readonly dischargeCoefficient: number;
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

/** Discharge coefficient of a sharp-edged hole at high Reynolds number, 1. Source: Crane TP-410; 0.60–0.62. */
export const ORIFICE_DISCHARGE_COEFFICIENT = 0.61;

export const orificePressureRange = {
  dischargeCoefficient: { least: 0.5, most: 1 },
  diameterM: { least: 2e-4, most: 0.1 },
} as const satisfies ValidRange;

/** Coefficients of Δp = linear·Q + quadratic·Q²: Pa s/m³ and Pa s²/m⁶. */
const coefficients = (orifice: Orifice): { linear: number; quadratic: number } => {
  const radius = orifice.diameterM / 2;
  const throatM2 = orifice.dischargeCoefficient * Math.PI * radius ** 2;
  return {
    linear: (3 * orifice.viscosityPaS) / radius ** 3,
    quadratic: orifice.densityKgPerM3 / (2 * throatM2 ** 2),
  };
};

/**
 * Pressure lost in a round hole of a thin wall, from creeping to turbulent flow.
 *
 * Δp = ρ/2 (Q/(C_d A))² + 3µQ/r³.
 *
 * @param opening.flowM3PerS flow, m³/s; any sign, the pressure takes its sign
 * @returns pressure lost, Pa; strictly rising with flow
 * Accuracy: 2–5 % at Re above 1000; exact for creeping flow; the sum is up to 20 % off around Re 10–100.
 * Hole under a third of the wall it sits in, and thicker than the wall.
 * @source Torricelli's law with discharge coefficient; Sampson 1891, Phil. Trans. A 182, 449–518
 * @example
 * orificePressure({ flowM3PerS: 2.4e-5, diameterM: 0.006, dischargeCoefficient: 0.61, densityKgPerM3: 998.2,
 *   viscosityPaS: 1.002e-3 }) // 969
 */
export const orificePressure = (opening: Orifice & { readonly flowM3PerS: number }): number => {
  const { linear, quadratic } = coefficients(opening);
  const flow = opening.flowM3PerS;
  return linear * flow + quadratic * flow * Math.abs(flow);
};

/**
 * Flow through a round hole in a thin wall at a given pressure difference: the inverse of `orificePressure`.
 *
 * Q = 2Δp/(b + √(b² + 4a|Δp|)), a = ρ/(2(C_d A)²), b = 3µ/r³.
 *
 * @param opening.pressurePa pressure difference, Pa; any sign, the flow takes its sign
 * @returns flow, m³/s
 * Accuracy: as `orificePressure`.
 * @source as `orificePressure`
 */
export const orificeFlow = (opening: Orifice & { readonly pressurePa: number }): number => {
  const { linear, quadratic } = coefficients(opening);
  const pressure = opening.pressurePa;
  return (2 * pressure) / (linear + Math.sqrt(linear ** 2 + 4 * quadratic * Math.abs(pressure)));
};

export const perforatedPlateKRange = {
  openFraction: { least: 0.02, most: 1 },
  holeReynolds: { least: 1e5, most: 1e8 },
} as const satisfies ValidRange;

/**
 * Loss of a thin plate with many sharp-edged holes across a duct.
 *
 * K = (0.707 √(1 − s) + 1 − s)²/s², s the open fraction. Reference velocity: superficial, in front of the plate.
 *
 * @param plate.openFraction area of all holes over the area of the plate, 1; 0.02 to 1
 * @returns loss in velocity heads of the superficial velocity, 1; 0 at s = 1
 * Accuracy: about 10 % above Re 1e5 in the holes; up to twice as much at Re 100–1000. For few open holes it tends
 * to 2.91/s², a discharge coefficient of 0.586.
 * @source Idelchik 1986, Handbook of Hydraulic Resistance, diagram 8-1
 * @example perforatedPlateK({ openFraction: 0.5 }) // 4.0
 */
export const perforatedPlateK = (plate: { readonly openFraction: number }): number => {
  const s = plate.openFraction;
  return (Math.SQRT1_2 * Math.sqrt(1 - s) + 1 - s) ** 2 / s ** 2;
};
