/** Units in which times are told. */
export type TimeUnit = 'µs' | 'ms' | 's';

/**
 * One benchmark: a file `bench/<topic>.bench.ts` exports it as its default. Its work is prepared when the file
 * is loaded, from a fixed seed where it is drawn, so that each run does the same. One run should take a
 * millisecond or more: shorter work is repeated within the run.
 */
export interface Benchmark {
  readonly name: string;
  readonly unit: TimeUnit;
  /** How many times each side is timed. */
  readonly runs: number;
  /** How many times one run does the thing that is timed; times are told for one. 1 where it is absent. */
  readonly repeats?: number;
  /** Does the work once; what it gives back is kept from being optimised away. */
  ours(): unknown;
  /** Does the same work once by other means. */
  reference?(): unknown;
  /** What the reference is: a library with its version, or a plainer algorithm. */
  readonly against?: string;
}

/** What is counted, not timed: shares by what is looked at. */
export interface Count {
  readonly name: string;
  /** What is counted, and what share is meant. */
  readonly of: string;
  counts(): Readonly<Record<string, number>>;
  /** The share that is told where one alone is. */
  readonly first: string;
}

/** Times of one side over all runs, in the benchmark's unit. */
export interface Times {
  readonly minimum: number;
  /** Distance from the minimum to the median, as a fraction of the minimum. */
  readonly spreadFraction: number;
}

/** What a benchmark gave. The ratio is the reference's minimum over ours: above 1, ours is faster. */
export interface Measured {
  readonly name: string;
  readonly unit: TimeUnit;
  readonly runs: number;
  readonly ours: Times;
  readonly reference?: Times;
  readonly ratio?: number;
  readonly against?: string;
}

const unitsPerMs: Readonly<Record<TimeUnit, number>> = { µs: 1000, ms: 1, s: 0.001 };

/**
 * Times a benchmark: some runs unmeasured to warm both sides, then ours and the reference by turns, each of
 * them first in every other turn, so that a machine that slows down slows both.
 */
export function measure(benchmark: Benchmark, nowMs: () => number): Measured {
  const { name, unit, runs, against, repeats = 1 } = benchmark;
  const sides = [() => benchmark.ours()];
  if (benchmark.reference !== undefined) sides.push(() => benchmark.reference?.());
  for (let run = 0; run < Math.ceil(runs / 3); run += 1) for (const side of sides) keep(side());
  const times: number[][] = sides.map(() => []);
  for (let run = 0; run < runs; run += 1) {
    const order = run % 2 === 0 ? sides.keys() : [...sides.keys()].reverse();
    for (const index of order)
      times[index]?.push((timeOnce(sides[index], nowMs) * unitsPerMs[unit]) / repeats);
  }
  const [ours = summary([]), reference] = times.map(summary);
  const compared = reference && { reference, ratio: reference.minimum / ours.minimum };
  return { name, unit, runs, ours, ...compared, ...(against !== undefined && { against }) };
}

function timeOnce(side: (() => unknown) | undefined, nowMs: () => number): number {
  const start = nowMs();
  const result = side?.();
  const taken = nowMs() - start;
  keep(result);
  return taken;
}

let kept: unknown;

function keep(result: unknown): void {
  kept = result === kept ? undefined : result;
}

function summary(times: readonly number[]): Times {
  const sorted = [...times].sort((a, b) => a - b);
  const minimum = sorted[0] ?? Number.NaN;
  const median = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  return { minimum, spreadFraction: (median - minimum) / minimum };
}
