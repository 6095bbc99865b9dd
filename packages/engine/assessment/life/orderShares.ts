import type { OrderShares } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { cleanState, type DirtState } from '../dirt/state.ts';
import type { BacteriaShares } from './bacteria.ts';
import { feedCarried } from './carries.ts';

const ones = (values: readonly number[]): number[] => values.map(() => 1);

/**
 * What each way in which dirt works against the bacteria costs the feed carried. Leaves the network solved in
 * `day.dirt`.
 * @param day the dirt, and the feed carried with it, kg/s
 */
export const orderSharesOf = (
  compiled: Compiled,
  shares: BacteriaShares,
  day: { readonly dirt: DirtState; readonly feedKgPerS: number },
): OrderShares => {
  const { dirt, feedKgPerS: asItIs } = day;
  const worth = (without: number): number => (asItIs > 0 ? without / asItIs - 1 : 0);
  const carbon = { ...shares, carbonFactor: ones(shares.carbonFactor) };
  const cleaning = { ...shares, cleaningFactor: ones(shares.cleaningFactor) };
  return {
    clogging: worth(feedCarried(compiled, shares, { dirt, flowsOf: cleanState(compiled), decays: true })),
    carbon: worth(feedCarried(compiled, carbon, { dirt, flowsOf: dirt, decays: true })),
    decay: worth(feedCarried(compiled, shares, { dirt, flowsOf: dirt, decays: false })),
    cleaning: worth(feedCarried(compiled, cleaning, { dirt, flowsOf: dirt, decays: true })),
  };
};
