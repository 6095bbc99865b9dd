import { beginStiff, marchStiff } from '@fettle/engine/numerics/stiff.ts';
import { mildProblems } from '@fettle/engine/numerics/testing/mildProblems.ts';
import { expect, test } from 'vitest';
import { solveExplicitly } from './support/explicitLibrary.ts';

test.each(mildProblems)('$name: the same as an explicit library, to 1e-6', ({ system, start, end }) => {
  const march = beginStiff(system, { time: 0, y: start }, { relative: 1e-9, absolute: 1e-10 });
  marchStiff(march, end);
  const { y } = solveExplicitly(system, { start, end }, { relative: 1e-11, absolute: 1e-13 });
  y.forEach((value, at) => {
    expect(Math.abs(march.y[at]! - value)).toBeLessThan(1e-6 * Math.max(1, Math.abs(value)));
  });
});
