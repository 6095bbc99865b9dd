import type { Store } from '@fettle/store/contract/store.ts';
import type { Work } from '@fettle/store/contract/work.ts';
import type { Computation } from '../computation/computation.ts';
import type { WorkNews } from '../computation/tasks.ts';
import type { Progress } from './followers.ts';

/** How a run ended, for the records. */
export type Ending = Parameters<Store['work']['end']>[1];

/** One run of one piece of work. */
export interface Run {
  /** The ending; undefined where the run was stopped and somebody else writes down why. */
  readonly ended: Promise<Ending | undefined>;
  stop(): void;
}

export interface RunParts {
  readonly id: string;
  readonly store: Store;
  readonly computation: Computation;
  readonly onProgress: (progress: Progress) => void;
}

const failed = (failure: string): Ending => ({ state: 'failed', failure });

/** A checkpoint larger than this is not kept: writing it down would cost more than the way that it saves. */
const MOST_CHECKPOINT_CHARACTERS = 8_000_000;

/** Keeps checkpoints one behind the other; where one cannot be written, the run goes on without. */
const checkpointKeeper = ({ id, store }: RunParts) => {
  let busy = false;
  return async (checkpoint: unknown): Promise<void> => {
    if (busy || JSON.stringify(checkpoint).length > MOST_CHECKPOINT_CHARACTERS) return;
    busy = true;
    try {
      await store.work.checkpoint(id, checkpoint);
    } catch {
      // The next one may be written; and if none is, a restart begins at the beginning.
    } finally {
      busy = false;
    }
  };
};

const compute = async (work: Work, parts: RunParts, signal: AbortSignal): Promise<Ending> => {
  const { store, computation, onProgress } = parts;
  const revision = await store.jobs.revision(work.job, work.revision);
  if (revision === undefined) return failed(`Job ${work.job} has no revision ${work.revision}.`);
  const keep = checkpointKeeper(parts);
  const onNews = (news: WorkNews): void => {
    if (signal.aborted) return;
    if ('progress' in news) onProgress(news.progress);
    else void keep(news.checkpoint);
  };
  const { kind, request, checkpoint } = work;
  const outcome = await computation.work(
    { kind, request, document: revision.document, ...(checkpoint === undefined ? {} : { checkpoint }) },
    { signal, onNews },
  );
  if (outcome.ok) return { state: 'done', result: outcome.result };
  return failed(`The document does not read: ${outcome.problems[0]?.says ?? 'it has problems'}`);
};

/** Takes up a piece of work that waits, and computes it on a thread of its own. */
export const startRun = (parts: RunParts): Run => {
  const stopper = new AbortController();
  const run = async (): Promise<Ending | undefined> => {
    if (!(await parts.store.work.start(parts.id))) return undefined;
    const work = await parts.store.work.find(parts.id);
    if (work === undefined || stopper.signal.aborted) return undefined;
    try {
      return await compute(work, parts, stopper.signal);
    } catch (error) {
      if (stopper.signal.aborted) return undefined;
      const what = error instanceof Error ? error.message : String(error);
      return failed(`The computation broke off: ${what}.`);
    }
  };
  return { ended: run(), stop: () => stopper.abort() };
};
