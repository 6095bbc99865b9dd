import type { Pump } from './model.ts';

/** Head at which the pump's flow stops at its set speed, by its curve as stated or assumed, m. */
export const statedShutoffHead = ({ curve, speedRatio }: Pump): number =>
  (curve.kind === 'two-point' ? curve.shutoffHeadM : curve.points[0]!.headM) * speedRatio ** 2;
