import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edited, type History, historyOf, redone, takenBack, undone } from './history.ts';

const start = historyOf({ fettle: 1, tank: { volume: '180 L' }, packing: { 'basket-1': [] } });

const put = (history: History, medium: string, key?: string): History =>
  edited(history, {
    says: `put ${medium}`,
    ...(key === undefined ? {} : { key }),
    recipe: (draft) => {
      draft.packing = { ...Object(draft.packing), [medium]: [{ medium }] };
    },
  });

const times = (count: number, step: (history: History) => History, from: History): History =>
  Array.from({ length: count }).reduce<History>(step, from);

describe('the history of a job at work', () => {
  test('every change can be undone, back to how the job was opened, and done again', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('floss', 'foam', 'rings'), { maxLength: 20 }), (media) => {
        const end = media.reduce((history, medium) => put(history, medium), start);
        const back = times(end.past.length, undone, end);
        expect(back.document).toEqual(start.document);
        expect(times(end.past.length, redone, back).document).toEqual(end.document);
      }),
    );
  });

  test('a change after an undo throws away what was undone', () => {
    const history = put(undone(put(put(start, 'floss'), 'foam')), 'rings');
    expect(history.future).toEqual([]);
    expect(Object.keys(Object(history.document.packing))).toEqual(['basket-1', 'floss', 'rings']);
  });

  test('the letters of one field are one step', () => {
    const typed = ['2', '20', '200 L'].reduce(
      (history, volume) =>
        edited(history, {
          says: 'tank volume',
          key: 'tank.volume',
          recipe: (draft) => {
            draft.tank = { volume };
          },
        }),
      start,
    );
    expect(typed.past).toHaveLength(1);
    expect(undone(typed).document).toEqual(start.document);
  });

  test('a drag over one field weighs no more than one change of it, however many frames it has', () => {
    const dragged = Array.from({ length: 1000 }).reduce<History>(
      (history, _, frame) =>
        edited(history, {
          says: 'make the bed deeper',
          key: 'grip-1',
          recipe: (draft) => {
            Object(draft.tank).volume = `${200 + frame} L`;
          },
        }),
      start,
    );
    expect(dragged.past).toHaveLength(1);
    expect(dragged.past[0]?.there).toHaveLength(1);
    expect(undone(dragged).document).toEqual(start.document);
    expect(redone(undone(dragged)).document).toEqual(dragged.document);
  });

  test('what changes nothing is no step', () => {
    expect(edited(start, { says: 'nothing', recipe: () => undefined })).toBe(start);
  });

  test('a step that no longer fits, since the job was changed elsewhere, is passed over', () => {
    const deep = edited(start, {
      says: 'tank volume',
      recipe: (draft) => {
        Object(draft.tank).volume = '200 L';
      },
    });
    const { tank: _, ...elsewhere } = deep.document;
    const history = undone({ ...deep, document: { ...elsewhere, fettle: 1 } });
    expect(history).toEqual({ document: { ...elsewhere, fettle: 1 }, past: [], future: [] });
  });

  test('a step that is taken back leaves no trace: what had been undone before it can be done again', () => {
    const before = undone(put(put(start, 'floss'), 'foam'));
    const pulled = put(put(before, 'rings', 'grip'), 'grit', 'grip');
    expect(takenBack(pulled, 'grip', before)).toEqual(before);
    expect(redone(takenBack(pulled, 'grip', before)).document).toEqual(
      put(put(start, 'floss'), 'foam').document,
    );
  });

  test('only the last step is taken back, and only the one that is meant', () => {
    const before = put(start, 'floss', 'grip');
    const after = put(before, 'foam');
    expect(takenBack(after, 'grip', start)).toBe(after);
    expect(takenBack(before, 'another grip', start)).toBe(before);
  });
});
