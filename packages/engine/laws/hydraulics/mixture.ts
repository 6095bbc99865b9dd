import type { ValidRange } from '../range.ts';

/** Pieces of one size before they are mixed. */
export interface OneSize {
  /** Diameter of the sphere of a piece's volume, m; above 0. */
  readonly sizeM: number;
  /** Voidage of a bed of these pieces alone, 1; above 0, below 1. */
  readonly voidage: number;
}

/** Two sizes and how much of the solids' volume is of the coarser ones, 1; 0 to 1. */
export interface Mixture {
  readonly coarse: OneSize;
  readonly fine: OneSize;
  readonly coarseShare: number;
}

/** Beyond this ratio of sizes pieces take each other's places and mixing brings nothing. */
const ALIKE = 0.824;

export const voidageOfMixtureWestman1936Range = {
  sizeRatio: { least: 0.05, most: 1 },
  voidage: { least: 0.3, most: 0.6 },
} as const satisfies ValidRange;

/**
 * Voidage of two sizes of pieces mixed evenly.
 *
 * A² + 2GAB + B² = 1 with A = (V − V_c x_c)/V_f, B = (V − x_c − V_f x_f)/(V_c − 1), V = 1/(1 − ε) the room of a unit of
 * solids, x shares of the solids, c coarse and f fine; 1/G = 1.355 r^1.566 with r the ratio of sizes, 1 above 0.824.
 *
 * @param mixture.coarse the larger pieces: size, m; above 0
 * @param mixture.fine the smaller pieces: size, m; above 0
 * @param mixture.coarseShare x_c, 1; 0 to 1
 * @returns voidage, 1; between what the ideal filling of the coarse by the fine leaves and the greater of the two
 * Accuracy: ±0.02 for round pieces that do not part again; hollow ones were not measured. Constants from memory.
 * @source Westman 1936, J. Am. Ceram. Soc. 19, 127–129; G by Yu, Zou & Standish 1993, Ind. Eng. Chem. Res. 32, 3730–3741
 */
export const voidageOfMixtureWestman1936 = (mixture: Mixture): number => {
  const { coarse, fine, coarseShare } = mixture;
  const Vc = 1 / (1 - coarse.voidage);
  const Vf = 1 / (1 - fine.voidage);
  const ratio = fine.sizeM / coarse.sizeM;
  const G = ratio > ALIKE ? 1 : 1 / (1.355 * ratio ** 1.566);
  // As lines in V: A = V/a − p, B = V/b − q.
  const a = Vf;
  const p = (Vc * coarseShare) / Vf;
  const b = Vc - 1;
  const q = (coarseShare + Vf * (1 - coarseShare)) / b;
  const square = 1 / a ** 2 + (2 * G) / (a * b) + 1 / b ** 2;
  const half = p / a + q / b + G * (q / a + p / b);
  const rest = p ** 2 + 2 * G * p * q + q ** 2 - 1;
  const V = (half + Math.sqrt(half ** 2 - square * rest)) / square;
  return 1 - 1 / V;
};

/**
 * Size of equal pieces that have the surface of a mixture for the same volume.
 *
 * 1/d = x_c/d_c + x_f/d_f.
 *
 * @param mixture.coarse the larger pieces: size, m; above 0
 * @param mixture.fine the smaller pieces: size, m; above 0
 * @param mixture.coarseShare x_c, 1; 0 to 1
 * @returns size, m; between the two
 * Accuracy: exact for the surface, which is what resists slow water.
 * @source Sauter 1928; Ergun 1952, Chem. Eng. Prog. 48, 89–94 for mixed sizes
 */
export const sizeOfMixtureSauter1928 = (mixture: Mixture): number => {
  const { coarse, fine, coarseShare } = mixture;
  return 1 / (coarseShare / coarse.sizeM + (1 - coarseShare) / fine.sizeM);
};
