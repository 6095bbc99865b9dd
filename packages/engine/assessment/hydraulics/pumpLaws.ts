import { standingPumpLoss } from '../../catalogue/runs.ts';
import { powerFormAtSpeed, pumpPowerForm } from '../../laws/hydraulics/pump.ts';
import { bestShutoffTest } from '../../model/benchTests.ts';
import type { Model, Pump } from '../../model/model.ts';
import { driveOf, statedShutoffHead } from '../../model/pump.ts';
import type { LinkLaw } from '../../network/links.ts';
import { airLiftLaw, airLiftOf } from './airLift.ts';

/** The power form of a pump whose three points it is drawn through, at its set speed; absent for other curves. */
const powerForm = ({ curve, speedRatio }: Pump): Extract<LinkLaw, { readonly kind: 'pump' }> | undefined => {
  if (curve.kind !== 'points' || curve.form !== 'power') return undefined;
  const [first, middle, far] = curve.points;
  const form = pumpPowerForm({ shutoffHeadM: first!.headM, middle: middle!, far: far! });
  return { kind: 'pump', ...powerFormAtSpeed({ ...form, speedRatio }) };
};

/**
 * A pump by its curve at its set speed, by the affinity laws.
 * @param measuredShutoffM head at no flow as measured at that speed, m, in place of a stated or assumed one
 */
const lawOf = (pump: Pump, measuredShutoffM?: number): LinkLaw => {
  const { curve, speedRatio } = pump;
  if (curve.kind === 'air-lift') throw new Error('an air-lift has no curve of its own: its tube makes it');
  const power = powerForm(pump);
  if (power) return power;
  if (curve.kind === 'points') {
    return {
      kind: 'pump-points',
      flowM3PerS: curve.points.map((point) => point.flowM3PerS * speedRatio),
      headM: curve.points.map((point) => point.headM * speedRatio ** 2),
    };
  }
  // H = r²H₀ − (H₀/Q₀²)Q²: the curve's fall stays, its start goes with the square of the speed.
  const shutoffHeadM = measuredShutoffM ?? curve.shutoffHeadM * speedRatio ** 2;
  return {
    kind: 'pump',
    shutoffHeadM,
    coefficient: shutoffHeadM / (curve.freeFlowM3PerS * speedRatio) ** 2,
    exponent: 2,
  };
};

/**
 * The pump by its curve, or the air-lift in its place; a measured shut-off head takes the place of one that
 * was stated or assumed.
 * @param by.airLiftFlowRatio an air-lift's water at each head against its law, 1; above 0, 1 where left out
 */
export const pumpLaw = (model: Model, { airLiftFlowRatio = 1 } = {}): LinkLaw => {
  if (driveOf(model.filter.pump) !== 'air-lift')
    return lawOf(model.filter.pump, bestShutoffTest(model)?.headM);
  const law = airLiftLaw(airLiftOf(model));
  return { ...law, flowM3PerS: law.flowM3PerS.map((flow) => flow * airLiftFlowRatio) };
};

/** Flow at which a pump's curve ends at its set speed, m³/s: its free flow, or its last measured point. */
export const largestPumpFlow = ({ curve, speedRatio, ratedFlowM3PerS }: Pump): number => {
  if (curve.kind === 'air-lift') return ratedFlowM3PerS;
  return speedRatio * (curve.kind === 'two-point' ? curve.freeFlowM3PerS : curve.points.at(-1)!.flowM3PerS);
};

/** A second pump: by its curve, or as what it takes where it stands still. */
export const secondPumpLaw = ({
  pump,
  running,
}: {
  readonly pump: Pump;
  readonly running: boolean;
}): LinkLaw =>
  running
    ? lawOf(pump)
    : {
        kind: 'resistance',
        linear: 0,
        quadratic:
          (standingPumpLoss.value * statedShutoffHead({ ...pump, speedRatio: 1 })!) /
          largestPumpFlow({ ...pump, speedRatio: 1 }) ** 2,
      };
