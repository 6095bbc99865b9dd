import {
  makeStageRoom,
  rodasDense,
  rodasStep,
  type StageRoom,
  type StiffCounts,
  type StiffSystem,
} from './rodas.ts';

/** How close a march is to be; the error of each step is held under absolute + relative·|y|, by the mean square. */
export interface Closeness {
  /** Above 0. */
  readonly relative: number;
  /** One for all, or one for each; above 0. */
  readonly absolute: number | Float64Array;
  /** First step; chosen where it is left out. */
  readonly firstStep?: number;
  /** Steps that may be tried in one march before it is given up. */
  readonly mostSteps?: number;
}

/** The last step that was taken, with what lies within it. */
export interface DenseStep {
  readonly from: number;
  readonly to: number;
  /** Writes the state at a time within the step. */
  at(time: number, into: Float64Array): void;
}

/** A march of a stiff system through time. */
export interface StiffMarch {
  readonly system: StiffSystem;
  readonly closeness: Closeness;
  time: number;
  /** The state now; may be changed between marches, after which `restart` is due. */
  readonly y: Float64Array;
  /** Length of the step that is tried next; 0 before the first. */
  tryStep: number;
  readonly counts: StiffCounts;
  readonly room: StageRoom;
  readonly before: Float64Array;
  readonly second: Float64Array;
  readonly third: Float64Array;
  lastStep: number;
  lastError: number;
}

const MOST_STEPS = 100_000;
const SAFETY = 0.9;
const GROWS_AT_MOST = 6;
const SHRINKS_AT_MOST = 0.2;
/** Order of the error estimate, and 1. */
const ORDER = 4;
const ROUNDING = 2 ** -52;

const absoluteOf = ({ absolute }: Closeness, at: number): number =>
  typeof absolute === 'number' ? absolute : absolute[at]!;

/** Begins a march at a time and a state, which is copied. */
export const beginStiff = (
  system: StiffSystem,
  start: { readonly time: number; readonly y: ArrayLike<number> },
  closeness: Closeness,
): StiffMarch => {
  const numbers = (): Float64Array => new Float64Array(system.size);
  const y = numbers();
  y.set(start.y);
  return {
    system,
    closeness,
    time: start.time,
    y,
    tryStep: closeness.firstStep ?? 0,
    counts: { derivatives: 0, jacobians: 0, steps: 0, rejected: 0 },
    room: makeStageRoom(system.size),
    before: numbers(),
    second: numbers(),
    third: numbers(),
    lastStep: 0,
    lastError: 0,
  };
};

/** Says that the state or the system was changed: the next step is chosen anew. */
export const restart = (march: StiffMarch): void => {
  march.tryStep = march.closeness.firstStep ?? 0;
  march.lastStep = 0;
};

const derive = (march: StiffMarch, time: number, into: Float64Array): void => {
  march.system.derivative(time, march.y, into);
  march.counts.derivatives += 1;
};

/** ∂f/∂y by differences upward: levels and masses near nothing stay on their side of it. */
const differences = (march: StiffMarch): void => {
  const { y, time, closeness } = march;
  const { jacobian, slope, atStart } = march.room;
  for (let column = 0; column < y.length; column += 1) {
    const kept = y[column]!;
    const size = Math.max(Math.abs(kept), absoluteOf(closeness, column) / closeness.relative);
    y[column] = kept + Math.sqrt(ROUNDING) * size;
    const moved = y[column]! - kept;
    derive(march, time, slope);
    y[column] = kept;
    for (let row = 0; row < y.length; row += 1)
      jacobian[row * y.length + column] = (slope[row]! - atStart[row]!) / moved;
  }
};

/** Derivative, Jacobian and, of a timed system, ∂f/∂t at the start of a step. */
const lookAround = (march: StiffMarch, reach: number): void => {
  const { system, room, time, y } = march;
  derive(march, time, room.atStart);
  if (system.jacobian) system.jacobian(time, y, room.jacobian);
  else differences(march);
  march.counts.jacobians += 1;
  if (!system.timed) return;
  const moved = Math.sqrt(ROUNDING) * Math.max(Math.abs(time), Math.abs(reach));
  derive(march, time + moved, room.byTime);
  for (let at = 0; at < y.length; at += 1) room.byTime[at] = (room.byTime[at]! - room.atStart[at]!) / moved;
};

/** Mean square of values against what each may be off. */
const against = (march: StiffMarch, values: Float64Array, other: Float64Array): number => {
  const { y, closeness } = march;
  let sum = 0;
  for (let at = 0; at < y.length; at += 1) {
    const size = Math.max(Math.abs(y[at]!), Math.abs(other[at]!));
    sum += (values[at]! / (absoluteOf(closeness, at) + closeness.relative * size)) ** 2;
  }
  return Math.sqrt(sum / y.length);
};

