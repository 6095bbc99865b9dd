import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Note } from '@fettle/job/notes.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { BadInput, type InputProblem } from '../exits.ts';
import { shownName } from '../fileReasons.ts';
import { readInput } from '../input.ts';
import { type FileHead, headOf } from './jobFile.ts';
import { templateNotes } from './templateNotes.ts';

/** A job file that reads well. */
export interface IncomingJob {
  readonly file: string;
  readonly document: JobDocument;
  readonly notes: readonly Note[];
  readonly head: FileHead | undefined;
}

/** What is to be imported, in the order named. */
export interface Incoming {
  readonly jobs: readonly IncomingJob[];
  /** Folders and archives of whole records. */
  readonly exports: readonly string[];
}

/** A file as sentences name it. */
export const namedFile = (file: string): string => (file === '-' ? 'standard input' : shownName(file));

const isExport = (path: string): boolean => path !== '-' && (isFolder(path) || isArchive(path));

const isFolder = (path: string): boolean =>
  !path.includes('\0') && (statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false);

/** An archive begins with these two letters and signs; no job file does. */
const isArchive = (path: string): boolean => {
  const begin = Buffer.alloc(4);
  try {
    if (!statSync(path).isFile()) return false;
    const descriptor = openSync(path, 'r');
    try {
      readSync(descriptor, begin, 0, begin.length, 0);
    } finally {
      closeSync(descriptor);
    }
  } catch {
    // Reading it as a job file tells why it cannot be read.
    return false;
  }
  return begin.toString('latin1') === 'PK\u0003\u0004';
};

/** What is no YAML at its first fault says nothing more at the later ones: one sentence, with file, line and column. */
const noYaml = (file: string, problems: readonly InputProblem[]): readonly InputProblem[] | undefined => {
  if (!problems.every(({ code }) => code === 'yaml-syntax')) return undefined;
  const first = problems.toSorted(
    ({ at: one }, { at: other }) =>
      (one?.line ?? 0) - (other?.line ?? 0) || (one?.column ?? 0) - (other?.column ?? 0),
  )[0];
  if (first?.at === undefined) return undefined;
  const { line, column } = first.at;
  // By a function: a name may hold what a replacement text would give a meaning.
  const says = first.says.replace(/^The file/, () => `${namedFile(file)}, line ${line}, column ${column},`);
  return [{ ...first, says }];
};

const readOne = (file: string): IncomingJob => {
  const bytes = readInput(file);
  const reading = openJob(bytes);
  if (!reading.ok) throw new BadInput(noYaml(file, reading.problems) ?? reading.problems);
  const { document } = reading;
  const notes = [...reading.notes, ...templateNotes(document)];
  return { file, document, notes, head: headOf(bytes) };
};

/**
 * Reads everything that is to be imported.
 * @throws BadInput with all problems of all files
 */
export const readIncoming = (paths: readonly string[]): Incoming => {
  const jobs: IncomingJob[] = [];
  const exports: string[] = [];
  const problems: InputProblem[] = [];
  for (const path of paths) {
    if (isExport(path)) {
      exports.push(path);
      continue;
    }
    try {
      jobs.push(readOne(path));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      problems.push(...error.problems.map((one) => ofFile(path, one, paths.length)));
    }
  }
  if (problems.length > 0) throw new BadInput(problems);
  return { jobs, exports };
};

/** Problems of reading a file that name it in their own sentence. */
const namesItsFile: ReadonlySet<string> = new Set(['file-unreadable', 'file-too-large', 'yaml-syntax']);

/** Where several files are read, each problem says whose it is. */
export const ofFile = (file: string, problem: InputProblem, files: number): InputProblem => {
  if (files < 2 || namesItsFile.has(problem.code)) return problem;
  const { at, ...rest } = problem;
  const line = at === undefined ? '' : `, line ${at.line}`;
  return { ...rest, says: `${namedFile(file)}${line}: ${problem.says}` };
};
