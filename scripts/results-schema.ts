/** Writes `packages/workflows/results.schema.json`. Run as `npx tsx scripts/results-schema.ts`. */
import { writeFileSync } from 'node:fs';
import { resultsJsonSchemaText } from '@fettle/workflows/results/jsonSchema.ts';

writeFileSync(new URL('../packages/workflows/results.schema.json', import.meta.url), resultsJsonSchemaText());
