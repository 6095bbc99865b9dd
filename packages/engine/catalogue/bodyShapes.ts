import type { Figure } from '../model/figure.ts';
import { fromMemory, plusMinus, times } from './figureOf.ts';

/** Build of a fish as far as its mass goes. */
export type BodyShape = 'eel-like' | 'elongated' | 'fusiform' | 'short-deep';

/** Mass in grams is a·Lᵇ, L the standard length (without the tail fin) in centimetres. */
export interface LengthMass {
  /** Mass at 1 cm, g. */
  readonly a: Figure;
  /** Exponent, 1. Its doubt goes with that of `a`: vary one of them, not both. */
  readonly b: Figure;
}

const FROESE = 'Froese, Thorson & Reyes 2014, J. Appl. Ichthyol. 30, 78–85, prior by body shape';

/** Total over standard length of most fish with an ordinary tail fin; from memory, 1.15 to 1.3. */
const TOTAL_OVER_STANDARD_LENGTH = 1.25;

const prior = (totalLengthA: number, exponent: number): LengthMass => {
  const a = totalLengthA * TOTAL_OVER_STANDARD_LENGTH ** exponent;
  const text = `${totalLengthA} for total length (${FROESE}), total taken as 1.25 times standard length`;
  return {
    a: fromMemory(Number(a.toPrecision(3)), times(2.3), text),
    b: fromMemory(exponent, plusMinus(0.18), FROESE),
  };
};

/** Length to mass by body shape. */
export const bodyShapes: Readonly<Record<BodyShape, LengthMass>> = {
  'eel-like': prior(0.00102, 3.06),
  elongated: prior(0.00389, 3.12),
  fusiform: prior(0.0112, 3.04),
  'short-deep': prior(0.0182, 3.01),
};
