/**
 * Puts a server with many jobs under load while it searches plans, and shows how long answers took:
 * `npm run load -- [--jobs 20000] [--seconds 60] [--rate 200] [--plans 3] [--folder DIR]`.
 * Requests come as those of many people do: each of as many clients as there are requests in a second asks once a
 * second, at a moment of its own that chance chose, and does not wait for others. Some seconds at the same rate come
 * first and are not counted. Ends with 1 where a target is missed: 99 of 100 reads under 50 ms, 99 of 100
 * writes under 100 ms, no errors. `--folder` keeps the records for the next run.
 */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { runFromBundle } from './bundle.ts';
import { chanceFrom } from './records/chance.ts';
import { askedByCrowd, together, withinMs } from './records/crowd.ts';
import { loadKinds, type Standing } from './records/loadMix.ts';
import type { Answers } from './records/manyClients.ts';
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

const rounded = (milliseconds: number): number => Math.round(10 * milliseconds) / 10;

const row = ({ tookMs, errors, statuses }: Answers) => ({
  requests: tookMs.length,
  'p50 ms': rounded(withinMs(tookMs, 0.5)),
  'p90 ms': rounded(withinMs(tookMs, 0.9)),
  'p99 ms': rounded(withinMs(tookMs, 0.99)),
  'max ms': rounded(withinMs(tookMs, 1)),
  errors,
  status: Object.entries(statuses)
    .map(([status, count]) => `${status}: ${count}`)
    .join(', '),
});

const isFaultless = ({ errors, statuses }: Answers): boolean =>
  errors === 0 && Object.keys(statuses).every((status) => /^[23]/.test(status));

/** Fewer than this share of the requests asked for: the rate was not kept up, and the times say too little. */
const leastServed = 0.98;
const [gatherSeconds, warmUpSeconds] = [10, 5];

async function measure({ address, process: { pid } }: ServerProcess, standing: Standing): Promise<boolean> {
  const kinds = loadKinds(standing, chance);
  const asking = askedByCrowd({
    address,
    kinds,
    standing,
    rate,
    times: { gatherSeconds, warmUpSeconds, seconds },
    chance,
  });
  await setTimeout(1000 * (gatherSeconds + warmUpSeconds));
  const busyBefore = busySeconds(pid);
  await setTimeout(1000 * seconds);
  const busyS = busySeconds(pid) - busyBefore;
  const answers = await asking;
  const reads = together(answers.filter((_, place) => !kinds[place]?.isWrite));
  const writes = together(answers.filter((_, place) => kinds[place]?.isWrite));
  const each = answers.map((of, place) => [kinds[place]?.name, row(of)]);
  console.table({ ...Object.fromEntries(each), 'all reads': row(reads), 'all writes': row(writes) });
  const answered = reads.tookMs.length + writes.tookMs.length;
  console.log(
    `the thread that answers was busy ${busyS.toFixed(1)} s of ${seconds} s, ${((1000 * busyS) / answered).toFixed(1)} ms a request`,
  );
  return (
    answered >= leastServed * rate * seconds &&
    withinMs(reads.tookMs, 0.99) < mostReadMs &&
    withinMs(writes.tookMs, 0.99) < mostWriteMs &&
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
