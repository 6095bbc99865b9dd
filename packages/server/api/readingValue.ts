import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { type Allowed, readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import type { Reading, ReadingKind } from '@fettle/store/contract/readings.ts';
import type { FieldProblem } from '../problems.ts';

interface Measured {
  readonly dimension: Dimension;
  /** Bounds in SI units, wide enough for any tank; common practice, no source. */
  readonly allowed: Allowed;
}

const measured: Readonly<Record<ReadingKind, Measured>> = {
  // 100 m³/h
  'jug-flow': { dimension: 'flow', allowed: { least: 0, most: 100 / 3600, usualUnit: 'L/h' } },
  // 100 mg/L
  ammonia: { dimension: 'concentration', allowed: { least: 0, most: 0.1, usualUnit: 'mg/L' } },
  nitrite: { dimension: 'concentration', allowed: { least: 0, most: 0.1, usualUnit: 'mg/L' } },
};

/** A day has come everywhere on Earth by this much later than in UTC, ms: the zone that is furthest ahead. */
const FURTHEST_AHEAD_MS = 14 * 3_600_000;

/** What is wrong with a reading: its value is no quantity of its kind, or its day is still to come. */
export const readingProblems = (
  { kind, value, day }: Pick<Reading, 'kind' | 'value' | 'day'>,
  now: Date,
): readonly FieldProblem[] => {
  const problems: FieldProblem[] = [];
  const { dimension, allowed } = measured[kind];
  const read = readQuantity(value, dimension, allowed);
  if (!read.ok)
    problems.push({ code: read.code, path: 'value', says: `value: ${read.says}`, allowed: read.allowed });
  const newest = new Date(now.getTime() + FURTHEST_AHEAD_MS).toISOString().slice(0, 10);
  if (day > newest)
    problems.push({
      code: 'day-to-come',
      path: 'day',
      says: `day says ${day}, which is still to come.`,
      allowed: `${newest} or before`,
    });
  if (day < '2000-01-01')
    problems.push({
      code: 'day-too-early',
      path: 'day',
      says: `day says ${day}, which is too long ago for a reading.`,
      allowed: '2000-01-01 or after',
    });
  return problems;
};
