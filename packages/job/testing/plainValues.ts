import fc from 'fast-check';
import { isFields } from '../schema/walk.ts';

const names = fc.constantFrom('a', 'b', 'c', 'd', 'basket-1', '__proto__', 'constructor');

const leaves = fc.oneof(
  fc.constantFrom<unknown>('180 L', '', 'no', null),
  fc.integer({ min: 0, max: 3 }),
  fc.boolean(),
);

function groupOf(value: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc
    .uniqueArray(fc.tuple(names, value), { maxLength: 4, selector: ([name]) => name })
    .map((fields) => Object.fromEntries(fields));
}

const inside = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    leaves,
    fc.array(tie('value'), { maxLength: 4 }),
    groupOf(tie('value')),
  ),
})).value;

/** Groups of fields as a file may hold them, with names and values so few that two of them often have some in common. */
export const plainValues = groupOf(inside);

/** The same value with some of its parts taken out, put in or changed, at any depth. */
export function withEdits(value: unknown): fc.Arbitrary<unknown> {
  if (Array.isArray(value)) {
    return fc
      .tuple(fc.tuple(...value.map(partEdited)), fc.array(leaves, { maxLength: 1 }), fc.nat(4))
      .map(([parts, added, place]) => parts.flat().toSpliced(place, 0, ...added));
  }
  if (!isFields(value)) return leaves;
  const fields = Object.entries(value).map(([name, part]) =>
    partEdited(part).map((kept) => kept.map((each) => [name, each] as const)),
  );
  const added = fc.array(fc.tuple(names, leaves), { maxLength: 1 });
  return fc
    .tuple(fc.tuple(...fields), added)
    .map(([kept, more]) => Object.fromEntries([...kept.flat(), ...more]));
}

/** A part mostly stays, sometimes goes, sometimes changes: a row of one or none. */
function partEdited(part: unknown): fc.Arbitrary<readonly unknown[]> {
  return fc.oneof(
    { weight: 6, arbitrary: fc.constant([part]) },
    { weight: 1, arbitrary: fc.constant([]) },
    {
      weight: 2,
      arbitrary: fc
        .constant(part)
        .chain(withEdits)
        .map((edited) => [edited]),
    },
  );
}
