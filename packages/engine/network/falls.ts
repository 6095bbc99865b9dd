import type { CompiledNetwork } from './compile.ts';
import type { NetworkSpec } from './links.ts';
import type { Topology } from './topology.ts';

/** A free fall as flat arrays: the links that feed it, and the way of its water through the tree to the ground. */
export interface CompiledFall {
  readonly fedBy: Int32Array;
  readonly pathLink: Int32Array;
  readonly pathSign: Int8Array;
}

/** The tree's links from a node to the ground, with the sense in which water that comes in there runs through them. */
const pathToGround = (topology: Topology, node: number) => {
  const { walkLink, walkNode, walkParent, walkSign } = topology;
  const links: number[] = [];
  const signs: number[] = [];
  for (let at = node; at > 0; ) {
    const step = walkNode.indexOf(at);
    links.push(walkLink[step]!);
    signs.push(-walkSign[step]!);
    at = walkParent[step]!;
  }
  return { pathLink: Int32Array.from(links), pathSign: Int8Array.from(signs) };
};

/** The falls of a network; every name in them must be one of its links and nodes. */
export const compileFalls = (spec: NetworkSpec, topology: Topology): CompiledFall[] =>
  (spec.falls ?? []).map(({ links, into }) => ({
    fedBy: Int32Array.from(links, (id) => spec.links.findIndex((link) => link.id === id)),
    ...pathToGround(topology, topology.nodes.indexOf(into)),
  }));

/**
 * Lets the water of every fall come in at its foot as the last solve left it.
 * @returns the largest change of a fall since the solve before, m³/s
 */
export const takeFalls = (net: CompiledNetwork): number => {
  const { falls, fallFlow, fallen, flow } = net;
  let change = 0;
  fallen.fill(0);
  for (let place = 0; place < falls.length; place += 1) {
    const { fedBy, pathLink, pathSign } = falls[place]!;
    let sum = 0;
    for (let at = 0; at < fedBy.length; at += 1) sum += Math.max(0, flow[fedBy[at]!]!);
    change = Math.max(change, Math.abs(sum - fallFlow[place]!));
    fallFlow[place] = sum;
    for (let at = 0; at < pathLink.length; at += 1) {
      const link = pathLink[at]!;
      fallen[link] = fallen[link]! + pathSign[at]! * sum;
    }
  }
  return change;
};
