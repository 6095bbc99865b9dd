/** A way round: each path imports the next, and the last imports the first. */
export type Cycle = readonly string[];

/**
 * Import cycles, one for each group of files that reach each other: a shortest way round from the group's
 * first path in alphabetical order.
 */
export function importCycles(graph: ReadonlyMap<string, readonly string[]>): Cycle[] {
  const cycles: Cycle[] = [];
  const covered = new Set<string>();
  for (const start of [...graph.keys()].sort()) {
    if (covered.has(start)) continue;
    const cycle = shortestWayRound(graph, start);
    if (cycle === undefined) continue;
    for (const path of cycle) covered.add(path);
    cycles.push(cycle);
  }
  return cycles;
}

function shortestWayRound(graph: ReadonlyMap<string, readonly string[]>, start: string): Cycle | undefined {
  const cameFrom = new Map<string, string>();
  const queue = [start];
  for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
    for (const next of graph.get(at) ?? []) {
      if (next === start) return wayBack(cameFrom, at);
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, at);
      queue.push(next);
    }
  }
  return undefined;
}

function wayBack(cameFrom: ReadonlyMap<string, string>, last: string): Cycle {
  const way: string[] = [];
  for (let at: string | undefined = last; at !== undefined; at = cameFrom.get(at)) way.unshift(at);
  return way;
}
