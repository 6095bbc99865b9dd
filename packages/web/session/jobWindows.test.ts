import { describe, expect, test } from 'vitest';
import { type JobSession, openSession, type SessionTools } from './jobSession.ts';
import { recordsOf, setting, start, toolsFor } from './testing/jobTools.ts';
import type { WindowNews } from './windows.ts';

describe('a job at work in two windows', () => {
  /** A session in each of two windows of one browser, the second opened when it is asked for. */
  const twoWindows = async () => {
    const { tools } = toolsFor(recordsOf(start));
    const listeners: ((news: WindowNews) => void)[] = [];
    const told: WindowNews[] = [];
    const channel = { isOpen: true };
    const linked: SessionTools = {
      ...tools,
      windows: (_, onNews) => {
        listeners.push(onNews);
        const tell = (news: WindowNews): void => {
          told.push(news);
          // As a channel between windows does: nothing that is told is the same object there.
          for (const listen of listeners)
            if (listen !== onNews && channel.isOpen) listen(structuredClone(news));
        };
        return { tell, close: () => undefined };
      },
    };
    return { told, channel, first: await openSession(1, linked), second: () => openSession(1, linked) };
  };
  const change = (session: JobSession, volume: string): void =>
    session.edit({ says: 'volume', recipe: setting('volume', volume) });
  const rest = (): Promise<void> => new Promise((settle) => setTimeout(settle, 450));

  test('a second window stands where the first does, and can undo what was done there', async () => {
    const { first, second: open } = await twoWindows();
    const second = await open();
    change(first, '190 L');
    await rest();
    change(first, '200 L');
    await rest();
    expect(second.state().document).toEqual(first.state().document);
    second.undo();
    await rest();
    expect(first.state().document.tank).toMatchObject({ volume: '190 L' });
    first.redo();
    await rest();
    expect(second.state().document.tank).toMatchObject({ volume: '200 L' });
    expect(second.state().past).toHaveLength(2);
    first.close();
    second.close();
  });

  test('windows tell each other new steps alone, not all that can be undone', async () => {
    const { first, told } = await twoWindows();
    for (const litres of [190, 191, 192, 193]) {
      change(first, `${litres} L`);
      await rest();
    }
    expect(told.map(({ steps }) => steps.length).reduce((sum, count) => sum + count)).toBe(4);
    first.close();
  });

  test('what was changed here and not told yet is not lost when another window tells of itself', async () => {
    const { first, second: open } = await twoWindows();
    const second = await open();
    change(second, '190 L');
    second.edit({ says: 'feed', recipe: setting('feed', '2 g/d') });
    change(first, '200 L');
    await rest();
    const both = { volume: '200 L', feed: '2 g/d' };
    expect([first, second].map((each) => each.state().document.tank)).toEqual([both, both]);
    first.undo();
    await rest();
    expect(second.state().document.tank).toEqual({ volume: '200 L', feed: '1.5 g/d' });
    second.undo();
    expect(second.state().document.tank).toEqual({ volume: '190 L', feed: '1.5 g/d' });
    first.close();
    second.close();
  });

  test('what was undone here and not told yet stays undone when another window tells of itself', async () => {
    const { first, second: open } = await twoWindows();
    const second = await open();
    change(first, '190 L');
    await rest();
    second.edit({ says: 'feed', recipe: setting('feed', '2 g/d') });
    second.undo();
    second.undo();
    first.edit({ says: 'plants', recipe: setting('plants', 'many') });
    await rest();
    const both = { ...Object(start.tank), plants: 'many' };
    expect([first, second].map((each) => each.state().document.tank)).toEqual([both, both]);
    expect(second.state().past.at(-1)?.says).toBe('undo volume');
    first.close();
    second.close();
  });

  test('a window that missed steps finds them where they are kept', async () => {
    const { first, channel, second: open } = await twoWindows();
    const second = await open();
    channel.isOpen = false;
    change(first, '190 L');
    await rest();
    change(first, '191 L');
    await rest();
    channel.isOpen = true;
    change(first, '192 L');
    await rest();
    expect(second.state().past).toHaveLength(3);
    second.undo();
    second.undo();
    expect(second.state().document.tank).toMatchObject({ volume: '190 L' });
    first.close();
    second.close();
  });

  test('what is done here while missed steps are being looked up is not lost', async () => {
    const { first, channel, second: open } = await twoWindows();
    const second = await open();
    channel.isOpen = false;
    change(first, '190 L');
    await rest();
    channel.isOpen = true;
    change(first, '191 L');
    second.edit({ says: 'feed', recipe: setting('feed', '2 g/d') });
    await rest();
    const both = { volume: '191 L', feed: '2 g/d' };
    expect([first, second].map((each) => each.state().document.tank)).toEqual([both, both]);
    first.close();
    second.close();
  });
});
