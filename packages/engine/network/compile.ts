import { type LdlPlan, planLdl, slotOf } from '../numerics/ldl.ts';
import { type CompiledFall, compileFalls } from './falls.ts';
import { fillParameters, givenHead, isOneWay, usualSlopeOf } from './lawNumbers.ts';
import type { NetworkSpec } from './links.ts';
import { layTopology, type Topology, type TopologyProblem } from './topology.ts';

/**
 * A network as flat arrays, with the room that a solve needs; solving allocates nothing.
 * `flow` holds the last answer and is where the next solve starts. `resistanceRatio` multiplies what a
 * `resistance`, `one-way` or `conduit` link takes, and may be changed between solves.
 */
export interface CompiledNetwork {
  readonly spec: NetworkSpec;
  readonly topology: Topology;
  readonly linkIndex: ReadonlyMap<string, number>;
  readonly kind: Uint8Array;
  /** Links of each kind, by `LINK_KIND`. */
  readonly linksByKind: readonly Int32Array[];
  readonly parameters: Float64Array;
  /** Points of `pump-points` curves: flow, head, slope in turn. */
  readonly tables: Float64Array;
  readonly resistanceRatio: Float64Array;
  /** Head slope at the usual flow, s/m²: the first step from rest takes it instead of the slope at rest. */
  readonly usualSlope: Float64Array;
  /** Least head slope that the loop matrix is given, s/m²: keeps it positive definite where a law is flat. */
  readonly leastSlope: Float64Array;
  /** Largest head that is given whatever flows, m: the heads of pumps at no flow and the fixed heads. */
  readonly givenHeadM: number;
  readonly oneWayChord: Uint8Array;
  readonly falls: readonly CompiledFall[];
  /** What each fall carried at the last solve, m³/s, and what all of them send through each link of the tree. */
  readonly fallFlow: Float64Array;
  readonly fallen: Float64Array;
  /** For each link, where its slope goes in the loop matrix, and with which sign. */
  readonly entryStart: Int32Array;
  readonly entrySlot: Int32Array;
  readonly entrySign: Int8Array;
  readonly diagonalSlot: Int32Array;
  readonly matrix: LdlPlan;
  readonly chordFlow: Float64Array;
  readonly trialFlow: Float64Array;
  readonly step: Float64Array;
  readonly residual: Float64Array;
  readonly negativeResidual: Float64Array;
  readonly held: Uint8Array;
  readonly flow: Float64Array;
  readonly drop: Float64Array;
  readonly slope: Float64Array;
  readonly nodeHead: Float64Array;
}

/** Part of its usual slope that a link keeps in the loop matrix at least, and the least of all, s/m². */
const LEAST_SLOPE_RATIO = 1e-9;
const LEAST_SLOPE = 1e-30;

/** For each link the chords whose loops run through it, in the order of chords, as flat arrays. */
const chordsThrough = (topology: Topology) => {
  const { loopStart, loopLink, loopSign } = topology;
  const start = new Int32Array(topology.from.length + 1);
  for (const link of loopLink) start[link + 1] = start[link + 1]! + 1;
  for (let link = 1; link < start.length; link += 1) start[link] = start[link]! + start[link - 1]!;
  const next = start.slice();
  const chordOf = new Int32Array(loopLink.length);
  const signOf = new Int8Array(loopLink.length);
  for (let chord = 0; chord + 1 < loopStart.length; chord += 1) {
    for (let at = loopStart[chord]!; at < loopStart[chord + 1]!; at += 1) {
      const link = loopLink[at]!;
      chordOf[next[link]!] = chord;
      signOf[next[link]!] = loopSign[at]!;
      next[link] = next[link]! + 1;
    }
  }
  return { start, chordOf, signOf };
};

const layLoops = (topology: Topology) => {
  const { start, chordOf, signOf } = chordsThrough(topology);
  const pattern = Array.from(topology.chords, () => new Set<number>());
  const slots: number[] = [];
  const signs: number[] = [];
  const entryStart = new Int32Array(start.length);
  const eachPair = (visit: (a: number, b: number) => void, link: number): void => {
    for (let a = start[link]!; a < start[link + 1]!; a += 1)
      for (let b = a; b < start[link + 1]!; b += 1) visit(a, b);
  };
  const note = (a: number, b: number): void => {
    if (a === b) return;
    pattern[chordOf[a]!]!.add(chordOf[b]!);
    pattern[chordOf[b]!]!.add(chordOf[a]!);
  };
  for (let link = 0; link + 1 < start.length; link += 1) eachPair(note, link);
  const matrix = planLdl(pattern);
  const enter = (a: number, b: number): void => {
    slots.push(slotOf(matrix, chordOf[a]!, chordOf[b]!));
    signs.push(signOf[a]! * signOf[b]!);
  };
  for (let link = 0; link + 1 < start.length; link += 1) {
    eachPair(enter, link);
    entryStart[link + 1] = slots.length;
  }
  return {
    matrix,
    entryStart,
    entrySlot: Int32Array.from(slots),
    entrySign: Int8Array.from(signs),
    diagonalSlot: Int32Array.from(topology.chords, (_, chord) => slotOf(matrix, chord, chord)),
  };
};

/**
 * Turns a network into flat arrays once, to be solved many times.
 * @returns the compiled network, or why there is none: no node with a fixed head, or nodes that no link
 *   joins to one
 */
export const compileNetwork = (
  spec: NetworkSpec,
): { ok: true; network: CompiledNetwork } | { ok: false; problem: TopologyProblem } => {
  const slopes = spec.links.map(({ law }) => usualSlopeOf(law, spec.usualFlowM3PerS, spec.gravityMPerS2));
  const laid = layTopology(spec, (link, place) =>
    isOneWay(link.law) ? Number.POSITIVE_INFINITY : slopes[place]!,
  );
  if (!laid.ok) return laid;
  return { ok: true, network: fill(spec, laid.topology, slopes) };
};

const fill = (spec: NetworkSpec, topology: Topology, slopes: readonly number[]): CompiledNetwork => {
  const linkCount = topology.from.length;
  const usualSlope = new Float64Array(linkCount);
  usualSlope.set(slopes);
  const oneWay = (link: number): boolean => link < spec.links.length && isOneWay(spec.links[link]!.law);
  return {
    spec,
    topology,
    linkIndex: new Map(spec.links.map((link, place) => [link.id, place])),
    ...fillParameters(spec, linkCount),
    resistanceRatio: new Float64Array(linkCount).fill(1),
    usualSlope,
    leastSlope: usualSlope.map((slope) => Math.max(LEAST_SLOPE, LEAST_SLOPE_RATIO * slope)),
    givenHeadM: givenHead(spec),
    oneWayChord: Uint8Array.from(topology.chords, (link) => (oneWay(link) ? 1 : 0)),
    falls: compileFalls(spec, topology),
    fallFlow: new Float64Array(spec.falls?.length ?? 0),
    fallen: new Float64Array(linkCount),
    ...layLoops(topology),
    ...workRoom(linkCount, topology),
  };
};

/** Room for the flows and for one solve. */
const workRoom = (linkCount: number, topology: Topology) => {
  const chordCount = topology.chords.length;
  const numbers = (length: number): Float64Array => new Float64Array(length);
  return {
    chordFlow: numbers(chordCount),
    trialFlow: numbers(chordCount),
    step: numbers(chordCount),
    residual: numbers(chordCount),
    negativeResidual: numbers(chordCount),
    held: new Uint8Array(chordCount),
    flow: numbers(linkCount),
    drop: numbers(linkCount),
    slope: numbers(linkCount),
    nodeHead: numbers(topology.nodes.length),
  };
};
