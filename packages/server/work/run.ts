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

/** No more than this is kept of one piece of work, characters: its search is near its end, or has run wild. */
const MOST_CHECKPOINT_CHARACTERS = 16_000_000;

/** Keeps checkpoints one behind the other; where one cannot be written, the run goes on without. */
const checkpointKeeper = ({ id, store }: RunParts, before: readonly unknown[]) => {
  let kept: Promise<void> = Promise.resolve();
  let characters = JSON.stringify(before).length;
  return (piece: unknown): void => {
    characters += JSON.stringify(piece).length;
    if (characters > MOST_CHECKPOINT_CHARACTERS) return;
    // Where one is lost, those behind it are of no use, and a restart goes on from those before.
    kept = kept.then(() => store.work.checkpoint(id, piece)).catch(() => undefined);
  };
};

const compute = async (work: Work, parts: RunParts, signal: AbortSignal): Promise<Ending> => {
  const { store, computation, onProgress } = parts;
  const revision = await store.jobs.revision(work.job, work.revision);
  if (revision === undefined) return failed(`Job ${work.job} has no revision ${work.revision}.`);
  const onNews = (news: WorkNews): void => {
    if (signal.aborted) return;
    if ('progress' in news) onProgress(news.progress);
    else keep(news.checkpoint);
  };
  const { kind, request } = work;
  const checkpoints = await store.work.checkpoints(work.id);
  const keep = checkpointKeeper(parts, checkpoints);
  signal.throwIfAborted();
  const outcome = await computation.work(
    { kind, request, document: revision.document, checkpoints },
    { signal, onNews },
  );
  if (outcome.ok) return { state: 'done', result: outcome.result };
  return failed(`The document does not read: ${outcome.problems[0]?.says ?? 'it has problems'}`);
};

/** Takes up a piece of work that waits, and computes it on a thread of its own. */
export const startRun = (parts: RunParts): Run => {
  const stopper = new AbortController();
  const run = async (): Promise<Ending | undefined> => {
    try {
      if (!(await parts.store.work.start(parts.id))) return undefined;
      const work = await parts.store.work.find(parts.id);
      if (work === undefined || stopper.signal.aborted) return undefined;
      return await compute(work, parts, stopper.signal);
    } catch (error) {
      if (stopper.signal.aborted) return undefined;
      const what = error instanceof Error ? error.message : String(error);
      return failed(`The computation broke off: ${what}.`);
    }
  };
  return { ended: run(), stop: () => stopper.abort() };
};
