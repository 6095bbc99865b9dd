/**
 * Writes what follows from the schemas of a job and of the workshop's books: their JSON Schemas, `docs/job-file.md`
 * and `docs/books.md`. Run as `npx tsx scripts/job-schema.ts`.
 */
import { writeFileSync } from 'node:fs';
import { booksDoc } from '@fettle/job/fileDoc/booksDoc.ts';
import { jobFileDoc } from '@fettle/job/fileDoc/jobFileDoc.ts';
import { jsonSchemas } from '@fettle/job/schema/jsonSchemas.ts';

const root = new URL('../', import.meta.url);

for (const [path, schema] of Object.entries(jsonSchemas())) {
  writeFileSync(new URL(`packages/job/${path}`, root), `${JSON.stringify(schema, null, 2)}\n`);
}
writeFileSync(new URL('docs/job-file.md', root), jobFileDoc());
writeFileSync(new URL('docs/books.md', root), booksDoc());
