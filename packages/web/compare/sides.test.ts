import { describe, expect, test } from 'vitest';
import { chosenSides, sidesOf } from './sides.ts';

const document = { fettle: 1, packing: {}, planned: { packing: {} } };
const revision = (number: number) => ({
  revision: number,
  at: '2026-11-02T10:00:00Z',
  by: 'anna',
  kind: 'edited' as const,
  changes: [],
});

describe('what a packing can be held against', () => {
  test('states that the job does not describe are not offered', () => {
    const named = (of: Readonly<Record<string, unknown>>) =>
      sidesOf({ document: of, revisions: [] }).map(({ name }) => name);
    expect(named({ fettle: 1 })).toEqual(['As found']);
    expect(named({ ...document, asLeft: {} })).toEqual(['As found', 'Planned', 'As left']);
  });

  test('each state without the others, so that a plan that does not fit hinders none but itself', () => {
    const sides = sidesOf({ document: { ...document, asLeft: {} }, revisions: [] });
    expect(sides.map((side) => Object.keys(side.document ?? {}))).toEqual([
      ['fettle', 'packing'],
      ['fettle', 'packing', 'planned'],
      ['fettle', 'packing', 'asLeft'],
    ]);
  });

  test('every revision but the one that stands, newest first', () => {
    const sides = sidesOf({ document, revisions: [1, 2, 3].map(revision) });
    expect(sides.map(({ id }) => id)).toEqual(['as-found', 'planned', 'revision-2', 'revision-1']);
  });

  test('without an address, the filter as found against what came of it last', () => {
    const sides = sidesOf({ document, revisions: [] });
    const { first, second } = chosenSides(sides, { first: null, second: null });
    expect([first?.id, second?.id]).toEqual(['as-found', 'planned']);
  });

  test('an address that names what is not there any more falls back to that', () => {
    const sides = sidesOf({ document, revisions: [1, 2].map(revision) });
    const { first, second } = chosenSides(sides, { first: 'plan-9', second: 'revision-1' });
    expect([first?.id, second?.id]).toEqual(['as-found', 'revision-1']);
  });

  test('where nothing is planned, there is nothing to hold it against', () => {
    const sides = sidesOf({ document: { fettle: 1 }, revisions: [revision(1)] });
    expect(chosenSides(sides, { first: null, second: null }).second).toBeUndefined();
  });
});
