import type { Compiled } from '../assessment/compiled.ts';
import { cleanState, type DirtState } from '../assessment/dirt/state.ts';
import { beginMarch, midpointStep, solveAt } from '../assessment/dirt/step.ts';
import { solidsMadeIn } from '../assessment/loads.ts';
import { LONGEST_TIME_S } from './severity.ts';

/** A bed that has grown so much tighter is as good as shut: nothing is told apart beyond. */
const MOST_STEPS = 150;

/** Dirt in the media from clean on, as far as causes are told apart by it. The last state stands for all later times. */
export const dirtCourse = (compiled: Compiled): readonly DirtState[] => {
  const marching = beginMarch(compiled, solidsMadeIn(compiled));
  const states = [cleanState(compiled)];
  for (let state = states[0]!; state.timeS < LONGEST_TIME_S && states.length < MOST_STEPS; ) {
    solveAt(compiled, state);
    state = midpointStep(marching, state, LONGEST_TIME_S - state.timeS);
    states.push(state);
  }
  return states;
};
