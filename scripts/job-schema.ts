/**
 * Writes what follows from the job schema: `packages/job/job.schema.json` and `docs/job-file.md`.
 * Run as `npx tsx scripts/job-schema.ts`.
 */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { jobFileDoc } from '@fettle/job/fileDoc/jobFileDoc.ts';
import { jobJsonSchema } from '@fettle/job/schema/jsonSchema.ts';

const root = new URL('../', import.meta.url);
const schemaFile = new URL('packages/job/job.schema.json', root);

writeFileSync(schemaFile, JSON.stringify(jobJsonSchema()));
writeFileSync(new URL('docs/job-file.md', root), jobFileDoc());

const formatter = new URL('node_modules/@biomejs/biome/bin/biome', root);
const formatted = spawnSync(
  process.execPath,
  [fileURLToPath(formatter), 'format', '--write', fileURLToPath(schemaFile)],
  {
    cwd: fileURLToPath(root),
    stdio: 'inherit',
  },
);
process.exitCode = formatted.status ?? 1;
