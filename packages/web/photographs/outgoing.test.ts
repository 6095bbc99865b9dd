import { describe, expect, test } from 'vitest';
import type { WaitingPicture } from './keptPictures.ts';
import { Outgoing, type OutgoingPicture } from './outgoing.ts';

const picture = (id: string): WaitingPicture => ({ id, job: 1, name: `${id}.jpg`, picture: new Blob([id]) });

/** Records that can be away, and a browser that keeps what is on its way. */
const bench = (kept: readonly WaitingPicture[] = []) => {
  const shelf = new Map(kept.map((one) => [one.id, one]));
  const seen = {
    shelf,
    sent: [] as string[],
    tried: [] as string[],
    shown: [] as readonly OutgoingPicture[],
    isAway: false,
    most: 0,
  };
  let atOnce = 0;
  const outgoing = new Outgoing({
    keeper: {
      keep: async (one) => void shelf.set(one.id, one),
      of: async () => [...shelf.values()],
      forget: async (id) => void shelf.delete(id),
    },
    isRefusal: (error) => error instanceof Error && error.message.startsWith('no picture'),
    send: async ({ id, name }) => {
      atOnce += 1;
      seen.most = Math.max(seen.most, atOnce);
      await Promise.resolve();
      atOnce -= 1;
      if (seen.isAway) throw new Error('The server cannot be reached.');
      seen.tried.push(id);
      if (name.endsWith('.txt')) throw new Error('no picture: it is text.');
      if (seen.sent.includes(id.split(' ')[0] ?? '')) return { thereAlready: true };
      seen.sent.push(id);
      return { thereAlready: false };
    },
    show: (pictures) => {
      seen.shown = pictures;
    },
  });
  return { outgoing, seen };
};

describe('photographs on their way into the records', () => {
  test('go one after the other, and are kept here no longer than that', async () => {
    const { outgoing, seen } = bench();
    await outgoing.add([picture('gap'), picture('basket')]);
    expect(seen).toMatchObject({ sent: ['gap', 'basket'], shown: [], most: 1 });
    expect(seen.shelf.size).toBe(0);
  });

  test('stay with what went wrong where they fail, the others go on, and a new try sends them', async () => {
    const { outgoing, seen } = bench();
    seen.isAway = true;
    await outgoing.add([picture('gap')]);
    expect(seen.shown).toMatchObject([
      { id: 'gap', way: { is: 'failed', says: 'The server cannot be reached.' } },
    ]);
    expect([...seen.shelf.keys()]).toEqual(['gap']);
    seen.isAway = false;
    await outgoing.add([picture('basket')]);
    expect(seen.sent).toEqual(['basket']);
    await outgoing.again('gap');
    expect(seen.sent).toEqual(['basket', 'gap']);
    expect(seen.shown).toEqual([]);
  });

  test('are taken up again by the next page, once each', async () => {
    const { outgoing, seen } = bench([picture('gap')]);
    await Promise.all([outgoing.takeUp(1), outgoing.takeUp(1)]);
    expect(seen.sent).toEqual(['gap']);
  });

  test('are told where the job has the same one already, and are no longer kept', async () => {
    const { outgoing, seen } = bench();
    await outgoing.add([picture('gap'), picture('gap again')]);
    expect(seen.shown).toMatchObject([{ id: 'gap again', way: { is: 'there' } }]);
    expect(seen.shelf.size).toBe(0);
    await outgoing.drop('gap again');
    expect(seen.shown).toEqual([]);
  });

  test('that were refused are shown by the next page and not sent again, unless somebody asks', async () => {
    const text = { ...picture('notes'), name: 'notes.txt' };
    const first = bench();
    await first.outgoing.add([text]);
    const next = bench([...first.seen.shelf.values()]);
    await next.outgoing.takeUp(1);
    expect(next.seen.tried).toEqual([]);
    expect(next.seen.shown).toMatchObject([
      { id: 'notes', way: { is: 'failed', says: 'no picture: it is text.' } },
    ]);
    await next.outgoing.again('notes');
    expect(next.seen.tried).toEqual(['notes']);
  });

  test('are given up only when asked to', async () => {
    const { outgoing, seen } = bench();
    seen.isAway = true;
    await outgoing.add([picture('gap')]);
    await outgoing.drop('gap');
    expect([seen.shown, seen.shelf.size]).toEqual([[], 0]);
  });
});
