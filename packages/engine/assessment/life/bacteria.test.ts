import { describe, expect, it } from 'vitest';
import { march } from '../dirt/march.ts';
import { solvedClean } from '../testing/compiled.ts';
import { days, stackCanister, withTank } from '../testing/models.ts';
import { bacteriaShares, meanShareKept } from './bacteria.ts';

const recoveryS = days(12);

describe('bacteria left on average between cleanings', () => {
  it('are all there where a cleaning takes none', () => {
    expect(meanShareKept({ kept: 1, intervalS: days(30), recoveryS })).toBeCloseTo(1, 12);
  });

  it('count for nothing where a bare bed comes in each time', () => {
    expect(meanShareKept({ kept: 0, intervalS: days(30), recoveryS })).toBe(0);
  });

  it('are all there where the interval is very long, and almost none where it is very short', () => {
    expect(meanShareKept({ kept: 0.7, intervalS: days(1e6), recoveryS })).toBeCloseTo(1, 4);
    expect(meanShareKept({ kept: 0.7, intervalS: 1, recoveryS })).toBeLessThan(1e-4);
  });

  it.each([
    [0.7, 30],
    [0.3, 10],
    [0.9, 90],
  ])('follow the mean of the steady rhythm, %s kept every %s days', (kept, every) => {
    // The rhythm run through: many intervals of exponential recovery, the last averaged by the midpoint rule.
    let share = 1;
    for (let interval = 0; interval < 2000; interval += 1)
      share = 1 - (1 - kept * share) * Math.exp(-every / 12);
    const after = kept * share;
    const slices = 20_000;
    let sum = 0;
    for (let slice = 0; slice < slices; slice += 1)
      sum += 1 - (1 - after) * Math.exp((-every * (slice + 0.5)) / slices / 12);
    expect(meanShareKept({ kept, intervalS: days(every), recoveryS })).toBeCloseTo(sum / slices, 8);
  });
});

const marched = (over: { feedKgPerS?: number } = {}) => {
  const compiled = solvedClean(withTank(stackCanister(), over));
  const made = 0.25 * compiled.model.tank.feedKgPerS;
  const result = march(compiled, made, days(60));
  const tan = 0.45 * 0.092 * compiled.model.tank.feedKgPerS;
  return { compiled, result, shares: bacteriaShares(compiled, result, tan) };
};

describe('shares of a packing', () => {
  it('keep floss that is thrown away within weeks out of the count', () => {
    const { compiled, shares } = marched();
    const floss = compiled.beds.findIndex((bed) => bed.medium.id === 'floss-loose');
    expect(shares.cleaningFactor[floss]).toBe(0);
  });

  it('lie between 0.3 and 1 for carbon and between 0 and 1 for cleaning', () => {
    const { shares } = marched();
    for (const factor of shares.carbonFactor) {
      expect(factor).toBeGreaterThanOrEqual(0.3);
      expect(factor).toBeLessThanOrEqual(1);
    }
    for (const factor of shares.cleaningFactor) {
      expect(factor).toBeGreaterThanOrEqual(0);
      expect(factor).toBeLessThanOrEqual(1);
    }
  });

  it('are whole but for the yearly cleaning where nothing is fed', () => {
    const { compiled, result, shares } = marched({ feedKgPerS: 0 });
    expect(result.ending.beyond).toBe(true);
    expect(shares.cleanedEachTime).toEqual([]);
    expect(shares.carbonFactor.every((factor) => factor === 1)).toBe(true);
    const rings = compiled.beds.findIndex((bed) => bed.medium.id === 'ceramic-rings-15mm');
    const kept = compiled.beds[rings]!.medium.bacteriaKept.value;
    const yearly = meanShareKept({ kept, intervalS: days(365), recoveryS });
    expect(shares.cleaningFactor[rings]).toBeCloseTo(yearly, 12);
  });
});
