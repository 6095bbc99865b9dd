import type { Link, NetworkSpec } from './links.ts';

/** The graph of a network cut into a tree and the chords that close its loops. */
export interface Topology {
  readonly nodes: readonly string[];
  /** Ends of each link; the last links tie every fixed head to the ground, node 0. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly chords: Int32Array;
  /** By chord, the links of its loop and the sense, 1 or −1, in which it runs through them; the chord first. */
  readonly loopStart: Int32Array;
  readonly loopLink: Int32Array;
  readonly loopSign: Int8Array;
  /** Tree links from the ground outward: the link, the node it reaches, the node it comes from and the sense. */
  readonly walkLink: Int32Array;
  readonly walkNode: Int32Array;
  readonly walkParent: Int32Array;
  readonly walkSign: Int8Array;
}

/** What makes a network unfit to solve. */
export type TopologyProblem =
  | { readonly code: 'no-fixed-head' }
  | { readonly code: 'disconnected'; readonly nodes: readonly string[] };

interface Ends {
  readonly from: Int32Array;
  readonly to: Int32Array;
}

const numberNodes = (spec: NetworkSpec, fixed: readonly string[]): { nodes: string[]; ends: Ends } => {
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
  for (const [place, node] of fixed.entries()) to[linkCount + place] = numberOf(node);
  for (const [place, link] of spec.links.entries()) {
    from[place] = numberOf(link.from);
    to[place] = numberOf(link.to);
  }
  return { nodes, ends: { from, to } };
};

/** Joins nodes by links in the given order and marks those that joined two parts: the tree. */
const growTree = (nodeCount: number, order: Int32Array, { from, to }: Ends): Uint8Array => {
  const parent = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node += 1) parent[node] = node;
  const root = (start: number): number => {
    let node = start;
    while (parent[node] !== node) {
      parent[node] = parent[parent[node]!]!;
      node = parent[node]!;
    }
    return node;
  };
  const inTree = new Uint8Array(from.length);
  for (const link of order) {
    const a = root(from[link]!);
    const b = root(to[link]!);
    if (a === b) continue;
    parent[a] = b;
    inTree[link] = 1;
  }
  return inTree;
};

/** Links of the tree at each node, as flat arrays. */
const treeLinksByNode = (nodeCount: number, inTree: Uint8Array, { from, to }: Ends) => {
  const start = new Int32Array(nodeCount + 2);
  const count = (node: number): void => {
    start[node + 2] = start[node + 2]! + 1;
  };
  for (let link = 0; link < inTree.length; link += 1) {
    if (inTree[link] === 0) continue;
    count(from[link]!);
    count(to[link]!);
  }
  for (let node = 2; node < start.length; node += 1) start[node] = start[node]! + start[node - 1]!;
  const links = new Int32Array(start[nodeCount + 1]!);
  const put = (node: number, link: number): void => {
    links[start[node + 1]!] = link;
    start[node + 1] = start[node + 1]! + 1;
  };
  for (let link = 0; link < inTree.length; link += 1) {
    if (inTree[link] === 0) continue;
    put(from[link]!, link);
    put(to[link]!, link);
  }
  return { start, links };
};

interface Walk {
  readonly walkLink: Int32Array;
  readonly walkNode: Int32Array;
  readonly walkParent: Int32Array;
  readonly walkSign: Int8Array;
  /** By node: its place in the walk plus one, 0 for the ground and for nodes that were not reached. */
  readonly stepOf: Int32Array;
  readonly depth: Int32Array;
  readonly reached: number;
}

/** Goes through the tree from the ground outward, nearest nodes first. */
const walkTree = (nodeCount: number, inTree: Uint8Array, ends: Ends): Walk => {
  const { start, links } = treeLinksByNode(nodeCount, inTree, ends);
  const room = (): Int32Array => new Int32Array(Math.max(0, nodeCount - 1));
  const [walkLink, walkNode, walkParent] = [room(), room(), room()];
  const walkSign = new Int8Array(walkLink.length);
  const stepOf = new Int32Array(nodeCount);
  const depth = new Int32Array(nodeCount);
  let reached = 0;
  for (let place = 0; place <= reached; place += 1) {
    const parent = place === 0 ? 0 : walkNode[place - 1]!;
    const cameBy = place === 0 ? -1 : walkLink[place - 1]!;
    for (let at = start[parent]!; at < start[parent + 1]!; at += 1) {
      const link = links[at]!;
      if (link === cameBy) continue;
      const forward = ends.from[link] === parent;
      const node = forward ? ends.to[link]! : ends.from[link]!;
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

/** The loop of each chord: along the chord, then back through the tree from its end to its start. */
const closeLoops = (chords: Int32Array, ends: Ends, walk: Walk) => {
  const { walkLink, walkParent, walkSign, stepOf, depth } = walk;
  const loopStart = new Int32Array(chords.length + 1);
  const links: number[] = [];
  const signs: number[] = [];
  for (const [place, chord] of chords.entries()) {
    links.push(chord);
    signs.push(1);
    let head = ends.to[chord]!;
    let tail = ends.from[chord]!;
    while (head !== tail) {
      const climbHead = depth[head]! >= depth[tail]!;
      const step = stepOf[climbHead ? head : tail]! - 1;
      links.push(walkLink[step]!);
      signs.push(climbHead ? -walkSign[step]! : walkSign[step]!);
      if (climbHead) head = walkParent[step]!;
      else tail = walkParent[step]!;
    }
    loopStart[place + 1] = links.length;
  }
  return { loopStart, loopLink: Int32Array.from(links), loopSign: Int8Array.from(signs) };
};

/** Ties of the fixed heads first, then links from the least to the most resistance. */
const treeOrder = (
  spec: NetworkSpec,
  linkCount: number,
  resistance: (link: Link, place: number) => number,
) => {
  const weight = new Float64Array(linkCount).fill(-1);
  for (const [place, link] of spec.links.entries()) weight[place] = resistance(link, place);
  return Int32Array.from(weight.keys()).sort((a, b) =>
    weight[a] === weight[b] ? a - b : weight[a]! - weight[b]!,
  );
};

/**
 * Cuts a network into tree and chords. The chords are the links that resist most (one-way links first of
 * all), so that loops run mostly through links that take little head and the loop equations stay well
 * conditioned.
 * @param resistance head slope of each link at a usual flow, s/m², 0 or more; Infinity for one-way links
 */
export const layTopology = (
  spec: NetworkSpec,
  resistance: (link: Link, place: number) => number,
): { ok: true; topology: Topology } | { ok: false; problem: TopologyProblem } => {
  const fixed = Object.keys(spec.fixedHeadsM).sort();
  if (fixed.length === 0) return { ok: false, problem: { code: 'no-fixed-head' } };
  const { nodes, ends } = numberNodes(spec, fixed);
  const inTree = growTree(nodes.length, treeOrder(spec, ends.from.length, resistance), ends);
  const walk = walkTree(nodes.length, inTree, ends);
  if (walk.reached + 1 < nodes.length) {
    const apart = nodes.filter((_, node) => node > 0 && walk.stepOf[node] === 0);
    return { ok: false, problem: { code: 'disconnected', nodes: apart } };
  }
  const chords = Int32Array.from(inTree.keys()).filter((link) => inTree[link] === 0);
  const { walkLink, walkNode, walkParent, walkSign } = walk;
  const loops = closeLoops(chords, ends, walk);
  return {
    ok: true,
    topology: { nodes, ...ends, chords, ...loops, walkLink, walkNode, walkParent, walkSign },
  };
};
