import { dropOf } from '../../network/solve.ts';
import type { HeadShare } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { outletLiftOf } from './airLift.ts';

/** Head that the pump gives at the last solve, m, with that of a second one that runs behind it. */
export const pumpHead = ({ network, model }: Compiled): number => {
  const { secondPump } = model.filter;
  const behind = secondPump?.running && secondPump.place === 'behind' ? dropOf(network, 'pump:behind') : 0;
  return -dropOf(network, 'pump') - behind;
};

/**
 * Where the pump's head goes at the last solve. What stands beside chambers takes the same head as they do and
 * is not counted again.
 */
export const headBudgetOf = (compiled: Compiled): HeadShare[] => {
  const head = pumpHead(compiled);
  const share = (headM: number): number => (head > 0 ? headM / head : 0);
  const parts = compiled.roles.map(({ link, part, place }) => {
    const headM = dropOf(compiled.network, link);
    return { part, place, headM, share: share(headM) };
  });
  const lift = Math.min(liftM(compiled), head);
  return lift > 0 ? [...parts, { part: 'lift', place: 'outlet', headM: lift, share: share(lift) }] : parts;
};

/** Height that the water is really raised: free outlet, or the level that the outlet weir needs. */
const liftM = (compiled: Compiled): number => {
  const { gravityFed, weirs } = compiled.layout;
  const { outletBranches } = compiled.model.filter;
  const above = outletBranches?.[0]?.liftM ?? outletLiftOf(compiled.model, compiled.layout);
  if (gravityFed) return above - gravityFed.floorHeightM - gravityFed.returnLevelM;
  if (weirs.length === 0) return above;
  const outlet = weirs.find((weir) => weir.purpose === 'outlet');
  return outlet ? outlet.crestHeightM + dropOf(compiled.network, outlet.id) : 0;
};
