import type { Step, Worked } from './history.ts';

/** What windows on one job tell each other. */
export interface WindowNews {
  readonly revision: number;
  readonly base: Worked;
  readonly document: Worked;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** The other windows of this browser that have the same job open. */
export interface OtherWindows {
  tell(news: WindowNews): void;
  close(): void;
}

export const otherWindows = (number: number, onNews: (news: WindowNews) => void): OtherWindows => {
  const channel = new BroadcastChannel(`fettle-job-${number}`);
  channel.onmessage = ({ data }: MessageEvent<WindowNews>) => onNews(data);
  return { tell: (news) => channel.postMessage(news), close: () => channel.close() };
};

/** Does something while no other window does it for the same job. */
export const oneWindowAtATime = <Result>(number: number, work: () => Promise<Result>): Promise<Result> =>
  navigator.locks.request(`fettle-save-${number}`, work);
