import type { Box, Layout, Point } from '@fettle/engine/families/layout.ts';
import type { Shares } from './shares.ts';

/** A straight length of the main way that keeps its share of the flow, m. */
interface Reach {
  readonly from: Point;
  readonly to: Point;
  readonly share: number;
  /** The packed part of a chamber in which it lies; undefined in open water. */
  readonly bed: Box | undefined;
}

/** The main way between the beds: its reaches and the beds that it leaves and meets. */
export interface OpenRun {
  readonly reaches: readonly Reach[];
  readonly leaves: Box | undefined;
  readonly meets: Box | undefined;
}

function inside(point: Point, box: Box): boolean {
  return (
    point.x >= box.x && point.x <= box.x + box.width && point.y >= box.y && point.y <= box.y + box.height
  );
}

function shareAt(point: Point, layout: Layout, shares: Shares | undefined): number {
  if (!shares) return 1;
  const chamber = layout.chambers.find((one) => inside(point, one.box));
  if (chamber) return shares.chamber.get(chamber.id) ?? 1;
  const space = layout.spaces.find((one) => inside(point, one.box));
  return (space && shares.space.get(space.id)) ?? 1;
}

/** Where a straight piece of the way enters or leaves boxes, as shares of its length. */
function breaks(from: Point, to: Point, boxes: readonly Box[]): readonly number[] {
  const share = (at: number, start: number, end: number): number => (at - start) / (end - start);
  const cuts = boxes.flatMap((box) =>
    from.x === to.x
      ? [box.y, box.y + box.height].map((y) => share(y, from.y, to.y))
      : [box.x, box.x + box.width].map((x) => share(x, from.x, to.x)),
  );
  const within = cuts.filter((cut) => cut > 0 && cut < 1).toSorted((one, other) => one - other);
  return [0, ...within, 1];
}

/** Reaches shorter than this come of rounding where two boxes share an edge, m. */
const shortestM = 1e-7;

export function lengthOf({ from, to }: { readonly from: Point; readonly to: Point }): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

function reachesOf(layout: Layout, shares: Shares | undefined, packed: readonly Box[]): readonly Reach[] {
  const boxes = [...[...layout.chambers, ...layout.spaces].map((one) => one.box), ...packed];
  const path = layout.drawing.mainPath;
  const reaches = path.slice(1).flatMap((to, index) => {
    const from = path[index] ?? to;
    const between = (at: number): Point => ({
      x: from.x + at * (to.x - from.x),
      y: from.y + at * (to.y - from.y),
    });
    const cuts = breaks(from, to, boxes);
    return cuts.slice(1).map((end, place) => {
      const start = cuts[place] ?? 0;
      const middle = between((start + end) / 2);
      const bed = packed.find((box) => inside(middle, box));
      return { from: between(start), to: between(end), share: shareAt(middle, layout, shares), bed };
    });
  });
  return reaches.filter((reach) => lengthOf(reach) > shortestM);
}

/** The main way cut into runs of open water by the packed parts of the chambers, in the water's order. */
export function openRuns(
  layout: Layout,
  shares: Shares | undefined,
  packed: readonly Box[],
): readonly OpenRun[] {
  const runs: OpenRun[] = [];
  let leaves: Box | undefined;
  let open: Reach[] = [];
  for (const reach of reachesOf(layout, shares, packed)) {
    if (!reach.bed) {
      open.push(reach);
      continue;
    }
    if (open.length > 0) runs.push({ reaches: open, leaves, meets: reach.bed });
    open = [];
    leaves = reach.bed;
  }
  return open.length > 0 ? [...runs, { reaches: open, leaves, meets: undefined }] : runs;
}

/** Length of a run, m, and whether it keeps one direction. */
export function courseOf(run: OpenRun): { readonly lengthM: number; readonly straight: boolean } {
  const upright = run.reaches.map(({ from, to }) => from.x === to.x);
  return {
    lengthM: run.reaches.reduce((sum, reach) => sum + lengthOf(reach), 0),
    straight: upright.every((one) => one === upright[0]),
  };
}
