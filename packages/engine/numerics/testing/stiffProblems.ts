import type { StiffSystem } from '../rodas.ts';

/** A published problem with its state at the end. */
export interface StiffProblem {
  readonly name: string;
  readonly system: StiffSystem;
  readonly start: readonly number[];
  readonly end: number;
  /** As printed, in full. */
  readonly expected: readonly number[];
  readonly absolute: number;
  readonly source: string;
}

/** Robertson 1966: three substances, of which one reacts away within microseconds. */
export const robertson: StiffProblem = {
  name: 'Robertson',
  system: {
    size: 3,
    derivative: (_, y, into) => {
      const first = 0.04 * y[0]!;
      const back = 1e4 * y[1]! * y[2]!;
      const second = 3e7 * y[1]! ** 2;
      into[0] = back - first;
      into[1] = first - back - second;
      into[2] = second;
    },
  },
  start: [1, 0, 0],
  end: 1e11,
  expected: [0.208334014970122e-7, 0.8333360770334713e-13, 0.999999979166505],
  absolute: 1e-16,
  source:
    'Mazzia & Magherini, Test Set for Initial Value Problem Solvers, ROBER; seen in its copy for R (deTestSet)',
};

/** Schäfer 1975: how light drives the growth of a plant; eight substances. */
export const hires: StiffProblem = {
  name: 'HIRES',
  system: {
    size: 8,
    derivative: (_, y, into) => {
      const joined = 280 * y[5]! * y[7]!;
      into[0] = -1.71 * y[0]! + 0.43 * y[1]! + 8.32 * y[2]! + 0.0007;
      into[1] = 1.71 * y[0]! - 8.75 * y[1]!;
      into[2] = -10.03 * y[2]! + 0.43 * y[3]! + 0.035 * y[4]!;
      into[3] = 8.32 * y[1]! + 1.71 * y[2]! - 1.12 * y[3]!;
      into[4] = -1.745 * y[4]! + 0.43 * y[5]! + 0.43 * y[6]!;
      into[5] = -joined + 0.69 * y[3]! + 1.71 * y[4]! - 0.43 * y[5]! + 0.69 * y[6]!;
      into[6] = joined - 1.81 * y[6]!;
      into[7] = 1.81 * y[6]! - joined;
    },
  },
  start: [1, 0, 0, 0, 0, 0, 0, 0.0057],
  end: 321.8122,
  expected: [
    0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
    0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2,
  ],
  absolute: 1e-12,
  source:
    'Mazzia & Magherini, Test Set for Initial Value Problem Solvers, HIRES; seen in its own Fortran file',
};

/** The oscillator of van der Pol with µ = 1000: long calms and sudden jumps. */
export const vanDerPol: StiffProblem = {
  name: 'van der Pol',
  system: {
    size: 2,
    derivative: (_, y, into) => {
      into[0] = y[1]!;
      into[1] = 1000 * (1 - y[0]! ** 2) * y[1]! - y[0]!;
    },
  },
  start: [2, 0],
  end: 2000,
  expected: [0.1706167732170469e1, -0.8928097010248125e-3],
  absolute: 1e-10,
  source:
    'Mazzia & Magherini, Test Set for Initial Value Problem Solvers, VDPOL; seen in its copy for R (deTestSet)',
};

export const stiffProblems: readonly StiffProblem[] = [robertson, hires, vanDerPol];
