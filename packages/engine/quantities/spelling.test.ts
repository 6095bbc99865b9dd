import { describe, expect, test } from 'vitest';
import { asShortName, likeNames, nearestWord } from './spelling.ts';

const media = [
  'foam-10ppi',
  'foam-20ppi',
  'foam-30ppi',
  'foam-45ppi',
  'carbon-granular-1mm',
  'carbon-granular-2mm',
  'carbon-pellets-4mm',
  'ceramic-rings-15mm',
  'plastic-balls-35mm',
  'sintered-glass-rings-15mm',
];

describe('a mistyped name', () => {
  test.each([
    ['foam-20pi', 'foam-20ppi'],
    ['FOAM-20PPI', 'foam-20ppi'],
    ['stones', undefined],
    ['', undefined],
  ])('%s is nearest to %s', (typed, nearest) => expect(nearestWord(typed, media)).toBe(nearest));

  test('of four letters may be wrong in one', () => {
    expect(nearestWord('fern', ['ferm'])).toBe('ferm');
    expect(nearestWord('fern', ['fgrm'])).toBeUndefined();
  });

  test.each<[string, readonly string[]]>([
    ['carbon', ['carbon-granular-1mm', 'carbon-granular-2mm', 'carbon-pellets-4mm']],
    ['bio-balls', ['plastic-balls-35mm']],
    ['Bio Balls', ['plastic-balls-35mm']],
    ['foam', ['foam-10ppi', 'foam-20ppi', 'foam-30ppi']],
    ['rings', ['ceramic-rings-15mm', 'sintered-glass-rings-15mm']],
    ['ceramic ring', ['ceramic-rings-15mm']],
    ['foams', ['foam-10ppi', 'foam-20ppi', 'foam-30ppi']],
    ['granul', ['carbon-granular-1mm', 'carbon-granular-2mm']],
    ['felt', []],
    ['15', []],
  ])('%s may stand for %j', (typed, names) => expect(likeNames(typed, media)).toEqual(names));
});

test.each([
  ['Foam-20PPI', 'foam-20ppi'],
  ['foam 20ppi', 'foam-20ppi'],
  ['  Foam _ 20ppi ', 'foam-20ppi'],
])('%j is %s as a short name', (typed, name) => expect(asShortName(typed)).toBe(name));
