import { describe, expect, test } from 'vitest';
import { edited, historyOf } from '../../session/history.ts';
import { bringingBack, keepLeft, takeLeft } from './leftBehind.ts';

const job = (title: string, more: object = {}) => ({ fettle: 1, job: { title }, ...more });

const place = () => {
  const kept = new Map<string, string>();
  const shelf = {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
    removeItem: (name: string) => void kept.delete(name),
  };
  return () => shelf;
};

describe('what was typed in the moment in which the page was left', () => {
  const left = { kept: job('Drum, s'), document: job('Drum, slow') };

  test('is brought back once', () => {
    const storage = place();
    keepLeft(storage, 7, left);
    expect(takeLeft(storage, 8)).toBeUndefined();
    expect(takeLeft(storage, 7)).toEqual(left);
    expect(takeLeft(storage, 7)).toBeUndefined();
  });

  test('hinders nobody in a browser that keeps nothing of the page', () => {
    const blocked = (): never => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    };
    keepLeft(blocked, 7, left);
    expect(takeLeft(blocked, 7)).toBeUndefined();
  });

  test('comes over what this browser had kept, and leaves the rest of that alone', () => {
    const now = job('Drum, s', { tank: { pH: 7 } });
    const edit = bringingBack(left, now);
    if (edit === undefined) throw new Error('there is something to bring back');
    expect(edited(historyOf(now), edit).document).toEqual(job('Drum, slow', { tank: { pH: 7 } }));
  });

  test('is nothing where it is there already', () => {
    expect(bringingBack(left, left.document)).toBeUndefined();
  });

  test('does not come over what was done in that field since, and brings back nothing that was undone', () => {
    expect(bringingBack(left, job('Else'))).toBeUndefined();
    expect(bringingBack(left, job('Drum'))).toBeUndefined();
    const now = job('Drum', { tank: { pH: 7 } });
    const typed = { kept: job('Drum, s'), document: job('Drum, s', { notes: 'hums' }) };
    const edit = bringingBack(typed, now);
    if (edit === undefined) throw new Error('there is something to bring back');
    expect(edited(historyOf(now), edit).document).toEqual({ ...now, notes: 'hums' });
  });

  test('comes back though the records went on meanwhile in other fields', () => {
    const edit = bringingBack(left, job('Drum, s', { owner: 'A' }));
    expect(edit && edited(historyOf(job('Drum, s', { owner: 'A' })), edit).document).toEqual(
      job('Drum, slow', { owner: 'A' }),
    );
  });

  test('is left alone where an edition before this one left it', () => {
    const storage = place();
    storage().setItem(
      'fettle-left-7',
      JSON.stringify({ revision: 3, base: job('Drum'), document: job('Drum, s') }),
    );
    expect(takeLeft(storage, 7)).toBeUndefined();
  });
});
