import type { Chamber, Layout } from './layout.ts';

/**
 * The chambers in the order in which the water of the main route meets them: each begins where the one
 * before it, or an opening or a fall behind that, ends. Chambers that the inlet does not reach are left out.
 */
export function chambersInWaterOrder(layout: Layout): readonly Chamber[] {
  const ordered: Chamber[] = [];
  const seen = new Set<string>();
  let frontier = [layout.inletSpace];
  while (frontier.length > 0) {
    const next: string[] = [];
    for (const space of frontier) {
      if (seen.has(space)) continue;
      seen.add(space);
      const chambers = layout.chambers.filter((chamber) => chamber.from === space);
      ordered.push(...chambers);
      next.push(...chambers.map((chamber) => chamber.to));
      next.push(...meantWays(layout, space));
    }
    frontier = next;
  }
  return ordered;
}

function meantWays(layout: Layout, from: string): readonly string[] {
  const openings = layout.openings.filter((opening) => opening.from === from && !opening.bypass);
  return [...openings.map((opening) => opening.to), ...passagesFrom(layout, from)];
}

/** Spaces that water falls into from a space on its normal way. */
export function passagesFrom(layout: Layout, from: string): readonly string[] {
  return layout.weirs.flatMap((weir) =>
    weir.from === from && weir.purpose === 'passage' && weir.to !== undefined ? [weir.to] : [],
  );
}

/** Beds of a chamber, listed as a hand meets them, in the order in which the water meets them; and back again. */
export function inWaterOrder<Bed>(chamber: Chamber, listed: readonly Bed[]): readonly Bed[] {
  return chamber.listedInWaterOrder ? listed : listed.toReversed();
}
