import type { FieldChange } from '@fettle/job/changes/changes.ts';
import type { Note } from '@fettle/job/notes.ts';
import { BadInput, badInput, type InputProblem } from '../exits.ts';
import { type Decision, decide, type ImportWishes } from './decide.ts';
import { type IncomingJob, namedFile, ofFile } from './incoming.ts';
import type { Records } from './records.ts';
import type { TakenInBefore } from './takenInBefore.ts';

/** What became of one job file. */
export interface ImportedFile {
  readonly file: string;
  readonly number: number;
  readonly revision: number;
  readonly how: 'taken-in' | 'there-already' | 'revised' | 'merged';
  /** The fields that changed; empty in a job that is new. */
  readonly changes: readonly FieldChange[];
  readonly notes: readonly Note[];
  /** The revision whose place the file took without having said that it began from it. */
  readonly tookPlaceOf?: number;
  /** Of a file without a number: the job that was taken in from the same document before. */
  readonly before?: {
    readonly takenInAt: string;
    readonly changedSince: boolean;
    readonly putAway: boolean;
  };
}

/** Somebody else may write between looking and writing a few times. */
const MOST_TRIES = 5;

/**
 * Refuses files of which two say that they are the same job; no records are needed for that.
 * @throws BadInput
 */
export const demandOnceEach = (jobs: readonly IncomingJob[], wishes: ImportWishes): void => {
  const problems = twice(jobs, wishes);
  if (problems.length > 0) throw new BadInput(problems);
};

const twice = (jobs: readonly IncomingJob[], { renumber }: ImportWishes): readonly InputProblem[] => {
  const first = new Map<number, string>();
  if (renumber) return [];
  return jobs.flatMap(({ file, document }) => {
    const number = document.job?.number;
    if (!number) return [];
    const before = first.get(number);
    if (before === undefined) {
      first.set(number, file);
      return [];
    }
    return [
      {
        code: 'number-twice',
        path: 'job.number',
        says: `${namedFile(file)} and ${namedFile(before)} both say that they are job ${number}.`,
        allowed: 'one file for each number in one import',
      },
    ];
  });
};

/**
 * Looks at every file before any is written.
 * @throws BadInput with what is in the way of all of them
 */
const lookFirst = async (
  records: Records,
  jobs: readonly IncomingJob[],
  wishes: ImportWishes,
): Promise<void> => {
  const problems: InputProblem[] = [];
  for (const job of jobs) {
    const decision = await decide(records, job, wishes);
    if (!decision.ok) problems.push(decision.problem);
  }
  if (problems.length > 0) throw new BadInput(problems);
};

type Sound = Extract<Decision, { readonly ok: true }>;

const toldBefore = ({ current, changedSince }: TakenInBefore): NonNullable<ImportedFile['before']> => ({
  takenInAt: current.createdAt,
  changedSince,
  putAway: current.putAwayAt !== undefined,
});

const written = async (
  records: Records,
  { file, notes }: IncomingJob,
  decision: Sound,
): Promise<ImportedFile | 'again'> => {
  const { store, by } = records;
  if (decision.how === 'same' || decision.how === 'before') {
    const { number, revision } = decision.current;
    const there = { file, number, revision, how: 'there-already', changes: [], notes } as const;
    return decision.how === 'same' ? there : { ...there, before: toldBefore(decision) };
  }
  const { document } = decision;
  if (decision.how === 'take-in') {
    const { number, revision } = await store.jobs.create({ document, by, log: { what: 'job-taken-in' } });
    return { file, number, revision, how: 'taken-in', changes: [], notes };
  }
  const { number, revision: base } = decision.current;
  const revised = await store.jobs.revise({ number, base, by, document, log: { what: 'job-revised' } });
  if (!revised.ok) return 'again';
  return {
    file,
    number,
    revision: revised.revision,
    how: decision.how === 'merge' ? 'merged' : 'revised',
    changes: decision.changes,
    notes,
    ...(decision.baseKnown ? {} : { tookPlaceOf: base }),
  };
};

const importOne = async (records: Records, job: IncomingJob, wishes: ImportWishes): Promise<ImportedFile> => {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const decision = await decide(records, job, wishes);
    if (!decision.ok) throw new BadInput([decision.problem]);
    const done = await written(records, job, decision);
    if (done !== 'again') return done;
  }
  throw badInput({
    code: 'lost-race',
    path: '',
    says: `Others change the job of ${namedFile(job.file)} again and again; nothing of it was written.`,
    allowed: 'the same command once more, when they are done',
  });
};

const own = ({ document }: IncomingJob): number => (document.job?.number ? 1 : 0);

/**
 * Takes job files into the records: all are looked at before the first is written, and each is written whole or not
 * at all.
 *
 * @param onDone hears of each file that is on the disk, also where a later one then fails
 * @throws BadInput, StoreFailure
 */
export const importJobs = async (
  records: Records,
  jobs: readonly IncomingJob[],
  how: { readonly wishes: ImportWishes; readonly onDone: (done: ImportedFile) => void },
): Promise<void> => {
  await lookFirst(records, jobs, how.wishes);
  // Those that say their number come first, so that none of the others is given it.
  for (const job of jobs.toSorted((one, other) => own(other) - own(one))) {
    try {
      how.onDone(await importOne(records, job, how.wishes));
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      throw new BadInput(error.problems.map((problem) => ofFile(job.file, problem, jobs.length)));
    }
  }
};
