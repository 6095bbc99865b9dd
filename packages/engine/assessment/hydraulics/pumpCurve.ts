import type { Model } from '../../model/model.ts';
import { compileNetwork } from '../../network/compile.ts';
import type { CompiledNetwork } from '../../network/compiled.ts';
import { dropAt } from '../../network/evaluate.ts';
import type { LinkLaw } from '../../network/links.ts';
import { bracketedRoot } from '../../numerics/roots.ts';
import { largestPumpFlow, pumpLaw, secondPumpLaw } from './pumpLaws.ts';

/** Head that a pump by itself gives at a flow, m. */
type HeadAt = (flowM3PerS: number) => number;

interface OnePump {
  readonly headAt: HeadAt;
  readonly largestM3PerS: number;
  /** Whether water may run back through it. */
  readonly runsBack: boolean;
}

const alone = (law: LinkLaw): CompiledNetwork => {
  const result = compileNetwork({
    fixedHeadsM: { tank: 0 },
    links: [{ id: 'pump', from: 'tank', to: 'out', law }],
    kinematicViscosityM2PerS: 1e-6,
    gravityMPerS2: 9.80665,
    usualFlowM3PerS: 1e-4,
  });
  if (!result.ok) throw new Error(`a pump alone cannot be laid out: ${result.problem.code}`);
  return result.network;
};

const headOf = (law: LinkLaw): HeadAt => {
  const net = alone(law);
  return (flowM3PerS) => -dropAt(net, 'pump', flowM3PerS);
};

const pumpsOf = (model: Model): { readonly first: OnePump; readonly second?: OnePump } => {
  const { pump, secondPump } = model.filter;
  const first = {
    headAt: headOf(pumpLaw(model)),
    largestM3PerS: largestPumpFlow(pump),
    runsBack: true,
  };
  if (!secondPump?.running) return { first };
  const second = {
    headAt: headOf(secondPumpLaw(secondPump)),
    largestM3PerS: largestPumpFlow(secondPump.pump),
    runsBack: secondPump.checkValveHeadM === undefined,
  };
  return { first, second };
};

/** Flow that a pump gives against a head, m³/s; back through it where the head is more than it has. */
const flowAgainst = ({ headAt, largestM3PerS, runsBack }: OnePump, headM: number): number => {
  if (!runsBack && headM >= headAt(0)) return 0;
  let far = largestM3PerS;
  while (headAt(far) > headM) far *= 2;
  let near = -largestM3PerS;
  while (headAt(near) < headM) near *= 2;
  return bracketedRoot((flow) => headM - headAt(flow), { low: near, high: far });
};

/** A flow and the head that the pumps give together at it. */
export interface PumpPointAt {
  readonly flowM3PerS: number;
  readonly headM: number;
}

/**
 * The curve of the pumps together at their set speeds, from no flow: one behind the other add their heads, side by
 * side their flows.
 * @param count steps along the curve
 */
export const pumpCurve = (model: Model, count: number): PumpPointAt[] => {
  const { first, second } = pumpsOf(model);
  const even = (most: number) => Array.from({ length: count + 1 }, (_, place) => (place / count) * most);
  if (!second)
    return even(first.largestM3PerS).map((flow) => ({ flowM3PerS: flow, headM: first.headAt(flow) }));
  if (model.filter.secondPump!.place === 'behind') {
    const most = Math.max(first.largestM3PerS, second.largestM3PerS);
    return even(most).map((flow) => ({
      flowM3PerS: flow,
      headM: first.headAt(flow) + second.headAt(flow),
    }));
  }
  const highest = Math.max(first.headAt(0), second.headAt(0));
  return even(highest)
    .map((headM) => ({ flowM3PerS: flowAgainst(first, headM) + flowAgainst(second, headM), headM }))
    .filter(({ flowM3PerS }) => flowM3PerS >= 0)
    .toSorted((a, b) => a.flowM3PerS - b.flowM3PerS);
};
