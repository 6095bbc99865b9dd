import { describe, expect, test } from 'vitest';
import { departures, type Neighbours, needlessOutliers, neighbourhoods } from './neighbours.ts';

describe.each(neighbourhoods.map((each) => [each.quantity, each] as const))('%s', (_quantity, each) => {
  test('is much the same by every law', () => {
    expect(each.departures()).toEqual([]);
  });

  test('has no outlier without need', () => {
    expect(each.needlessOutliers()).toEqual([]);
  });
});

describe('laws that disagree', () => {
  const group: Neighbours<{ x: number }> = {
    quantity: 'a line',
    withinFraction: 0.01,
    grid: [{ x: 1 }, { x: 10 }],
    laws: { one: ({ x }) => x, two: ({ x }) => x, bent: ({ x }) => (x > 5 ? 1.2 * x : x) },
    outliers: [],
  };
  const known = { law: 'bent', where: ({ x }: { x: number }) => x > 5, withinFraction: 0.25, reason: 'bent' };

  test('are found with the point where they do', () => {
    expect(departures(group)).toMatchObject([{ law: 'bent', at: { x: 10 }, allowed: 0.01 }]);
  });

  test('are passed over where the reason is given', () => {
    expect(departures({ ...group, outliers: [known] })).toEqual([]);
  });

  test('are named when the reason is no longer needed', () => {
    const laws = { ...group.laws, bent: ({ x }: { x: number }) => x };
    expect(needlessOutliers({ ...group, laws, outliers: [known] })).toEqual(['bent']);
  });
});
