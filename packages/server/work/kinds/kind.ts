import type { Outcome } from '@fettle/workflows/assessDocument.ts';
import type { z } from 'zod';

/** One run of long work, in a thread of its own. */
export interface WorkRun {
  readonly document: unknown;
  /** As the kind's `requestSchema` has read it. */
  readonly request: unknown;
  /** What `onCheckpoint` gave in runs that died, oldest first; as it was kept, so anything may be in it. */
  readonly checkpoints: readonly unknown[];
  /** To be called every few milliseconds of computing; returns when nobody waits for an answer of the server. */
  readonly onStep: () => void;
  readonly onProgress: (assessed: number, planned: number) => void;
  /**
   * May be called as often as there is something to keep; `take` is called only when it is wanted, and gives what
   * came since it was called last.
   */
  readonly onCheckpoint: (take: () => unknown) => void;
}

/** A kind of long work: what may be asked, what comes out, and how it is done. */
export interface WorkKind {
  /** Stable; stands in the records. */
  readonly kind: string;
  /** Its path under a job, and what it is called in the API's description. */
  readonly path: string;
  readonly says: string;
  readonly requestSchema: z.ZodObject;
  /** Name of its result among the results' schemas. */
  readonly result: string;
  /** Whether a result that was kept is what a new run would give: it is of today's models. */
  isCurrent(result: unknown): boolean;
  run(run: WorkRun): Outcome<unknown>;
}
