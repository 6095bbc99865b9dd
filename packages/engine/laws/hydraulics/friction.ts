import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** What decides the friction in a full round bore. */
export interface BoreFlow {
  /** Reynolds number on the bore, ρVD/µ, 1. */
  readonly reynolds: number;
  /** Roughness height over bore, 1; 0 is smooth. */
  readonly relativeRoughness: number;
}

export const frictionFactorChurchill1977Range = {
  reynolds: { least: 0, most: 1e8 },
  relativeRoughness: { least: 0, most: 0.05 },
} as const satisfies ValidRange;

export const frictionFactorColebrook1939Range = {
  reynolds: { least: 4000, most: 1e8 },
  relativeRoughness: { least: 0, most: 0.05 },
} as const satisfies ValidRange;

export const frictionFactorHaaland1983Range = {
  reynolds: { least: 4000, most: 1e8 },
  relativeRoughness: { least: 1e-6, most: 0.05 },
} as const satisfies ValidRange;

export const frictionFactorSwameeJain1976Range = {
  reynolds: { least: 5000, most: 1e8 },
  relativeRoughness: { least: 1e-6, most: 0.05 },
} as const satisfies ValidRange;

export const frictionFactorSwameeJainCubicRange = {
  reynolds: { least: 0, most: 1e8 },
  relativeRoughness: { least: 0, most: 0.05 },
} as const satisfies ValidRange;

/** Below this Reynolds number the turbulent term of Churchill's formula is lost in rounding. */
const LAMINAR_ONLY = 10;

/**
 * Churchill's formula with its laminar constant left open, which makes it serve plane slots too.
 *
 * f = 8[(C/8Re)¹² + (A + B)^−1.5]^(1/12), A = [2.457 ln(1/((7/Re)^0.9 + 0.27 ε/D))]¹⁶, B = (37530/Re)¹⁶.
 *
 * @param flow.reynolds Reynolds number on the hydraulic diameter, 1; above 0
 * @param flow.relativeRoughness roughness over hydraulic diameter, 1; 0 to 0.05
 * @param flow.laminarConstant C = f·Re of laminar flow, 1; above 0, 64 for round bores, 96 for plane slots
 * @returns Darcy friction factor, 1
 * Accuracy: exact in laminar flow; within 3.2 % of Colebrook above Re 4000; within 2000 < Re < 4000 nobody's
 * formula is better than 20 %. The extension to 96 is ours: an interpolation between two known limits.
 * @source Churchill 1977, Chem. Eng. 84(24), 91–92
 */
export const frictionFactorChurchillShape = (
  flow: BoreFlow & { readonly laminarConstant: number },
): number => {
  const { reynolds: Re, relativeRoughness, laminarConstant } = flow;
  if (Re < LAMINAR_ONLY) return laminarConstant / Re;
  const A = (2.457 * Math.log(1 / ((7 / Re) ** 0.9 + 0.27 * relativeRoughness))) ** 16;
  const B = (37530 / Re) ** 16;
  return 8 * ((laminarConstant / 8 / Re) ** 12 + (A + B) ** -1.5) ** (1 / 12);
};

/**
 * Friction factor of a full round bore, laminar to fully rough, without a jump.
 *
 * f = 8[(8/Re)¹² + (A + B)^−1.5]^(1/12), A = [2.457 ln(1/((7/Re)^0.9 + 0.27 ε/D))]¹⁶, B = (37530/Re)¹⁶.
 *
 * @param flow.reynolds Reynolds number on the bore, 1; above 0
 * @param flow.relativeRoughness roughness over bore, 1; 0 to 0.05
 * @returns Darcy friction factor, 1; 64/Re at low Re
 * Accuracy: exact in laminar flow, within 3.2 % of Colebrook above Re 4000 and 2.2 % above 10,000; between
 * laminar and turbulent the flow itself is unsteady and 20 % is usual. Infinite at Re 0.
 * @source Churchill 1977, Chem. Eng. 84(24), 91–92
 * @example frictionFactorChurchill1977({ reynolds: 1e5, relativeRoughness: 1e-4 }) // 0.0184626245663
 */
