import { expect, test } from 'vitest';
import { inOneUnit, printer } from './printing.ts';

test('figures of one column stand in one unit, that of the largest', () => {
  const head = inOneUnit(printer('metric'), 'length', [0.144, 0.00153]);
  expect([head(0.144), head(0.00153)]).toEqual(['14.4 cm', '0.153 cm']);
  const depth = inOneUnit(printer('us'), 'length', [0.0762, 1.2]);
  expect([depth(0.0762), depth(1.2)]).toEqual(['0.250 ft', '3.94 ft']);
});
