import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withSealedChambers } from '../../packing/seal.ts';
import { assess } from '../assess.ts';
import { stackCanister } from '../testing/models.ts';
import { randomModel } from '../testing/randomModels.ts';
import { type ResidenceCurve, residenceFigures, residenceOf } from './residence.ts';

/** Area and mean of a curve of density by trapezia. */
const under = ({ points }: ResidenceCurve): { area: number; meanS: number } => {
  const integral = (power: number): number =>
    points.slice(1).reduce((sum, end, place) => {
      const start = points[place]!;
      const height = start.densityPerS * start.timeS ** power + end.densityPerS * end.timeS ** power;
      return sum + (height / 2) * (end.timeS - start.timeS);
    }, 0);
  return { area: integral(0), meanS: integral(1) };
};

describe('the time that water stays in a filter', () => {
  it('is on average its volume over its flow: nothing in the model stands still', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const residence = residenceFigures(randomModel(seed));
        if (residence === undefined) return;
        const { whole, volumeM3, flowM3PerS, deadShare } = residence;
        expect((whole.meanS * flowM3PerS) / volumeM3 + deadShare).toBeCloseTo(1, 8);
        expect(whole.morrillIndex).toBeGreaterThanOrEqual(1);
        expect(whole.varianceS2).toBeGreaterThan(0);
        expect(whole.t10S).toBeLessThan(whole.t50S);
        expect(whole.t50S).toBeLessThan(whole.t90S);
      }),
      { numRuns: 25 },
    );
  });

  it('has a curve of area 1 with the mean of its moments, for the whole and for each route', () => {
    const { whole, routes } = residenceOf(stackCanister())!;
    for (const curve of [whole, ...routes]) {
      const { area, meanS } = under(curve);
      expect(area).toBeCloseTo(curve.points.at(-1)!.share, 3);
      expect(meanS / curve.meanS).toBeCloseTo(1, 2);
      expect(curve.points.at(-1)!.share).toBeCloseTo(0.999, 6);
      curve.points.slice(1).forEach((point, place) => {
        expect(point.share).toBeGreaterThanOrEqual(curve.points[place]!.share - 1e-7);
      });
    }
  });

  it('of all routes together is that of the whole', () => {
    const model = stackCanister();
    const { whole, routes } = residenceOf(model)!;
    const share = routes.reduce((sum, route) => sum + route.share, 0);
    const meanS = routes.reduce((sum, route) => sum + route.share * route.meanS, 0) / share;
    expect(meanS / whole.meanS).toBeCloseTo(1, 2);
    const named = assess(model).routes.filter(({ id }) => id !== 'rest');
    expect(routes.map(({ id }) => id)).toEqual(named.map(({ id }) => id));
  });

  it('begins with the time in the hoses', () => {
    const { whole, hosesS, hosesM3, flowM3PerS } = residenceOf(stackCanister())!;
    expect(hosesS).toBeCloseTo(hosesM3 / flowM3PerS, 12);
    for (const { timeS, share } of whole.points) if (timeS <= hosesS) expect(share).toBe(0);
    expect(whole.t10S).toBeGreaterThan(hosesS);
  });

  it('shows a gap past tight media in its first tenth', () => {
    const tight = stackCanister({ 'basket-1': [['floss-packed', 50]] });
    const { chambers } = assess(tight).layout;
    const open = { ...tight, filter: { ...tight.filter, chamberGapM: { 'basket-1': 0.002 } } };
    const bypassed = residenceFigures(open)!;
    const sealed = residenceFigures(withSealedChambers(tight, chambers))!;
    const ofMean = ({ whole }: typeof sealed): number => whole.t10S / whole.meanS;
    expect(ofMean(bypassed)).toBeLessThan(0.8 * ofMean(sealed));
  });

  it('is not told where no water flows', () => {
    const model = stackCanister();
    const lifted = { ...model, filter: { ...model.filter, outletLiftM: 5 } };
    expect(residenceOf(lifted)).toBeUndefined();
    expect(residenceFigures(lifted)).toBeUndefined();
  });
});
