import { assess } from '../assessment/assess.ts';
import type { Model } from '../model/model.ts';
import { beyondBudget, hardwareSets, Search } from './account.ts';
import { choose, orderNote } from './choose.ts';
import { searchGrid } from './grid.ts';
import { searchOrders } from './orders.ts';
import type { PlanOptions, Plans } from './plan.ts';

const whatWouldHaveToGive = (model: Model, options: PlanOptions): string[] => {
  const gives: string[] = [];
  if (!options.budget) gives.push('a budget: only what costs nothing was looked at');
  if (options.budget && model.shelf.length === 0) gives.push('a shelf: no media were offered to plans');
  if (model.alterations.length === 0) gives.push('alterations: none is permitted in the job');
  return gives.length > 0 ? gives : ['nothing here: the filter as found is the best of what was searched'];
};

/**
 * Searches alterations, orders and amounts for better packings.
 * Without a budget: every order of what is in the filter, with every set of alterations that costs nothing.
 * With one: also fillings of a coarse grid from the shelf.
 */
export const searchPlans = (model: Model, options: PlanOptions = {}): Plans => {
  const asFound = assess(model, options.day === undefined ? {} : { day: options.day });
  const search = new Search(model, asFound, options);
  const sets = hardwareSets(model, options.budget ?? 0);
  let possible = searchOrders(search, sets);
  if ((options.budget ?? 0) > 0) possible += searchGrid(search, sets);
  const plans = choose(search);
  return {
    asFound,
    orderAsFound: orderNote({ chambers: asFound.layout.chambers, model, assessment: asFound }, options.day),
    plans,
    counted: { possible, assessed: search.assessed.length },
    complete: possible <= search.cap,
    capReached: search.full && possible > search.cap,
    beyondBudget: beyondBudget(model, options.budget ?? 0),
    ...(plans.length === 0 ? { nothingBetter: whatWouldHaveToGive(model, options) } : {}),
  };
};
