import type { BedPlace } from '@fettle/drawing/sectionPlaces.ts';
import { describe, expect, test } from 'vitest';
import { edited, type History, historyOf, redone, takenBack, undone } from '../session/history.ts';
import { repacking, type WrittenPacking, withBedDepth, withBedPut, withoutBed } from './bedEdits.ts';
import { heldBed } from './heldBed.ts';

const found: WrittenPacking = {
  low: [
    { medium: 'rings', mass: '500 g' },
    { medium: 'foam', depth: '20 mm' },
  ],
};
const rings = { chamber: { id: 'low', label: 'basket 1' }, place: 0, name: 'rings' } as BedPlace;

/** A job with a packing, and a hand on its rings. */
const held = () => {
  let history: History = historyOf({ fettle: 1, packing: found });
  const packing = (): WrittenPacking => Object(history.document.packing);
  const change = (next: WrittenPacking, says: string, key?: string): void => {
    history = edited(history, repacking('found', next, key === undefined ? { says } : { says, key }));
  };
  change(withBedPut(found, { chamber: 'low', place: 2 }, { medium: 'grit', depthM: 0.01 }), 'put grit');
  history = undone(history);
  const before = history;
  const takeBack = (key: string): void => {
    history = takenBack(history, key, before);
  };
  const resize = ({ place }: BedPlace, depthM: number, key: string): void =>
    change(withBedDepth(packing(), { chamber: 'low', place }, depthM), 'deeper', key);
  const bed = heldBed(rings, { packing, before, takeBack, change, resize });
  return { bed, pull: bed.pull, packing, change, before, history: () => history };
};

describe('a bed that a hand has taken hold of', () => {
  test('is put back as it was written, and nothing of the pull can be undone or hinders doing again', () => {
    const { bed, pull, before, history } = held();
    for (const depthM of [0.03, 0.04, 0.05]) pull(depthM);
    bed.putBack();
    expect(history()).toEqual(before);
    expect(redone(history()).past.at(-1)?.says).toBe('put grit');
  });

  test('that was not pulled yet is put back without a trace', () => {
    const { bed, before, history } = held();
    bed.putBack();
    expect(history()).toBe(before);
  });

  test('is put back alone where another window has put a bed before it meanwhile', () => {
    const { bed, pull, packing, change } = held();
    pull(0.03);
    change(
      withBedPut(packing(), { chamber: 'low', place: 0 }, { medium: 'floss', depthM: 0.01 }),
      'put floss',
    );
    pull(0.04);
    bed.putBack();
    expect(packing().low).toEqual([{ medium: 'floss', depth: '10 mm' }, ...(found.low ?? [])]);
  });

  test('that another window takes out is not there any more, and what lies in its place is left alone', () => {
    const { bed, pull, packing, change } = held();
    pull(0.03);
    change(withoutBed(packing(), { chamber: 'low', place: 0 }), 'take rings out');
    pull(0.04);
    bed.putBack();
    expect(bed.now()).toBeUndefined();
    expect(packing().low).toEqual([{ medium: 'foam', depth: '20 mm' }]);
  });
});
