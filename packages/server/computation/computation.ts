import { availableParallelism } from 'node:os';
import { MessageChannel } from 'node:worker_threads';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { writeJob } from '@fettle/job/write.ts';
import type { Outcome } from '@fettle/workflows/assessDocument.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { type AssessmentResult, assessmentSchema } from '@fettle/workflows/results/assessment.ts';
import type { Piscina } from 'piscina';
import { countAnswering } from './answering.ts';
import type { DrawTask, LongTask, PlainReading, Task, TaskResults, WorkNews } from './tasks.ts';
import { textCache } from './textCache.ts';
import { threads } from './threads.ts';

/** Too much is asked at once, or one task took too long; asking again later may help. */
export class ComputationBusy extends Error {
  readonly code: 'busy' | 'took-too-long';

  constructor(code: ComputationBusy['code'], says: string) {
    super(says);
    this.name = 'ComputationBusy';
    this.code = code;
  }
}

/** A document that reads no more, though it is in the records: an earlier version let it in. */
export class UnreadableDocument extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super('The document does not read.');
    this.name = 'UnreadableDocument';
    this.problems = problems;
  }
}

/** Names a revision of a job, so that what was computed from it can be kept. */
export interface RevisionKey {
  readonly job: number;
  readonly revision: number;
}

/** How a document is to be assessed. */
export interface AssessHow {
  readonly day?: number | undefined;
  /** Units of the words; metric where left out. */
  readonly units?: System | undefined;
  /** Names the revision, so that the result is kept for the next time. */
  readonly key?: RevisionKey;
}

/** What is computed apart from the thread that answers requests. All methods may throw `ComputationBusy`. */
export interface Computation {
  /** @throws UnreadableDocument where the document has problems */
  assess(document: unknown, of?: AssessHow): Promise<AssessmentResult>;
  /**
   * The same as text, in metric units exactly as the command prints it; kept for the next time where `key` names the revision.
   * @throws UnreadableDocument where the document has problems
   */
  assessmentText(of: { readonly document: unknown } & AssessHow): Promise<string>;
  /**
   * Section drawing, SVG.
   * @throws UnreadableDocument where the document has problems
   */
  draw(of: Omit<DrawTask, 'task'> & { readonly key?: RevisionKey }): Promise<string>;
  /** Reads the bytes of a job file. */
  read(bytes: Uint8Array): Promise<PlainReading>;
  /** Writes a document as YAML. */
  write(document: JobDocument): Promise<string>;
  /** Long work, on threads of its own; ends with the thread where `signal` says so. */
  work(
    of: Omit<LongTask, 'task' | 'port' | 'answering'>,
    how: { readonly signal: AbortSignal; readonly onNews: (news: WorkNews) => void },
  ): Promise<Outcome<unknown>>;
  /** A request is being answered until what this gives is called: long work stands back for it. */
  answering(): () => void;
  /** How many pieces of long work run at once. */
  readonly longThreads: number;
  close(): Promise<void>;
}

/** A task of the quick threads that takes longer is given up, ms. */
const MOST_QUICK_MS = 10_000;
const MOST_QUICK_THREADS = 2;
const MOST_WAITING = 64;
/** Documents up to this size are read and written at once: handing them to a thread takes longer, bytes. */
const SMALL_DOCUMENT_BYTES = 16_384;
const CACHE_CHARACTERS = 32_000_000;

const readHere = (bytes: Uint8Array): PlainReading => {
  const reading = openJob(bytes);
  return reading.ok ? { ok: true, document: reading.document, notes: reading.notes } : reading;
};

/** Quick threads, and what they are held to. */
interface QuickThreads {
  readonly pool: Piscina;
  readonly mostMs: number;
  /** Tasks at once, waiting ones among them. */
  readonly mostTasks: number;
  tasks: number;
}