export const frictionFactorChurchill1977 = (flow: BoreFlow): number =>
  frictionFactorChurchillShape({ ...flow, laminarConstant: 64 });

/**
 * Friction factor of turbulent flow in a round bore by Colebrook's implicit equation, solved to the last place.
 *
 * 1/√f = −2 log₁₀(ε/(3.7 D) + 2.51/(Re √f)).
 *
 * @param flow.reynolds Reynolds number on the bore, 1; 4000 to 1e8
 * @param flow.relativeRoughness roughness over bore, 1; 0 to 0.05
 * @returns Darcy friction factor, 1
 * Accuracy: the equation fits measured pipes within 3–5 %; it is solved to 1e-15.
 * @source Colebrook 1939, J. Inst. Civ. Eng. 11, 133–156
 * @example frictionFactorColebrook1939({ reynolds: 1e5, relativeRoughness: 1e-4 }) // 0.0185138660775
 */
export const frictionFactorColebrook1939 = (flow: BoreFlow): number => {
  const rough = flow.relativeRoughness / 3.7;
  const smooth = 2.51 / flow.reynolds;
  let x = frictionFactorHaaland1983(flow) ** -0.5;
  for (let step = 0; step < 50; step += 1) {
    const argument = rough + smooth * x;
    const residual = x + 2 * Math.log10(argument);
    const change = residual / (1 + (2 * smooth) / (argument * Math.LN10));
    x -= change;
    if (Math.abs(change) <= 1e-15 * x) break;
  }
  return x ** -2;
};

/**
 * Friction factor of turbulent flow in a round bore, explicit.
 *
 * 1/√f = −1.8 log₁₀((ε/(3.7 D))^1.11 + 6.9/Re).
 *
 * @param flow.reynolds Reynolds number on the bore, 1; 4000 to 1e8
 * @param flow.relativeRoughness roughness over bore, 1; 1e-6 to 0.05
 * @returns Darcy friction factor, 1
 * Accuracy: within 1.5 % of Colebrook.
 * @source Haaland 1983, J. Fluids Eng. 105, 89–90
 * @example frictionFactorHaaland1983({ reynolds: 1e5, relativeRoughness: 1e-4 }) // 0.0182650530148
 */
export const frictionFactorHaaland1983 = (flow: BoreFlow): number =>
  (-1.8 * Math.log10((flow.relativeRoughness / 3.7) ** 1.11 + 6.9 / flow.reynolds)) ** -2;

/**
 * Friction factor of turbulent flow in a round bore, explicit.
 *
 * f = 0.25 / [log₁₀(ε/(3.7 D) + 5.74/Re^0.9)]².
 *
 * @param flow.reynolds Reynolds number on the bore, 1; 5000 to 1e8
 * @param flow.relativeRoughness roughness over bore, 1; 1e-6 to 0.05
 * @returns Darcy friction factor, 1
 * Accuracy: within 3 % of Colebrook.
 * @source Swamee & Jain 1976, J. Hydraul. Div. ASCE 102, 657–664
 * @example frictionFactorSwameeJain1976({ reynolds: 1e5, relativeRoughness: 1e-4 }) // 0.0184524453
 */
export const frictionFactorSwameeJain1976 = (flow: BoreFlow): number =>
  0.25 / Math.log10(flow.relativeRoughness / 3.7 + 5.74 / flow.reynolds ** 0.9) ** 2;

