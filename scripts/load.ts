/**
 * Puts a server with many jobs under load while it searches plans, and shows how long answers took:
 * `npm run load -- [--jobs 20000] [--seconds 60] [--rate 200] [--plans 3] [--folder DIR]`.
 * Requests come as those of many people do: each of as many connections as there are requests in a second asks once a
 * second, at a moment of its own that chance chose, and does not wait for others. A few seconds at the same rate come
 * first and are not counted. Ends with 1 where a target is missed: 99 of 100 reads under 50 ms, 99 of 100
 * writes under 100 ms, no errors. `--folder` keeps the records for the next run.
 */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import autocannon, { type LoadResult, type RawResult } from 'autocannon';
import { runFromBundle } from './bundle.ts';
import { chanceFrom } from './records/chance.ts';
import { type LoadKind, loadKinds, type Standing } from './records/loadMix.ts';
import { layManyJobs, standingIn } from './records/manyJobs.ts';
import { busySeconds, residentMiB } from './records/memory.ts';
import { type ServerProcess, startServerProcess, stopServerProcess } from './records/serverProcess.ts';

const { values } = parseArgs({
  options: {
    jobs: { type: 'string', default: '20000' },
    seconds: { type: 'string', default: '60' },
    rate: { type: 'string', default: '200' },
    plans: { type: 'string', default: '3' },
    folder: { type: 'string' },
    seed: { type: 'string', default: '1' },
  },
});
const [jobs, seconds, rate] = [Number(values.jobs), Number(values.seconds), Number(values.rate)];
const chance = chanceFrom(Number(values.seed));
const warmUpSeconds = 8;
const mostReadMs = 50;
const mostWriteMs = 100;

async function startPlan(address: string, number: number): Promise<string> {
  const response = await fetch(`${address}/api/jobs/${number}/plans`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ budget: 500, cap: 100_000 }),
  });
  if (response.status !== 202 && response.status !== 200)
    throw new Error(`the plan was answered ${response.status}: ${await response.text()}`);
  return String(response.headers.get('location'));
}

async function stateOf(address: string, path: string): Promise<string> {
  const work: unknown = await (await fetch(`${address}${path}`)).json();
  return String(Reflect.get(Object(work), 'state'));
}

/** Asks once a second over one connection, beginning at a moment within the first second. */
const askEachSecond = async (
  address: string,
  { requests }: LoadKind,
  times: { readonly beginsAfterMs: number; readonly duration: number },
): Promise<RawResult> => {
  await setTimeout(times.beginsAfterMs);
  return autocannon({
    url: address,
    duration: times.duration,
    connections: 1,
    overallRate: 1,
    requests,
    skipAggregateResult: true,
    // It takes the time between two requests of a connection for 1 ms, and invents a slow request for each of those.
    ignoreCoordinatedOmission: true,
  });
};

/** Runs every kind at its share of the rate, all at once; gives the results of each kind. */
const underLoad = (
  address: string,
  kinds: readonly LoadKind[],
  duration: number,
): Promise<readonly (readonly RawResult[])[]> =>
  Promise.all(
    kinds.map((kind) =>
      Promise.all(
        Array.from({ length: Math.max(1, Math.round(rate * kind.share)) }, () =>
          askEachSecond(address, kind, { beginsAfterMs: chance.below(1000), duration }),
        ),
      ),
    ),
  );

const row = ({ latency, requests, errors, timeouts, statusCodeStats }: LoadResult) => ({
  requests: requests.total,
  'p50 ms': latency.p50,
  'p90 ms': latency.p90,
  'p99 ms': latency.p99,
  'max ms': latency.max,
  errors: errors + timeouts,
  status: Object.entries(statusCodeStats)
    .map(([status, { count }]) => `${status}: ${count}`)
    .join(', '),
});

const isFaultless = ({ errors, timeouts, statusCodeStats }: LoadResult): boolean =>
  errors + timeouts === 0 && Object.keys(statusCodeStats).every((status) => /^[23]/.test(status));

async function measure({ address, process: { pid } }: ServerProcess, standing: Standing): Promise<boolean> {
  const kinds = loadKinds(standing, chance);
  await underLoad(address, kinds, warmUpSeconds);
  const busyBefore = busySeconds(pid);
  const results = await underLoad(address, kinds, seconds);
  const busyS = busySeconds(pid) - busyBefore;
  // Putting together adds into the first of them.
  const together = (some: readonly RawResult[]): LoadResult =>
    autocannon.aggregateResult(structuredClone(some), { url: address });
  const allOf = (isWrite: boolean): LoadResult =>
    together(results.filter((_, index) => kinds[index]?.isWrite === isWrite).flat());
  const [reads, writes] = [allOf(false), allOf(true)];
  const each = results.map((result, index) => [kinds[index]?.name, row(together(result))]);
  console.table({ ...Object.fromEntries(each), 'all reads': row(reads), 'all writes': row(writes) });
  const answered = reads.requests.total + writes.requests.total;
  console.log(
    `the thread that answers was busy ${busyS.toFixed(1)} s of ${seconds} s, ${((1000 * busyS) / answered).toFixed(1)} ms a request`,
  );
  return (
    reads.latency.p99 < mostReadMs &&
    writes.latency.p99 < mostWriteMs &&
    isFaultless(reads) &&
    isFaultless(writes)
  );
}

async function run(folder: string): Promise<boolean> {
  const began = performance.now();
  const standing = existsSync(join(folder, 'fettle.db'))
    ? await standingIn(folder)
    : await layManyJobs(folder, jobs, chance);
  console.log(`${standing.size} jobs stand after ${Math.round((performance.now() - began) / 1000)} s`);
  const server = await startServerProcess(folder);
  try {
    return await tryServer(server, standing);
  } finally {
    await stopServerProcess(server);
  }
}

async function tryServer(server: ServerProcess, standing: Standing): Promise<boolean> {
  const { address } = server;
  const plans: string[] = [];
  for (let count = Number(values.plans); count > 0; count--) plans.push(await startPlan(address, count));
  const before = residentMiB(server.process.pid);
  const met = await measure(server, standing);
  const states = await Promise.all(plans.map((path) => stateOf(address, path)));
  console.log(`plans afterwards: ${states.join(', ') || 'none asked for'}`);
  console.log(`memory ${before} MiB before, ${residentMiB(server.process.pid)} MiB after`);
  return met && states.includes('running');
}

await runFromBundle();
const folder = values.folder ?? mkdtempSync(join(tmpdir(), 'fettle-load-'));
try {
  const met = await run(folder);
  console.log(met ? 'The targets are met.' : 'A target is missed.');
  process.exitCode = met ? 0 : 1;
} finally {
  if (values.folder === undefined) rmSync(folder, { recursive: true, force: true });
}
