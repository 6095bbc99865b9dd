import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPath } from '../fieldPath.ts';
import { fullJob } from '../testing/fullJob.ts';
import { plainValues, withEdits } from '../testing/plainValues.ts';
import { withChanges } from '../testing/readWith.ts';
import { alike } from './alike.ts';
import { changesBetween, type FieldChange } from './changes.ts';

/** Does to a document what a list of changes says. */
function applied(document: unknown, changes: readonly FieldChange[]): unknown {
  // Entries that went are taken out from the last on, so that the places of the others still hold.
  const ordered = [...changes.filter(isRemoval).toReversed(), ...changes.filter((each) => !isRemoval(each))];
  return ordered.reduce<unknown>(
    (value, change) => appliedAt(value, readPath(change.path), change),
    document,
  );
}

function isRemoval({ path, after }: FieldChange): boolean {
  return path.endsWith(']') && after === undefined;
}

function appliedAt(value: unknown, path: readonly (string | number)[], change: FieldChange): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return change.after;
  if (Array.isArray(value)) {
    const place = Number(step);
    if (rest.length > 0) return value.with(place, appliedAt(value[place], rest, change));
    const gone = change.before === undefined ? 0 : 1;
    return value.toSpliced(place, gone, ...(change.after === undefined ? [] : [change.after]));
  }
  const fields = new Map(Object.entries(value as object));
  const next = rest.length === 0 ? change.after : appliedAt(fields.get(String(step)), rest, change);
  if (next === undefined) fields.delete(String(step));
  else fields.set(String(step), next);
  return Object.fromEntries(fields);
}

describe('the changes between two jobs', () => {
  it('names the field with what it held and what it holds', () => {
    const after = withChanges(fullJob, {
      'tank.volume': '200 L',
      'job.promised': undefined,
      'filter.life': '9 a',
    });
    expect(changesBetween(fullJob, after)).toEqual([
      { path: 'job.promised', before: '2026-11-20' },
      { path: 'tank.volume', before: '180 L ± 5 %', after: '200 L' },
      { path: 'filter.life', before: '8 a', after: '9 a' },
    ]);
  });

  it('tells a part that came as one change, with all it holds', () => {
    expect(changesBetween({ fettle: 1 }, { fettle: 1, owner: { name: 'A', place: 'B' } })).toEqual([
      { path: 'owner', after: { name: 'A', place: 'B' } },
    ]);
  });

  it('tells a bed that was added or taken out by its own place', () => {
    const beds = (...media: readonly string[]) => ({ packing: { top: media.map((medium) => ({ medium })) } });
    expect(changesBetween(beds('foam', 'rings'), beds('foam', 'floss', 'rings'))).toEqual([
      { path: 'packing.top[1]', after: { medium: 'floss' } },
    ]);
    expect(changesBetween(beds('foam', 'floss', 'rings', 'grit'), beds('foam', 'grit'))).toEqual([
      { path: 'packing.top[1]', before: { medium: 'floss' } },
      { path: 'packing.top[2]', before: { medium: 'rings' } },
    ]);
  });

  it('compares lists of one length place by place, and others as a whole where more than one row differs', () => {
    expect(changesBetween({ times: [1, 2, 3] }, { times: [1, 5, 3] })).toEqual([
      { path: 'times[1]', before: 2, after: 5 },
    ]);
    expect(changesBetween({ times: [1, 2, 3] }, { times: [7, 2] })).toEqual([
      { path: 'times', before: [1, 2, 3], after: [7, 2] },
    ]);
  });

  it('finds none where only the order of fields differs, or a field holds nothing', () => {
    expect(changesBetween({ a: 1, b: { c: 2, d: 3 } }, { b: { d: 3, c: 2 }, a: 1, e: undefined })).toEqual(
      [],
    );
  });

  it('takes a field of any name for a field', () => {
    const odd = JSON.parse('{"__proto__": {"polluted": true}, "constructor": 1}');
    expect(changesBetween({}, odd)).toEqual([
      { path: '__proto__', after: { polluted: true } },
      { path: 'constructor', after: 1 },
    ]);
    expect(changesBetween({ toString: 1 }, {})).toEqual([{ path: 'toString', before: 1 }]);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  it('takes documents of any depth and width', () => {
    const nested = (inmost: number) => {
      let value: unknown = inmost;
      for (let depth = 0; depth < 50_000; depth++) value = depth % 2 === 0 ? [value] : { a: value };
      return value;
    };
    expect(changesBetween(nested(1), nested(1))).toEqual([]);
    expect(changesBetween(nested(1), nested(2))).toHaveLength(1);
    const wide = (last: number) =>
      Array.from({ length: 100_000 }, (_entry, place) => (place === 99_999 ? last : place));
    expect(changesBetween({ wide: wide(1) }, { wide: wide(2) })).toEqual([
      { path: 'wide[99999]', before: 1, after: 2 },
    ]);
  });

  it('done to the document before, gives the document after', () => {
    fc.assert(
      fc.property(
        plainValues.chain((before) => fc.tuple(fc.constant(before), withEdits(before))),
        ([before, after]) => {
          expect(applied(before, changesBetween(before, after))).toEqual(after);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('between any two documents are none exactly where they say the same', () => {
    fc.assert(
      fc.property(plainValues, plainValues, (one, other) => {
        expect(changesBetween(one, one)).toEqual([]);
        expect(changesBetween(one, other).length === 0).toBe(alike(one, other));
        expect(changesBetween(one, structuredClone(one))).toEqual([]);
      }),
    );
  });
});
