import type { Compiled } from '../assessment/compiled.ts';
import { decayIn } from '../assessment/dirt/decay.ts';
import { cleanState, type DirtState } from '../assessment/dirt/state.ts';
import { midpointStep, solveAt } from '../assessment/dirt/step.ts';
import { makeTransport } from '../assessment/dirt/transport.ts';
import { solidsMade } from '../laws/dirt/production.ts';
import { LONGEST_TIME_S } from './severity.ts';

/** A bed that has grown so much tighter is as good as shut: nothing is told apart beyond. */
const MOST_STEPS = 150;

/** Dirt in the media from clean on, as far as causes are told apart by it. The last state stands for all later times. */
export const dirtCourse = (compiled: Compiled): readonly DirtState[] => {
  const madeKgPerS = solidsMade(compiled.model.tank);
  const decay = decayIn(compiled.model.tank);
  const marching = { compiled, transport: makeTransport(compiled), madeKgPerS, decay };
  const states = [cleanState(compiled)];
  for (let state = states[0]!; state.timeS < LONGEST_TIME_S && states.length < MOST_STEPS; ) {
    solveAt(compiled, state);
    state = midpointStep(marching, state, LONGEST_TIME_S - state.timeS);
    states.push(state);
  }
  return states;
};
