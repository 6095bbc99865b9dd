import type { Pump } from './model.ts';

/** What moves the water: an electric pump in it, or air blown into lift tubes. */
export type Drive = 'pump' | 'air-lift';

export const driveOf = ({ curve }: Pick<Pump, 'curve'>): Drive =>
  curve.kind === 'air-lift' ? 'air-lift' : 'pump';

/**
 * Head at which the pump's flow stops at its set speed, by its curve as stated or assumed, m; undefined of an
 * air-lift, whose head nobody states.
 */
export const statedShutoffHead = ({ curve, speedRatio }: Pump): number | undefined => {
  if (curve.kind === 'air-lift') return undefined;
  return (curve.kind === 'two-point' ? curve.shutoffHeadM : curve.points[0]!.headM) * speedRatio ** 2;
};
