import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullJob } from '../testing/fullJob.ts';
import { plainValues, withEdits } from '../testing/plainValues.ts';
import { withChanges } from '../testing/readWith.ts';
import { changesBetween } from './changes.ts';
import { mergeByField } from './merge.ts';

/** A document and two changes of it. */
const threeStates = plainValues.chain((base) =>
  fc.record({ base: fc.constant(base), theirs: withEdits(base), yours: withEdits(base) }),
);

const jobWith = (changes: Readonly<Record<string, unknown>>) => withChanges(fullJob, changes);

describe('two changes of one job', () => {
  it('go together where they touch different fields', () => {
    const theirs = { 'tank.volume': '200 L', 'packing.basket-1[0].depth': '25 mm' };
    const yours = { 'packing.basket-1[0].medium': 'foam-30ppi', 'job.notes': undefined };
    const { merged, conflicts } = mergeByField({
      base: fullJob,
      theirs: jobWith(theirs),
      yours: jobWith(yours),
    });
    expect(conflicts).toEqual([]);
    expect(merged).toEqual(jobWith({ ...theirs, ...yours }));
  });

  it('conflict in a field that both wrote otherwise: theirs stands, both are told', () => {
    const { merged, conflicts, theirs, yours } = mergeByField({
      base: fullJob,
      theirs: jobWith({ 'tank.volume': '200 L', 'job.title': 'Hall' }),
      yours: jobWith({ 'tank.volume': '190 L', 'filter.life': undefined }),
    });
    expect(conflicts).toEqual([
      { path: 'tank.volume', base: '180 L ± 5 %', theirs: '200 L', yours: '190 L' },
    ]);
    expect(merged).toEqual(
      jobWith({ 'tank.volume': '200 L', 'job.title': 'Hall', 'filter.life': undefined }),
    );
    expect(theirs.map(({ path }) => path)).toEqual(['job.title', 'tank.volume']);
    expect(yours.map(({ path }) => path)).toEqual(['tank.volume', 'filter.life']);
  });

  it('conflict where one took away what the other changed', () => {
    const states = { base: { a: { b: 1, c: 2 } }, theirs: {}, yours: { a: { b: 1, c: 3 } } };
    expect(mergeByField(states)).toMatchObject({
      merged: {},
      conflicts: [{ path: 'a', base: { b: 1, c: 2 }, yours: { b: 1, c: 3 } }],
    });
  });

  it('do not conflict where both wrote the same', () => {
    const same = jobWith({ 'tank.volume': '200 L', 'tests[0].times': ['30 s'] });
    expect(mergeByField({ base: fullJob, theirs: same, yours: structuredClone(same) })).toMatchObject({
      merged: same,
      conflicts: [],
    });
  });

  it('go together in a part that both added, as far as they wrote different fields of it', () => {
    const states = {
      base: {},
      theirs: { owner: { name: 'A', place: 'B' } },
      yours: { owner: { name: 'A', contact: 'C' } },
    };
    expect(mergeByField(states)).toMatchObject({
      merged: { owner: { name: 'A', place: 'B', contact: 'C' } },
      conflicts: [],
    });
  });

  it('go together in a list where a test was added at the end and an earlier one was changed', () => {
    const { merged, conflicts } = mergeByField({
      base: { tests: [{ id: 'a' }, { id: 'b' }, { id: 'c' }] },
      theirs: { tests: [{ id: 'a' }, { id: 'b' }, { id: 'c' }, { id: 'd' }] },
      yours: { tests: [{ id: 'a', notes: 'warm' }, { id: 'b' }, { id: 'c' }] },
    });
    expect(conflicts).toEqual([]);
    expect(merged).toEqual({
      tests: [{ id: 'a', notes: 'warm' }, { id: 'b' }, { id: 'c' }, { id: 'd' }],
    });
  });

  it('conflict in the list as a whole where both added at one place', () => {
    const states = { base: { claims: ['a'] }, theirs: { claims: ['a', 'b'] }, yours: { claims: ['a', 'c'] } };
    expect(mergeByField(states)).toMatchObject({
      merged: states.theirs,
      conflicts: [{ path: 'claims', base: ['a'], theirs: ['a', 'b'], yours: ['a', 'c'] }],
    });
  });

  it('take a field of any name for a field', () => {
    const odd = JSON.parse('{"a": 1, "__proto__": {"polluted": true}}');
    const { merged } = mergeByField({ base: { a: 1 }, theirs: odd, yours: { a: 2 } });
    expect(JSON.stringify(merged)).toBe('{"a":2,"__proto__":{"polluted":true}}');
  });

  it('of any depth come to an end', () => {
    const nested = (inmost: number) => {
      let value: unknown = inmost;
      for (let depth = 0; depth < 5000; depth++) value = { a: value };
      return value;
    };
    expect(mergeByField({ base: nested(1), theirs: nested(2), yours: nested(3) }).conflicts).toHaveLength(1);
  });
});

