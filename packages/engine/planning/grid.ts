import type { Chamber } from '../families/layout.ts';
import { inWaterOrder } from '../families/waterOrder.ts';
import type { Model, Packing } from '../model/model.ts';
import { arrange, portionsInWaterOrder } from '../packing/arrange.ts';
import { tradeOrder } from '../packing/order.ts';
import type { Hardware, Search } from './account.ts';
import { type Grid, LAYERS_PER_CHAMBER, packingOfGrid } from './candidates.ts';

const gridMedia = (model: Model): (string | undefined)[] => {
  const held = Object.values(model.packing).flatMap((beds) => beds.map((bed) => bed.medium));
  return [...new Set([...held, ...model.shelf.map((item) => item.medium)]), undefined];
};

/** Every filling of the grid, as numbers in the base of the media. */
const gridAt = (index: number, length: number, media: readonly (string | undefined)[]): Grid => {
  let rest = index;
  return Array.from({ length }, () => {
    const medium = media[rest % media.length];
    rest = Math.floor(rest / media.length);
    return medium;
  });
};

/** A climb in one set of hardware. */
interface Climb {
  readonly search: Search;
  readonly hardware: Hardware;
  readonly media: readonly (string | undefined)[];
}

/** Improves a grid one layer, or one pair of layers, at a time until nothing helps. */
const climb = ({ search, hardware, media }: Climb, start: Grid): void => {
  const { chambers } = hardware.layout;
  const value = (grid: Grid): number => {
    const done = search.try(hardware, packingOfGrid(chambers, grid, search.supplies));
    return done && search.fit(done) ? search.gain(done) : Number.NEGATIVE_INFINITY;
  };
  let best = start;
  let bestValue = value(start);
  for (let improved = true; improved && !search.full; ) {
    improved = false;
    for (const next of neighbours(best, media)) {
      const nextValue = value(next);
      if (nextValue > bestValue + 1e-9) {
        best = next;
        bestValue = nextValue;
        improved = true;
      }
    }
  }
};

function* neighbours(grid: Grid, media: readonly (string | undefined)[]): Generator<Grid> {
  for (const [i, medium] of grid.entries()) {
    for (const other of media) if (other !== medium) yield grid.with(i, other);
    for (let j = i + 1; j < grid.length; j += 1) {
      if (grid[j] !== medium) yield grid.with(i, grid[j]).with(j, medium);
    }
  }
}

/** The grid nearest to a packing: each layer takes the medium that fills most of it. */
const gridOfPacking = (chambers: readonly Chamber[], packing: Packing): Grid =>
  chambers.flatMap((chamber) => {
    const beds = inWaterOrder(chamber, packing[chamber.id] ?? []);
    return Array.from({ length: LAYERS_PER_CHAMBER }, (_, layer) => {
      const middle = ((layer + 0.5) / LAYERS_PER_CHAMBER) * chamber.depthM;
      let reached = 0;
      return beds.find((bed) => {
        reached += bed.depthM;
        return reached >= middle;
      })?.medium;
    });
  });

/** Every filling of the coarse grid where that is within the cap, else a climb from several starts. */
export const searchGrid = (search: Search, sets: readonly Hardware[]): number => {
  const media = gridMedia(search.model);
  const length = search.asFound.layout.chambers.length * LAYERS_PER_CHAMBER;
  const each = media.length ** length;
  const possible = each * sets.length;
  const portions = portionsInWaterOrder(search.asFound.layout.chambers, search.model.packing);
  if (possible <= search.cap - search.assessed.length) {
    for (const hardware of sets) {
      for (let index = 0; index < each; index += 1) {
        search.try(
          hardware,
          packingOfGrid(hardware.layout.chambers, gridAt(index, length, media), search.supplies),
        );
      }
    }
    return possible;
  }
  for (const hardware of sets) {
    const { chambers } = hardware.layout;
    const trade = arrange(chambers, tradeOrder(portions, search.model.media));
    const starts = [search.model.packing, ...(trade ? [trade] : [])];
    for (const start of starts) climb({ search, hardware, media }, gridOfPacking(chambers, start));
  }
  return possible;
};
