/**
 * Sends many hostile requests to a server that runs as a process of its own, and lets damaged exports and backups
 * be imported and restored: `npm run fuzz -- [cases] [--seed N]`. Ends with 1 where the server fails, answers
 * against the rules, or has changed anything that was acknowledged.
 */
import { parseArgs } from 'node:util';
import { runFromBundle } from './bundle.ts';
import { fuzzImports } from './records/fuzz/fuzzImports.ts';
import { tryServer } from './records/fuzz/tryServer.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seed: { type: 'string', default: '1' } },
});
const cases = Number(positionals[0] ?? 20_000);
const seed = Number(values.seed);
const began = performance.now();

await runFromBundle();
const server = await tryServer({
  cases,
  seed,
  onProgress: (done, faults) => console.log(`${done} requests, ${faults} faults`),
});
const statuses = [...new Set([...server.answers.values()].flatMap((known) => [...known.keys()]))].toSorted();
console.table(
  Object.fromEntries(
    [...server.answers]
      .toSorted(([one], [other]) => (one < other ? -1 : 1))
      .map(([name, known]) => [
        name,
        Object.fromEntries(statuses.map((status) => [status, known.get(status) ?? ''])),
      ]),
  ),
);
const imports = await fuzzImports({ cases: Math.ceil(cases / 20), seed });
console.table(Object.fromEntries(imports.outcomes));

const faults = [...server.faults, ...imports.faults];
for (const fault of faults) console.log(fault);
console.log(
  [
    `${server.cases} requests, ${server.rawCases} of raw bytes, ${imports.cases} damaged folders and files`,
    `${server.revisions} acknowledged revisions held against the records`,
    `memory of the server ${server.memoryMiB.join(', ')} MiB at each quarter`,
    `${faults.length} faults in ${Math.round((performance.now() - began) / 1000)} s, seed ${seed}`,
  ].join('\n'),
);
process.exitCode = faults.length === 0 ? 0 : 1;
