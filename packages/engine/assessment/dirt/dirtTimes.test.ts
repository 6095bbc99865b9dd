import { describe, expect, it } from 'vitest';
import { assess } from '../assess.ts';
import { familyModels } from '../testing/familyModels.ts';
import { days, stackCanister } from '../testing/models.ts';
import { dirtTimes } from './dirtTimes.ts';

describe('dirt over time', () => {
  it.each(familyModels)(
    'of a %s begins clean and ends where the cleaning interval does',
    (_family, model) => {
      const times = dirtTimes(model, 4);
      const { cleaning, dutyPoint } = assess(model);
      expect(times).toHaveLength(5);
      const [first, last] = [times[0]!, times[4]!];
      expect(first.timeS).toBe(0);
      expect(first.beds.every(({ dirtKg }) => dirtKg === 0)).toBe(true);
      expect(first.flowM3PerS).toBeCloseTo(dutyPoint.flowM3PerS, 12);
      expect(last.timeS / cleaning.timeS).toBeCloseTo(1, 6);
      // The march takes a mat's loss at the flow of the step before; here both are settled.
      expect(last.flowRatio).toBeCloseTo(cleaning.flowRatio, 3);
    },
  );

  it.each(familyModels)('of a %s never leaves a bed again, for nothing is rinsed', (_family, model) => {
    const times = dirtTimes(model, 6);
    for (const [place] of times[0]!.beds.entries()) {
      const held = times.map(({ beds }) => beds[place]!.dirtKg);
      expect(held).toEqual(held.toSorted((a, b) => a - b));
    }
  });

  it('fills no pore beyond its volume, and lies thickest where the water comes in', () => {
    const last = dirtTimes(stackCanister(), 2).at(-1)!;
    for (const { layers } of last.beds) {
      expect(layers.every(({ filledFraction }) => filledFraction >= 0 && filledFraction <= 1)).toBe(true);
      expect(layers[0]!.filledFraction).toBeGreaterThanOrEqual(layers.at(-1)!.filledFraction);
    }
    expect(last.timeS).toBeGreaterThan(days(1));
  });
});
