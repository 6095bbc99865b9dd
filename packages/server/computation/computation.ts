import { availableParallelism } from 'node:os';
import { MessageChannel } from 'node:worker_threads';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { writeJob } from '@fettle/job/write.ts';
import type { Outcome } from '@fettle/workflows/assessDocument.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { type AssessmentResult, assessmentSchema } from '@fettle/workflows/results/assessment.ts';
import type { Piscina } from 'piscina';
import { countAnswering } from './answering.ts';
import { type QuickThreads, quickly, quickThreads } from './quickThreads.ts';
import type {
  DrawTask,
  ForecastTask,
  LongTask,
  MadeFile,
  PlainReading,
  WorkNews,
  WriteUpTask,
} from './tasks.ts';
import { textCache } from './textCache.ts';
import { threads } from './threads.ts';

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
  /** Which packing; as found where left out. */
  readonly state?: PackedState | undefined;
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
   * A forecast as text, exactly as the command prints it; kept for the next time where `key` names the revision.
   * @throws UnreadableDocument where the document has problems, or the filter nothing of a name in the pattern
   */
  forecastText(of: Omit<ForecastTask, 'task'> & { readonly key?: RevisionKey }): Promise<string>;
  /**
   * Section drawing, SVG.
   * @throws UnreadableDocument where the document has problems
   */
  draw(of: Omit<DrawTask, 'task'> & { readonly key?: RevisionKey }): Promise<string>;
  /**
   * One document of a job's write-up in one form, or all of its files in one archive.
   * @throws UnreadableDocument where the document has problems
   */
  writeUp(of: Omit<WriteUpTask, 'task'>): Promise<readonly MadeFile[]>;
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
/** The same of write-ups, with the time that they wait: one after another, a second or more each, the first on a cold
 * thread. Fewer may wait, so that none waits for nothing. */
const MOST_WRITING_MS = 60_000;
const MOST_WRITE_UPS_WAITING = 16;
/** Documents up to this size are read and written at once: handing them to a thread takes longer, bytes. */
const SMALL_DOCUMENT_BYTES = 16_384;
const CACHE_CHARACTERS = 32_000_000;

const readHere = (bytes: Uint8Array): PlainReading => {
  const reading = openJob(bytes);
  return reading.ok ? { ok: true, document: reading.document, notes: reading.notes } : reading;
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

const resultOf = <Result>(outcome: Outcome<Result>): Result => {
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

/** Gives what a cache has under a key, else makes it and keeps it. */
const keptIn =
  (cache: ReturnType<typeof textCache>) =>
  async (key: string | undefined, make: () => Promise<string>): Promise<string> => {
    const before = key === undefined ? undefined : cache.get(key);
    if (before !== undefined) return before;
    const text = await make();
    if (key !== undefined) cache.set(key, text);
    return text;
  };

/** Forecasts as text, on the quick threads. */
const forecasts =
  (quick: QuickThreads, kept: ReturnType<typeof keptIn>): Computation['forecastText'] =>
  ({ key, ...task }) => {
    const { days = '', state = 'as-found', clean = 'never' } = task;
    return kept(key && `f ${key.job} ${key.revision} ${days} ${state} ${clean}`, async () =>
      resultOf(await quickly(quick, { task: 'forecast', ...task })),
    );
  };

/** Computation on worker threads: quick tasks on one set, long work on another. */
export const startComputation = (
  of: { readonly mostQuickMs?: number; readonly quickQueue?: number } = {},
): Computation => {
  const { mostQuickMs = MOST_QUICK_MS, quickQueue = MOST_WAITING } = of;
  const cores = availableParallelism();
  const longThreads = Math.max(1, cores - 1);
  const mostQuick = Math.min(MOST_QUICK_THREADS, cores);
  const quick = quickThreads({ least: 1, most: mostQuick, mostMs: mostQuickMs, queue: quickQueue });
  const writing = quickThreads({
    least: 0,
    most: 1,
    mostMs: MOST_WRITING_MS,
    queue: MOST_WRITE_UPS_WAITING,
    worker: new URL('./writeUpWorker.ts', import.meta.url),
  });
  const long = threads({ least: 0, most: longThreads, yields: 19 });
  const counted = countAnswering();
  const kept = keptIn(textCache(CACHE_CHARACTERS));

  const assessmentText: Computation['assessmentText'] = ({ key, ...task }) =>
    kept(
      key &&
        `a ${key.job} ${key.revision} ${task.day ?? ''} ${task.units ?? 'metric'} ${task.state ?? 'as-found'}`,
      async () => resultOf(await quickly(quick, { task: 'assess', ...task })),
    );

  return {
    assess: async (document, how = {}) =>
      assessmentSchema.parse(JSON.parse(await assessmentText({ document, ...how }))),
    assessmentText,
    forecastText: forecasts(quick, kept),
    writeUp: async (task) => resultOf(await quickly(writing, { task: 'writeUp', ...task })),
    draw: ({ key, ...task }) =>
      kept(
        key && `d ${key.job} ${key.revision} ${task.theme} ${task.units} ${task.state ?? 'as-found'}`,
        async () => resultOf(await quickly(quick, { task: 'draw', ...task })),
      ),
    ...readsAndWrites(quick),
    work: longRun(long, counted.shared),
    answering: counted.begin,
    longThreads,
    async close() {
      await Promise.all([quick.pool.destroy(), writing.pool.destroy(), long.destroy()]);
    },
  };
};
