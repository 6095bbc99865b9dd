import type { WorkState } from '@fettle/store/contract/work.ts';

/** How far a run is; figures of the kind itself, such as candidates assessed of those planned. */
export interface Progress {
  readonly assessed: number;
  readonly planned: number;
}

/** Told of one piece of work as it goes on; `end` or `leave` is the last call. */
export interface Follower {
  progress(progress: Progress): void;
  end(state: WorkState): void;
  /** The server stops: nothing more is told. */
  leave(): void;
}

/** Where running work is, and who wants to know. */
export interface Followers {
  reached(id: string): Progress | undefined;
  /** Tells at once where running work is, and from then on; the answer stops the telling. */
  follow(id: string, follower: Follower): () => void;
  tellProgress(id: string, progress: Progress): void;
  tellEnd(id: string, state: WorkState): void;
  sendAway(): void;
}

export const newFollowers = (): Followers => {
  const reached = new Map<string, Progress>();
  const followers = new Map<string, Set<Follower>>();
  const each = (id: string, tell: (follower: Follower) => void): void => {
    for (const follower of [...(followers.get(id) ?? [])]) tell(follower);
  };
  return {
    reached: (id) => reached.get(id),
    follow(id, follower) {
      const among = followers.get(id) ?? new Set();
      followers.set(id, among.add(follower));
      const progress = reached.get(id);
      if (progress !== undefined) follower.progress(progress);
      return () => {
        among.delete(follower);
        if (among.size === 0 && followers.get(id) === among) followers.delete(id);
      };
    },
    tellProgress(id, progress) {
      reached.set(id, progress);
      each(id, (follower) => follower.progress(progress));
    },
    tellEnd(id, state) {
      reached.delete(id);
      each(id, (follower) => follower.end(state));
      followers.delete(id);
    },
    sendAway() {
      for (const id of [...followers.keys()]) each(id, (follower) => follower.leave());
      followers.clear();
    },
  };
};
