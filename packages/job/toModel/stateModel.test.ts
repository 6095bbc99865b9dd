import { describe, expect, test } from 'vitest';
import { readDocument } from '../read.ts';
import { fullJob } from '../testing/fullJob.ts';
import { stateModel } from './stateModel.ts';

const read = (document: unknown) => {
  const reading = readDocument(structuredClone(document));
  if (!reading.ok) throw new Error(reading.problems.map(({ says }) => says).join(' '));
  return reading;
};

describe('the states of a filter', () => {
  test('as found it is the job itself', () => {
    const { document, model } = read(fullJob);
    expect(stateModel(document, 'as-found')?.model).toEqual(model);
  });

  test('as planned it has the packing that was chosen, its gaps sealed and its hoses changed', () => {
    const { document, model } = read(fullJob);
    const planned = stateModel(document, 'planned')?.model;
    expect(planned?.packing['basket-4']?.map(({ medium }) => medium)).toEqual(['ceramic-rings-12mm']);
    expect(planned?.filter.intake).toMatchObject({ boreM: 0.019, lengthM: 0.9 });
    const gaps = Object.values(planned?.filter.chamberGapM ?? {});
    expect(gaps.length).toBeGreaterThan(0);
    expect(Math.max(...gaps)).toBeLessThan(Math.max(...Object.values(model.filter.chamberGapM)));
  });

  test('as left it is what was really built, not what was planned', () => {
    const left = stateModel(read(fullJob).document, 'as-left')?.model;
    expect(left?.filter.intake?.boreM).toBe(0.016);
    expect(left?.packing['basket-1']?.[0]?.depthM).toBeCloseTo(0.032, 12);
  });

  test('doubts of a planned bed are told at its own place in the document', () => {
    const planned = stateModel(read(fullJob).document, 'planned')?.model;
    expect(planned?.givens.map(({ path }) => path)).toContain('planned.packing.basket-1[0].depth');
  });

  test('holds a flow that was timed against the packing that it was timed of, and no other', () => {
    const timed = (id: string, state: string) => ({
      kind: 'timed-volume',
      id,
      state,
      volume: '5 L',
      times: ['40 s'],
    });
    const tests = [
      timed('found', 'as-found'),
      timed('cleaned', 'cleaned-original'),
      timed('left', 'as-left'),
      { kind: 'shutoff-head', id: 'lift', state: 'cleaned-original', head: '1.25 m' },
    ];
    const { document } = read({ ...fullJob, tests });
    const held = (state: 'as-found' | 'planned' | 'as-left') =>
      stateModel(document, state)?.model.tests.map(({ id }) => id);
    expect(held('as-found')).toEqual(['found', 'cleaned', 'left', 'lift']);
    expect(held('planned')).toEqual(['lift']);
    expect(held('as-left')).toEqual(['left', 'lift']);
  });

  test('what is to be known of a planned packing is told at its own place', () => {
    const twice = {
      packing: {
        'basket-1': [
          { medium: 'foam-20ppi', depth: '10 mm' },
          { medium: 'foam-20ppi', depth: '10 mm' },
        ],
      },
    };
    const { document } = read({ ...fullJob, planned: twice });
    const notes = stateModel(document, 'planned')?.notes ?? [];
    expect(notes.filter(({ code }) => code === 'beds-alike').map(({ path }) => path)).toEqual([
      'planned.packing.basket-1[1]',
    ]);
  });

  test('a job that plans nothing has no planned state', () => {
    const { planned: _, asLeft: __, ...found } = fullJob;
    const { document } = read(found);
    expect([stateModel(document, 'planned')?.model, stateModel(document, 'as-left')?.model]).toEqual([
      undefined,
      undefined,
    ]);
  });

  test.each([
    [{ packing: { 'basket-9': [] } }, 'planned.packing.basket-9'],
    [
      { packing: { 'basket-1': [{ medium: 'foam-20ppi', depth: '3 m' }] } },
      'planned.packing.basket-1[0].depth',
    ],
    [
      { packing: { 'basket-1': [{ medium: 'no-such', depth: '3 mm' }] } },
      'planned.packing.basket-1[0].medium',
    ],
    [{ packing: {}, made: ['fly'] }, 'planned.made[0]'],
    [{ packing: {}, made: ['hose-bore'] }, 'planned.made[0].bore'],
    [{ packing: {}, made: ['seal-gaps', 'seal-gaps'] }, 'planned.made[1]'],
  ])('what does not fit together is told at its place: %j', (planned, path) => {
    const reading = readDocument({ ...structuredClone(fullJob), planned });
    expect(reading.ok ? [] : reading.problems.map((problem) => problem.path)).toContain(path);
  });
});