/**
 * Friction factor as network solvers for mains use it: laminar, turbulent, and a cubic between.
 *
 * 64/Re below Re 2000, Swamee–Jain above 4000; between them the cubic in Re/2000 that meets both with value and
 * slope.
 *
 * @param flow.reynolds Reynolds number on the bore, 1; above 0
 * @param flow.relativeRoughness roughness over bore, 1; 0 to 0.05
 * @returns Darcy friction factor, 1
 * Accuracy: within 3 % of Colebrook above Re 5000; a smooth bridge, not a measurement, between 2000 and 4000.
 * @source Dunlop 1991, WADI Users Manual; Swamee & Jain 1976
 */
export const frictionFactorSwameeJainCubic = (flow: BoreFlow): number => {
  const { reynolds: Re, relativeRoughness } = flow;
  if (Re < 2000) return 64 / Re;
  if (Re > 4000) return frictionFactorSwameeJain1976(flow);
  const smooth = 5.74 / 4000 ** 0.9;
  const y = relativeRoughness / 3.7 + smooth;
  const root = -2 * Math.log10(y);
  const FA = root ** -2;
  const FB = FA * (2 - (3.6 * smooth) / (Math.LN10 * y * root));
  const R = Re / 2000;
  const X1 = 7 * FA - FB;
  const X2 = 0.128 - 17 * FA + 2.5 * FB;
  const X3 = -0.128 + 13 * FA - 2 * FB;
  const X4 = 0.032 - 3 * FA + 0.5 * FB;
  return X1 + R * (X2 + R * (X3 + R * X4));
};

/**
 * Friction factor at endless Reynolds number, where roughness alone decides.
 *
 * f = 0.25 / [log₁₀(ε/(3.7 D))]².
 *
 * @param bore.relativeRoughness roughness over bore, 1; above 0, to 0.05
 * @returns Darcy friction factor, 1; the f_T of Crane's fittings
 * Accuracy: 3–5 % of measured pipes. Zero for a smooth bore, where no such limit exists.
 * @source von Kármán 1930 with Nikuradse's constants; Crane TP-410
 */
export const frictionFactorFullyRough = (bore: { readonly relativeRoughness: number }): number =>
  0.25 / Math.log10(bore.relativeRoughness / 3.7) ** 2;

/**
 * Head lost in a straight bore and its fittings.
 *
 * h = (f L/D + K) V²/(2g).
 *
 * @param run.frictionFactor Darcy friction factor, 1; above 0
 * @param run.lengthM length, m; 0 or more
 * @param run.boreM inside diameter, m; above 0
 * @param run.velocityMPerS mean velocity, m/s; any sign, the loss takes its sign
 * @param run.minorK fittings in velocity heads of this bore, 1; 0 or more, 0 when left out
 * @returns head lost, m of the flowing liquid
 * Accuracy: that of the friction factor.
 * @source Weisbach 1845; Darcy 1857
 * @example headLossDarcyWeisbach({ frictionFactor: 0.02, lengthM: 10, boreM: 0.1, velocityMPerS: 2 }) // 0.4079
 */
export const headLossDarcyWeisbach = (run: {
  readonly frictionFactor: number;
  readonly lengthM: number;
  readonly boreM: number;
  readonly velocityMPerS: number;
  readonly minorK?: number;
}): number => {
  const K = (run.frictionFactor * run.lengthM) / run.boreM + (run.minorK ?? 0);
  return (K * run.velocityMPerS * Math.abs(run.velocityMPerS)) / (2 * GRAVITY);
};

/**
 * Reynolds number of flow in a round bore, Re = 4Q/(πDν).
 *
 * @param flow.flowM3PerS flow, m³/s; any sign
 * @param flow.boreM inside diameter, m; above 0
 * @param flow.kinematicViscosityM2PerS kinematic viscosity, m²/s; above 0
 * @returns Reynolds number, 1; 0 or more
 * @source Reynolds 1883
 */
export const reynoldsOfBore = (flow: {
  readonly flowM3PerS: number;
  readonly boreM: number;
  readonly kinematicViscosityM2PerS: number;
}): number => (4 * Math.abs(flow.flowM3PerS)) / (Math.PI * flow.boreM * flow.kinematicViscosityM2PerS);
