/**
 * Writes what follows from the job schema: `packages/job/job.schema.json` and `docs/job-file.md`.
 * Run as `npx tsx scripts/job-schema.ts`.
 */
import { writeFileSync } from 'node:fs';
import { jobFileDoc } from '@fettle/job/fileDoc/jobFileDoc.ts';
import { jobJsonSchemaText } from '@fettle/job/schema/jsonSchema.ts';

writeFileSync(new URL('../packages/job/job.schema.json', import.meta.url), jobJsonSchemaText());
writeFileSync(new URL('../docs/job-file.md', import.meta.url), jobFileDoc());
