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
  readonly senseOf: Int8Array;
  /** First one-way link of each way; −1 where there is none. */
  readonly oneWayLink: Int32Array;
}

/** Numbers the nodes, ground first, then those of fixed heads, and lists the links at each. */
export const layGraph = (spec: NetworkSpec, fixed: readonly string[]): Graph => {
  const nodes = ['ground'];
  const index = new Map<string, number>();
  const numberOf = (node: string): number => {
    const known = index.get(node);
    if (known !== undefined) return known;
    index.set(node, nodes.length);
    return nodes.push(node) - 1;
  };
  const linkCount = spec.links.length;
  const from = new Int32Array(linkCount + fixed.length);
  const to = new Int32Array(linkCount + fixed.length);
  for (let place = 0; place < fixed.length; place += 1) to[linkCount + place] = numberOf(fixed[place]!);
  for (let place = 0; place < linkCount; place += 1) {
    from[place] = numberOf(spec.links[place]!.from);
    to[place] = numberOf(spec.links[place]!.to);
  }
  const feet = (spec.falls ?? []).map(({ into }) => numberOf(into));
  const openNodes = feet.length > 0 ? [0, ...feet] : feet;
  return { nodes, from, to, ...linksByNode(nodes.length, from, to), openNodes };
};

const linksByNode = (nodeCount: number, from: Int32Array, to: Int32Array) => {
  const start = new Int32Array(nodeCount + 2);
  for (let link = 0; link < from.length; link += 1) {
    start[from[link]! + 2] = start[from[link]! + 2]! + 1;
    start[to[link]! + 2] = start[to[link]! + 2]! + 1;
  }
  for (let node = 2; node < start.length; node += 1) start[node] = start[node]! + start[node - 1]!;
  const linksAt = new Int32Array(2 * from.length);
  for (let link = 0; link < from.length; link += 1) {
    for (const node of [from[link]!, to[link]!]) {
      linksAt[start[node + 1]!] = link;
      start[node + 1] = start[node + 1]! + 1;
    }
  }
  return { linksStart: start.subarray(0, nodeCount + 1), linksAt };
};

const otherEnd = (graph: Graph, link: number, node: number): number =>
  graph.from[link]! + graph.to[link]! - node;

/** Links at each node that water can come and go by; marks those that lead nowhere in `taken`. */
const cutDeadEnds = (graph: Graph, taken: Uint8Array): Int32Array => {
  const { linksStart, linksAt } = graph;
  const degree = new Int32Array(graph.nodes.length);
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

/** Gathers links in ways: from junction to junction, and at last the rings that have none. */
export const findWays = (graph: Graph, isOneWay: Uint8Array): Ways => {
  const { from, linksStart, linksAt } = graph;
  const linkCount = from.length;
  const numbers = (): Int32Array => new Int32Array(linkCount);
  const ways = { start: new Int32Array(linkCount + 1), member: numbers(), from: numbers(), to: numbers() };
  const wayOf = numbers().fill(-1);
  const senseOf = new Int8Array(linkCount);
  const taken = new Uint8Array(linkCount);
  const degree = cutDeadEnds(graph, taken);
  let count = 0;
  let filled = 0;
  const follow = (first: number, start: number): void => {
    let node = start;
    for (let link = first; ; ) {
      taken[link] = 1;
      wayOf[link] = count;
      senseOf[link] = from[link] === node ? 1 : -1;
      ways.member[filled] = link;
      filled += 1;
      node = otherEnd(graph, link, node);
      if (degree[node] !== 2 || node === start) break;
      let at = linksStart[node]!;
      while (taken[linksAt[at]!] === 1) at += 1;
      link = linksAt[at]!;
    }
    ways.from[count] = start;
    ways.to[count] = node;
    count += 1;
    ways.start[count] = filled;
  };
  for (let node = 0; node < degree.length; node += 1) {
    if (degree[node]! < 3) continue;
    for (let at = linksStart[node]!; at < linksStart[node + 1]!; at += 1) {
      if (taken[linksAt[at]!] === 0) follow(linksAt[at]!, node);
    }
  }
  for (let link = 0; link < linkCount; link += 1) if (taken[link] === 0) follow(link, from[link]!);
  const laid = { ...ways, count, wayOf, senseOf };
  return { ...laid, oneWayLink: turnAlongOneWayLinks(laid, isOneWay) };
};

/** Turns every way with a one-way link along the first of them. */
const turnAlongOneWayLinks = (ways: Omit<Ways, 'oneWayLink'>, isOneWay: Uint8Array): Int32Array => {
  const { start, member, from, to, senseOf } = ways;
  const oneWayLink = new Int32Array(ways.count).fill(-1);
  for (let way = 0; way < ways.count; way += 1) {
    let at = start[way]!;
    while (at < start[way + 1]! && isOneWay[member[at]!] === 0) at += 1;
    if (at === start[way + 1]!) continue;
    oneWayLink[way] = member[at]!;
    if (senseOf[member[at]!] === 1) continue;
    for (let place = start[way]!; place < start[way + 1]!; place += 1) {
      senseOf[member[place]!] = -senseOf[member[place]!]!;
    }
    [from[way], to[way]] = [to[way]!, from[way]!];
  }
  return oneWayLink;
};
