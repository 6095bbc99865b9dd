import type { Model } from '../../model/model.ts';
import { solveNetwork } from '../../network/solve.ts';
import { compile } from '../compile.ts';
import type { Compiled } from '../compiled.ts';
import { cleanState } from '../dirt/state.ts';
import { solveAt } from '../dirt/step.ts';

/** A job compiled; throws where its network cannot be solved. */
export const compiledJob = (model: Model): Compiled => {
  const result = compile(model);
  if (!result.ok) throw new Error(result.problem.code);
  return result.compiled;
};

/** A job compiled and solved with clean beds, as closely as the solver can. */
export const solvedClean = (model: Model): Compiled => {
  const compiled = compiledJob(model);
  solveAt(compiled, cleanState(compiled));
  solveNetwork(compiled.network);
  return compiled;
};
