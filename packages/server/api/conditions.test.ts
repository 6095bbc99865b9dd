import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCondition, revisionTag } from './conditions.ts';

const tags = (header: string) => {
  const condition = readCondition(header);
  return condition === undefined || condition.any ? condition : condition.tags;
};

describe('what If-Match and If-None-Match say', () => {
  test.each([
    ['*', { any: true }],
    [' * ', { any: true }],
    ['"3"', [{ weak: false, opaque: '3' }]],
    ['W/"3"', [{ weak: true, opaque: '3' }]],
    [
      '"3", "5"',
      [
        { weak: false, opaque: '3' },
        { weak: false, opaque: '5' },
      ],
    ],
    [
      ', "3" ,, W/"a,b" ,',
      [
        { weak: false, opaque: '3' },
        { weak: true, opaque: 'a,b' },
      ],
    ],
    ['""', [{ weak: false, opaque: '' }]],
  ])('%s is read', (header, meant) => expect(tags(header)).toEqual(meant));

  test.each([
    '',
    ' ',
    ',',
    '3',
    '"3',
    '3"',
    'w/"3"',
    '"3""4"',
    '"3" "4"',
    '"3", *',
    '*, "3"',
    '"a b"',
    '"3";',
  ])('“%s” is malformed', (header) => expect(readCondition(header)).toBeUndefined());

  test('a list of the tags that we give out names their revisions again, in any spacing', () => {
    const revision = fc.integer({ min: 0, max: 999_999_999 });
    const gap = fc.constantFrom(',', ', ', ' , ', ',,', '\t,');
    fc.assert(
      fc.property(fc.array(revision, { minLength: 1, maxLength: 8 }), gap, (revisions, between) => {
        const read = tags(revisions.map((each) => revisionTag(each)).join(between));
        expect(read).toEqual(revisions.map((each) => ({ weak: false, opaque: String(each) })));
      }),
    );
  });

  test('nothing that anybody may send throws', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (header) => void readCondition(header)));
  });
});
