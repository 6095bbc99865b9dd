import { bytesOn, floatsOn, integersOn, type Slab } from '../numerics/slab.ts';
import type { NetworkSpec } from './links.ts';
import { findWays, type Graph, layGraph, type Ways } from './ways.ts';

/** The graph of a network cut into a tree and the chords that close its loops. */
export interface Topology {
  readonly nodes: readonly string[];
  /** Ends of each link; the last links tie every fixed head to the ground, node 0. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** The link of each closing way that the tree leaves out: its one-way link, if there is one. */
  readonly chords: Int32Array;
  /** Tree links from the ground outward: the link, the node it reaches, the node it comes from and the sense. */
  readonly walkLink: Int32Array;
  readonly walkNode: Int32Array;
  readonly walkParent: Int32Array;
  readonly walkSign: Float64Array;
}

/** Ways of a network and the loops that they close, each in the sense of its closing way. */
export interface Loops {
  readonly ways: Ways;
  /** By loop, the way that closes it. */
  readonly closingWay: readonly number[];
  /** By loop, the other ways in it, and the sense, 1 or −1, in which it runs through them. */
  readonly start: readonly number[];
  readonly way: readonly number[];
  readonly sense: readonly number[];
}

/** What makes a network unfit to solve. */
export type TopologyProblem =
  | { readonly code: 'no-fixed-head' }
  | { readonly code: 'disconnected'; readonly nodes: readonly string[] };

/** Numbers of the links that decide how a network is cut. */
export interface LinkWeights {
  /** Head slope of each link at a usual flow, s/m², 0 or more. */
  readonly usualSlope: Float64Array;
  readonly isOneWay: Uint8Array;
  /** Nodes with fixed heads, in the order of their ties. */
  readonly fixed: readonly string[];
}

/** What the ways take at a usual flow; less than nothing where they only hold levels, endless where one-way. */
const weighWays = (ways: Ways, usualSlope: Float64Array, firstTie: number): number[] => {
  const weight: number[] = [];
  for (let way = 0; way < ways.count; way += 1) {
    let sum = 0;
    let holdsOnly = true;
    for (let at = ways.start[way]!; at < ways.start[way + 1]!; at += 1) {
      if (ways.member[at]! >= firstTie) continue;
      holdsOnly = false;
      sum += usualSlope[ways.member[at]!]!;
    }
    weight.push(holdsOnly ? -1 : ways.oneWayLink[way]! >= 0 ? Number.POSITIVE_INFINITY : sum);
  }
  return weight;
};

/** The node that stands for all that are joined to this one. */
const rootOf = (parent: Int32Array, start: number): number => {
  let node = start;
  while (parent[node] !== node) {
    parent[node] = parent[parent[node]!]!;
    node = parent[node]!;
  }
  return node;
};

/** Joins junctions by the ways that resist least; lists those that close a loop. */
const closingWays = (ways: Ways, weight: readonly number[], parent: Int32Array): number[] => {
  const order: number[] = [];
  for (let way = 0; way < ways.count; way += 1) order.push(way);
  order.sort((a, b) => (weight[a] === weight[b] ? a - b : weight[a]! - weight[b]!));
  for (let node = 0; node < parent.length; node += 1) parent[node] = node;
  const closing: number[] = [];
  for (const way of order) {
    const a = rootOf(parent, ways.from[way]!);
    const b = rootOf(parent, ways.to[way]!);
    if (a === b) closing.push(way);
    else parent[a] = b;
  }
  return closing;
};

/** The link of a closing way that the tree leaves out: never one that holds a level. */
const chordOf = (ways: Ways, way: number, firstTie: number): number => {
  if (ways.oneWayLink[way]! >= 0) return ways.oneWayLink[way]!;
  let at = ways.start[way]!;
  while (ways.member[at]! >= firstTie) at += 1;
  return ways.member[at]!;
};

interface Walk {
  readonly walkLink: Int32Array;
  readonly walkNode: Int32Array;
  readonly walkParent: Int32Array;
  readonly walkSign: Float64Array;
  /** By node: its place in the walk plus one, 0 for the ground and for nodes that were not reached. */
  readonly stepOf: Int32Array;
  readonly depth: Int32Array;
  readonly reached: number;
}

