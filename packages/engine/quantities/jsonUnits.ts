import { fromSi, plainNumber, unitOf } from './units.ts';

/** The units in which results leave as JSON, always the same for one kind of figure. */
export const jsonUnits = [
  'kg/m3',
  'Pa.s',
  'mg/L',
  '%',
  'm',
  'm/s',
  'L/h',
  'Pa',
  '1/h',
  'h',
  'g/d',
  'm2',
  'mg',
  'kWh/a',
  '1',
  'd',
  's',
  'L',
  'mm',
] as const;

export type JsonUnit = (typeof jsonUnits)[number];

/** A figure as it leaves in JSON. */
export interface JsonFigure {
  readonly value: number;
  readonly unit: JsonUnit;
}

/**
 * Turns an SI value into the fixed JSON unit, unrounded.
 *
 * @param si value in SI: kg/m³ for `mg/L`, m³/s for `L/h`, kg/s for `g/d`, W for `kWh/a` (a year of 365.25 days)
 */
export function toJsonFigure(si: number, unit: JsonUnit): JsonFigure {
  const value = fromSi(si, unit === '1' ? plainNumber : unitOf(unit), 'count');
  return { value, unit };
}
