import { withMeasurement } from '../../model/changes.ts';
import { quantity } from '../../wording/facts.ts';
import { type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** A tube that ends no deeper than this under the surface is long enough, m (our own choice). */
const NEAR_SURFACE_M = 0.015;

/** The lift tube ends far under the surface. */
export const liftTubeShort: FindingRule = {
  id: 'lift-tube-short',
  look({ model, assessment }): readonly Sighting[] {
    const { liftTube } = assessment.layout;
    if (model.filter.pump.curve.kind !== 'air-lift' || !liftTube) return [];
    const below = liftTube.airDepthM - liftTube.riseM;
    if (below <= NEAR_SURFACE_M) return [];
    const evidence = { below: quantity(below, 'length'), air: quantity(liftTube.riseM, 'length') };
    const cured = withMeasurement(model, 'tubeRise', liftTube.airDepthM);
    const longer = { length: quantity(below, 'length') };
    return [{ place: 'outlet', ...saysAndCure('lift-tube-short', evidence, longer), cured }];
  },
};

/** Least clear space behind a mat, m (common practice, no source). */
const LEAST_SPACE_BEHIND_M = 0.02;

/** A mat stands too near to the pane behind it. */
export const spaceBehindNarrow: FindingRule = {
  id: 'space-behind-narrow',
  look({ model }): readonly Sighting[] {
    const { spaceBehind } = model.filter.measurements;
    if (spaceBehind === undefined || spaceBehind >= LEAST_SPACE_BEHIND_M) return [];
    const evidence = {
      space: quantity(spaceBehind, 'length'),
      least: quantity(LEAST_SPACE_BEHIND_M, 'length'),
    };
    return [{ place: 'mat', ...saysAndCure('space-behind-narrow', evidence), severity: 'slight' }];
  },
};

/** Face velocity of mats, m/s: 5 to 10 cm a minute (common practice, no source). */
const FACE_VELOCITY_M_PER_S = { least: 0.05 / 60, most: 0.1 / 60 };

/** The water goes through a mat faster or slower than mats are run. */
export const matFaceVelocity: FindingRule = {
  id: 'mat-face-velocity',
  look({ model, assessment }): readonly Sighting[] {
    if (model.filter.measurements.matWidth === undefined) return [];
    const speed = assessment.dutyPoint.flowM3PerS / assessment.layout.chambers[0]!.areaM2;
    const { least, most } = FACE_VELOCITY_M_PER_S;
    if (speed >= least && speed <= most) return [];
    const evidence = {
      speed: quantity(speed, 'velocity'),
      least: quantity(least, 'velocity'),
      most: quantity(most, 'velocity'),
    };
    const code = speed > most ? 'mat-fast' : 'mat-slow';
    return [{ place: 'mat', ...saysAndCure(code, evidence), severity: speed > most ? 'slight' : 'note' }];
  },
};