/** Goes through the tree, which is all links but the chords, from the ground outward, nearest nodes first. */
const walkTree = (graph: Graph, isChord: Uint8Array, slab: Slab): Walk => {
  const { from, to, linksStart, linksAt } = graph;
  const nodeCount = graph.nodes.length;
  const walkLink = integersOn(slab, nodeCount - 1);
  const walkNode = integersOn(slab, nodeCount - 1);
  const walkParent = integersOn(slab, nodeCount - 1);
  const walkSign = floatsOn(slab, nodeCount - 1);
  const stepOf = integersOn(slab, nodeCount);
  const depth = integersOn(slab, nodeCount);
  let reached = 0;
  for (let place = 0; place <= reached; place += 1) {
    const parent = place === 0 ? 0 : walkNode[place - 1]!;
    const cameBy = place === 0 ? -1 : walkLink[place - 1]!;
    for (let at = linksStart[parent]!; at < linksStart[parent + 1]!; at += 1) {
      const link = linksAt[at]!;
      if (link === cameBy || isChord[link] === 1) continue;
      const forward = from[link] === parent;
      const node = forward ? to[link]! : from[link]!;
      walkLink[reached] = link;
      walkNode[reached] = node;
      walkParent[reached] = parent;
      walkSign[reached] = forward ? 1 : -1;
      depth[node] = depth[parent]! + 1;
      reached += 1;
      stepOf[node] = reached;
    }
  }
  return { walkLink, walkNode, walkParent, walkSign, stepOf, depth, reached };
};

/** A graph cut into its tree and the ways that close loops, each with its chord. */
interface Cut {
  readonly graph: Graph;
  readonly ways: Ways;
  readonly walk: Walk;
  readonly closing: readonly number[];
  readonly chords: Int32Array;
}

/** The loop of each closing way: along it, then back through the tree from its chord's end to its start. */
const closeLoops = (cut: Cut, slab: Slab): Loops => {
  const { graph, ways, walk, closing, chords } = cut;
  const { walkLink, walkParent, walkSign, stepOf, depth } = walk;
  const start = [0];
  const loopWay: number[] = [];
  const sense: number[] = [];
  // By way, the last loop that was seen to run through it, plus one.
  const seen = integersOn(slab, ways.count);
  for (let loop = 0; loop < closing.length; loop += 1) {
    const chord = chords[loop]!;
    seen[closing[loop]!] = loop + 1;
    const forward = ways.senseOf[chord] === 1;
    let head = forward ? graph.to[chord]! : graph.from[chord]!;
    let tail = forward ? graph.from[chord]! : graph.to[chord]!;
    while (head !== tail) {
      const climbHead = depth[head]! >= depth[tail]!;
      const step = stepOf[climbHead ? head : tail]! - 1;
      if (climbHead) head = walkParent[step]!;
      else tail = walkParent[step]!;
      const link = walkLink[step]!;
      const way = ways.wayOf[link]!;
      if (seen[way] === loop + 1) continue;
      seen[way] = loop + 1;
      loopWay.push(way);
      sense.push((climbHead ? -1 : 1) * walkSign[step]! * ways.senseOf[link]!);
    }
    start.push(loopWay.length);
  }
  return { ways, closingWay: closing, start, way: loopWay, sense };
};

/**
 * Gathers links in ways and cuts those into tree and closing ways. The closing ones resist most (one-way links
 * first of all), so that loops run mostly through ways that take little head and the loop equations stay well
 * conditioned.
 */
export const layTopology = (
  spec: NetworkSpec,
  { usualSlope, isOneWay, fixed }: LinkWeights,
  slab: Slab,
): { ok: true; topology: Topology; loops: Loops } | { ok: false; problem: TopologyProblem } => {
  if (fixed.length === 0) return { ok: false, problem: { code: 'no-fixed-head' } };
  const firstTie = spec.links.length;
  const graph = layGraph(spec, fixed, slab);
  const ways = findWays(graph, isOneWay, slab);
  const weight = weighWays(ways, usualSlope, firstTie);
  const closing = closingWays(ways, weight, integersOn(slab, graph.nodes.length));
  const chords = integersOn(slab, closing.length);
  const isChord = bytesOn(slab, graph.from.length);
  for (let loop = 0; loop < closing.length; loop += 1) {
    chords[loop] = chordOf(ways, closing[loop]!, firstTie);
    isChord[chords[loop]!] = 1;
  }
  const walk = walkTree(graph, isChord, slab);
  if (walk.reached + 1 < graph.nodes.length) {
    const apart = graph.nodes.filter((_, node) => node > 0 && walk.stepOf[node] === 0);
    return { ok: false, problem: { code: 'disconnected', nodes: apart } };
  }
  const { nodes, from, to } = graph;
  const { walkLink, walkNode, walkParent, walkSign } = walk;
  return {
    ok: true,
    topology: { nodes, from, to, chords, walkLink, walkNode, walkParent, walkSign },
    loops: closeLoops({ graph, ways, walk, closing, chords }, slab),
  };
};
