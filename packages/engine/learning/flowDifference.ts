import type { TimedFilling } from '../model/model.ts';
import { effectiveFreedom, relativeScatter, studentFactor, timedFlow } from './timedFlow.ts';

/** What two timed fillings, one before and one after a change, say of the change. */
export interface FlowDifference {
  /** Flow after less flow before, m³/s, and its half-width (95.45 %). */
  readonly differenceM3PerS: number;
  readonly doubtM3PerS: number;
  /** True where both filled the same vessel, so that what is wrong with its mark is wrong in both and cancels. */
  readonly sameVessel: boolean;
  /** True where the difference is more than its doubt: more than the scatter of the runs makes by itself. */
  readonly isReal: boolean;
}

/** A filling's flow, m³/s, and its relative standard doubts: of its vessel, its runs' scatter, its reading. */
const partsOf = (filling: TimedFilling) => ({
  ...relativeScatter(filling),
  flow: timedFlow(filling).flowM3PerS,
  vessel: filling.volumeDoubtM3 / 2 / filling.volumeM3,
});

/**
 * Difference of the flows of two timed fillings with its expanded doubt (95.45 %), paired through the vessel.
 *
 * ΔQ = Q₂ − Q₁ with u² = (Q₁ s₁)² + (Q₂ s₂)² + (Q₁ r₁)² + (Q₂ r₂)² + u_V², s the relative scatter of the mean of the
 * runs and r the reading's own, taken as independent, which is the cautious side. One vessel for both: its volume is
 * fully correlated and u_V = |ΔQ| u(V)/V; two vessels: both count in full. Degrees of freedom by
 * Welch–Satterthwaite. Source: JCGM 100:2008 (GUM), 5.2.2 (correlated inputs), G.4.1.
 *
 * @param before @param after fillings of one or more runs each
 */
export function flowDifference(before: TimedFilling, after: TimedFilling): FlowDifference {
  const [first, second] = [partsOf(before), partsOf(after)];
  const sameVessel = before.volumeM3 === after.volumeM3 && before.volumeDoubtM3 === after.volumeDoubtM3;
  const differenceM3PerS = second.flow - first.flow;
  const vessel = sameVessel
    ? Math.abs(differenceM3PerS) * first.vessel
    : Math.hypot(first.flow * first.vessel, second.flow * second.vessel);
  const scatters = [first, second].map(({ flow, scatter, scatterFreedom }) => ({
    size: flow * scatter,
    freedom: scatterFreedom,
  }));
  const readings = [first, second].map(({ flow, reading }) => ({ size: flow * reading, freedom: Infinity }));
  const parts = [...scatters, ...readings, { size: vessel, freedom: Infinity }];
  const standard = Math.hypot(...parts.map(({ size }) => size));
  const doubtM3PerS = studentFactor(effectiveFreedom(parts)) * standard;
  return { differenceM3PerS, doubtM3PerS, sameVessel, isReal: Math.abs(differenceM3PerS) > doubtM3PerS };
}
