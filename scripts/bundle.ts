import { copyFileSync, cpSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { build } from 'esbuild';
import { isMain, projectRoot } from './sources.ts';

/** Where the command line's one file is laid, with the demo jobs in a folder beside it. */
export const bundlePath = resolve(projectRoot, 'packages', 'cli', 'dist', 'fettle.js');

/**
 * Bundles the command line with all that it imports into one file that needs Node and nothing else. Packages
 * in the older module form ask for Node's modules with `require`, which the first lines give them.
 */
export async function bundleCommandLine(): Promise<void> {
  rmSync(dirname(bundlePath), { recursive: true, force: true });
  await build({
    entryPoints: [resolve(projectRoot, 'packages', 'cli', 'main.ts')],
    outfile: bundlePath,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    legalComments: 'linked',
    logLevel: 'warning',
    banner: {
      js: "import { createRequire } from 'node:module';\nconst require = createRequire(import.meta.url);",
    },
  });
  const folder = dirname(bundlePath);
  cpSync(resolve(projectRoot, 'demo'), resolve(folder, 'demo'), { recursive: true });
  copyFileSync(resolve(projectRoot, 'LICENSE'), resolve(folder, 'LICENSE'));
  writeFileSync(resolve(folder, 'package.json'), publishedPackage());
}

/** What is published is the folder of the bundle: everything is in its one file, so it depends on nothing. */
function publishedPackage(): string {
  const source: unknown = JSON.parse(
    readFileSync(resolve(projectRoot, 'packages', 'cli', 'package.json'), 'utf8'),
  );
  if (typeof source !== 'object' || source === null)
    throw new Error('packages/cli/package.json is no object');
  const { dependencies: _, private: __, files: ___, ...kept } = source as Record<string, unknown>;
  return `${JSON.stringify({ ...kept, bin: { fettle: './fettle.js' } }, null, 2)}\n`;
}

if (isMain(import.meta.url)) {
  await bundleCommandLine();
  console.log(`${bundlePath}: ${Math.round(statSync(bundlePath).size / 1024)} KiB`);
}
