import type { Link, NetworkSpec } from './links.ts';

/** The graph of a network cut into a tree and the chords that close its loops. */
export interface Topology {
  readonly nodes: readonly string[];
  /** Ends of each link; the last links tie every fixed head to the ground, node 0. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly chords: Int32Array;
  /** For each chord, the links of its loop and the sense in which it runs through them. */
  readonly loops: readonly (readonly { readonly link: number; readonly sign: 1 | -1 }[])[];
  /** Tree links from the ground outward: the link, the node it reaches and the node it comes from. */
  readonly walk: readonly {
    readonly link: number;
    readonly node: number;
    readonly parent: number;
    readonly sign: 1 | -1;
  }[];
}

/** What makes a network unfit to solve. */
export type TopologyProblem =
  | { readonly code: 'no-fixed-head' }
  | { readonly code: 'disconnected'; readonly nodes: readonly string[] };

interface Joints {
  find(node: number): number;
  join(a: number, b: number): boolean;
}

const joints = (count: number): Joints => {
  const parent = Int32Array.from({ length: count }, (_, node) => node);
  const find = (start: number): number => {
    let node = start;
    while (parent[node] !== node) {
      parent[node] = parent[parent[node]!]!;
      node = parent[node]!;
    }
    return node;
  };
  return {
    find,
    join(a, b) {
      const rootA = find(a);
      const rootB = find(b);
      parent[rootA] = rootB;
      return rootA !== rootB;
    },
  };
};

const numberNodes = (spec: NetworkSpec): { nodes: string[]; index: Map<string, number> } => {
  const nodes = ['ground'];
  const index = new Map<string, number>();
  const add = (node: string): void => {
    if (!index.has(node)) {
      index.set(node, nodes.length);
      nodes.push(node);
    }
  };
  for (const node of Object.keys(spec.fixedHeadsM).sort()) add(node);
  for (const link of spec.links) {
    add(link.from);
    add(link.to);
  }
  return { nodes, index };
};

const treeWalk = (
  nodeCount: number,
  tree: ReadonlySet<number>,
  ends: { from: Int32Array; to: Int32Array },
) => {
  const touching: number[][] = Array.from({ length: nodeCount }, () => []);
  for (const link of tree) {
    touching[ends.from[link]!]!.push(link);
    touching[ends.to[link]!]!.push(link);
  }
  const walk: { link: number; node: number; parent: number; sign: 1 | -1 }[] = [];
  const seen = new Set([0]);
  const queue = [0];
  for (const parent of queue) {
    for (const link of touching[parent]!) {
      const forward = ends.from[link] === parent;
      const node = forward ? ends.to[link]! : ends.from[link]!;
      if (seen.has(node)) continue;
      seen.add(node);
      queue.push(node);
      walk.push({ link, node, parent, sign: forward ? 1 : -1 });
    }
  }
  return { walk, seen };
};

/** The loop of one chord: along the chord, then back through the tree from its end to its start. */
const loopOf = (
  chord: number,
  ends: { from: Int32Array; to: Int32Array },
  up: ReadonlyMap<number, { link: number; parent: number; sign: 1 | -1; depth: number }>,
): { link: number; sign: 1 | -1 }[] => {
  const loop: { link: number; sign: 1 | -1 }[] = [{ link: chord, sign: 1 }];
  let head = ends.to[chord]!;
  let tail = ends.from[chord]!;
  const depth = (node: number): number => up.get(node)?.depth ?? 0;
  while (head !== tail) {
    if (depth(head) >= depth(tail)) {
      const step = up.get(head)!;
      loop.push({ link: step.link, sign: step.sign === 1 ? -1 : 1 });
      head = step.parent;
    } else {
      const step = up.get(tail)!;
      loop.push({ link: step.link, sign: step.sign });
      tail = step.parent;
    }
  }
  return loop;
};

/**
 * Cuts a network into tree and chords. The chords are the links that resist most (one-way links first of
 * all), so that loops run mostly through links that take little head and the loop equations stay well
 * conditioned.
 * @param resistance head slope of each link at a usual flow, s/m²; Infinity for one-way links
 */
export const layTopology = (
  spec: NetworkSpec,
  resistance: (link: Link, place: number) => number,
): { ok: true; topology: Topology } | { ok: false; problem: TopologyProblem } => {
  const { nodes, index } = numberNodes(spec);
  const fixed = Object.keys(spec.fixedHeadsM).sort();
  if (fixed.length === 0) return { ok: false, problem: { code: 'no-fixed-head' } };
  const from = Int32Array.from([...spec.links.map((link) => index.get(link.from)!), ...fixed.map(() => 0)]);
  const to = Int32Array.from([
    ...spec.links.map((link) => index.get(link.to)!),
    ...fixed.map((node) => index.get(node)!),
  ]);
  const ends = { from, to };
  const joined = joints(nodes.length);
  const tree = new Set<number>();
  const ties = fixed.map((_, place) => spec.links.length + place);
  const ranked = spec.links
    .map((link, place) => ({ place, weight: resistance(link, place) }))
    .sort((a, b) => a.weight - b.weight || a.place - b.place)
    .map(({ place }) => place);
  for (const link of [...ties, ...ranked]) if (joined.join(from[link]!, to[link]!)) tree.add(link);
  const { walk, seen } = treeWalk(nodes.length, tree, ends);
  if (seen.size < nodes.length) {
    return {
      ok: false,
      problem: { code: 'disconnected', nodes: nodes.filter((_, node) => !seen.has(node)) },
    };
  }
  const up = new Map<number, { link: number; parent: number; sign: 1 | -1; depth: number }>();
  for (const step of walk) up.set(step.node, { ...step, depth: (up.get(step.parent)?.depth ?? 0) + 1 });
  const chords = Int32Array.from(from.keys()).filter((link) => !tree.has(link));
  const loops = [...chords].map((chord) => loopOf(chord, ends, up));
  return { ok: true, topology: { nodes, from, to, chords, loops, walk } };
};
