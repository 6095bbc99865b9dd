import { describe, expect, it } from 'vitest';
import { isAlarming, sharesOf, spacesInWaterOrder } from './shares.ts';
import { drawingCases } from './testing/drawingCases.ts';

describe('shares of the flow', () => {
  it('takes what passes a basket from what goes through it', () => {
    const shares = sharesOf(drawingCases.stack.layout, drawingCases.stack.flows);
    expect(shares?.chamber.get('basket-1')).toBeCloseTo(0.96, 12);
    expect(shares?.gap.get('basket-1')).toBeCloseTo(0.04, 12);
    expect(shares?.chamber.get('basket-3')).toBeCloseTo(0.66, 12);
    expect(shares?.space.get('head')).toBeCloseTo(1, 12);
  });

  it('keeps what leaks over the partition out of both halves', () => {
    const shares = sharesOf(drawingCases.split.layout, drawingCases.split.flows);
    const past = 2e-5 / 1.5e-4;
    expect(shares?.way.get('partition-top')).toBeCloseTo(past, 12);
    expect(shares?.chamber.get('left-1')).toBeCloseTo(1 - past - 0.02, 12);
    expect(shares?.space.get('right-foot')).toBeCloseTo(1 - past, 12);
    expect(shares?.space.get('right-top')).toBeCloseTo(1, 12);
  });

  it('takes what spills over the lip from the slots', () => {
    const shares = sharesOf(drawingCases.hung.layout, drawingCases.hung.flows);
    expect(shares?.chamber.get('slot-1')).toBeCloseTo(0.78, 12);
    expect(shares?.space.get('last')).toBeCloseTo(0.9, 12);
  });

  it('joins the water of the upper slots under the pump', () => {
    const shares = sharesOf(drawingCases.internal.layout, drawingCases.internal.flows);
    expect(shares?.space.get('base')).toBeCloseTo(0.75, 12);
    expect(shares?.chamber.get('chamber-1')).toBeCloseTo(0.7, 12);
    expect(shares?.space.get('pump-space')).toBeCloseTo(1, 12);
  });

  it('knows no shares where nothing is reckoned or nothing flows', () => {
    const { layout } = drawingCases.stack;
    expect(sharesOf(layout, undefined)).toBeUndefined();
    expect(sharesOf(layout, { dutyPoint: { flowM3PerS: 0, headM: 1 }, wayFlowM3PerS: {} })).toBeUndefined();
  });
});

describe('a share past media', () => {
  it.each([
    [undefined, false],
    [0, false],
    [0.004, false],
    [0.0449, false],
    [0.045, true],
    [0.05, true],
    [0.75, true],
  ])('of %s counts as a fault: %s', (share, alarming) => {
    // 4.5 % is printed as 5 %: ink and figure agree
    expect(isAlarming(share)).toBe(alarming);
  });
});

describe('spaces', () => {
  it.each([
    ['split', ['left-top', 'left-between-1-2', 'left-foot', 'right-foot', 'right-between-1-2', 'right-top']],
    ['turned', ['right-top', 'right-between-1-2', 'right-foot', 'left-foot', 'left-between-1-2', 'left-top']],
    ['internal', ['tank-side', 'base', 'between-1-2', 'pump-space', 'nozzle']],
  ] as const)('of %s come in the order of the water', (name, order) => {
    expect(spacesInWaterOrder(drawingCases[name].layout)).toEqual(order);
  });
});
