import type { Piscina } from 'piscina';
import type { Task, TaskResults } from './tasks.ts';
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

/** Quick threads, and what they are held to. */
export interface QuickThreads {
  readonly pool: Piscina;
  readonly mostMs: number;
  /** Tasks at once, waiting ones among them. */
  readonly mostTasks: number;
  tasks: number;
}

/** Runs a task of the quick threads, which must end in time. */
export const quickly = async <Name extends Exclude<Task['task'], 'work'>>(
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

/** Threads for tasks that must end in time. */
export const quickThreads = (of: {
  readonly least: number;
  readonly most: number;
  /** A task that takes longer is given up, ms. */
  readonly mostMs: number;
  /** Tasks that may wait beside those that run. */
  readonly queue: number;
  readonly worker?: URL;
}): QuickThreads => {
  const { queue, mostMs, ...pool } = of;
  return { pool: threads({ ...pool, yields: 0 }), mostMs, mostTasks: of.most + queue, tasks: 0 };
};
