import { GRAVITY } from '../../laws/constants.ts';
import { velocityHead, velocityInBore } from '../../laws/hydraulics/jet.ts';
import type { HoseRun } from '../../model/model.ts';
import { dropOf, flowOf } from '../../network/solve.ts';
import type { Compiled } from '../compiled.ts';
import { filterFlow } from '../dirt/transport.ts';
import { openBore } from '../hydraulics/linkLaws.ts';
import { outletEnds } from './outlets.ts';
import type { PartPressure } from './site.ts';

/** Pressure against the air, Pa, below which a leak neither drips nor draws. */
const LEVEL_PA = 100;

const nodeHead = ({ network }: Compiled, node: string): number =>
  network.nodeHead[network.topology.nodes.indexOf(node)]!;

/** Head of the water's speed in a run, m. */
const speedHead = (compiled: Compiled, name: string, run: HoseRun): number =>
  velocityHead(
    velocityInBore({ flowM3PerS: flowOf(compiled.network, `${name}:hose`), boreM: openBore(run) }),
  );

/** What the stretch of a hose takes that lies between its mouth in the tank and its highest point. */
const upToHump = (compiled: Compiled, end: { name: string; run: HoseRun; lengthM: number }): number =>
  dropOf(compiled.network, `${end.name}:hose`) *
  (end.run.lengthM > 0 ? Math.min(1, Math.max(0, end.lengthM) / end.run.lengthM) : 0);

interface Place {
  readonly part: PartPressure['part'];
  readonly heightM: number;
  /** Head of the standing pressure, against the tank's surface, m. */
  readonly headM: number;
}

const intakeHump = (compiled: Compiled): Place[] => {
  const { intake, placing } = compiled.model.filter;
  if (!intake || !placing) return [];
  const lengthM = placing.humpM + placing.intakeDepthM;
  // All fittings are taken to lie before the hump: that is where strainers are, and the worst case for air.
  const taken =
    dropOf(compiled.network, 'intake:fittings') +
    upToHump(compiled, { name: 'intake', run: intake, lengthM });
  const headM = -taken - speedHead(compiled, 'intake', intake);
  return [{ part: 'intake-hump', heightM: placing.humpM, headM }];
};

const outletHump = (compiled: Compiled): Place[] => {
  const [end] = outletEnds(compiled.model);
  const { placing } = compiled.model.filter;
  if (!end || !placing) return [];
  const lengthM = placing.humpM + (end.liftM > 0 ? -end.liftM : placing.returnDepthM);
  // What the water loses at its mouth is its speed, so that only the hose behind the hump is left.
  const headM = end.liftM + upToHump(compiled, { ...end, lengthM });
  return [{ part: 'outlet-hump', heightM: Math.max(placing.humpM, end.liftM), headM }];
};

/** Housing and pump of a filter that stands shut between two hoses. */
const shutParts = (compiled: Compiled): Place[] => {
  const { intake, outlet, placing } = compiled.model.filter;
  const { layout } = compiled;
  if (!intake || !outlet || !placing || layout.weirs.length > 0) return [];
  const [before, behind] =
    layout.pumpPlace === 'first' ? ['pump:in', layout.inletSpace] : [layout.outletSpace, 'pump:out'];
  const heightM = -placing.lidDepthM;
  const spaces = layout.spaces
    .map(({ id }) => id)
    .filter((id) => compiled.network.topology.nodes.includes(id));
  const lowest = Math.min(...spaces.map((id) => nodeHead(compiled, id)));
  return [
    { part: 'housing', heightM, headM: lowest },
    { part: 'pump-inlet', heightM, headM: nodeHead(compiled, before) },
    { part: 'pump-outlet', heightM, headM: nodeHead(compiled, behind) },
  ];
};

const leaksAt = (gaugePa: number): PartPressure['leaks'] => {
  if (Math.abs(gaugePa) <= LEVEL_PA) return 'neither';
  return gaugePa > 0 ? 'water-out' : 'air-in';
};

/**
 * Which parts stand above and which below the pressure of the air while the pump runs, at the flows of the last
 * solve: ρg(head − height). In hoses the head of the water's speed is taken off.
 */
export const pressuresOf = (compiled: Compiled): PartPressure[] => {
  if (filterFlow(compiled) <= 0) return [];
  const weight = compiled.water.densityKgPerM3 * GRAVITY;
  return [...intakeHump(compiled), ...shutParts(compiled), ...outletHump(compiled)].map(
    ({ part, heightM, headM }) => {
      const gaugePa = weight * (headM - heightM);
      return { part, heightM, gaugePa, leaks: leaksAt(gaugePa) };
    },
  );
};