/** A first step over which the start's slope moves the state by a hundredth of its size (Hairer, Nørsett & Wanner II.4). */
const chooseStep = (march: StiffMarch, reach: number): number => {
  const size = against(march, march.y, march.y);
  const slope = against(march, march.room.atStart, march.y);
  const step = size > 1e-5 && slope > 1e-5 ? (0.01 * size) / slope : 1e-6 * reach;
  return Math.min(step, reach);
};

/** The next step after one with an error, by the standard rule and Gustafsson's look back. */
const nextStep = (march: StiffMarch, step: number, error: number): number => {
  const plain = (error ** (1 / ORDER) || 0) / SAFETY;
  let over = Math.min(Math.max(plain, 1 / GROWS_AT_MOST), 1 / SHRINKS_AT_MOST);
  if (march.lastStep > 0 && error > 0) {
    const lookBack = ((march.lastStep / step) * (error ** 2 / march.lastError) ** (1 / ORDER)) / SAFETY;
    over = Math.max(over, Math.min(Math.max(lookBack, 1 / GROWS_AT_MOST), 1 / SHRINKS_AT_MOST));
  }
  return step / over;
};

/** Tries steps until one is close enough, and takes it. */
const advance = (march: StiffMarch, end: number): void => {
  const { system, room, counts, before, y } = march;
  lookAround(march, end - march.time);
  if (march.tryStep <= 0) march.tryStep = chooseStep(march, end - march.time);
  before.set(y);
  let rejected = false;
  for (;;) {
    const left = end - march.time;
    const last = march.tryStep >= left * (1 - 1e-12);
    // Two halves instead of a step and a crumb.
    const step = last ? left : Math.min(march.tryStep, 0.5 * left);
    const of = { time: march.time, y: before, step, into: y, counts };
    const error = rodasStep(system, room, of) ? against(march, room.stages.at(-1)!, before) : Number.NaN;
    if (error <= 1) {
      const next = nextStep(march, step, error);
      march.tryStep = rejected ? Math.min(next, step) : last ? Math.max(next, march.tryStep) : next;
      [march.lastStep, march.lastError] = [step, Math.max(error, 0.01)];
      march.time = last ? end : march.time + step;
      counts.steps += 1;
      return;
    }
    counts.rejected += 1;
    rejected = true;
    march.tryStep = Number.isFinite(error) ? Math.min(nextStep(march, step, error), 0.9 * step) : 0.1 * step;
    if (march.tryStep <= 16 * ROUNDING * Math.max(Math.abs(march.time), 1e-300))
      throw new Error(`the march stands still at ${march.time}: no step is short enough`);
  }
};

const denseOf = (march: StiffMarch, from: number): DenseStep => {
  const { before, y, second, third, time: to } = march;
  rodasDense(march.room, second, third);
  return {
    from,
    to,
    at: (time, into) => {
      const s = (time - from) / (to - from);
      for (let at = 0; at < y.length; at += 1) {
        const inner = y[at]! + (1 - s) * (second[at]! + s * third[at]!);
        into[at] = (1 - s) * before[at]! + s * inner;
      }
    },
  };
};

/**
 * Marches to a time with steps whose estimated error stays within the closeness asked for. Discontinuities are met by
 * marching to each, changing state or system, and `restart`.
 * @param end time to stop at, exactly; at or after the march's own
 * @param look called after each step with what lies within it; nothing of it may be kept
 * @throws where no step is short enough or too many were tried: the system is not one that can be marched
 */
export const marchStiff = (march: StiffMarch, end: number, look?: (step: DenseStep) => void): void => {
  const most = march.counts.steps + march.counts.rejected + (march.closeness.mostSteps ?? MOST_STEPS);
  while (march.time < end) {
    const from = march.time;
    advance(march, end);
    look?.(denseOf(march, from));
    if (march.counts.steps + march.counts.rejected > most)
      throw new Error(`the march was given up at ${march.time}: too many steps`);
  }
};

/**
 * Time within a step at which a value of the state first passes zero, by bisection on the step's polynomial, to a
 * millionth of the step; undefined where it has the same sign at both ends.
 */
export const crossingIn = (
  step: DenseStep,
  state: Float64Array,
  value: (y: Float64Array) => number,
): number | undefined => {
  const at = (time: number): number => {
    step.at(time, state);
    return value(state);
  };
  const rising = at(step.to) > 0;
  if (at(step.from) > 0 === rising) return undefined;
  let [low, high] = [step.from, step.to];
  for (let trial = 0; trial < 20; trial += 1) {
    const middle = 0.5 * (low + high);
    if (at(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return high;
};
