/**
 * RODAS of Hairer & Wanner (*Solving Ordinary Differential Equations II*, 1996, IV.7 and the authors' code rodas.f):
 * a Rosenbrock method of six stages and order 4 with an error estimate of order 3, L-stable and stiffly accurate.
 * Solves (I/γh − J) U_i = f(y + Σ a_ij U_j) + Σ c_ij U_j/h + γ_i h ∂f/∂t.
 */
import { type DenseLu, factoriseDense, makeDenseLu, solveDense } from './denseLu.ts';

/** A system of ordinary differential equations. */
export interface StiffSystem {
  readonly size: number;
  /** Writes dy/dt into `into`. */
  derivative(time: number, y: Float64Array, into: Float64Array): void;
  /** Writes ∂f/∂y by rows; taken by differences where it is left out. */
  jacobian?(time: number, y: Float64Array, into: Float64Array): void;
  /** True where dy/dt depends on the time itself. */
  readonly timed?: boolean;
}

/** How much work was done. */
export interface StiffCounts {
  derivatives: number;
  jacobians: number;
  steps: number;
  rejected: number;
}

/** Room for steps, reused. */
export interface StageRoom {
  readonly lu: DenseLu;
  readonly jacobian: Float64Array;
  readonly byTime: Float64Array;
  readonly stages: readonly Float64Array[];
  /** dy/dt at the start of the step. */
  readonly atStart: Float64Array;
  readonly trial: Float64Array;
  readonly slope: Float64Array;
}

const STAGES = 6;
const GAMMA = 0.25;
const TIME_SHARE = [0, 0.386, 0.21, 0.63, 1, 1] as const;
const TIME_SLOPE = [0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0] as const;
const LAST_A = [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895] as const;
const A: readonly (readonly number[])[] = [
  [],
  [1.544],
  [0.9466785280815826, 0.2557011698983284],
  [3.314825187068521, 2.896124015972201, 0.9986419139977817],
  LAST_A,
  [...LAST_A, 1],
];
const C: readonly (readonly number[])[] = [
  [],
  [-5.6688],
  [-2.430093356833875, -0.2063599157091915],
  [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
  [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616],
  [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
];
/** Of the polynomial of order 3 within a step. */
const DENSE_SECOND = [
  10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662,
] as const;
const DENSE_THIRD = [
  -0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872,
] as const;

export const makeStageRoom = (size: number): StageRoom => ({
  lu: makeDenseLu(size),
  jacobian: new Float64Array(size * size),
  byTime: new Float64Array(size),
  stages: Array.from({ length: STAGES }, () => new Float64Array(size)),
  atStart: new Float64Array(size),
  trial: new Float64Array(size),
  slope: new Float64Array(size),
});

/** Where a step starts, and its length. */
export interface StepAt {
  readonly time: number;
  readonly y: Float64Array;
  readonly step: number;
}

/** I/γh − J into `lu`, taken apart; false where it is singular. */
const prepare = ({ lu, jacobian }: StageRoom, step: number): boolean => {
  for (let at = 0; at < jacobian.length; at += 1) lu.values[at] = -jacobian[at]!;
  for (let row = 0; row < lu.size; row += 1) {
    const diagonal = row * lu.size + row;
    lu.values[diagonal] = lu.values[diagonal]! + 1 / (GAMMA * step);
  }
  return factoriseDense(lu);
};

const addStages = (into: Float64Array, stages: readonly Float64Array[], by: readonly number[]): void => {
  for (let stage = 0; stage < by.length; stage += 1) {
    const share = by[stage]!;
    const from = stages[stage]!;
    for (let at = 0; at < into.length; at += 1) into[at] = into[at]! + share * from[at]!;
  }
};

const takeStage = (
  system: StiffSystem,
  room: StageRoom,
  of: StepAt & { readonly stage: number; readonly counts: StiffCounts },
): void => {
  const { stage, step } = of;
  const { stages, trial, byTime } = room;
  const into = stages[stage]!;
  if (stage === 0) into.set(room.atStart);
  else {
    trial.set(of.y);
    addStages(trial, stages, A[stage]!);
    system.derivative(of.time + TIME_SHARE[stage]! * step, trial, into);
    of.counts.derivatives += 1;
  }
  addStages(
    into,
    stages,
    C[stage]!.map((share) => share / step),
  );
  const timeSlope = TIME_SLOPE[stage]! * step;
  if (system.timed && timeSlope !== 0)
    for (let at = 0; at < into.length; at += 1) into[at] = into[at]! + timeSlope * byTime[at]!;
  solveDense(room.lu, into);
};

/**
 * Takes one step with the Jacobian and the derivative at its start that stand in `room`. The result goes to `into`;
 * the last of `room.stages` is then the estimate of its error.
 * @returns false where the step cannot be solved
 */
export const rodasStep = (
  system: StiffSystem,
  room: StageRoom,
  of: StepAt & { readonly into: Float64Array; readonly counts: StiffCounts },
): boolean => {
  if (!prepare(room, of.step)) return false;
  for (let stage = 0; stage < STAGES; stage += 1) takeStage(system, room, { ...of, stage });
  of.into.set(room.trial);
  addStages(of.into, room.stages.slice(STAGES - 1), [1]);
  return true;
};

/** The polynomial of a step: y = y₀(1 − s) + s(y₁ + (1 − s)(second + s·third)), s from 0 to 1. */
export const rodasDense = (room: StageRoom, second: Float64Array, third: Float64Array): void => {
  second.fill(0);
  third.fill(0);
  addStages(second, room.stages, DENSE_SECOND);
  addStages(third, room.stages, DENSE_THIRD);
};
