import { describe, expect, it } from 'vitest';
import type { BenchTest, Model } from '../../model/model.ts';
import { assess } from '../assess.ts';
import { litresPerHour, oneBasket, stackCanister, withFilter, withMeasurements } from '../testing/models.ts';
import { type Comparison, compareTests } from './measured.ts';

const model = stackCanister();
const assessment = assess(model);
const compared = (test: BenchTest, of: Model = model): Comparison =>
  compareTests({ ...of, tests: [test] }, assess(of))[0]!;

const flow = (
  state: 'as-found' | 'clean-empty' | 'cleaned-original' | 'as-left',
  flowLPerH: number,
  doubtLPerH = 1,
): BenchTest => ({
  kind: 'timed-volume',
  id: 'flow',
  state,
  flowM3PerS: litresPerHour(flowLPerH),
  doubtM3PerS: litresPerHour(doubtLPerH),
  repeats: 3,
});

const clean = assessment.dutyPoint.flowM3PerS * 3.6e6;

describe('a timed volume', () => {
  it('of the clean filter agrees within its own doubt and that of the models, either way', () => {
    expect(compared(flow('cleaned-original', 1.14 * clean)).verdict).toBe('agrees');
    expect(compared(flow('cleaned-original', 0.86 * clean)).verdict).toBe('agrees');
    expect(compared(flow('cleaned-original', 1.2 * clean)).verdict).toBe('differs');
    expect(compared(flow('cleaned-original', 0.8 * clean)).verdict).toBe('differs');
    expect(compared(flow('cleaned-original', 0.8 * clean, 0.1 * clean)).verdict).toBe('agrees');
  });

  it('as found is too much only where it is more than the clean filter gives', () => {
    expect(compared(flow('as-found', 0.1 * clean)).verdict).not.toBe('differs');
    expect(compared(flow('as-found', 0.9 * clean)).verdict).toBe('agrees');
    expect(compared(flow('as-found', 1.3 * clean)).verdict).toBe('differs');
  });

  const dirty =
    Math.min(assessment.carries.day.flowM3PerS, assessment.carries.intervalEnd.flowM3PerS) * 3.6e6;

  it('as found is told apart from a dirty filter where dirty media leave clearly more', () => {
    expect(assessment.cleaning.flowRatio).toBeGreaterThan(0.9);
    expect(compared(flow('as-found', 0.84 * dirty))).toMatchObject({
      verdict: 'below-dirty',
      computed: assessment.dutyPoint.flowM3PerS,
    });
    // Within the doubts of the filling it is not clear.
    expect(compared(flow('as-found', 0.84 * dirty, 0.1 * dirty)).verdict).not.toBe('below-dirty');
    expect(compared(flow('as-found', 0.86 * dirty)).verdict).not.toBe('below-dirty');
  });

  it('as found contradicts nothing where dirt slows the filter more and more', () => {
    const closing = oneBasket([['floss-packed', 100]]);
    const tight = withMeasurements(closing, { wallGap: 0 });
    const { cleaning, dutyPoint } = assess(tight);
    expect(cleaning.flowRatio).toBeLessThan(0.9);
    expect(compared(flow('as-found', 0.1 * dutyPoint.flowM3PerS * 3.6e6), tight).verdict).toBe('below-clean');
  });

  it('as found contradicts nothing where cleaning alone brought the flow back', () => {
    const tests = [flow('as-found', 0.3 * clean), { ...flow('cleaned-original', clean), id: 'cleaned' }];
    expect(compareTests({ ...model, tests }, assessment).map(({ verdict }) => verdict)).toEqual([
      'below-clean',
      'agrees',
    ]);
    const slow = [tests[0]!, { ...flow('cleaned-original', 0.5 * clean), id: 'cleaned' }];
    expect(compareTests({ ...model, tests: slow }, assessment).map(({ verdict }) => verdict)).toEqual([
      'below-dirty',
      'differs',
    ]);
  });

  it('of the empty filter is held against the filter without media', () => {
    const empty = assess({ ...model, packing: {} }).dutyPoint.flowM3PerS;
    expect(compared(flow('clean-empty', 500)).computed).toBe(empty);
  });

  it('as left proves the packing that was built, too little as well as too much', () => {
    const built: Model = { ...model, packedState: 'as-left' };
    expect(compared(flow('as-left', 0.9 * clean), built)).toMatchObject({
      verdict: 'agrees',
      computed: assessment.dutyPoint.flowM3PerS,
    });
    expect(compared(flow('as-left', 0.8 * clean), built).verdict).toBe('differs');
    expect(compared(flow('as-left', 1.2 * clean), built).verdict).toBe('differs');
  });

  it('as left is not compared with the packing that was found', () => {
    const { verdict, computed } = compared(flow('as-left', 100));
    expect(verdict).toBe('not-compared');
    expect(computed).toBeUndefined();
  });
});

describe('other bench tests', () => {
  it('of watts are held against the stated power', () => {
    const watts = (powerW: number): BenchTest => ({
      kind: 'power',
      id: 'w',
      state: 'as-found',
      powerW,
      doubtW: 0.5,
    });
    expect(compared(watts(13)).verdict).toBe('agrees');
    expect(compared(watts(20))).toMatchObject({ verdict: 'differs', computed: 13, measured: 20 });
  });

  it('of the shut-off head are held against the first point of the curve', () => {
    const head: BenchTest = { kind: 'shutoff-head', id: 'h', state: 'as-found', headM: 0.8, doubtM: 0.02 };
    expect(compared(head)).toMatchObject({ verdict: 'differs', measured: 0.8 });
    const points = withFilter(model, {
      pump: {
        ...model.filter.pump,
        curve: {
          kind: 'points',
          points: [
            { flowM3PerS: 0, headM: 0.8 },
            { flowM3PerS: litresPerHour(400), headM: 0.5 },
            { flowM3PerS: litresPerHour(850), headM: 0 },
          ],
        },
      },
    });
    expect(compared(head, points)).toMatchObject({ verdict: 'agrees', computed: 0.8 });
  });

  it('of displaced water are held against the room of the chamber', () => {
    const displaced = (chamber: string, litres: number): BenchTest => ({
      kind: 'displacement',
      id: 'd',
      state: 'as-found',
      chamber,
      volumeM3: litres / 1000,
      doubtM3: 2e-5,
    });
    // 168 × 168 × 58 mm
    expect(compared(displaced('basket-2', 1.64)).computed).toBeCloseTo(0.168 * 0.168 * 0.058, 12);
    expect(compared(displaced('basket-2', 1.64)).verdict).toBe('agrees');
    expect(compared(displaced('basket-2', 3)).verdict).toBe('differs');
    expect(compared(displaced('attic', 3)).verdict).toBe('not-compared');
  });
});
