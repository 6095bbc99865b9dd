import { expect, test } from 'vitest';
import { partOfField } from './partOfField.ts';

test.each([
  ['tank.volume', 'take-in'],
  ['filter.pump.ratedFlow', 'map'],
  ['tests[1].times', 'as-found'],
  ['packing.basket-1[0].depth', 'map'],
  ['planned.packing.basket-1[0].depth', 're-pack'],
  ['money.tariff', undefined],
  ['', undefined],
])('a problem at “%s” is mended in %s', (path, part) => {
  expect(partOfField(path)).toBe(part);
});
