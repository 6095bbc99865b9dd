import type { StiffSystem } from '../rodas.ts';

/** A system that is not stiff: any explicit method solves it as well. */
export interface MildProblem {
  readonly name: string;
  readonly system: StiffSystem;
  readonly start: readonly number[];
  readonly end: number;
}

const predatorAndPrey: StiffSystem = {
  size: 2,
  derivative: (_, y, into) => {
    into[0] = y[0]! * (1.5 - y[1]!);
    into[1] = y[1]! * (y[0]! - 3);
  },
};
const pendulum: StiffSystem = {
  size: 2,
  derivative: (_, y, into) => {
    into[0] = y[1]!;
    into[1] = -Math.sin(y[0]!);
  },
};
/** Monod growth on what is there: what the tank does, in small. */
const growth: StiffSystem = {
  size: 2,
  derivative: (_, y, into) => {
    const eaten = (2 * y[1]! * y[0]!) / (0.5 + y[0]!);
    into[0] = -eaten;
    into[1] = 0.4 * eaten - 0.1 * y[1]!;
  },
};

const drivenByTime: StiffSystem = {
  size: 1,
  timed: true,
  derivative: (t, y, into) => {
    into[0] = Math.cos(t) - y[0]!;
  },
};

export const mildProblems: readonly MildProblem[] = [
  { name: 'predator and prey', system: predatorAndPrey, start: [1, 1], end: 10 },
  { name: 'a pendulum', system: pendulum, start: [2, 0], end: 10 },
  { name: 'growth on what is there', system: growth, start: [10, 0.01], end: 12 },
  { name: 'a system driven by time', system: drivenByTime, start: [1], end: 10 },
];
