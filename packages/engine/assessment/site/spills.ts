import { GRAVITY } from '../../laws/constants.ts';
import type { HoseRun } from '../../model/model.ts';
import type { Placing } from '../../model/placing.ts';
import { compileNetwork } from '../../network/compile.ts';
import type { Link } from '../../network/links.ts';
import { dropOf, flowOf, solveNetwork } from '../../network/solve.ts';
import type { Compiled } from '../compiled.ts';
import { filterFlow } from '../dirt/transport.ts';
import { barbsLaw, coilLaw, fittingsLaw, hoseLaw } from '../hydraulics/linkLaws.ts';
import type { WaterState } from '../hydraulics/water.ts';
import { roomInBox } from './levels.ts';
import { outletEnds } from './outlets.ts';
import type { Spill } from './site.ts';

/** Depth to which a hose can draw the tank down: its air hole where that is higher than its mouth. */
const drawsTo = (mouthM: number, holeM: number | undefined): Pick<Spill, 'fallM' | 'endedBy'> =>
  holeM !== undefined && holeM < mouthM
    ? { fallM: holeM, endedBy: 'hole' }
    : { fallM: mouthM, endedBy: 'mouth' };

/** Flow that a full hose siphons from the tank to its open end, m³/s; its check valve may jam and is not counted. */
const siphonFlow = (run: HoseRun, fallM: number, water: WaterState): number => {
  if (fallM <= 0) return 0;
  const open: HoseRun = { ...run, fittings: [...run.fittings, 'exit'] };
  const laws = [hoseLaw(run), coilLaw(run), fittingsLaw(open, 'intake', water), barbsLaw(run)];
  const links: Link[] = laws
    .flatMap((law) => (law ? [law] : []))
    .map((law, place, all) => ({
      id: `piece-${place}`,
      from: place === 0 ? 'tank' : `n${place}`,
      to: place === all.length - 1 ? 'floor' : `n${place + 1}`,
      law,
    }));
  const result = compileNetwork({
    fixedHeadsM: { tank: 0, floor: -fallM },
    links,
    kinematicViscosityM2PerS: water.kinematicViscosityM2PerS,
    gravityMPerS2: GRAVITY,
    usualFlowM3PerS: 1e-4,
  });
  if (!result.ok) throw new Error(`a siphon cannot be laid out: ${result.problem.code}`);
  solveNetwork(result.network);
  return flowOf(result.network, 'piece-0');
};

/** Rise of the tank's surface over the edge that it runs over into a box under it, m; absent without one. */
const riseOverEdge = ({ layout, network }: Compiled): number | undefined => {
  if (!layout.gravityFed) return undefined;
  const edge = layout.weirs.find(({ from }) => from === layout.inletSpace);
  return edge && Math.max(0, dropOf(network, edge.id));
};

const spill = (
  compiled: Compiled,
  cause: Spill['cause'],
  how: Pick<Spill, 'fallM' | 'endedBy'> & { readonly flowM3PerS?: number },
): Spill[] => {
  const spareM3 = compiled.model.filter.placing!.spareM3 ?? roomInBox(compiled);
  const volumeM3 = compiled.model.tank.surfaceM2! * how.fallM;
  if (volumeM3 <= 0) return [];
  const flow = how.flowM3PerS ?? 0;
  return [
    {
      cause,
      volumeM3,
      fallM: how.fallM,
      endedBy: how.endedBy,
      ...(flow > 0 ? { flowM3PerS: flow, timeS: volumeM3 / flow } : {}),
      ...(spareM3 === undefined ? {} : { spareM3 }),
    },
  ];
};

/** A hose comes off at a filter that stands below the tank. */
const hosesOff = (compiled: Compiled, placing: Placing): Spill[] => {
  const { intake, outlet } = compiled.model.filter;
  if (!intake || !outlet) return [];
  const { water } = compiled;
  const drawn = drawsTo(placing.intakeDepthM, placing.intakeHoleM);
  const back = drawsTo(placing.returnDepthM, placing.returnHoleM);
  const [end] = outletEnds(compiled.model);
  const backFlow = siphonFlow(end!.run, placing.lidDepthM, water);
  return [
    ...spill(compiled, 'intake-hose-off', {
      ...drawn,
      flowM3PerS: siphonFlow(intake, placing.lidDepthM, water),
    }),
    ...spill(compiled, 'outlet-hose-off-running', { ...drawn, flowM3PerS: filterFlow(compiled) }),
    ...(placing.lidDepthM > 0
      ? spill(compiled, 'outlet-hose-off-stopped', { ...back, flowM3PerS: backFlow })
      : []),
  ];
};

/** The pump stops over a sump: what stands above the edge runs down, and what the return siphons back. */
const powerFails = (compiled: Compiled, placing: Placing): Spill[] => {
  const surfaceRiseM = placing.surfaceRiseM ?? riseOverEdge(compiled);
  if (surfaceRiseM === undefined) return [];
  const back = drawsTo(placing.returnDepthM, placing.returnHoleM);
  const edge = { fallM: surfaceRiseM, endedBy: 'edge' } as const;
  return spill(compiled, 'power-fails', back.fallM > surfaceRiseM ? back : edge);
};

/**
 * Water that leaves the tank when a hose comes off or the power fails: the tank's surface times the fall until air
 * gets into the hose. Flows are those at first, at the full head.
 */
export const spillsOf = (compiled: Compiled): Spill[] => {
  const { placing } = compiled.model.filter;
  if (!placing || compiled.model.tank.surfaceM2 === undefined) return [];
  return [...hosesOff(compiled, placing), ...powerFails(compiled, placing)];
};
