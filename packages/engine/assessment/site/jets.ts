import {
  nozzleBoreRatio,
  sprayBarHoleM,
  sprayBarOpenRatio,
  weakSwimmersStand,
} from '../../catalogue/runs.ts';
import { jetReachHussein1994, velocityInBore } from '../../laws/hydraulics/jet.ts';
import type { HoseRun } from '../../model/model.ts';
import { flowOf } from '../../network/solve.ts';
import type { Compiled } from '../compiled.ts';
import { openBore } from '../hydraulics/linkLaws.ts';
import { outletEnds } from './outlets.ts';
import type { Jet } from './site.ts';

/** Bore and speed of the jet that a run sends into the tank. */
const mouthOf = (run: HoseRun, flowM3PerS: number): Pick<Jet, 'boreM' | 'velocityMPerS'> => {
  const boreM = openBore(run);
  const inHose = velocityInBore({ flowM3PerS, boreM });
  if (run.fittings.includes('spray-bar'))
    return { boreM: sprayBarHoleM.value, velocityMPerS: inHose / sprayBarOpenRatio.value };
  if (run.fittings.includes('nozzle-jet'))
    return { boreM: nozzleBoreRatio.value * boreM, velocityMPerS: inHose / nozzleBoreRatio.value ** 2 };
  return { boreM, velocityMPerS: inHose };
};

/** The jets of all outlets that end under water, at the flows of the last solve. */
export const jetsOf = (compiled: Compiled): Jet[] => {
  const { standsCurrentMPerS } = compiled.model.tank;
  const standsMPerS = standsCurrentMPerS ?? weakSwimmersStand.value;
  const standsAssumed = standsCurrentMPerS === undefined;
  return outletEnds(compiled.model).flatMap(({ name, run, liftM }) => {
    const flow = flowOf(compiled.network, `${name}:hose`);
    if (liftM > 0 || flow <= 0) return [];
    const mouth = mouthOf(run, flow);
    const reachM = jetReachHussein1994({ ...mouth, slowedMPerS: standsMPerS });
    return [{ outlet: name, ...mouth, standsMPerS, standsAssumed, reachM }];
  });
};
