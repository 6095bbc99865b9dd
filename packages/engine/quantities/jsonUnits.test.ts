import { describe, expect, test } from 'vitest';
import { jsonUnits, toJsonFigure } from './jsonUnits.ts';

describe('figures in JSON', () => {
  test.each([
    [998.2, 'kg/m3', 998.2],
    [0.001, 'Pa.s', 0.001],
    [0.00912, 'mg/L', 9.12],
    [0.35, '%', 35],
    [0.612 / 3600, 'L/h', 612],
    [4 / 3600, '1/h', 4],
    [7200, 'h', 2],
    [0.002 / 86400, 'g/d', 2],
    [3e-6, 'mg', 3],
    // 8766 hours in the year of 365.25 days.
    [10, 'kWh/a', 87.66],
    [7, '1', 7],
    [0.003, 'L', 3],
    [0.016, 'mm', 16],
  ] as const)('%s in %s', (si, unit, value) => {
    const figure = toJsonFigure(si, unit);
    expect(figure.unit).toBe(unit);
    expect(figure.value).toBeCloseTo(value, 10);
  });

  test('every unit of the list is known', () => {
    for (const unit of jsonUnits) expect(toJsonFigure(0, unit)).toEqual({ value: 0, unit });
  });
});
