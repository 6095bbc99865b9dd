import { describe, expect, test } from 'vitest';
import type { StiffSystem } from './rodas.ts';
import { beginStiff, crossingIn, marchStiff, restart } from './stiff.ts';
import { hires, robertson, type StiffProblem, stiffProblems } from './testing/stiffProblems.ts';

const solve = ({ system, start, end, absolute }: StiffProblem, relative: number) => {
  const march = beginStiff(system, { time: 0, y: start }, { relative, absolute });
  marchStiff(march, end);
  return march;
};

describe.each(stiffProblems)('$name', (problem) => {
  test.each([1e-4, 1e-6, 1e-8])('comes to the published end with relative closeness %d', (relative) => {
    const { y } = solve(problem, relative);
    problem.expected.forEach((value, at) => {
      // The error of all steps together; a hundred times that of one is what the test set's own runs show.
      expect(Math.abs(y[at]! / value - 1)).toBeLessThan(100 * relative);
    });
  });
});

test('a stiff problem takes few steps', () => {
  expect(solve(robertson, 1e-6).counts.steps).toBeLessThan(600);
  expect(solve(hires, 1e-6).counts.steps).toBeLessThan(500);
});

/** y′ = −(y − cos t) of which the answer is known; `timed`, and not stiff. */
const driven: StiffSystem = {
  size: 1,
  timed: true,
  derivative: (t, y, into) => {
    into[0] = Math.cos(t) - y[0]!;
  },
};
const drivenAt = (t: number): number => 0.5 * (Math.cos(t) + Math.sin(t)) + 0.5 * Math.exp(-t);

const errorWithSteps = (system: StiffSystem, steps: number, wanted: number): number => {
  const march = beginStiff(system, { time: 0, y: [1] }, { relative: 1e9, absolute: 1e9 });
  for (let step = 1; step <= steps; step += 1) {
    march.tryStep = 1;
    marchStiff(march, step / steps);
  }
  return Math.abs(march.y[0]! - wanted);
};

/** y′ = −y²: 1/(1 + t). */
const fading: StiffSystem = {
  size: 1,
  derivative: (_, y, into) => {
    into[0] = -(y[0]! ** 2);
  },
};

test.each([
  ['that knows no time', fading, 0.5],
  ['that is driven by time', driven, drivenAt(1)],
] as const)('half the step is a sixteenth of the error in a system %s: order 4', (_, system, wanted) => {
  const order = Math.log2(errorWithSteps(system, 8, wanted) / errorWithSteps(system, 16, wanted));
  expect(order).toBeGreaterThan(3.7);
  expect(order).toBeLessThan(4.6);
});

test('Jacobians given and by differences come to the same', () => {
  const given: StiffSystem = {
    ...fading,
    jacobian: (_, y, into) => {
      into[0] = -2 * y[0]!;
    },
  };
  const by = (system: StiffSystem): number => {
    const march = beginStiff(system, { time: 0, y: [1] }, { relative: 1e-9, absolute: 1e-12 });
    marchStiff(march, 3);
    return march.y[0]!;
  };
  expect(by(given)).toBeCloseTo(0.25, 9);
  expect(by(fading)).toBeCloseTo(by(given), 9);
});

const close = { relative: 1e-9, absolute: 1e-10 };

test('within a step the state is known as well as at its end', () => {
  const march = beginStiff(driven, { time: 0, y: [1] }, { relative: 1e-7, absolute: 1e-8 });
  const state = new Float64Array(1);
  let worst = 0;
  marchStiff(march, 10, (step) => {
    for (const share of [0, 0.25, 0.5, 0.9, 1]) {
      const time = step.from + share * (step.to - step.from);
      step.at(time, state);
      worst = Math.max(worst, Math.abs(state[0]! - drivenAt(time)));
    }
  });
  expect(worst).toBeLessThan(1e-6);
});

test('the time of a crossing is found within a step', () => {
  const march = beginStiff(fading, { time: 0, y: [1] }, close);
  const state = new Float64Array(1);
  let crossed: number | undefined;
  marchStiff(march, 10, (step) => {
    crossed ??= crossingIn(step, state, (y) => y[0]! - 0.2);
  });
  expect(crossed).toBeCloseTo(4, 5);
});

test('a march meets a change exactly and goes on from it', () => {
  const march = beginStiff(fading, { time: 0, y: [1] }, close);
  marchStiff(march, 1);
  march.y[0] = 1;
  restart(march);
  marchStiff(march, 2);
  expect(march.time).toBe(2);
  expect(march.y[0]).toBeCloseTo(0.5, 8);
});

test('sums that a system keeps are kept to rounding', () => {
  const march = solve(robertson, 1e-5);
  expect(Math.abs(march.y[0]! + march.y[1]! + march.y[2]! - 1)).toBeLessThan(1e-9);
});

test('a march that no step can follow is refused with where it stands', () => {
  const bursting: StiffSystem = {
    size: 1,
    derivative: (_, y, into) => {
      into[0] = y[0]! ** 2;
    },
  };
  const march = beginStiff(bursting, { time: 0, y: [1] }, { relative: 1e-6, absolute: 1e-9 });
  expect(() => marchStiff(march, 2)).toThrow(/stands still at 1|too many steps/);
});
