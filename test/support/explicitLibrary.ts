import { createRequire } from 'node:module';
import type { StiffSystem } from '@fettle/engine/numerics/rodas.ts';

/** What is used of odex; its own types do not compile by the house's rules. */
interface Solver {
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve(
    derivative: (time: number, y: number[]) => number[],
    from: number,
    start: readonly number[],
    end: number,
  ): { readonly y: readonly number[]; readonly nEval: number; readonly outcome: number };
}

const odex: { readonly Solver: new (size: number) => Solver } = createRequire(import.meta.url)('odex');

/** What the explicit library comes to. */
export interface Explicit {
  readonly y: readonly number[];
  readonly derivatives: number;
}

/**
 * Solves a system by odex, a port of Hairer & Wanner's ODEX: explicit extrapolation after Gragg, Bulirsch & Stoer.
 * @throws where it gives up
 */
export const solveExplicitly = (
  system: StiffSystem,
  of: { readonly start: ArrayLike<number>; readonly end: number },
  closeness: { readonly relative: number; readonly absolute: number },
): Explicit => {
  const solver = new odex.Solver(system.size);
  solver.relativeTolerance = closeness.relative;
  solver.absoluteTolerance = closeness.absolute;
  solver.maxSteps = 10_000_000;
  const into = new Float64Array(system.size);
  const derivative = (time: number, y: number[]): number[] => {
    system.derivative(time, Float64Array.from(y), into);
    return [...into];
  };
  const { y, nEval, outcome } = solver.solve(derivative, 0, Array.from(of.start), of.end);
  if (outcome !== 0) throw new Error(`the explicit library gave up with outcome ${outcome}`);
  return { y, derivatives: nEval };
};
