import {
  copyFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, resolve } from 'node:path';
import { build } from 'esbuild';
import { build as buildPages } from 'vite';
import { isMain, projectRoot } from './sources.ts';

/** The program of the bundle: what it needs lies in its folder, with the demo jobs. */
export const bundlePath = resolve(projectRoot, 'packages', 'cli', 'dist', 'fettle.js');

/**
 * Packages with parts for one kind of machine, and the one that starts threads from a file of its own: they are
 * installed beside the bundle. Only the commands over the records load them.
 */
const besideTheBundle = {
  dependencies: [
    '@expo-google-fonts/ibm-plex-sans',
    '@myriaddreamin/typst-ts-node-compiler',
    '@node-rs/argon2',
    '@resvg/resvg-js',
    'dejavu-fonts-ttf',
    'piscina',
    'sharp',
  ],
  optionalDependencies: ['libsql'],
} as const;

/** The files that worker threads run. */
const threadFiles = {
  recordsThread: resolve(projectRoot, 'packages', 'store', 'apart', 'recordsThread.ts'),
  worker: resolve(projectRoot, 'packages', 'server', 'computation', 'worker.ts'),
  writeUpWorker: resolve(projectRoot, 'packages', 'server', 'computation', 'writeUpWorker.ts'),
};

/**
 * Lays each file as one that Node runs as it is, by its name, with what they have in common in files of their own.
 * Packages in the older module form ask for Node's modules with `require`, which the first lines give them.
 */
const bundle = (entryPoints: Readonly<Record<string, string>>, folder: string): Promise<unknown> =>
  build({
    entryPoints,
    outdir: folder,
    bundle: true,
    // What is loaded only when it is needed stays in a file of its own, and with it what it needs from outside.
    splitting: true,
    // Beside the program, since places such as the demo jobs are found from the file that asks for them.
    chunkNames: '[name]-[hash]',
    external: Object.values(besideTheBundle).flat(),
    platform: 'node',
    format: 'esm',
    target: 'node20',
    legalComments: 'linked',
    logLevel: 'warning',
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
  });

/** Bundles the command line with all that it imports, and the files that worker threads run beside it. */
export async function bundleCommandLine(): Promise<void> {
  const folder = dirname(bundlePath);
  rmSync(folder, { recursive: true, force: true });
  await bundle({ fettle: resolve(projectRoot, 'packages', 'cli', 'main.ts'), ...threadFiles }, folder);
  await buildWorkbench(resolve(folder, 'workbench'));
  cpSync(resolve(projectRoot, 'demo'), resolve(folder, 'demo'), { recursive: true });
  copyFileSync(resolve(projectRoot, 'LICENSE'), resolve(folder, 'LICENSE'));
  writeFileSync(resolve(folder, 'package.json'), publishedPackage());
}

/**
 * Builds the workbench of the browser into a folder, as it is published even where the one that asks is a test: what
 * runs tests says so in `NODE_ENV`, and would get React's slow build, and no copy for when there is no network.
 */
const buildWorkbench = async (folder: string): Promise<void> => {
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    await buildPages({
      configFile: resolve(projectRoot, 'packages', 'web', 'vite.config.ts'),
      logLevel: 'error',
      build: { outDir: folder, emptyOutDir: true },
    });
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
};

const readPackage = (path: string): Record<string, unknown> => {
  const read: unknown = JSON.parse(readFileSync(resolve(projectRoot, path), 'utf8'));
  if (typeof read !== 'object' || read === null) throw new Error(`${path} is no object`);
  return { ...read };
};

/** The version of a package as the workspaces pin it. */
const pinned = (name: string): string => {
  for (const place of ['server', 'store', 'writeup']) {
    const { dependencies, optionalDependencies } = readPackage(`packages/${place}/package.json`);
    const version: unknown = Object.entries({
      ...Object(dependencies),
      ...Object(optionalDependencies),
    }).find(([each]) => each === name)?.[1];
    if (typeof version === 'string') return version;
  }
  throw new Error(`no package of ours depends on ${name}`);
};

/** What is published is the folder of the bundle: it depends only on what could not be bundled. */
function publishedPackage(): string {
  const { dependencies: _, private: __, files: ___, ...kept } = readPackage('packages/cli/package.json');
  const beside = Object.entries(besideTheBundle).map(
    ([kind, names]) => [kind, Object.fromEntries(names.map((name) => [name, pinned(name)]))] as const,
  );
  const published = { ...kept, bin: { fettle: './fettle.js' }, ...Object.fromEntries(beside) };
  return `${JSON.stringify(published, null, 2)}\n`;
}

/** Bundles, and lets whatever starts the program from here on (`commandLineOf`) start the bundle: it is at once there. */
export async function runFromBundle(): Promise<void> {
  await bundleCommandLine();
  process.env.FETTLE_PROGRAM = bundlePath;
}

/**
 * Bundles what worker threads run into a folder of its own, and lets programs that run from their sources start it
 * there (`threadPool`): a thread that reads TypeScript takes a second to begin.
 * @returns takes the folder away
 */
export async function runThreadsFromBundle(): Promise<() => void> {
  // Where packages are found that are not bundled.
  const place = resolve(projectRoot, 'node_modules', '.cache');
  mkdirSync(place, { recursive: true });
  const folder = mkdtempSync(resolve(place, 'threads-'));
  await bundle(threadFiles, folder);
  process.env.FETTLE_THREADS = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}

if (isMain(import.meta.url)) {
  await bundleCommandLine();
  const files = readdirSync(dirname(bundlePath), { recursive: true, withFileTypes: true });
  const bytes = files
    .filter((file) => file.isFile() && file.name.endsWith('.js'))
    .reduce((sum, file) => sum + statSync(resolve(file.parentPath, file.name)).size, 0);
  console.log(`${dirname(bundlePath)}: ${Math.round(bytes / 1024)} KiB`);
}
