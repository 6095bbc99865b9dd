import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { bundleCommandLine, bundlePath } from './bundle.ts';
import { projectRoot } from './sources.ts';

/** The promised Nodes besides the one that runs this script, by their major version. */
const promised = ['22', '24'];

/** One run of a Node: what it shows, where and with which arguments. */
interface Trial {
  readonly shows: string;
  readonly folder: string;
  readonly arguments: readonly string[];
  /** What must be found in what it prints; anything at all where left out. */
  readonly prints?: RegExp;
}

const testsOf = (project: 'unit' | 'parts', shows: string, paths: readonly string[]): Trial => ({
  shows,
  folder: projectRoot,
  arguments: ['node_modules/vitest/vitest.mjs', 'run', '--project', project, ...paths],
});

/** The records' own tests: each Node has another database in it, or none. */
const storeTests = [
  'contract.test.ts',
  'open.test.ts',
  'readOnly.test.ts',
  'flipped.test.ts',
  'backup/restore.test.ts',
  'twoPrograms.test.ts',
  'migrations',
  'sqlite',
].map((name) => `packages/store/${name}`);

const tests: readonly Trial[] = [
  testsOf('unit', "the engine's tests", ['packages/engine']),
  testsOf('parts', "the records' tests", storeTests),
];

const fromSources = ['--import', import.meta.resolve('tsx'), resolve(projectRoot, 'packages/cli/main.ts')];

/** One data folder goes from Node to Node: each takes a job in and finds those of all before it. */
function recordsTrials(folder: string, count: number): Trial[] {
  const data = ['--data', join(folder, 'records')];
  const job = resolve(projectRoot, 'demo/corner-box.yaml');
  return [
    {
      shows: 'fettle import, on records that other Nodes wrote',
      folder,
      arguments: [...fromSources, 'import', job, '--new', ...data],
    },
    {
      shows: 'fettle jobs, with those that other Nodes wrote',
      folder,
      arguments: [...fromSources, 'jobs', '--json', ...data],
      prints: new RegExp(`"total": ${count}\\b`),
    },
  ];
}

/**
 * The commands from their sources, and from a copy of the bundle that has nothing else beside it. All run in
 * the throw-away folder, since the demo lays its drawing where it is run.
 */
function commandTrials(folder: string): Trial[] {
  const forms = [
    { form: 'the sources', program: fromSources },
    { form: 'the bundle', program: [join(folder, 'fettle', 'fettle.js')] },
  ];
  const commands = [['--version'], ['--help'], ['demo'], ['demo', '--json']];
  return forms.flatMap(({ form, program }) =>
    commands.map((command) => ({
      shows: `fettle ${command.join(' ')} from ${form}`,
      folder,
      arguments: [...program, ...command],
    })),
  );
}

function passes(node: string, trial: Trial): boolean {
  const run = spawnSync(node, trial.arguments, { cwd: trial.folder, encoding: 'utf8' });
  const passed = run.status === 0 && (trial.prints ?? /./).test(run.stdout);
  console.log(`  ${passed ? 'passes' : 'FAILS '} ${trial.shows}`);
  if (!passed) console.error(run.error?.message ?? `${run.stdout}\n${run.stderr}`);
  return passed;
}

/** Tries one Node and gives the names of what failed. */
function tryNode(node: string, trials: readonly Trial[]): string[] {
  const version = execFileSync(node, ['--version'], { encoding: 'utf8' }).trim();
  console.log(`\n— Node ${version}`);
  return trials.filter((trial) => !passes(node, trial)).map(({ shows }) => `${shows} on Node ${version}`);
}

/** Installs the package that carries a Node of the given major version, and gives the path of its program. */
function fetchNode(home: string, version: string): string {
  const onWindows = process.platform === 'win32';
  const name = `node-${onWindows ? 'win' : process.platform}-${process.arch}`;
  execFileSync(
    onWindows ? 'npm.cmd' : 'npm',
    ['install', '--prefix', home, '--no-audit', '--no-fund', '--loglevel=error', `${name}@${version}`],
    { stdio: 'inherit', shell: onWindows },
  );
  const path = join(home, 'node_modules', name, 'bin', onWindows ? 'node.exe' : 'node');
  if (!existsSync(path)) throw new Error(`${name}@${version} holds no Node`);
  return path;
}

async function tryAll(folder: string): Promise<string[]> {
  await bundleCommandLine();
  cpSync(dirname(bundlePath), join(folder, 'fettle'), { recursive: true });
  writeFileSync(join(folder, 'fettle', 'package.json'), '{ "type": "module" }');
  const commands = commandTrials(folder);
  const failed = tryNode(process.execPath, [...commands, ...recordsTrials(folder, 1)]);
  for (const [index, version] of promised.entries()) {
    const node = fetchNode(join(folder, version), version);
    failed.push(...tryNode(node, [...commands, ...recordsTrials(folder, index + 2), ...tests]));
  }
  return failed;
}

const folder = mkdtempSync(join(tmpdir(), 'fettle-nodes-'));
try {
  const failed = await tryAll(folder);
  console.log(failed.length === 0 ? '\nEvery promised Node passes.' : `\nFailed: ${failed.join('; ')}.`);
  process.exitCode = failed.length === 0 ? 0 : 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
