import type { ValidRange } from '../range.ts';

/** A pump's head as a power of its flow: H = shutoffHeadM − coefficient·Q^exponent, Q in m³/s. */
export interface PowerForm {
  /** Head at no flow, m; above 0. */
  readonly shutoffHeadM: number;
  /** Fall of the head at a flow of 1 m³/s, m/(m³/s)^exponent; above 0. */
  readonly coefficient: number;
  /** Power of the flow, 1; above 0. */
  readonly exponent: number;
}

/** A point of a pump's curve. */
export interface PumpPoint {
  /** Flow, m³/s; 0 or more. */
  readonly flowM3PerS: number;
  /** Head, m; any. */
  readonly headM: number;
}

/**
 * Head of a pump of which only the two ends of its curve are known.
 *
 * H = H₀(1 − (Q/Q₀)²).
 *
 * @param pump.flowM3PerS flow, m³/s; 0 or more; above the free flow the head is negative
 * @param pump.shutoffHeadM H₀, head at no flow, m; above 0
 * @param pump.freeFlowM3PerS Q₀, flow at no head, m³/s; above 0
 * @returns head, m
 * Accuracy: about 15 % of the shut-off head in mid-curve for small magnet-drive pumps.
 * @source common practice, no source
 * @example pumpHeadTwoPoint({ flowM3PerS: 1e-4, shutoffHeadM: 2, freeFlowM3PerS: 3e-4 }) // 1.7778
 */
export const pumpHeadTwoPoint = (pump: {
  readonly flowM3PerS: number;
  readonly shutoffHeadM: number;
  readonly freeFlowM3PerS: number;
}): number => pump.shutoffHeadM * (1 - (pump.flowM3PerS / pump.freeFlowM3PerS) ** 2);

/**
 * Power form through three points of a curve, the first at no flow.
 *
 * C = ln((H₀−H₂)/(H₀−H₁))/ln(Q₂/Q₁), B = (H₀−H₁)/Q₁^C.
 *
 * @param curve.shutoffHeadM H₀, m; above 0
 * @param curve.middle Q₁ above 0, H₁ below H₀
 * @param curve.far Q₂ above Q₁, H₂ below H₁
 * @returns power form; NaN where flows do not rise or heads do not fall
 * Accuracy: passes through the three points.
 * @source Rossman 2000, EPANET 2 Users Manual, ch. 3 (pump curves)
 */
export const pumpPowerForm = (curve: {
  readonly shutoffHeadM: number;
  readonly middle: PumpPoint;
  readonly far: PumpPoint;
}): PowerForm => {
  const { shutoffHeadM, middle, far } = curve;
  const exponent =
    Math.log((shutoffHeadM - far.headM) / (shutoffHeadM - middle.headM)) /
    Math.log(far.flowM3PerS / middle.flowM3PerS);
  return {
    shutoffHeadM,
    coefficient: (shutoffHeadM - middle.headM) / middle.flowM3PerS ** exponent,
    exponent,
  };
};

/**
 * Head of a power form at a flow.
 *
 * @param pump.flowM3PerS flow, m³/s; 0 or more
 * @returns head, m; negative past the free flow
 * Accuracy: that of the form.
 * @source H = A − BQ^C
 */
export const pumpHeadPowerForm = (pump: PowerForm & { readonly flowM3PerS: number }): number =>
  pump.shutoffHeadM - pump.coefficient * pump.flowM3PerS ** pump.exponent;

export const affinityRange = {
  /** Share of the rated flow below which the laws are a poor guide. */
  flowShare: { least: 1 / 3, most: 1.2 },
  speedRatio: { least: 0.3, most: 1.2 },
} as const satisfies ValidRange;

/** A pump's duty with its power. */
export interface Duty extends PumpPoint {
  /** Power, W; 0 or more. */
  readonly powerW: number;
}

/**
 * The same duty of a pump at another speed.
 *
 * Q ∝ n, H ∝ n², P ∝ n³.
 *
 * @param duty.speedRatio new speed over old, 1; above 0
 * @returns flow, m³/s, head, m, and power, W
 * Accuracy: 2 % of flow and head for speeds within a third of each other, 10 % of power; poor where the flow is
 * less than a third of the rated one, and for motors whose own losses dominate.
 * @source Crane TP-410, 7-33
 */
export const dutyAtSpeed = (duty: Duty & { readonly speedRatio: number }): Duty => ({
  flowM3PerS: duty.flowM3PerS * duty.speedRatio,
  headM: duty.headM * duty.speedRatio ** 2,
  powerW: duty.powerW * duty.speedRatio ** 3,
});

/**
 * A power form at another speed by the affinity laws.
 *
 * H = n²A − n^(2−C)·B·Q^C.
 *
 * @param pump.speedRatio new speed over old, n, 1; above 0
 * @returns power form at that speed
 * Accuracy: as `dutyAtSpeed`.
 * @source Rossman 2000, EPANET 2 Users Manual
 */
export const powerFormAtSpeed = (pump: PowerForm & { readonly speedRatio: number }): PowerForm => ({
  shutoffHeadM: pump.shutoffHeadM * pump.speedRatio ** 2,
  coefficient: pump.coefficient * pump.speedRatio ** (2 - pump.exponent),
  exponent: pump.exponent,
});
