import { describe, expect, it } from 'vitest';
import type { Model } from '../../model/model.ts';
import { assess } from '../assess.ts';
import { familyModels } from '../testing/familyModels.ts';
import { litresPerHour, stackCanister, withFilter } from '../testing/models.ts';
import { type CurvePoint, pumpAndSystem } from './curves.ts';

const curvesOf = (model: Model) => {
  const { dutyPoint } = assess(model);
  return { ...pumpAndSystem(model, dutyPoint), dutyPoint };
};

/** Head at a flow on the straight line between the two points beside it. */
const headAt = (curve: readonly CurvePoint[], flowM3PerS: number): number => {
  const next = curve.findIndex((point) => point.flowM3PerS >= flowM3PerS);
  const [a, b] = [curve[Math.max(0, next - 1)]!, curve[next]!];
  if (b.flowM3PerS === a.flowM3PerS) return b.headM;
  return a.headM + ((b.headM - a.headM) * (flowM3PerS - a.flowM3PerS)) / (b.flowM3PerS - a.flowM3PerS);
};

/** The curve as it would be if nobody had told it the duty point. */
const without = (curve: readonly CurvePoint[], duty: CurvePoint): readonly CurvePoint[] =>
  curve.filter((point) => point !== duty);

describe('the curves of pump and system', () => {
  it.each(familyModels)('of a %s meet in its duty point and nowhere else', (_family, model) => {
    const { pump, system, dutyPoint } = curvesOf(model);
    const above = (flow: number): number => headAt(pump, flow) - headAt(system, flow);
    expect(above(dutyPoint.flowM3PerS)).toBeCloseTo(0, 9);
    for (const { flowM3PerS } of system.filter((point) => point.flowM3PerS <= pump.at(-1)!.flowM3PerS)) {
      if (flowM3PerS < 0.99 * dutyPoint.flowM3PerS) expect(above(flowM3PerS)).toBeGreaterThan(0);
      if (flowM3PerS > 1.01 * dutyPoint.flowM3PerS) expect(above(flowM3PerS)).toBeLessThan(0);
    }
  });

  it.each(familyModels)('of a %s run through its duty point without being told', (_family, model) => {
    const { pump, system, dutyPoint } = curvesOf(model);
    const { flowM3PerS, headM } = dutyPoint;
    // A chord of a curve with 32 points lies this near to it.
    expect(Math.abs(headAt(without(pump, dutyPoint), flowM3PerS) - headM)).toBeLessThan(
      5e-3 * pump[0]!.headM,
    );
    expect(Math.abs(headAt(without(system, dutyPoint), flowM3PerS) - headM)).toBeLessThan(
      5e-3 * pump[0]!.headM,
    );
  });

  it.each(familyModels)('of a %s rise for the system and fall for the pump', (_family, model) => {
    const { pump, system } = curvesOf(model);
    const steps = (curve: readonly CurvePoint[]): number[] =>
      curve.slice(1).map((point, place) => point.headM - curve[place]!.headM);
    expect(Math.max(...steps(pump))).toBeLessThan(0);
    expect(Math.min(...steps(system))).toBeGreaterThan(0);
  });

  it('the system asks for the lift before any water flows', () => {
    const { system } = curvesOf(withFilter(stackCanister(), { outletLiftM: 0.2 }));
    expect(system[0]!.headM).toBeCloseTo(0.2, 3);
    expect(system[0]!.flowM3PerS).toBeLessThan(litresPerHour(5));
  });

  it('the pump of the stack canister gives its shut-off head at no flow and no head at its free flow', () => {
    const { pump } = curvesOf(stackCanister());
    expect(pump[0]).toEqual({ flowM3PerS: 0, headM: 1.35 });
    expect(pump.at(-1)!.flowM3PerS).toBeCloseTo(litresPerHour(850), 12);
    expect(pump.at(-1)!.headM).toBeCloseTo(0, 12);
  });

  it('a measured curve is drawn through its points and no further', () => {
    const points = [
      { flowM3PerS: 0, headM: 1.2 },
      { flowM3PerS: litresPerHour(400), headM: 0.9 },
      { flowM3PerS: litresPerHour(700), headM: 0.4 },
    ];
    const model = stackCanister();
    const { pump } = curvesOf(
      withFilter(model, { pump: { ...model.filter.pump, curve: { kind: 'points', points } } }),
    );
    for (const { flowM3PerS, headM } of points)
      expect(Math.abs(headAt(pump, flowM3PerS) - headM)).toBeLessThan(5e-3);
    expect(pump.at(-1)!.flowM3PerS).toBeCloseTo(litresPerHour(700), 12);
  });
});
