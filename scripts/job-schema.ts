/** Writes `packages/job/job.schema.json` from the job schema: `npx tsx scripts/job-schema.ts`. */
import { writeFileSync } from 'node:fs';
import { jobJsonSchemaText } from '@fettle/job/schema/jsonSchema.ts';

writeFileSync(new URL('../packages/job/job.schema.json', import.meta.url), jobJsonSchemaText());
