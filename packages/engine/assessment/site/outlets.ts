import type { HoseRun, Model } from '../../model/model.ts';

/** An outlet hose that ends in the tank. */
export interface OutletEnd {
  readonly name: string;
  readonly run: HoseRun;
  readonly liftM: number;
}

/** The ends of the outlet hose: one, or as many as it parts into. */
export const outletEnds = ({ filter }: Model): readonly OutletEnd[] => {
  const { outlet, outletBranches = [], outletLiftM } = filter;
  if (!outlet) return [];
  if (outletBranches.length === 0) return [{ name: 'outlet', run: outlet, liftM: outletLiftM }];
  return outletBranches.map((branch, place) => ({ name: `outlet-${place + 1}`, ...branch }));
};
