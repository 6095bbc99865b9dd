import { expect, test } from 'vitest';
import { partOfField } from './partOfField.ts';

test.each([
  ['tank.volume', 'take-in'],
  ['filter.pump.ratedFlow', 'map'],
  ['tests[1].times', 'as-found'],
  ['packing.basket-1[0].depth', 'map'],
  ['planned.packing.basket-1[0].depth', 're-pack'],
  ['quote.labour[0].time', 'quote'],
  ['money.tariff', 'quote'],
  ['shelf[0].medium', undefined],
  ['', undefined],
])('a problem at “%s” is mended in %s', (path, part) => {
  expect(partOfField(path)).toBe(part);
});
