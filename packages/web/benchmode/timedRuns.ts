import type { BenchTest } from '@fettle/engine/model/model.ts';
import { timedVolumeSchema } from '@fettle/job/schema/benchTests.ts';
import { benchTestsOf } from '@fettle/job/toModel/benchTests.ts';
import * as z from 'zod';

/** A time of a run that is shorter is a slip of the finger, s; the job's schema takes none. */
const shortestS = 0.5;

/** States of the filter that a timed filling may be of. */
export const testStates = timedVolumeSchema.shape.state.unwrap().options;

const benchSchema = z.strictObject({
  volume: z.string(),
  state: z.enum(testStates),
  /** Time of each run as it goes into the job: `31.2 s`. */
  times: z.array(z.string()),
  /** When the clock was started that runs, ms since 1970: it goes on while the page is gone. */
  startedAt: z.number().optional(),
});

/** A timed filling as it is being done: volume, times so far, and the clock. */
export type TimedRuns = z.infer<typeof benchSchema>;

export const noRuns: TimedRuns = { volume: '', state: 'as-found', times: [] };

/** What a page left behind that was reloaded or died; no runs where that cannot be read. */
export function runsFrom(kept: string | null): TimedRuns {
  if (kept === null) return noRuns;
  try {
    const read = benchSchema.safeParse(JSON.parse(kept));
    return read.success ? read.data : noRuns;
  } catch {
    return noRuns;
  }
}

/** Runs of a filter in a state: those that were begun keep theirs. */
export const runsOf = (runs: TimedRuns, state: TimedRuns['state']): TimedRuns =>
  runs === noRuns ? { ...noRuns, state } : runs;

/** The state that an address asks for; as found where it names none that there is. */
export const askedState = (asked: string | null): TimedRuns['state'] =>
  testStates.find((state) => state === asked) ?? noRuns.state;

/** Seconds to a tenth, which is what hands are good for. */
export const secondsText = (timeS: number): string => `${timeS.toFixed(1)} s`;

/** Starts the clock, or stops it and takes the time as a run; a run that is too short is not taken. */
export function clockPressed(runs: TimedRuns, nowMs: number): TimedRuns {
  const { startedAt, ...rest } = runs;
  if (startedAt === undefined) return { ...rest, startedAt: nowMs };
  const timeS = (nowMs - startedAt) / 1000;
  return timeS < shortestS ? rest : { ...rest, times: [...rest.times, secondsText(timeS)] };
}

export const withoutRun = (runs: TimedRuns, place: number): TimedRuns => ({
  ...runs,
  times: runs.times.filter((_, index) => index !== place),
});

/** A timed filling as it stands in a job. */
export type TimedVolumeTest = z.infer<typeof timedVolumeSchema>;

/** The test as it goes into the job; undefined until it has a volume and a run that can be read. */
export function testOf({ volume, state, times }: TimedRuns): TimedVolumeTest | undefined {
  const read = timedVolumeSchema.safeParse({ kind: 'timed-volume', state, volume: volume.trim(), times });
  return read.success ? read.data : undefined;
}

type TimedFlow = Extract<BenchTest, { kind: 'timed-volume' }>;

/** Flow and its doubt, as the job's own assessment will have them. */
const reduced = (test: TimedVolumeTest): TimedFlow | undefined => {
  const [flow] = benchTestsOf([test]).tests;
  return flow?.kind === 'timed-volume' ? flow : undefined;
};

/** Flow and its doubt of what was timed so far; undefined until the test is whole. */
export function flowOf(runs: TimedRuns): TimedFlow | undefined {
  const test = testOf(runs);
  return test === undefined ? undefined : reduced(test);
}

/** What a timed filling comes to, run by run. */
export interface RunFlows {
  readonly runs: readonly { readonly time: TimedVolumeTest['times'][number]; readonly flowM3PerS: number }[];
  readonly mean: TimedFlow;
}

/**
 * The flow of each run of a timed filling of a job, and of all together.
 *
 * @param written the test as the document has it
 * @returns undefined where it is no timed filling, or is not whole yet
 */
export function runFlowsOf(written: unknown): RunFlows | undefined {
  const read = timedVolumeSchema.safeParse(written);
  if (!read.success) return undefined;
  const mean = reduced(read.data);
  if (mean === undefined) return undefined;
  const runs = read.data.times.map((time) => ({
    time,
    flowM3PerS: reduced({ ...read.data, times: [time] })?.flowM3PerS ?? mean.flowM3PerS,
  }));
  return { runs, mean };
}
