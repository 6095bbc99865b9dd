import type { TimedFilling } from '../model/model.ts';

/** Coverage factor at infinitely many degrees of freedom for 95.45 %, which `± x` means everywhere. */
const coverage = 2;

/**
 * Student's t for 95.45 % coverage by degrees of freedom (JCGM 100:2008, table G.2, from memory; recomputed).
 * Between two rows the lower one holds, as the guide recommends (G.4.1).
 */
const studentRows: readonly (readonly [freedom: number, factor: number])[] = [
  [1, 13.97],
  [2, 4.53],
  [3, 3.31],
  [4, 2.87],
  [5, 2.65],
  [6, 2.52],
  [7, 2.43],
  [8, 2.37],
  [9, 2.32],
  [10, 2.28],
  [11, 2.25],
  [12, 2.23],
  [13, 2.21],
  [14, 2.2],
  [15, 2.18],
  [16, 2.17],
  [17, 2.16],
  [18, 2.15],
  [19, 2.14],
  [20, 2.13],
  [25, 2.11],
  [30, 2.09],
  [35, 2.07],
  [40, 2.06],
  [45, 2.06],
  [50, 2.05],
  [100, 2.025],
];

/** Coverage factor for 95.45 % at so many effective degrees of freedom (1 or more). */
export function studentFactor(freedom: number): number {
  // A shade more, so that a whole number that came out of arithmetic is not taken for the one below.
  const row = studentRows.findLast(([least]) => least <= freedom * (1 + 1e-9));
  if (freedom > 1000) return coverage;
  return row?.[1] ?? studentRows[0]![1];
}

/**
 * Flow of a timed filling with its expanded doubt (95.45 %).
 *
 * Q = V/t̄; u(Q)² = Q² [ (u(V)/V)² + (u_A/t̄)² + (u_r/t̄)² ] with u_A = s/√n the scatter of the mean of n runs and
 * u_r the reading's own, which repeats do not lessen; U = t(ν) u(Q) with ν = (n − 1) u⁴/u_A⁴ in relative terms
 * (Welch–Satterthwaite). Source: JCGM 100:2008 (GUM), 4.2, 4.3, 5.1.2, G.4.1.
 *
 * @returns flow, m³/s, and its half-width, m³/s
 */
export function timedFlow(filling: TimedFilling): {
  readonly flowM3PerS: number;
  readonly doubtM3PerS: number;
} {
  const { volumeM3, timesS } = filling;
  const flowM3PerS = volumeM3 / meanOf(timesS);
  const volume = filling.volumeDoubtM3 / coverage / volumeM3;
  const { scatter, scatterFreedom, reading } = relativeScatter(filling);
  const freedom = effectiveFreedom([
    { size: scatter, freedom: scatterFreedom },
    { size: Math.hypot(volume, reading), freedom: Infinity },
  ]);
  const relative = Math.hypot(volume, reading, scatter);
  return { flowM3PerS, doubtM3PerS: studentFactor(freedom) * relative * flowM3PerS };
}

/**
 * Relative standard doubts of the mean time of a filling: of the runs' scatter, with its degrees of freedom (endless
 * where one run's scatter is assumed), and of reading the time.
 */
export function relativeScatter({ timesS, readingDoubtS, assumedScatterRatio }: TimedFilling): {
  readonly scatter: number;
  readonly scatterFreedom: number;
  readonly reading: number;
} {
  const meanS = meanOf(timesS);
  const isRepeated = timesS.length > 1;
  return {
    scatter: isRepeated ? scatterOfMean(timesS, meanS) / meanS : assumedScatterRatio / coverage,
    scatterFreedom: isRepeated ? timesS.length - 1 : Infinity,
    reading: readingDoubtS / coverage / meanS,
  };
}

/** A standard doubt and its degrees of freedom; one that is known for certain has endlessly many. */
export interface DoubtPart {
  readonly size: number;
  readonly freedom: number;
}

/**
 * Effective degrees of freedom of several independent standard doubts together, by Welch–Satterthwaite:
 * ν = (Σu²)² / Σ(u⁴/ν). Source: JCGM 100:2008 (GUM), G.4.1, equation G.2b.
 *
 * @returns endless where no part has finitely many
 */
export function effectiveFreedom(parts: readonly DoubtPart[]): number {
  const total = parts.reduce((sum, { size }) => sum + size ** 2, 0);
  const spread = parts.reduce((sum, { size, freedom }) => sum + size ** 4 / freedom, 0);
  return spread === 0 ? Infinity : total ** 2 / spread;
}

function meanOf(times: readonly number[]): number {
  return times.reduce((sum, time) => sum + time, 0) / times.length;
}

function scatterOfMean(times: readonly number[], mean: number): number {
  const squares = times.reduce((sum, time) => sum + (time - mean) ** 2, 0);
  return Math.sqrt(squares / (times.length - 1) / times.length);
}
