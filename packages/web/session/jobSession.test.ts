import { describe, expect, test, vi } from 'vitest';
import { Refused, Unreached } from '../client/request.ts';
import { openSession } from './jobSession.ts';
import { recordsOf, setting, start, toolsFor } from './testing/jobTools.ts';

describe('a job at work', () => {
  test('is written once after a moment of quiet, with all edits until then', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    session.edit({ says: 'feed', recipe: setting('feed', '2 g/d') });
    expect(session.state().standing.is).toBe('unsaved');
    await vi.waitFor(() => expect(session.state().standing.is).toBe('saved'), 3000);
    expect(records.revisions).toHaveLength(2);
    expect(records.newest()).toEqual({ fettle: 1, tank: { volume: '190 L', feed: '2 g/d' } });
    session.close();
  });

  test('is kept by the browser at once, and written after a start anew where the page died before', async () => {
    const records = recordsOf(start);
    const { tools, kept } = toolsFor(records);
    const died = await openSession(1, tools);
    died.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    died.close();
    expect(records.revisions).toHaveLength(1);
    expect(kept.get(1)?.document.tank).toMatchObject({ volume: '190 L' });
    const again = await openSession(1, tools);
    await vi.waitFor(() => expect(again.state().standing.is).toBe('saved'), 3000);
    expect(records.newest().tank).toMatchObject({ volume: '190 L' });
    again.undo();
    expect(again.state().document).toEqual(start);
    again.close();
  });

  test('is saved once a change is taken back while it was being refused', async () => {
    const records = recordsOf(start);
    const { tools } = toolsFor(records);
    let refuse = (): void => undefined;
    const write = (): Promise<never> =>
      new Promise((_, reject) => {
        refuse = () => reject(new Refused({ status: 422, title: '', detail: 'no volume', code: 'document' }));
      });
    const session = await openSession(1, { ...tools, records: { ...records, write } });
    session.edit({ says: 'volume', recipe: setting('volume', '40 gal') });
    const written = session.flush();
    session.undo();
    refuse();
    await written;
    await vi.waitFor(() => expect(session.state().standing.is).toBe('saved'), 3000);
    session.close();
  });

  test('is as saved as before once a change is undone before it was written', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    session.undo();
    expect(session.state().standing.is).toBe('saved');
    await session.flush();
    expect(records.revisions).toHaveLength(1);
    records.revisions.push({ fettle: 1, tank: { volume: '210 L', feed: '1.5 g/d' } });
    await session.lookForNews();
    expect(session.state().document.tank).toMatchObject({ volume: '210 L' });
    session.close();
  });

  test('waits for records that cannot be reached, and loses nothing', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    records.isReached = false;
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    await session.flush();
    expect(session.state().standing.is).toBe('unreached');
    records.isReached = true;
    await session.flush();
    expect(session.state().standing.is).toBe('saved');
    expect(records.newest().tank).toMatchObject({ volume: '190 L' });
    session.close();
  });

  test('takes in what somebody else changed meanwhile in other fields', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    records.revisions.push({ fettle: 1, tank: { volume: '180 L', feed: '3 g/d' } });
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    await session.flush();
    await vi.waitFor(() => expect(session.state().standing.is).toBe('saved'), 3000);
    expect(records.newest()).toEqual({ fettle: 1, tank: { volume: '190 L', feed: '3 g/d' } });
    session.close();
  });

  test('waits, too, where somebody was quicker and the network goes before theirs can be read', async () => {
    const records = recordsOf(start);
    const { read } = records;
    const session = await openSession(1, toolsFor(records).tools);
    records.revisions.push({ fettle: 1, tank: { volume: '180 L', feed: '3 g/d' } });
    records.read = async () => {
      throw new Unreached(undefined);
    };
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    await session.flush();
    expect(session.state().standing.is).toBe('unreached');
    records.read = read;
    await session.flush();
    await session.flush();
    expect(session.state().standing.is).toBe('saved');
    expect(records.newest()).toEqual({ fettle: 1, tank: { volume: '190 L', feed: '3 g/d' } });
    session.close();
  });

  test('asks where both changed one field, and writes what was chosen', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    records.revisions.push({ fettle: 1, tank: { volume: '200 L', feed: '1.5 g/d' } });
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    await session.flush();
    const { standing } = session.state();
    expect(standing).toMatchObject({
      is: 'conflict',
      conflicts: [{ path: 'tank.volume', base: '180 L', theirs: '200 L', yours: '190 L' }],
    });
    session.settle({ fettle: 1, tank: { volume: '190 L', feed: '1.5 g/d' } });
    await session.flush();
    expect(session.state().standing.is).toBe('saved');
    expect(records.newest().tank).toMatchObject({ volume: '190 L' });
    session.close();
  });

  test('keeps what is typed while a choice between two changes waits', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    records.revisions.push({ fettle: 1, tank: { volume: '200 L', feed: '1.5 g/d' } });
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    await session.flush();
    session.edit({ says: 'feed', recipe: setting('feed', '2 g/d') });
    session.settle({ fettle: 1, tank: { volume: '200 L', feed: '1.5 g/d' } });
    await session.flush();
    expect(records.newest().tank).toEqual({ volume: '200 L', feed: '2 g/d' });
    session.close();
  });

  test('keeps the edits that are made while the records write', async () => {
    const records = recordsOf(start);
    const write = records.write;
    const session = await openSession(1, toolsFor(records).tools);
    records.write = async (number, of) => {
      const written = await write(number, of);
      records.write = write;
      session.edit({ says: 'feed', recipe: setting('feed', '2 g/d') });
      return written;
    };
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    await session.flush();
    expect(session.state().document).toEqual({ fettle: 1, tank: { volume: '190 L', feed: '2 g/d' } });
    await session.flush();
    expect(records.newest()).toEqual(session.state().document);
    session.close();
  });

  test('going back to an earlier revision can be undone like any other step', async () => {
    const records = recordsOf(start);
    const session = await openSession(1, toolsFor(records).tools);
    session.edit({ says: 'volume', recipe: setting('volume', '190 L') });
    session.edit({
      says: 'pack',
      recipe: (draft) => {
        draft.packing = { 'basket-1': [] };
      },
    });
    await session.flush();
    const before = session.state().document;
    records.revisions.push(start);
    await session.lookForNews('go back to revision 1');
    expect(session.state().document).toEqual(start);
    session.undo();
    expect(session.state().document).toEqual(before);
    session.redo();
    expect(session.state().document).toEqual(start);
    session.close();
  });
});
