import { describe, expect, it } from 'vitest';
import { type OpenFile, openFile } from './driver.ts';
import { hasSoundLog, settleJournal } from './journal.ts';

it.each(['3.51', '2.99.99', '', 'unknown'])('SQLite %j may not be trusted with a log', (version) => {
  expect(hasSoundLog(version)).toBe(false);
});

/** A file of which only the journal matters: it takes every mode, but leaves a log only where nobody else has it. */
const fakeFile = (version: string, mode: string, shared = false) => {
  const state = { mode, synchronous: '' };
  const ask = (sql: string): string => {
    const [, wanted] = /journal_mode = (\w+)/.exec(sql) ?? [];
    if (wanted !== undefined && !(shared && state.mode === 'wal')) state.mode = wanted;
    const [, synchronous] = /synchronous = (\w+)/.exec(sql) ?? [];
    if (synchronous !== undefined) state.synchronous = synchronous;
    return state.mode;
  };
  const file: OpenFile = {
    driver: 'libsql',
    version,
    exec: ask,
    scalar: ask,
    prepare: () => {
      throw new TypeError('not asked for here');
    },
    close: () => undefined,
  };
  return { file, state };
};

describe('how a file is written', () => {
  it.each([
    { version: '3.53.4', isNew: true, before: 'delete', after: 'wal', synchronous: 'full' },
    { version: '3.53.4', isNew: false, before: 'wal', after: 'wal', synchronous: 'full' },
    { version: '3.53.4', isNew: false, before: 'delete', after: 'persist', synchronous: 'extra' },
    { version: '3.45.1', isNew: true, before: 'delete', after: 'persist', synchronous: 'extra' },
    { version: '3.45.1', isNew: false, before: 'wal', after: 'persist', synchronous: 'extra' },
    { version: '3.45.1', isNew: true, before: 'wal', after: 'persist', synchronous: 'extra' },
  ])('goes from $before to $after on SQLite $version, new: $isNew', (of) => {
    const { file, state } = fakeFile(of.version, of.before);
    settleJournal(file, of.isNew);
    expect(state).toEqual({ mode: of.after, synchronous: of.synchronous });
  });

  it('is refused where another program keeps a log that an old SQLite must not write', () => {
    const { file, state } = fakeFile('3.45.1', 'wal', true);
    expect(() => settleJournal(file, false)).toThrow('Another program has the database open');
    expect(state.synchronous).toBe('');
  });

  it('asks for all that a disk can give, where a system has more than one way', () => {
    const file = openFile(':memory:', 'libsql');
    settleJournal(file, true);
    expect([file.scalar('pragma fullfsync'), file.scalar('pragma checkpoint_fullfsync')]).toEqual([1, 1]);
    file.close();
  });
});
