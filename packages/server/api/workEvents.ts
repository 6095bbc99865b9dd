import type { Context } from 'hono';
import { type SSEStreamingApi, streamSSE } from 'hono/streaming';
import type { Environment, Services } from '../services.ts';
import { newOutbox, type Outbox } from './outbox.ts';

/** A line is sent at least this often, so that whoever stands between does not take the stream for dead, ms. */
const HEARTBEAT_MS = 15_000;

/** Sends letters as events until the last one. */
const send = async (stream: SSEStreamingApi, outbox: Outbox): Promise<void> => {
  for (let id = 1; ; id++) {
    const letter = await outbox.next(HEARTBEAT_MS);
    switch (letter.kind) {
      case 'left':
        return;
      case 'silence':
        await stream.write(': still here\n\n');
        break;
      case 'progress':
        await stream.writeSSE({ event: 'progress', data: JSON.stringify(letter.progress), id: String(id) });
        break;
      case 'end':
        await stream.writeSSE({
          event: 'end',
          data: JSON.stringify({ state: letter.state }),
          id: String(id),
        });
        return;
    }
  }
};

const tell = async (stream: SSEStreamingApi, { works, store }: Services, id: string): Promise<void> => {
  const outbox = newOutbox();
  const stop = works.follow(id, outbox);
  stream.onAbort(() => outbox.leave());
  try {
    // It may have ended before anybody followed: then nothing more is told, and its record says so.
    const work = await store.work.find(id);
    if (work === undefined) outbox.leave();
    else if (work.state !== 'waiting' && work.state !== 'running') outbox.end(work.state);
    await send(stream, outbox);
  } finally {
    stop();
  }
};

/** Server-sent events of one piece of work, until it ends. */
export const streamWork = (context: Context<Environment>, services: Services, id: string): Response => {
  context.header('X-Accel-Buffering', 'no');
  return streamSSE(context, (stream) => tell(stream, services, id));
};
