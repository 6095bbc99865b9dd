import { stockClasses } from '../../catalogue/stock.ts';
import type { BindingLimit, Carries } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { type DirtState, keptPerS } from '../dirt/state.ts';
import { solveAt } from '../dirt/step.ts';
import { filterFlow } from '../dirt/transport.ts';
import { ammoniaPerFeed } from '../loads.ts';
import type { BacteriaShares } from './bacteria.ts';
import { type Capacity, capacityOf } from './capacity.ts';
import { decayedFraction, ratesOf, waterFactor } from './rates.ts';

/** Carries with what the bed table needs beside it. */
export interface CarriesDetail {
  readonly carries: Carries;
  readonly capacity: Capacity;
}

/** Below this share of its full rate the water's pH or alkalinity binds before anything else. */
const CHEMISTRY_BINDS_BELOW = 0.5;
const PROBE = 1.02;

/** Ammonia nitrogen that decay gives back for each kg of feed, kg/kg: of what is caught, in proportion. */
export const decayPerFeed = (compiled: Compiled, caughtKgPerS: readonly number[], ageS: number): number => {
  const caught = caughtKgPerS.reduce((sum, rate) => sum + rate, 0);
  const decayed = decayedFraction(compiled, ageS);
  const { feedKgPerS } = compiled.model.tank;
  return feedKgPerS > 0 ? (caught * compiled.constants.solidsNitrogenRatio * decayed) / feedKgPerS : 0;
};

/** Whether more area or more flow would raise the capacity more. */
const areaOrFlow = (
  compiled: Compiled,
  shares: BacteriaShares,
  state: Parameters<typeof ratesOf>[2],
): 'area' | 'flow' => {
  const { flow } = compiled.network;
  const withArea = capacityOf(
    compiled,
    ratesOf(compiled, shares, { ...state, areaFactor: PROBE }),
  ).oxidisedKgNPerS;
  const solved = flow.slice();
  for (let link = 0; link < flow.length; link += 1) flow[link] = flow[link]! * PROBE;
  const withFlow = capacityOf(compiled, ratesOf(compiled, shares, state)).oxidisedKgNPerS;
  flow.set(solved);
  return withFlow > withArea ? 'flow' : 'area';
};

const bindingLimit = (
  compiled: Compiled,
  shares: BacteriaShares,
  found: { capacity: Capacity; state: Parameters<typeof ratesOf>[2] },
): BindingLimit => {
  const { capacity, state } = found;
  if (filterFlow(compiled) <= 0) return 'flow';
  if (waterFactor(compiled) < CHEMISTRY_BINDS_BELOW) return 'alkalinity';
  return capacity.limit === 'area' ? areaOrFlow(compiled, shares, state) : capacity.limit;
};

const servedM3 = (compiled: Compiled, oxidisedKgNPerS: number, decayRatio: number): Carries['servedM3'] => {
  const volume = (stock: 'light' | 'normal' | 'heavy'): number => {
    const { feedKgPerM3PerS, proteinFraction } = stockClasses[stock]!;
    return (
      oxidisedKgNPerS /
      (feedKgPerM3PerS.value * (ammoniaPerFeed(compiled, proteinFraction.value) + decayRatio))
    );
  };
  return { light: volume('light'), normal: volume('normal'), heavy: volume('heavy') };
};

/** Which dirt works on the bacteria, which on the flows, and whether it rots. */
export interface CarryingState {
  readonly dirt: DirtState;
  readonly flowsOf: DirtState;
  readonly decays: boolean;
}

interface Solved {
  readonly state: Parameters<typeof ratesOf>[2];
  readonly capacity: Capacity;
  readonly decayRatio: number;
  readonly tanPerFeedRatio: number;
}

const solveCarrying = (compiled: Compiled, shares: BacteriaShares, carrying: CarryingState): Solved => {
  const { dirt, flowsOf, decays } = carrying;
  solveAt(compiled, flowsOf);
  const caughtKgPerS = keptPerS(compiled, dirt);
  const state = { caughtKgPerS, ageS: decays ? dirt.timeS : 0, areaFactor: 1 };
  const decayRatio = decayPerFeed(compiled, caughtKgPerS, state.ageS);
  return {
    state,
    capacity: capacityOf(compiled, ratesOf(compiled, shares, state)),
    decayRatio,
    tanPerFeedRatio: ammoniaPerFeed(compiled, compiled.model.tank.feedProteinFraction) + decayRatio,
  };
};

/** Dry feed that can be carried, kg/s. Leaves the network solved for `flowsOf`. */
export const feedCarried = (compiled: Compiled, shares: BacteriaShares, carrying: CarryingState): number => {
  const { capacity, tanPerFeedRatio } = solveCarrying(compiled, shares, carrying);
  return capacity.oxidisedKgNPerS / tanPerFeedRatio;
};

/** What a packing carries but for what binds it, and how it was found. */
interface Carried extends Solved {
  readonly carried: Omit<Carries, 'bindingLimit'>;
}

/** What the packing carries, without what binds it. Leaves the network solved in the state of dirt. */
export const carriedIn = (compiled: Compiled, shares: BacteriaShares, dirt: DirtState): Carried => {
  const solved = solveCarrying(compiled, shares, { dirt, flowsOf: dirt, decays: true });
  const { capacity, decayRatio, tanPerFeedRatio } = solved;
  const carried = {
    dayS: dirt.timeS,
    feedKgPerS: capacity.oxidisedKgNPerS / tanPerFeedRatio,
    oxidisedKgNPerS: capacity.oxidisedKgNPerS,
    servedM3: servedM3(compiled, capacity.oxidisedKgNPerS, decayRatio),
    outletOxygenKgPerM3: capacity.outletOxygenKgPerM3,
    flowM3PerS: filterFlow(compiled),
    nitriteKgNPerM3: capacity.nitriteKgNPerM3,
  };
  return { ...solved, carried };
};

/** What the packing carries with a given state of dirt in it. Leaves the network solved in that state. */
export const carriesIn = (compiled: Compiled, shares: BacteriaShares, dirt: DirtState): CarriesDetail => {
  const { carried, capacity, state } = carriedIn(compiled, shares, dirt);
  return {
    carries: { ...carried, bindingLimit: bindingLimit(compiled, shares, { capacity, state }) },
    capacity,
  };
};
