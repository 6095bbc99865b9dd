import type { Model } from '../../model/model.ts';
import type { LinkLaw, NetworkSpec } from '../../network/links.ts';
import { dropOf, flowOf, solveNetwork } from '../../network/solve.ts';
import type { Assessment } from '../assessment.ts';
import { compiledNetworkOf, layoutOf } from '../compile.ts';
import { usualConstants } from '../constants.ts';
import { filterNetwork } from './filterNetwork.ts';
import { pumpCurve } from './pumpCurve.ts';
import { waterState } from './water.ts';

/** A flow and the head that belongs to it. */
export type CurvePoint = Assessment['dutyPoint'];

/** The two curves that meet in the duty point, flows rising. */
export interface PumpAndSystem {
  /** Head that the pump gives, from no flow to its free flow or the last measured point. */
  readonly pump: readonly CurvePoint[];
  /** Head that hoses, fittings, clean media and lift ask for, to a little beyond what the pump can give. */
  readonly system: readonly CurvePoint[];
}

/** Points of each curve beside the duty point. */
const POINTS = 32;

/** How much steeper the pump that feeds the system falls than the line from rest to the duty point. */
const STEEPNESS = 100;

/** Flow at which the system's curve begins, as a share of the duty point's. */
const START = 1e-4;

/** The system is followed to this times the pumps' free flow. */
const BEYOND = 1.05;

/** The system is drawn no further above the pump's highest head than this. */
const ABOVE_SHUTOFF = 1.15;

const NOTHING: LinkLaw = { kind: 'resistance', linear: 0, quadratic: 0 };

/** A network in which one pump can be put in the place of all that run. */
interface System {
  readonly spec: NetworkSpec;
  readonly secondRuns: boolean;
}

const withPump = ({ spec, secondRuns }: System, law: LinkLaw): NetworkSpec => ({
  ...spec,
  links: spec.links.flatMap((link) => {
    if (link.id === 'pump') return [{ ...link, law }];
    if (secondRuns && link.id.startsWith('pump:beside')) return [];
    return [secondRuns && link.id === 'pump:behind' ? { ...link, law: NOTHING } : link];
  }),
});

/**
 * Where a pump that gives almost the same flow at any head would stand: on the system's curve, whatever the pump.
 * @param flowM3PerS what it would give without any head
 */
const systemPoint = (system: System, flowM3PerS: number, fallSPerM2: number): CurvePoint => {
  const shutoffHeadM = flowM3PerS * fallSPerM2;
  const net = compiledNetworkOf(
    withPump(system, { kind: 'pump', shutoffHeadM, coefficient: fallSPerM2, exponent: 1 }),
  );
  solveNetwork(net);
  return { flowM3PerS: flowOf(net, 'pump'), headM: -dropOf(net, 'pump') };
};

/**
 * The pump's curve at its set speed and the system's curve with clean media, as points in m³/s and m. The system's
 * starts where water begins to flow, which lift and weirs put above no head, and is cut off a little above the
 * pump's highest head.
 * @param duty the clean duty point of the same model, `assess(model).dutyPoint`; it is a point of both curves
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const pumpAndSystem = (model: Model, duty: CurvePoint): PumpAndSystem => {
  const { spec } = filterNetwork(model, layoutOf(model), {
    water: waterState(model.tank),
    constants: usualConstants,
  });
  const pumped: System = { spec, secondRuns: model.filter.secondPump?.running ?? false };
  const ofPumps = pumpCurve(model, POINTS);
  const most = ofPumps.at(-1)!.flowM3PerS;
  const even = Array.from({ length: POINTS + 1 }, (_, place) => (place / POINTS) * most);
  const rising = (points: readonly CurvePoint[]): CurvePoint[] =>
    points.toSorted((a, b) => a.flowM3PerS - b.flowM3PerS);
  const pump = rising([...ofPumps, duty]).filter(({ headM }) => headM >= -1e-12);
  if (duty.flowM3PerS <= 0) return { pump, system: [] };
  const highest = ABOVE_SHUTOFF * pump[0]!.headM;
  const fall = (STEEPNESS * Math.max(duty.headM, 1e-6)) / duty.flowM3PerS;
  // Where next to nothing flows, lift and weirs still ask for their head: that is where the curve begins.
  const trickle = START * duty.flowM3PerS;
  const start = systemPoint(pumped, trickle, (2 * highest) / trickle);
  // A bare lift tube is nearly at its free flow: the system goes on a little beyond it.
  const flows = [...even.slice(1), BEYOND * most];
  const system = [start, ...flows.map((flow) => systemPoint(pumped, flow, fall))];
  return {
    pump,
    system: rising([...system, duty]).filter(({ headM }) => headM <= highest),
  };
};
