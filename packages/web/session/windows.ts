import type { Worked } from './history.ts';
import type { Line, OnTheLine } from './stepLine.ts';

/** What windows on one job tell each other: where the job stands, and what of its steps is new. */
export interface WindowNews extends OnTheLine {
  /** How often the windows have agreed by now: what is new follows from the time before. */
  readonly turn: number;
  readonly revision: number;
  readonly base: Worked;
  readonly document: Worked;
  /** Place on the line of steps from which on `steps` replaces what was there. */
  readonly from: number;
  readonly steps: Line;
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
