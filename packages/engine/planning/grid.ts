import type { Chamber } from '../families/layout.ts';
import { inWaterOrder } from '../families/waterOrder.ts';
import type { Model, Packing } from '../model/model.ts';
import { arrange, portionsInWaterOrder } from '../packing/arrange.ts';
import { tradeOrder } from '../packing/order.ts';
import type { Hardware, Search } from './account.ts';
import { fitsChambers, type Grid, LAYERS_PER_CHAMBER, packingOfGrid } from './candidates.ts';
import { type Favour, favours } from './plan.ts';

/** Media that a layer may hold: those of the filter and the shelf, or nothing. What takes a substance out of the
 * water is the owner's choice: of such media only those that are there already. */
const gridMedia = (model: Model): (string | undefined)[] => {
  const held = Object.values(model.packing).flatMap((beds) => beds.map((bed) => bed.medium));
  const offered = model.shelf.map((item) => item.medium).filter((medium) => !model.media[medium]!.removes);
  return [...new Set([...held, ...offered]), undefined];
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
  readonly favour: Favour;
  /** Ends once so many candidates have been assessed in all. */
  readonly until: number;
}

/** Improves a grid one layer, or one pair of layers, at a time until nothing helps. */
const climb = ({ search, hardware, media, favour, until }: Climb, start: Grid): void => {
  const { chambers } = hardware.layout;
  const value = (grid: Grid): number => {
    if (!fitsChambers(chambers, grid, search.model)) return Number.NEGATIVE_INFINITY;
    const done = search.try(hardware, packingOfGrid(chambers, grid, search.supplies));
    return done && search.fit(done) ? search.gain(done, favour) : Number.NEGATIVE_INFINITY;
  };
  let best = start;
  let bestValue = value(start);
  for (let improved = true; improved && search.assessed.length < until; ) {
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

/** Share of what may still be assessed that goes to the favour asked for; the others divide the rest. */
const SHARE_OF_WISH = 0.6;

/** Climbs from the packing as found and from the trade's order, for what is asked for and then for the rest. */
const climbAll = (
  search: Search,
  sets: readonly Hardware[],
  media: readonly (string | undefined)[],
): void => {
  const portions = portionsInWaterOrder(search.asFound.layout.chambers, search.model.packing);
  const others = favours.filter((favour) => favour !== search.favour);
  const left = search.cap - search.assessed.length;
  const shares = [SHARE_OF_WISH, ...others.map(() => (1 - SHARE_OF_WISH) / others.length)];
  let until = search.assessed.length;
  for (const [place, favour] of [search.favour, ...others].entries()) {
    until += left * shares[place]!;
    for (const hardware of sets) {
      const { chambers } = hardware.layout;
      const trade = arrange(chambers, tradeOrder(portions, search.model.media), search.model.media);
      const starts = [search.model.packing, ...(trade ? [trade] : [])];
      for (const start of starts)
        climb({ search, hardware, media, favour, until }, gridOfPacking(chambers, start));
    }
  }
};

/**
 * Every filling of the coarse grid where that is within the cap, else a climb from several starts.
 * @returns how many candidates there are that can be paid for; where the search climbs, all fillings
 */
export const searchGrid = (search: Search, sets: readonly Hardware[]): number => {
  const media = gridMedia(search.model);
  const length = search.asFound.layout.chambers.length * LAYERS_PER_CHAMBER;
  const each = media.length ** length;
  const possible = each * sets.length;
  if (possible > search.cap - search.assessed.length) {
    climbAll(search, sets, media);
    return possible;
  }
  const before = search.assessed.length;
  for (const hardware of sets) {
    for (let index = 0; index < each; index += 1) {
      const grid = gridAt(index, length, media);
      if (!fitsChambers(hardware.layout.chambers, grid, search.model)) continue;
      search.try(hardware, packingOfGrid(hardware.layout.chambers, grid, search.supplies));
    }
  }
  return search.assessed.length - before;
};
