import { describe, expect, it } from 'vitest';
import { weirCoefficient } from '../laws/hydraulics/weir.ts';
import type { LinkLaw, NetworkSpec } from './links.ts';
import { flowOf, solveNetwork } from './solve.ts';
import { linksOf, loss, networkOf, smallPump, solved } from './testing/solved.ts';

const L_PER_H = 1 / 3.6e6;
const crest = (crestWidthM: number): LinkLaw => ({
  kind: 'weir',
  coefficient: weirCoefficient({ crestWidthM }),
});

/**
 * A pump that lifts from a return chamber to a tank, whose overflow feeds a sock that stands in a chamber behind a
 * baffle; a clogged sock spills over its rim into the same chamber.
 */
const sump = (sockSlope: number): NetworkSpec => ({
  ...networkOf(
    linksOf(
      ['return', 'a', smallPump],
      ['a', 'tank', loss(0, 8e6)],
      ['display', 'display-crest', crest(0.3)],
      ['sock', 'chamber', loss(sockSlope, 0)],
      ['chamber', 'baffle', crest(0.2)],
      ['sock', 'rim', crest(0.4)],
    ),
    { return: -1, tank: 0, 'display-crest': 0, baffle: -0.9, rim: -0.84 },
  ),
  falls: [
    { links: ['l0'], into: 'display' },
    { links: ['l2'], into: 'sock' },
    { links: ['l5'], into: 'chamber' },
  ],
});

const headAt = (net: ReturnType<typeof solved>['net'], node: string): number =>
  net.nodeHead[net.topology.nodes.indexOf(node)]!;

describe('water that falls from part to part', () => {
  it('is as much in every part as the pump lifts', () => {
    for (const sockSlope of [1, 30, 300, 3000, 1e6]) {
      const { net, report } = solved(sump(sockSlope));
      const flow = flowOf(net, 'l0');
      expect(report.converged).toBe(true);
      expect(flowOf(net, 'l2') / flow).toBeCloseTo(1, 11);
      expect((flowOf(net, 'l3') + flowOf(net, 'l5')) / flow).toBeCloseTo(1, 11);
      expect(flowOf(net, 'l4') / flow).toBeCloseTo(1, 11);
    }
  });

  it('costs the pump its lift and hose, and nothing of what it meets on its way down', () => {
    // By hand: 2(1 − (Q/Q0)²) − 1 = 8e6 Q².
    const byHand = Math.sqrt(1 / (2 / (1200 * L_PER_H) ** 2 + 8e6));
    for (const sockSlope of [1, 3000]) {
      const { net } = solved(sump(sockSlope));
      expect(flowOf(net, 'l0') / byHand).toBeCloseTo(1, 11);
    }
  });

  it('stands in each part as high as its crest asks for', () => {
    const { net } = solved(sump(30));
    const over = (widthM: number): number =>
      (flowOf(net, 'l0') / weirCoefficient({ crestWidthM: widthM })) ** (2 / 3);
    expect(headAt(net, 'display')).toBeCloseTo(over(0.3), 10);
    expect(headAt(net, 'chamber')).toBeCloseTo(-0.9 + over(0.2), 10);
    expect(headAt(net, 'sock')).toBeCloseTo(headAt(net, 'chamber') + 30 * flowOf(net, 'l0'), 10);
  });

  it('spills over the rim just when the sock holds it that high', () => {
    const clean = solved(sump(30)).net;
    expect(flowOf(clean, 'l5')).toBe(0);
    const clogged = solved(sump(3000)).net;
    expect(flowOf(clogged, 'l5')).toBeGreaterThan(0.5 * flowOf(clogged, 'l0'));
    expect(headAt(clogged, 'sock')).toBeGreaterThan(-0.84);
  });

  it('is found again from another answer', () => {
    const { net } = solved(sump(30));
    const before = flowOf(net, 'l3');
    net.resistanceRatio[3] = 100;
    solveNetwork(net);
    expect(flowOf(net, 'l5')).toBeGreaterThan(0);
    net.resistanceRatio[3] = 1;
    solveNetwork(net);
    expect(flowOf(net, 'l5')).toBe(0);
    expect(flowOf(net, 'l3') / before).toBeCloseTo(1, 11);
  });
});
