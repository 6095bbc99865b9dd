import type { Compiled } from '../compiled.ts';
import { cleanState, type DirtState } from '../dirt/state.ts';
import { beginMarch, midpointStep, solveAt } from '../dirt/step.ts';

const YEAR_S = 365 * 86_400;
/** Sums of cut steps end a rounding beside the year: what is left below a second is no step. */
const LEAST_STEP_S = 1;

/** Flow through each bed at the last solve, m³/s. */
export const bedFlows = (compiled: Compiled): number[] =>
  compiled.beds.map((bed) => compiled.network.flow[bed.link]!);

/**
 * Time until the water through any bed is down by a third, s, or a year: the march's own steps, each cut into
 * `cuts` equal ones.
 */
export const intervalInSteps = (
  compiled: Compiled,
  dirt: { readonly madeKgPerS: number; readonly cuts: number },
): number => {
  const marching = beginMarch(compiled, dirt.madeKgPerS);
  let state: DirtState = cleanState(compiled);
  solveAt(compiled, state);
  const clean = bedFlows(compiled);
  const loss = (): number => Math.max(...bedFlows(compiled).map((flow, bed) => 1 - flow / clean[bed]!));
  let before = 0;
  while (YEAR_S - state.timeS > LEAST_STEP_S) {
    const whole = midpointStep(marching, state, YEAR_S - state.timeS);
    const stepS = (whole.timeS - state.timeS) / dirt.cuts;
    for (let cut = 0; cut < dirt.cuts; cut += 1) {
      solveAt(compiled, state);
      const next = midpointStep(marching, state, stepS);
      solveAt(compiled, next);
      const now = loss();
      if (now >= 1 / 3) return state.timeS + ((1 / 3 - before) / (now - before)) * (next.timeS - state.timeS);
      before = now;
      state = next;
    }
  }
  return YEAR_S;
};
