import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from './labels.ts';

const anyLabels = fc
  .array(
    fc.record({
      at: fc.double({ min: 0, max: 100, noNaN: true }),
      extent: fc.double({ min: 1, max: 10, noNaN: true }),
    }),
    { maxLength: 12 },
  )
  .map((labels) => labels.toSorted((one, other) => one.at - other.at));

describe('labels in a lane', () => {
  it('never overlap and keep their order', () => {
    fc.assert(
      fc.property(anyLabels, (labels) => {
        const places = spread(labels);
        places.slice(1).forEach((place, index) => {
          const apart = ((labels[index]?.extent ?? 0) + (labels[index + 1]?.extent ?? 0)) / 2;
          expect(place - (places[index] ?? 0)).toBeGreaterThanOrEqual(apart - 1e-9);
        });
      }),
    );
  });

  it('stay where they are wished when there is room', () => {
    const wished = [
      { at: 10, extent: 5 },
      { at: 20, extent: 5 },
    ];
    expect(spread(wished)).toEqual([10, 20]);
  });

  it('move apart evenly when two want the same place', () => {
    const wished = [
      { at: 10, extent: 6 },
      { at: 10, extent: 6 },
    ];
    expect(spread(wished)).toEqual([7, 13]);
  });
});