/** Runs a task of the quick threads, which must end in time. */
const quickly = async <Name extends Exclude<Task['task'], 'work'>>(
  quick: QuickThreads,
  task: Extract<Task, { task: Name }>,
): Promise<TaskResults[Name]> => {
  const { pool, mostMs, mostTasks } = quick;
  // Counted here: the pool lets tasks that can be given up past its own limit.
  if (quick.tasks >= mostTasks)
    throw new ComputationBusy('busy', 'More is being asked than can be computed at once.');
  quick.tasks += 1;
  const signal = AbortSignal.timeout(mostMs);
  try {
    return await pool.run(task, { signal });
  } catch (error) {
    if (signal.aborted)
      throw new ComputationBusy(
        'took-too-long',
        `This took longer than ${mostMs / 1000} s and was given up.`,
      );
    throw error;
  } finally {
    quick.tasks -= 1;
  }
};

/** Reads and writes small documents at once, others on a thread. */
const readsAndWrites = (quick: QuickThreads): Pick<Computation, 'read' | 'write'> => ({
  read: async (bytes) =>
    bytes.length <= SMALL_DOCUMENT_BYTES ? readHere(bytes) : quickly(quick, { task: 'read', bytes }),
  write: async (document) =>
    JSON.stringify(document).length <= SMALL_DOCUMENT_BYTES
      ? writeJob(document)
      : quickly(quick, { task: 'write', document }),
});

const textOf = (outcome: Outcome<string>): string => {
  if (!outcome.ok) throw new UnreadableDocument(outcome.problems);
  return outcome.result;
};

const longRun =
  (pool: Piscina, answering: SharedArrayBuffer): Computation['work'] =>
  async (of, { signal, onNews }) => {
    const { port1, port2 } = new MessageChannel();
    port1.on('message', onNews);
    try {
      const task: LongTask = { ...of, task: 'work', answering, port: port2 };
      return await pool.run(task, { signal, transferList: [port2] });
    } finally {
      port1.close();
    }
  };

/** Computation on worker threads: quick tasks on one set, long work on another. */
export const startComputation = (
  of: { readonly mostQuickMs?: number; readonly quickQueue?: number } = {},
): Computation => {
  const { mostQuickMs = MOST_QUICK_MS, quickQueue = MOST_WAITING } = of;
  const cores = availableParallelism();
  const longThreads = Math.max(1, cores - 1);
  const quickThreads = Math.min(MOST_QUICK_THREADS, cores);
  const quick: QuickThreads = {
    pool: threads({ least: 1, most: quickThreads, yields: 0 }),
    mostMs: mostQuickMs,
    mostTasks: quickThreads + quickQueue,
    tasks: 0,
  };
  const long = threads({ least: 0, most: longThreads, yields: 19 });
  const counted = countAnswering();
  const cache = textCache(CACHE_CHARACTERS);

  const kept = async (key: string | undefined, make: () => Promise<string>): Promise<string> => {
    const before = key === undefined ? undefined : cache.get(key);
    if (before !== undefined) return before;
    const text = await make();
    if (key !== undefined) cache.set(key, text);
    return text;
  };

  const assessmentText: Computation['assessmentText'] = ({ key, ...task }) =>
    kept(key && `a ${key.job} ${key.revision} ${task.day ?? ''} ${task.units ?? 'metric'}`, async () =>
      textOf(await quickly(quick, { task: 'assess', ...task })),
    );

  return {
    assess: async (document, how = {}) =>
      assessmentSchema.parse(JSON.parse(await assessmentText({ document, ...how }))),
    assessmentText,
    draw: ({ key, ...task }) =>
      kept(key && `d ${key.job} ${key.revision} ${task.theme} ${task.units}`, async () =>
        textOf(await quickly(quick, { task: 'draw', ...task })),
      ),
    ...readsAndWrites(quick),
    work: longRun(long, counted.shared),
    answering: counted.begin,
    longThreads,
    async close() {
      await Promise.all([quick.pool.destroy(), long.destroy()]);
    },
  };
};
