import { airLiftLaw, airLiftOf } from '../assessment/hydraulics/airLift.ts';
import type { Model } from '../model/model.ts';
import { pumpTable } from '../network/lawNumbers.ts';

/** Shares of its air that a lift tube is tried with: from nearly all down to a twentieth. */
const STEPS = 24;
const LEAST_AIR = 0.05;

/**
 * Curves of an air-lift that gets ever less air, as the network takes them, from mild to grave.
 *
 * @returns undefined where the filter is driven by a pump
 */
export const shortOfAir = (model: Model): readonly Float64Array[] | undefined => {
  if (model.filter.pump.curve.kind !== 'air-lift') return undefined;
  const lift = airLiftOf(model);
  return Array.from({ length: STEPS }, (_, step) => {
    const left = LEAST_AIR ** (step / (STEPS - 1));
    const law = airLiftLaw({ ...lift, airFlowM3PerS: left * lift.airFlowM3PerS });
    if (law.kind !== 'pump-points') throw new Error('an air-lift is taken by the points of its curve');
    return Float64Array.from(pumpTable(law));
  });
};

/** The curve at a share of the way from mild to grave, 0 to 1. */
export const curveShortOfAir = (curves: readonly Float64Array[], share: number): Float64Array =>
  curves[Math.round(share * (curves.length - 1))]!;
