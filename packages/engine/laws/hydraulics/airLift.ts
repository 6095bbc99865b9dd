import { bracketedRoot } from '../../numerics/roots.ts';
import { GRAVITY } from '../constants.ts';
import type { ValidRange } from '../range.ts';
import { frictionFactorChurchill1977 } from './friction.ts';
import { bubbleRiseTungParlange1976, gasFractionNicklin1962 } from './taylorBubble.ts';

/** One or more equal lift tubes that share their air and their water evenly. */
export interface LiftTube {
  /** How many tubes, 1; 1 or more. */
  readonly tubes: number;
  /** Inside diameter D of each, m; above 0. */
  readonly boreM: number;
  /** Height from where the air enters to the mouth, or to the surface where the mouth is under water, m; above 0. */
  readonly riseM: number;
  /** Depth of the air's entry under the tank's surface, m; 0 or more. */
  readonly airDepthM: number;
  /** Loss of bends, in velocity heads of the mixture, 1; 0 or more, 0 when left out. */
  readonly bendK?: number;
}

/** Water and air as an air-lift meets them. */
export interface AirLiftState {
  /** Tubes that the air lifts in; all sizes above 0. */
  readonly tube: LiftTube;
  /** Air blown in, measured at the tank's surface, m³/s; 0 or more. */
  readonly airFlowM3PerS: number;
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Kinematic viscosity of the water, m²/s; above 0. */
  readonly kinematicViscosityM2PerS: number;
  /** Surface tension of the water, N/m; 0 or more. */
  readonly surfaceTensionNPerM: number;
  /** Air pressure, Pa; above 0. */
  readonly pressurePa: number;
}

export const airLiftHeadReinemann1990Range = {
  reynolds: { least: 500, most: 1e5 },
  surfaceTensionNumber: { least: 0.02, most: 0.2 },
  boreM: { least: 0.006, most: 0.03 },
  gasMPerS: { least: 0, most: 4 },
} as const satisfies ValidRange;

/** Loss of the water where it enters the tube, in its velocity heads: a sharp edge. */
const ENTRANCE_K = 0.5;

/**
 * Mean volume flow of air on its way up, m³/s, by its flow at the surface: it expands as it rises.
 *
 * Q = Q_surface·p·ln(1 + ρgh/p)/(ρgh), the mean over the depth h at one temperature.
 *
 * @param air the tube's depth of air, the air's flow at the surface and the air pressure
 * @returns mean flow, m³/s
 * Accuracy: exact for ideal gas at one temperature; 1.5 % below the flow at the surface at 0.3 m.
 * @source Boyle 1662
 */
export const meanAirFlow = (
  air: Pick<AirLiftState, 'tube' | 'airFlowM3PerS' | 'densityKgPerM3' | 'pressurePa'>,
): number => {
  const weight = (air.densityKgPerM3 * GRAVITY * air.tube.airDepthM) / air.pressurePa;
  return weight < 1e-9 ? air.airFlowM3PerS : (air.airFlowM3PerS * Math.log1p(weight)) / weight;
};

/**
 * Head that an air-lift gives at a water flow: what its lighter column is worth, less its own losses.
 *
 * H = ε L − (f L/D + K_b)(j²/2g)(1 − ε) − (j_l²/2g)(1 + K + 2ε/(1 − ε)); ε by drift flux (C₀ 1.2), j = j_l + j_g, f of the
 * mixture's Re = jD/ν (Churchill 1977, smooth). The first two terms are the theory; the third, entrance and the
 * water's own speeding up, is that of Stenning & Martin 1968 and counts in tubes of a few decimetres. The height
 * that the water is raised above the surface is not taken off. Falls with the water's flow without a halt.
 *
 * @param waterFlowM3PerS water through all tubes, m³/s; 0 or more
 * @param state tubes, air and water; bores 6 to 30 mm, air up to about 4 m/s per cross-section, Re above 500
 * @returns head, m of water; negative beyond the free flow
 * Accuracy: 20 % of the flow in tubes of several metres; in a tube of 0.8 m it gave 1.3 to 1.7 times the flow that
 *   was measured, so take a factor of 1.5 for those of tanks.
 * @source Reinemann, Parlange & Timmons 1990, Int. J. Multiphase Flow 16, 113–122; Stenning & Martin 1968, J. Eng.
 *   Power 90, 106–110
 */
export const airLiftHeadReinemann1990 = (waterFlowM3PerS: number, state: AirLiftState): number => {
  const { tube } = state;
  const area = (tube.tubes * Math.PI * tube.boreM ** 2) / 4;
  const liquid = waterFlowM3PerS / area;
  const gas = meanAirFlow(state) / area;
  const mixture = liquid + gas;
  if (mixture === 0) return 0;
  const riseMPerS = bubbleRiseTungParlange1976({ ...state, boreM: tube.boreM });
  const epsilon = gasFractionNicklin1962({ gasMPerS: gas, liquidMPerS: liquid, riseMPerS });
  const reynolds = (mixture * tube.boreM) / state.kinematicViscosityM2PerS;
  const friction =
    (frictionFactorChurchill1977({ reynolds, relativeRoughness: 0 }) * tube.riseM) / tube.boreM +
    (tube.bendK ?? 0);
  const moved = liquid ** 2 * (1 + ENTRANCE_K + (2 * epsilon) / (1 - epsilon));
  return epsilon * tube.riseM - (friction * mixture ** 2 * (1 - epsilon) + moved) / (2 * GRAVITY);
};

/**
 * Water that an air-lift moves against a head: where the head that it gives has fallen to it.
 *
 * @param headM head asked for, m; the height of the mouth above the surface, and what media and ways take
 * @param state tubes, air and water
 * @returns flow through all tubes, m³/s; 0 where the head is more than it gives
 * Accuracy: that of the head.
 * @source Reinemann, Parlange & Timmons 1990, Int. J. Multiphase Flow 16, 113–122
 */
export const airLiftFlowReinemann1990 = (headM: number, state: AirLiftState): number => {
  const over = (flow: number): number => airLiftHeadReinemann1990(flow, state) - headM;
  if (!(over(0) > 0)) return 0;
  const area = (state.tube.tubes * Math.PI * state.tube.boreM ** 2) / 4;
  let high = area * Math.sqrt(2 * GRAVITY * state.tube.riseM);
  while (over(high) > 0) high *= 2;
  return bracketedRoot(over, { low: 0, high });
};
