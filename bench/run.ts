import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { type Benchmark, type Count, type Measured, measure, type Times } from './benchmark.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false } },
});

async function loadBenchmarks(): Promise<(Benchmark | Count)[]> {
  const folder = fileURLToPath(new URL('.', import.meta.url));
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.bench.ts'))
    .sort();
  const modules: { default: Benchmark | Count }[] = await Promise.all(
    files.map((file) => import(new URL(file, import.meta.url).href)),
  );
  return modules.map((module) => module.default);
}

function describeMachine(): string {
  const processors = cpus();
  return `${processors.length} × ${processors[0]?.model.trim()}, ${process.platform}, Node ${process.version}`;
}

function print(measured: Measured): void {
  const { name, unit, runs, ours, reference, ratio, against } = measured;
  const side = (times: Times) =>
    `${times.minimum.toPrecision(4)} ${unit} (+${Math.round(times.spreadFraction * 100)} %)`;
  console.log(`${name}, least of ${runs} runs (median above it)`);
  console.log(`  ours       ${side(ours)}`);
  if (reference === undefined || ratio === undefined) return;
  console.log(`  reference  ${side(reference)}${against === undefined ? '' : `  ${against}`}`);
  console.log(`  ratio      ${ratio.toPrecision(3)} (reference's time over ours)`);
}

function printCount({ name, of }: Count, shares: Readonly<Record<string, number>>): void {
  console.log(`${name}, of ${of}`);
  for (const [figure, share] of Object.entries(shares)) console.log(`  ${share.toFixed(3)}  ${figure}`);
}

/** The list that `--json` prints: minima, and the ratio of reference to ours. */
function jsonRow({ name, unit, runs, ours, reference, ratio }: Measured) {
  return {
    name,
    ours: ours.minimum,
    ...(reference && { reference: reference.minimum, ratio }),
    unit,
    runs,
    spread: ours.spreadFraction,
  };
}

const all = await loadBenchmarks();
const unknown = positionals.filter((name) => !all.some((benchmark) => benchmark.name === name));
const known = `known: ${all.map(({ name }) => name).join(', ')}`;
if (unknown.length > 0 || all.length === 0) {
  console.error(`No benchmark named ${unknown.join(', ')}; ${known}.`);
  process.exit(1);
}
console.error(describeMachine());
const chosen = all.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
const rows: object[] = [];
for (const benchmark of chosen) {
  if ('counts' in benchmark) {
    const shares = benchmark.counts();
    rows.push({ name: benchmark.name, ours: shares[benchmark.first], unit: '1', shares });
    if (!values.json) printCount(benchmark, shares);
    continue;
  }
  const result = measure(benchmark, () => performance.now());
  rows.push(jsonRow(result));
  if (!values.json) print(result);
}
if (values.json) console.log(JSON.stringify(rows, null, 2));
