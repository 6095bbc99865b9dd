import type { CompiledFall, CompiledNetwork } from './compiled.ts';
import type { NetworkSpec } from './links.ts';
import type { Topology } from './topology.ts';
import type { Ways } from './ways.ts';

/** The tree's ways from a node to the ground, with the sense in which water that comes in there runs through them. */
const pathToGround = (topology: Topology, ways: Ways, node: number) => {
  const { walkLink, walkNode, walkParent, walkSign } = topology;
  const path = new Map<number, number>();
  for (let at = node; at > 0; ) {
    const step = walkNode.indexOf(at);
    const link = walkLink[step]!;
    path.set(ways.wayOf[link]!, -walkSign[step]! * ways.senseOf[link]!);
    at = walkParent[step]!;
  }
  return path;
};

/**
 * The falls of a network; every name in them must be one of its links and nodes.
 * @param wayAt the way (as found) at each place
 */
export const compileFalls = (
  spec: NetworkSpec,
  topology: Topology,
  { ways, wayAt }: { readonly ways: Ways; readonly wayAt: Int32Array },
): CompiledFall[] =>
  (spec.falls ?? []).map(({ links, into }) => {
    const path = pathToGround(topology, ways, topology.nodes.indexOf(into));
    return {
      fedBy: Int32Array.from(links, (id) => spec.links.findIndex((link) => link.id === id)),
      pathWay: Int32Array.from(path.keys(), (way) => wayAt.indexOf(way)),
      pathSense: Int8Array.from(path.values()),
    };
  });

/**
 * Lets the water of every fall come in at its foot as the last solve left it.
 * @returns the largest change of a fall since the solve before, m³/s
 */
export const takeFalls = (net: CompiledNetwork): number => {
  const { falls, fallFlow, fallen, flow } = net;
  let change = 0;
  fallen.fill(0);
  for (let place = 0; place < falls.length; place += 1) {
    const { fedBy, pathWay, pathSense } = falls[place]!;
    let sum = 0;
    for (let at = 0; at < fedBy.length; at += 1) sum += Math.max(0, flow[fedBy[at]!]!);
    change = Math.max(change, Math.abs(sum - fallFlow[place]!));
    fallFlow[place] = sum;
    for (let at = 0; at < pathWay.length; at += 1) {
      const way = pathWay[at]!;
      fallen[way] = fallen[way]! + pathSense[at]! * sum;
    }
  }
  return change;
};
