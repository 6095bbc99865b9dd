import { bytesOn, integersOn, type Slab } from '../numerics/slab.ts';
import type { NetworkSpec } from './links.ts';

/** Ends of each link by the numbers of its nodes; the last links tie every fixed head to the ground, node 0. */
export interface Graph {
  readonly nodes: readonly string[];
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Links at each node, one after the other; a link from a node to itself twice. */
  readonly linksStart: Int32Array;
  readonly linksAt: Int32Array;
  /** Nodes where water comes in or goes out otherwise than by a link: the feet of falls, and then the ground. */
  readonly openNodes: readonly number[];
}

/**
 * Links in one line, between two junctions, share one flow: a way. Links that lead nowhere are in none.
 * A way with a one-way link runs along that link's sense, so that its flow is 0 or more.
 */
export interface Ways {
  readonly count: number;
  /** Members of all ways, one after the other, and the sense, 1 or −1, in which each stands in its way. */
  readonly start: Int32Array;
  readonly member: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** By link: its way, −1 where it leads nowhere, and its sense in it. */
  readonly wayOf: Int32Array;
  readonly senseOf: Int32Array;
  /** First one-way link of each way; −1 where there is none. */
  readonly oneWayLink: Int32Array;
}

/** Nodes by number and numbers by node. */
interface Numbering {
  readonly nodes: string[];
  readonly index: Map<string, number>;
}

const numberOf = ({ nodes, index }: Numbering, node: string): number => {
  const known = index.get(node);
  if (known !== undefined) return known;
  index.set(node, nodes.length);
  return nodes.push(node) - 1;
};

/** Numbers the nodes, ground first, then those of fixed heads, and lists the links at each. */
export const layGraph = (spec: NetworkSpec, fixed: readonly string[], slab: Slab): Graph => {
  const numbering: Numbering = { nodes: ['ground'], index: new Map() };
  const linkCount = spec.links.length;
  const from = integersOn(slab, linkCount + fixed.length);
  const to = integersOn(slab, linkCount + fixed.length);
  for (let place = 0; place < fixed.length; place += 1) {
    to[linkCount + place] = numberOf(numbering, fixed[place]!);
  }
  for (let place = 0; place < linkCount; place += 1) {
    const link = spec.links[place]!;
    from[place] = numberOf(numbering, link.from);
    to[place] = numberOf(numbering, link.to);
  }
  const openNodes: number[] = [];
  for (const { into } of spec.falls ?? []) openNodes.push(numberOf(numbering, into));
  if (openNodes.length > 0) openNodes.unshift(0);
  const { nodes } = numbering;
  const { linksStart, linksAt } = linksByNode({ nodes, from, to }, slab);
  return { nodes, from, to, linksStart, linksAt, openNodes };
};

const linksByNode = ({ nodes, from, to }: Pick<Graph, 'nodes' | 'from' | 'to'>, slab: Slab) => {
  const linksStart = integersOn(slab, nodes.length + 1);
  const linksAt = integersOn(slab, 2 * from.length);
  for (let link = 0; link < from.length; link += 1) {
    linksStart[from[link]!] = linksStart[from[link]!]! + 1;
    linksStart[to[link]!] = linksStart[to[link]!]! + 1;
  }
  // Ends of the nodes' parts at first; filled from the back, the last link first, they become their starts.
  for (let node = 1; node < linksStart.length; node += 1) {
    linksStart[node] = linksStart[node]! + linksStart[node - 1]!;
  }
  for (let link = from.length - 1; link >= 0; link -= 1) {
    putBefore(linksStart, linksAt, { node: to[link]!, link });
    putBefore(linksStart, linksAt, { node: from[link]!, link });
  }
  return { linksStart, linksAt };
};

const putBefore = (
  linksStart: Int32Array,
  linksAt: Int32Array,
  { node, link }: { readonly node: number; readonly link: number },
): void => {
  const at = linksStart[node]! - 1;
  linksStart[node] = at;
  linksAt[at] = link;
};

const otherEnd = (graph: Graph, link: number, node: number): number =>
  graph.from[link]! + graph.to[link]! - node;

