import type { JobDocument } from '@fettle/job/schema/job.ts';
import { parseText } from '@fettle/job/text/parse.ts';
import { writeJob } from '@fettle/job/write.ts';
import { stringify } from 'yaml';

/** A job document as YAML that reads as the same document. */
export function jobText(document: JobDocument): string {
  return exact(document, writeJob(document));
}

/** The body of a book as YAML that reads as the same. */
export function bookText(body: unknown): string {
  return exact(body, stringify(body, { aliasDuplicateObjects: false, version: '1.2', lineWidth: 0 }));
}

/** What YAML cannot say exactly is said as JSON, which is YAML too. */
function exact(value: unknown, written: string): string {
  const again = parseText(Buffer.from(written));
  const isSame = again.problems.length === 0 && JSON.stringify(again.value) === JSON.stringify(value);
  return isSame ? written : `${JSON.stringify(value, null, 2)}\n`;
}
