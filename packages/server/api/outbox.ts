import type { WorkState } from '@fettle/store/contract/work.ts';
import type { Follower, Progress } from '../work/followers.ts';

/** What is to be sent next. */
export type Letter =
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'end'; readonly state: WorkState }
  /** Nothing was told for so long. */
  | { readonly kind: 'silence' }
  | { readonly kind: 'left' };

/** Follows work for somebody who may be slow: of the progress only the newest waits to be sent. */
export interface Outbox extends Follower {
  /** The next letter, when there is one. */
  next(mostMs: number): Promise<Letter>;
}

export const newOutbox = (): Outbox => {
  let progress: Progress | undefined;
  let state: WorkState | undefined;
  let left = false;
  let wake = (): void => undefined;

  const take = (): Letter | undefined => {
    if (left) return { kind: 'left' };
    if (progress !== undefined) {
      const letter = { kind: 'progress', progress } as const;
      progress = undefined;
      return letter;
    }
    return state === undefined ? undefined : { kind: 'end', state };
  };

  return {
    progress(reached) {
      progress = reached;
      wake();
    },
    end(reached) {
      state = reached;
      wake();
    },
    leave() {
      left = true;
      wake();
    },
    async next(mostMs) {
      const ready = take();
      if (ready !== undefined) return ready;
      await new Promise<void>((resolve) => {
        const alarm = setTimeout(resolve, mostMs);
        wake = () => {
          clearTimeout(alarm);
          resolve();
        };
      });
      return take() ?? { kind: 'silence' };
    },
  };
};
