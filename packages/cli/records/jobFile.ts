import { writeJob } from '@fettle/job/write.ts';
import type { StoredRevision } from '@fettle/store/contract/jobs.ts';

/** Which revision of which job a file was written from. */
export interface FileHead {
  readonly number: number;
  readonly revision: number;
  /** Moment of that revision: numbers alone are the same in another workshop. */
  readonly at: string;
}

/** The document of a revision as a file to edit; its first line says from where it began. */
export const editableFile = (number: number, { revision, at, document }: StoredRevision): string =>
  [
    `# Fettle job ${number}, revision ${revision} of ${at}. Edit it and run fettle import on it;`,
    '# this line tells from which revision the change began, so leave it in.',
    writeJob(document),
  ].join('\n');

const head = /^\uFEFF?# Fettle job (\d{1,9}), revision (\d{1,9}) of (\d{4}-[\dT:.Z-]{6,24}?)\. /;

/** What a file's first line says; undefined where it was not written to be edited. */
export const headOf = (bytes: Uint8Array): FileHead | undefined => {
  const [, number, revision, at] = head.exec(new TextDecoder().decode(bytes.subarray(0, 200))) ?? [];
  return at === undefined ? undefined : { number: Number(number), revision: Number(revision), at };
};
