import { bytesOn, floatsOn, newSlab, type Slab } from '../numerics/slab.ts';
import type { CompiledNetwork } from './compiled.ts';
import { compileFalls } from './falls.ts';
import { fillParameters, givenHead, letsOneWay, usualSlopeOf } from './lawNumbers.ts';
import type { LinkNumbers } from './linkNumbers.ts';
import type { NetworkSpec } from './links.ts';
import { layLoops } from './loopNumbers.ts';
import { tellFlows, tellHeads } from './tell.ts';
import { type Loops, layTopology, type Topology, type TopologyProblem } from './topology.ts';
import { layWays } from './wayNumbers.ts';

/**
 * Turns a network into flat arrays once, to be solved many times.
 * @returns the compiled network, or why there is none: no node with a fixed head, or nodes that no link
 *   joins to one
 */
export const compileNetwork = (
  spec: NetworkSpec,
): { ok: true; network: CompiledNetwork } | { ok: false; problem: TopologyProblem } => {
  const slab = newSlab();
  const fixed = Object.keys(spec.fixedHeadsM).sort();
  const linkCount = spec.links.length + fixed.length;
  const usualSlope = floatsOn(slab, linkCount);
  const isOneWay = bytesOn(slab, linkCount);
  for (let link = 0; link < spec.links.length; link += 1) {
    const { law } = spec.links[link]!;
    usualSlope[link] = usualSlopeOf(law, spec.usualFlowM3PerS, spec.gravityMPerS2);
    if (letsOneWay(law)) isOneWay[link] = 1;
  }
  const laid = layTopology(spec, { usualSlope, isOneWay, fixed }, slab);
  if (!laid.ok) return laid;
  const links = layLinks(spec, fixed, slab);
  return { ok: true, network: fill({ spec, usualSlope, links, ...laid }, slab) };
};

const layLinks = (spec: NetworkSpec, fixed: readonly string[], slab: Slab): LinkNumbers => {
  const { kind, parameters, tables } = fillParameters(spec, fixed, slab);
  const resistanceRatio = floatsOn(slab, kind.length);
  for (let link = 0; link < kind.length; link += 1) resistanceRatio[link] = 1;
  return {
    kind,
    parameters,
    tables,
    resistanceRatio,
    flow: floatsOn(slab, kind.length),
    drop: floatsOn(slab, kind.length),
    slope: floatsOn(slab, kind.length),
  };
};

interface Laid {
  readonly spec: NetworkSpec;
  readonly usualSlope: Float64Array;
  readonly links: LinkNumbers;
  readonly topology: Topology;
  readonly loops: Loops;
}

const fill = ({ spec, usualSlope, links, topology, loops: found }: Laid, slab: Slab): CompiledNetwork => {
  const { numbers: loops, wayAt } = layLoops(found, slab);
  const wayCount = wayAt.length;
  const chordCount = loops.matrix.size;
  const network: Omit<CompiledNetwork, keyof typeof told> = {
    spec,
    topology,
    kind: links.kind,
    parameters: links.parameters,
    tables: links.tables,
    resistanceRatio: links.resistanceRatio,
    links,
    head: floatsOn(slab, topology.nodes.length),
    telling: { flows: true, heads: true, reachSquared: 0, linkIndex: undefined },
    usualSlope,
    givenHeadM: givenHead(spec),
    ways: layWays(found.ways, wayAt, { links, usualSlope, slab }),
    loops,
    falls: compileFalls(spec, topology, { ways: found.ways, wayAt }),
    fallFlow: floatsOn(slab, spec.falls?.length ?? 0),
    fallen: floatsOn(slab, wayCount),
    before: floatsOn(slab, wayCount),
    chordFlow: floatsOn(slab, chordCount),
    trialFlow: floatsOn(slab, chordCount),
    residual: floatsOn(slab, chordCount),
    held: bytesOn(slab, chordCount),
  };
  return Object.setPrototypeOf(network, told);
};

/**
 * What is told when it is read. It is a prototype, because an object with accessors of its own is kept as a table, in
 * which the solver would have to search for every list of numbers.
 */
const told = {
  get linkIndex(): ReadonlyMap<string, number> {
    const { telling, spec } = here(this);
    telling.linkIndex ??= new Map(spec.links.map((link, place) => [link.id, place]));
    return telling.linkIndex;
  },
  get flow(): Float64Array {
    tellFlows(here(this));
    return here(this).links.flow;
  },
  get drop(): Float64Array {
    tellHeads(here(this));
    return here(this).links.drop;
  },
  get slope(): Float64Array {
    tellHeads(here(this));
    return here(this).links.slope;
  },
  get nodeHead(): Float64Array {
    tellHeads(here(this));
    return here(this).head;
  },
};

const here = (network: object): CompiledNetwork => network as CompiledNetwork;
