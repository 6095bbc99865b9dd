import { vi } from 'vitest';
import { type JobSession, openSession, type SessionTools } from '../jobSession.ts';
import type { WindowNews } from '../windows.ts';
import { recordsOf, start, toolsFor } from './jobTools.ts';

const later = (ms: number): Promise<void> => new Promise((settle) => setTimeout(settle, ms));

/** One thing after another, as a lock between windows has it. */
const oneAfterAnother = () => {
  let last: Promise<unknown> = Promise.resolve();
  return <Result>(_number: number, work: () => Promise<Result>): Promise<Result> => {
    const next = last.then(work, work);
    last = next.catch(() => undefined);
    return next;
  };
};

/** Waits of some lengths in turn. */
const waiting = (delays: readonly number[]): (() => number) => {
  let count = 0;
  return () => delays[count++ % delays.length] ?? 0;
};

/** Records that take their time to answer. */
const slow = (records: ReturnType<typeof recordsOf>, wait: () => number): SessionTools['records'] => ({
  read: async (number) => {
    await later(wait());
    const found = await records.read();
    await later(wait());
    return { number, ...found };
  },
  write: async (number, of) => {
    await later(wait());
    const written = await records.write(number, of);
    await later(wait());
    return written;
  },
});

/** A browser's database: one transaction after another, each takes its time, and nothing comes out as the same object. */
const slowKeeper = (keeper: SessionTools['keeper'], wait: () => number): SessionTools['keeper'] => {
  const inTurn = oneAfterAnother();
  const slowly = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    const result = await inTurn(1, async () => {
      await later(wait());
      return work();
    });
    await later(wait());
    return result;
  };
  return {
    find: (number) => slowly(async () => structuredClone(await keeper.find(number))),
    agree: (known, following) =>
      slowly(() => keeper.agree(known, (kept) => following(kept === known ? known : structuredClone(kept)))),
  };
};

/** News between windows: each hears another's in the order in which they were told, and each when it comes to it. */
const channelOf = (wait: () => number): SessionTools['windows'] => {
  const listeners = new Set<(news: WindowNews) => void>();
  return (_, onNews) => {
    listeners.add(onNews);
    const busyUntil = new Map<unknown, number>();
    const tell = (news: WindowNews): void => {
      for (const listen of listeners) {
        if (listen === onNews) continue;
        const at = Math.max(busyUntil.get(listen) ?? 0, Date.now() + wait());
        busyUntil.set(listen, at);
        setTimeout(() => listeners.has(listen) && listen(structuredClone(news)), at - Date.now());
      }
    };
    return { tell, close: () => listeners.delete(onNews) };
  };
};

/** Windows of one browser that have one job open, on a clock that a test moves. Waits are in ms, taken in turn. */
export async function simulatedWindows(count: number, delays: readonly number[]) {
  const wait = waiting(delays);
  const records = recordsOf(start);
  const { tools, kept } = toolsFor(records);
  const simulated: SessionTools = {
    records: slow(records, wait),
    keeper: slowKeeper(tools.keeper, wait),
    windows: channelOf(wait),
    alone: oneAfterAnother(),
  };
  const open = async (): Promise<JobSession> => {
    const opening = openSession(1, simulated);
    await vi.advanceTimersByTimeAsync(8 * Math.max(...delays) + 50);
    return opening;
  };
  const sessions: JobSession[] = [];
  for (let each = 0; each < count; each++) sessions.push(await open());
  return { sessions, records, kept, open };
}
