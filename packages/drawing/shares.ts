import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import { chambersInWaterOrder, passagesFrom } from '@fettle/engine/families/waterOrder.ts';

/** What of an assessment the drawings need. */
export type Flows = Pick<Assessment, 'dutyPoint' | 'wayFlowM3PerS'>;

/** Shares of the whole flow, 0 to 1, by id. */
export interface Shares {
  /** Through what a chamber holds. */
  readonly chamber: ReadonlyMap<string, number>;
  /** Past it. */
  readonly gap: ReadonlyMap<string, number>;
  /** Through leaks, openings and weirs. */
  readonly way: ReadonlyMap<string, number>;
  /** Through a space. */
  readonly space: ReadonlyMap<string, number>;
}

/** The spaces in the order in which the water of the main route comes to them. */
export function spacesInWaterOrder(layout: Layout): readonly string[] {
  const order = [layout.inletSpace];
  const chambers = chambersInWaterOrder(layout);
  const ways = [...chambers, ...layout.openings.filter((opening) => !opening.bypass)];
  for (let index = 0; index < order.length; index++) {
    for (const way of ways) {
      if (way.from === order[index] && !order.includes(way.to)) order.push(way.to);
    }
    for (const to of passagesFrom(layout, order[index] ?? '')) if (!order.includes(to)) order.push(to);
  }
  return order;
}

/**
 * The share of the flow in every chamber, gap, way and space, followed from the inlet: what comes into a
 * space and does not leave it by a way past media goes on through its chamber, else through the opening
 * that is meant for it. Undefined where nothing flows.
 */
export function sharesOf(layout: Layout, flows: Flows | undefined): Shares | undefined {
  const total = flows?.dutyPoint.flowM3PerS ?? 0;
  if (!flows || !(total > 0)) return undefined;
  const shareOf = (id: string): number => Math.max(0, flows.wayFlowM3PerS[id] ?? 0) / total;
  const ways = [...layout.leaks, ...layout.openings, ...layout.weirs];
  return {
    gap: new Map(layout.chambers.map((one) => [one.id, shareOf(`gap:${one.id}`)])),
    way: new Map(ways.map((way) => [way.id, shareOf(way.id)])),
    ...followed(layout, shareOf),
  };
}

function followed(layout: Layout, shareOf: (id: string) => number): Pick<Shares, 'chamber' | 'space'> {
  const space = new Map<string, number>([[layout.inletSpace, 1]]);
  const chamber = new Map<string, number>();
  const arrive = (id: string, share: number): void => {
    space.set(id, (space.get(id) ?? 0) + share);
  };
  for (const here of spacesInWaterOrder(layout)) {
    const spilling = layout.weirs.filter((weir) => weir.from === here && weir.purpose === 'overflow');
    const past = [...layout.leaks, ...layout.openings.filter((one) => one.bypass), ...spilling].filter(
      (way) => way.from === here,
    );
    for (const { id, to } of past) if (to !== undefined) arrive(to, shareOf(id));
    const gone = past.map((way) => shareOf(way.id));
    const left = Math.max(0, (space.get(here) ?? 0) - sum(gone));
    const next = layout.chambers.find((one) => one.from === here);
    if (next) chamber.set(next.id, Math.max(0, left - shareOf(`gap:${next.id}`)));
    const on = next ?? layout.openings.find((one) => one.from === here && !one.bypass);
    const falls = passagesFrom(layout, here)[0];
    if (on) arrive(on.to, left);
    else if (falls !== undefined) arrive(falls, left);
  }
  return { chamber, space };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Share of the flow past media, in whole per cent as it is printed, from which it counts as a fault. */
export const alarmingPercent = 5;

/** Whether so much water misses media that a drawing marks it as a fault. */
export function isAlarming(share: number | undefined): boolean {
  return share !== undefined && Math.round(100 * share) >= alarmingPercent;
}
