/**
 * Writes what follows from the job schema: `packages/job/job.schema.json` and `docs/job-file.md`.
 * Run as `npx tsx scripts/job-schema.ts`.
 */
import { writeFileSync } from 'node:fs';
import { jobFileDoc } from '@fettle/job/fileDoc/jobFileDoc.ts';
import { jobJsonSchema } from '@fettle/job/schema/jsonSchema.ts';

const root = new URL('../', import.meta.url);

writeFileSync(new URL('packages/job/job.schema.json', root), `${JSON.stringify(jobJsonSchema(), null, 2)}\n`);
writeFileSync(new URL('docs/job-file.md', root), jobFileDoc());
