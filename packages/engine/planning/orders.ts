import { arrange, portionsInWaterOrder } from '../packing/arrange.ts';
import { tradeOrder } from '../packing/order.ts';
import type { Hardware, Search } from './account.ts';
import { countOrders, reorderings } from './candidates.ts';

/**
 * What is in the filter, in every order.
 * @returns how many candidates there are; an upper bound where the cap was reached before all were tried
 */
export const searchOrders = (search: Search, sets: readonly Hardware[]): number => {
  const found = search.asFound.layout.chambers;
  const portions = portionsInWaterOrder(found, search.model.packing);
  for (const hardware of sets) {
    search.try(hardware, search.model.packing);
    const trade = arrange(
      hardware.layout.chambers,
      tradeOrder(portions, search.model.media),
      search.model.media,
    );
    if (trade) search.try(hardware, trade);
  }
  for (const hardware of sets) {
    for (const packing of reorderings(hardware.layout.chambers, portions, search.model.media)) {
      if (search.full) break;
      search.try(hardware, packing);
    }
  }
  return search.full ? sets.length * (countOrders(portions) + 1) : search.assessed.length;
};
