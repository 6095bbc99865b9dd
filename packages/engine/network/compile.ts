import type { CompiledNetwork } from './compiled.ts';
import { compileFalls } from './falls.ts';
import { fillParameters, givenHead, isOneWay, usualSlopeOf } from './lawNumbers.ts';
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
  const linkCount = spec.links.length + Object.keys(spec.fixedHeadsM).length;
  const usualSlope = new Float64Array(linkCount);
  const oneWay = new Uint8Array(linkCount);
  for (let link = 0; link < spec.links.length; link += 1) {
    const { law } = spec.links[link]!;
    usualSlope[link] = usualSlopeOf(law, spec.usualFlowM3PerS, spec.gravityMPerS2);
    if (isOneWay(law)) oneWay[link] = 1;
  }
  const laid = layTopology(spec, { usualSlope, isOneWay: oneWay });
  if (!laid.ok) return laid;
  return { ok: true, network: fill(spec, laid, usualSlope) };
};

const fill = (
  spec: NetworkSpec,
  laid: { topology: Topology; loops: Loops },
  usualSlope: Float64Array,
): CompiledNetwork => {
  const linkCount = usualSlope.length;
  const numbers = (length: number): Float64Array => new Float64Array(length);
  const links: LinkNumbers = {
    ...fillParameters(spec, linkCount),
    resistanceRatio: numbers(linkCount).fill(1),
    flow: numbers(linkCount),
    drop: numbers(linkCount),
    slope: numbers(linkCount),
  };
  const { numbers: loops, wayAt, chordAt } = layLoops(laid.loops);
  const network: Omit<CompiledNetwork, keyof typeof told> = {
    spec,
    topology: { ...laid.topology, chords: chordAt.map((loop) => laid.topology.chords[loop]!) },
    linkIndex: new Map(spec.links.map((link, place) => [link.id, place])),
    kind: links.kind,
    parameters: links.parameters,
    tables: links.tables,
    resistanceRatio: links.resistanceRatio,
    links,
    head: numbers(laid.topology.nodes.length),
    telling: { flows: true, heads: true, reachSquared: 0 },
    usualSlope,
    givenHeadM: givenHead(spec),
    ways: layWays(laid.loops.ways, wayAt, { links, usualSlope }),
    loops,
    falls: compileFalls(spec, laid.topology, { ways: laid.loops.ways, wayAt }),
    fallFlow: numbers(spec.falls?.length ?? 0),
    ...workRoom(wayAt.length, chordAt.length),
  };
  return Object.setPrototypeOf(network, told);
};

/**
 * What is told when it is read. It is a prototype, because an object with accessors of its own is kept as a table, in
 * which the solver would have to search for every list of numbers.
 */
const told = {
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

/** Room for the flows and for one solve. */
const workRoom = (wayCount: number, chordCount: number) => ({
  fallen: new Float64Array(wayCount),
  before: new Float64Array(wayCount),
  chordFlow: new Float64Array(chordCount),
  trialFlow: new Float64Array(chordCount),
  residual: new Float64Array(chordCount),
  held: new Uint8Array(chordCount),
});