describe('whatever the documents', () => {
  it('a change on one side alone is taken whole', () => {
    fc.assert(
      fc.property(threeStates, ({ base, theirs }) => {
        const one = mergeByField({ base, theirs, yours: base });
        const other = mergeByField({ base, theirs: base, yours: theirs });
        for (const { merged, conflicts } of [one, other]) {
          expect(merged).toEqual(theirs);
          expect(conflicts).toEqual([]);
        }
      }),
    );
  });

  it('the same change on both sides is taken once', () => {
    fc.assert(
      fc.property(threeStates, ({ base, theirs }) => {
        const { merged, conflicts } = mergeByField({ base, theirs, yours: structuredClone(theirs) });
        expect(merged).toEqual(theirs);
        expect(conflicts).toEqual([]);
      }),
    );
  });

  it('it does not matter who was first, except in what conflicts', () => {
    fc.assert(
      fc.property(threeStates, ({ base, theirs, yours }) => {
        const one = mergeByField({ base, theirs, yours });
        const other = mergeByField({ base, theirs: yours, yours: theirs });
        const turned = other.conflicts.map(({ theirs: a, yours: b, ...rest }) => ({
          ...rest,
          theirs: b,
          yours: a,
        }));
        const byPath = (path: string, than: string) => (path < than ? -1 : 1);
        const sorted = <Each extends { readonly path: string }>(list: readonly Each[]) =>
          list.toSorted((a, b) => byPath(a.path, b.path));
        expect(sorted(turned)).toEqual(sorted(one.conflicts));
        if (one.conflicts.length === 0) expect(other.merged).toEqual(one.merged);
      }),
      { numRuns: 500 },
    );
  });

  it('changes of different fields both stand', () => {
    const sides = plainValues.chain((base) => {
      const edits = withEdits(base);
      return fc.record({ base: fc.constant(base), one: edits, other: edits });
    });
    fc.assert(
      fc.property(sides, ({ base, one, other }) => {
        // Each side edits a part of its own.
        const states = {
          base: { left: base, right: base },
          theirs: { left: one, right: base },
          yours: { left: base, right: other },
        };
        const { merged, conflicts } = mergeByField(states);
        expect(conflicts).toEqual([]);
        expect(merged).toEqual({ left: one, right: other });
      }),
    );
  });

  it('what conflicts holds theirs', () => {
    fc.assert(
      fc.property(threeStates, ({ base, theirs, yours }) => {
        const { merged, conflicts } = mergeByField({ base, theirs, yours });
        const differing = changesBetween(theirs, merged).map(({ path }) => path);
        for (const { path } of conflicts) expect(differing).not.toContain(path);
      }),
    );
  });

  it('the documents stay as they were', () => {
    fc.assert(
      fc.property(threeStates, (states) => {
        const before = structuredClone(states);
        mergeByField(states);
        expect(states).toEqual(before);
      }),
    );
  });
});
