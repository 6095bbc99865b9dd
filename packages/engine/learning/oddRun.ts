import type { TimedFilling } from '../model/model.ts';

/** A run that lies further from the others than these allow. */
export interface OddRun {
  /** Place among the runs as they were written, from 0. */
  readonly at: number;
  /** Gap to the nearest other run as a share of the range of all, 0 to 1: Dixon's r10. */
  readonly ratio: number;
  /** The ratio that 9 of 10 sets of so many careful runs stay below. */
  readonly critical: number;
  /** Shortest and longest of the other runs, s. */
  readonly others: { readonly leastS: number; readonly mostS: number };
}

/**
 * Critical values of r10 for 3 to 30 runs, two-sided, 90 %. Source: D. B. Rorabacher, Anal. Chem. 63 (1991) 139–146,
 * after W. J. Dixon, Ann. Math. Stat. 22 (1951) 68–78; from reprints of the table, and drawn again from normal numbers
 * in the test.
 */
const criticalRatios: readonly number[] = [
  0.941, 0.765, 0.642, 0.56, 0.507, 0.468, 0.437, 0.412, 0.392, 0.376, 0.361, 0.349, 0.338, 0.329, 0.32,
  0.313, 0.306, 0.3, 0.295, 0.29, 0.285, 0.281, 0.277, 0.273, 0.269, 0.266, 0.263, 0.26,
];

const fewestRuns = 3;

/** The critical value for so many runs, 3 or more; above 30 that of 30, which is on the safe side. */
export function criticalRatio(runs: number): number {
  return criticalRatios[Math.min(runs - fewestRuns, criticalRatios.length - 1)]!;
}

/**
 * The one run of a timed filling that lies outside what the others allow, by Dixon's test on the shortest and the longest
 * at 90 %. Two runs of three that agree by chance would make any third one odd, so that its gap must also be more than
 * two careful runs differ: √2 times the doubt of one, from reading and usual scatter (95 %).
 *
 * @param filling times in s, each above 0; doubts as for `timedFlow`
 * @returns undefined where no run is odd, or where there are fewer than three
 */
export function oddRun(
  filling: Pick<TimedFilling, 'timesS' | 'readingDoubtS' | 'assumedScatterRatio'>,
): OddRun | undefined {
  const { timesS, readingDoubtS, assumedScatterRatio } = filling;
  if (timesS.length < fewestRuns) return undefined;
  const sorted = timesS.toSorted((one, other) => one - other);
  const [least, second] = [sorted[0]!, sorted[1]!];
  const [most, lastBut] = [sorted.at(-1)!, sorted.at(-2)!];
  const isLong = most - lastBut >= second - least;
  const [odd, neighbour] = isLong ? [most, lastBut] : [least, second];
  const gap = Math.abs(odd - neighbour);
  const careful = Math.SQRT2 * Math.hypot(readingDoubtS, assumedScatterRatio * neighbour);
  const critical = criticalRatio(timesS.length);
  if (gap <= careful || gap / (most - least) <= critical) return undefined;
  const others = isLong ? { leastS: least, mostS: lastBut } : { leastS: second, mostS: most };
  return { at: timesS.indexOf(odd), ratio: gap / (most - least), critical, others };
}
