import type { Chamber } from '@fettle/engine/families/layout.ts';
import { chambersInWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printLength, printShare } from './lengths.ts';
import { type Packed, type PlacedBed, placedBeds } from './placedBeds.ts';
import { type Flows, type Shares, sharesOf } from './shares.ts';

/** What the text alternative of a drawing is made from. */
export interface PathToDescribe extends Packed {
  readonly assessment?: Flows;
  readonly units: System;
}

/**
 * The water path in one sentence: every chamber with its beds in the water's order, then what misses them.
 * It says in words all that the section drawing shows of the water.
 */
export function describeWaterPath(described: PathToDescribe): string {
  const { layout } = described;
  const beds = placedBeds(described);
  const shares = sharesOf(layout, described.assessment);
  const pump = layout.pumpPlace === 'first' ? 'through the pump, then ' : '';
  const stations = chambersInWaterOrder(layout).map((chamber) => station(chamber, beds, described.units));
  const end = layout.pumpPlace === 'last' ? 'to the pump and back to the tank' : 'back to the tank';
  const missed = shares ? missing(described, shares) : '';
  return `The water runs from the tank ${pump}${stations.join(', then ')}, and ${end}${missed}.`;
}

const directions: Readonly<Record<Chamber['flow'], string>> = {
  up: 'up through',
  down: 'down through',
  left: 'across through',
  right: 'across through',
};

function station(chamber: Chamber, beds: readonly PlacedBed[], units: System): string {
  const held = beds.filter((placed) => placed.chamber.id === chamber.id);
  const where = `${directions[chamber.flow]} ${chamber.label}`;
  if (held.length === 0) return `${where} (empty)`;
  const named = held.map((placed) => {
    const depth = printLength({ lengthM: placed.bed.depthM, units });
    return `${depth} of ${placed.name}${placed.medium ? `, ${placed.medium.stage}` : ''}`;
  });
  return `${where} (${named.join('; ')})`;
}

function missing({ layout }: Packed, shares: Shares): string {
  const gaps = chambersInWaterOrder(layout).map((chamber) => ({
    share: shares.gap.get(chamber.id) ?? 0,
    says: `past ${chamber.label}`,
  }));
  const ways = [...layout.leaks, ...layout.openings.filter((opening) => opening.bypass)].map((way) => ({
    share: shares.way.get(way.id) ?? 0,
    says: `through the ${way.label}`,
  }));
  const overflows = layout.weirs
    .filter((weir) => weir.purpose === 'overflow')
    .map((weir) => ({ share: shares.way.get(weir.id) ?? 0, says: `over the ${weir.label}` }));
  const running = [...gaps, ...ways, ...overflows].filter((way) => way.share > 0);
  if (running.length === 0) return '';
  return `; of the flow ${running.map((way) => `${printShare(way.share)} goes ${way.says}`).join(', ')}`;
}