/** Links at each node that water can come and go by; marks those that lead nowhere in `taken`. */
const cutDeadEnds = (graph: Graph, taken: Uint8Array, slab: Slab): Int32Array => {
  const { linksStart, linksAt } = graph;
  const degree = integersOn(slab, graph.nodes.length);
  for (let node = 0; node < degree.length; node += 1)
    degree[node] = linksStart[node + 1]! - linksStart[node]!;
  // As two links more: neither a dead end nor within a way.
  for (const node of graph.openNodes) degree[node] = degree[node]! + 2;
  for (let start = 0; start < degree.length; start += 1) {
    for (let node = start; degree[node] === 1; ) {
      let at = linksStart[node]!;
      while (taken[linksAt[at]!] === 1) at += 1;
      taken[linksAt[at]!] = 1;
      degree[node] = 0;
      node = otherEnd(graph, linksAt[at]!, node);
      degree[node] = degree[node]! - 1;
    }
  }
  return degree;
};

/** Ways that are being gathered, and the links that are in one or lead nowhere. */
interface Gathering {
  readonly graph: Graph;
  readonly ways: { -readonly [Name in keyof Ways]: Ways[Name] };
  readonly taken: Uint8Array;
  readonly degree: Int32Array;
}

const beginGathering = (graph: Graph, slab: Slab): Gathering => {
  const linkCount = graph.from.length;
  const taken = bytesOn(slab, linkCount);
  const ways = {
    count: 0,
    start: integersOn(slab, linkCount + 1),
    member: integersOn(slab, linkCount),
    from: integersOn(slab, linkCount),
    to: integersOn(slab, linkCount),
    wayOf: integersOn(slab, linkCount),
    senseOf: integersOn(slab, linkCount),
    oneWayLink: integersOn(slab, linkCount),
  };
  for (let link = 0; link < linkCount; link += 1) {
    ways.wayOf[link] = -1;
    ways.oneWayLink[link] = -1;
  }
  return { graph, ways, taken, degree: cutDeadEnds(graph, taken, slab) };
};

/** Gathers one way: from a link at its first node on to the next junction. */
const gatherWay = ({ graph, ways, taken, degree }: Gathering, first: number, start: number): void => {
  const { from, linksStart, linksAt } = graph;
  let filled = ways.start[ways.count]!;
  let node = start;
  for (let link = first; ; ) {
    taken[link] = 1;
    ways.wayOf[link] = ways.count;
    ways.senseOf[link] = from[link] === node ? 1 : -1;
    ways.member[filled] = link;
    filled += 1;
    node = otherEnd(graph, link, node);
    if (degree[node] !== 2 || node === start) break;
    let at = linksStart[node]!;
    while (taken[linksAt[at]!] === 1) at += 1;
    link = linksAt[at]!;
  }
  ways.from[ways.count] = start;
  ways.to[ways.count] = node;
  ways.count += 1;
  ways.start[ways.count] = filled;
};

/** Gathers links in ways: from junction to junction, and at last the rings that have none. */
export const findWays = (graph: Graph, isOneWay: Uint8Array, slab: Slab): Ways => {
  const { from, linksStart, linksAt } = graph;
  const gathering = beginGathering(graph, slab);
  const { ways, taken, degree } = gathering;
  for (let node = 0; node < degree.length; node += 1) {
    if (degree[node]! < 3) continue;
    for (let at = linksStart[node]!; at < linksStart[node + 1]!; at += 1) {
      if (taken[linksAt[at]!] === 0) gatherWay(gathering, linksAt[at]!, node);
    }
  }
  for (let link = 0; link < from.length; link += 1) {
    if (taken[link] === 0) gatherWay(gathering, link, from[link]!);
  }
  turnAlongOneWayLinks(ways, isOneWay);
  return ways;
};

/** Turns every way with a one-way link along the first of them. */
const turnAlongOneWayLinks = (ways: Ways, isOneWay: Uint8Array): void => {
  const { start, member, from, to, senseOf, oneWayLink } = ways;
  for (let way = 0; way < ways.count; way += 1) {
    let at = start[way]!;
    while (at < start[way + 1]! && isOneWay[member[at]!] === 0) at += 1;
    if (at === start[way + 1]!) continue;
    oneWayLink[way] = member[at]!;
    if (senseOf[member[at]!] === 1) continue;
    for (let place = start[way]!; place < start[way + 1]!; place += 1) {
      senseOf[member[place]!] = -senseOf[member[place]!]!;
    }
    const end = to[way]!;
    to[way] = from[way]!;
    from[way] = end;
  }
};
