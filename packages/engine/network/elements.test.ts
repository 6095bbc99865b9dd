import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coilFrictionMishraGupta1979 } from '../laws/hydraulics/coils.ts';
import { frictionFactorChurchill1977 } from '../laws/hydraulics/friction.ts';
import { churchill, coil } from './conduit.ts';
import type { LinkLaw } from './links.ts';
import { dropOf, flowOf, solveNetwork } from './solve.ts';
import { linksOf, loss, networkOf, smallPump, solved } from './testing/solved.ts';

const L_PER_H = 1 / 3.6e6;
const RUNS = { numRuns: 100, seed: 1947 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const checkValve = (crackingHeadM: number): LinkLaw => ({
  kind: 'one-way',
  linear: 40,
  quadratic: 5e6,
  crackingHeadM,
});

describe('a check valve', () => {
  const behindPump = (crackingHeadM: number) =>
    solved(networkOf(linksOf(['tank', 'a', smallPump], ['a', 'tank', checkValve(crackingHeadM)])));

  it.each([0, 0.05, 0.35, 1.2])('takes its cracking head of %s m beside its loss', (crackingHeadM) => {
    const { net, report } = behindPump(crackingHeadM);
    const fall = 2 / (1200 * L_PER_H) ** 2;
    // By hand: 2 − fall·Q² = crack + 40 Q + 5e6 Q².
    const [a, b, c] = [fall + 5e6, 40, crackingHeadM - 2];
    const byHand = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    expect(report.converged).toBe(true);
    expect(flowOf(net, 'l1') / byHand).toBeCloseTo(1, 10);
    expect(dropOf(net, 'l1')).toBeCloseTo(crackingHeadM + 40 * byHand + 5e6 * byHand ** 2, 10);
  });

  it.each([2, 2.5, 40])(
    'stays shut where a 2 m pump stands before one that opens at %s m',
    (crackingHeadM) => {
      const { net, report } = behindPump(crackingHeadM);
      expect(report.converged).toBe(true);
      expect(Math.abs(flowOf(net, 'l1'))).toBe(0);
    },
  );

  it('lets nothing back, however the water stands on its two sides', () => {
    fc.assert(
      fc.property(between(-3, 3), between(0, 1), between(0.1, 3), (level, crackingHeadM, shutoffHeadM) => {
        const pump: LinkLaw = { kind: 'pump', shutoffHeadM, coefficient: 2e7, exponent: 2 };
        const rows = linksOf(
          ['tank', 'a', loss(20, 1e6)],
          ['a', 'b', pump],
          ['b', 'c', checkValve(crackingHeadM)],
          ['c', 'd', checkValve(0)],
          ['d', 'sump', loss(20, 1e6)],
          ['a', 'sump', loss(500, 3e7)],
        );
        const { net, report } = solved(networkOf(rows, { tank: 0, sump: level }));
        expect(report.converged).toBe(true);
        expect(flowOf(net, 'l2')).toBeGreaterThanOrEqual(0);
        // It opens exactly where the head before it is more than it asks for.
        const over = shutoffHeadM - crackingHeadM - level;
        const bare = flowOf(net, 'l2') > 0;
        if (over > 0.5 + Math.abs(level)) expect(bare).toBe(true);
        if (over < -0.5 - Math.abs(level)) expect(bare).toBe(false);
      }),
      RUNS,
    );
  });

  it('opens and shuts again as the pump behind it gains and loses head', () => {
    const { net } = behindPump(0.4);
    const place = net.linkIndex.get('l0')! * (net.parameters.length / net.links.kind.length);
    for (const [shutoff, runs] of [
      [0.3, false],
      [0.5, true],
      [0.39, false],
      [2, true],
    ] as const) {
      net.parameters[place] = shutoff;
      expect(solveNetwork(net).converged).toBe(true);
      expect(flowOf(net, 'l1') > 0, `${shutoff} m`).toBe(runs);
    }
  });
});

describe('a drowned crest', () => {
  const steady = (flowM3PerS: number): LinkLaw => ({
    kind: 'pump',
    shutoffHeadM: 1e6,
    coefficient: 1e6 / flowM3PerS,
    exponent: 1,
  });
  const at = (flowM3PerS: number, tailwaterM: number) => {
    const weir: LinkLaw = { kind: 'weir', coefficient: 0.15, tailwaterM };
    const rows = linksOf(['tank', 'box', steady(flowM3PerS)], ['box', 'crest', weir]);
    const { net } = solved(networkOf(rows, { tank: 0, crest: 0.02 }));
    return { level: dropOf(net, 'l1'), flow: flowOf(net, 'l1') };
  };
  const levelAt = (flowM3PerS: number, tailwaterM: number): number => at(flowM3PerS, tailwaterM).level;

  it('holds the level at which Villemonte lets the flow through', () => {
    fc.assert(
      fc.property(between(1e-6, 2e-3), between(1e-4, 0.05), (flowM3PerS, tailwaterM) => {
        const { level, flow } = at(flowM3PerS, tailwaterM);
        expect(level).toBeGreaterThan(tailwaterM);
        const share = (1 - (tailwaterM / level) ** 1.5) ** 0.385;
        // Where it hardly falls, rounding of the level is all that there is of its difference from the tailwater.
        const rounding = (1e-14 * level) / (level - tailwaterM);
        expect(Math.abs((0.15 * level ** 1.5 * share) / flow - 1)).toBeLessThan(1e-9 + rounding);
      }),
      RUNS,
    );
  });

  it('stands at the level behind it when nothing flows, and near that of a free crest when much does', () => {
    expect(levelAt(1e-9, 0.03)).toBeCloseTo(0.03, 9);
    const free = (2e-3 / 0.15) ** (2 / 3);
    expect(levelAt(2e-3, 0.002) / free).toBeGreaterThan(1);
    expect(levelAt(2e-3, 0.002) / free).toBeLessThan(1.002);
  });

  it('stays dry where the water before it stands lower than behind it', () => {
    const weir: LinkLaw = { kind: 'weir', coefficient: 0.15, tailwaterM: 0.03 };
    const rows = linksOf(['pond', 'box', loss(10, 1e5)], ['box', 'crest', weir]);
    const overAt = (pond: number): number => flowOf(solved(networkOf(rows, { pond, crest: 0.02 })).net, 'l1');
    expect(overAt(0.049)).toBe(0);
    expect(overAt(0.051)).toBeGreaterThan(0);
  });
});

describe('two pumps', () => {
  /** Two unlike pumps by A − B·Q², worked by hand below. */
  const strong = { shutoffHeadM: 1.6, coefficient: 1.2e7 };
  const weak = { shutoffHeadM: 0.9, coefficient: 3e7 };
  const law = (pump: typeof strong): LinkLaw => ({ kind: 'pump', exponent: 2, ...pump });
  const system = loss(0, 1e7);

  it('one behind the other add their heads: 0.9 + 1.6 m against 5.2e7 Q² is 789.4 L/h', () => {
    const rows = linksOf(['tank', 'a', law(strong)], ['a', 'b', law(weak)], ['b', 'tank', system]);
    const { net } = solved(networkOf(rows));
    expect(flowOf(net, 'l0')).toBeCloseTo(Math.sqrt(2.5 / 5.2e7), 14);
    expect(flowOf(net, 'l0') / L_PER_H).toBeCloseTo(789.4, 1);
    expect(-dropOf(net, 'l0') - dropOf(net, 'l1')).toBeCloseTo(1e7 * (2.5 / 5.2e7), 11);
  });

  it('side by side add their flows at one head', () => {
    const rows = linksOf(['tank', 'a', law(strong)], ['tank', 'a', law(weak)], ['a', 'tank', system]);
    const { net } = solved(networkOf(rows));
    const headM = -dropOf(net, 'l0');
    expect(-dropOf(net, 'l1')).toBeCloseTo(headM, 12);
    const flow = ({ shutoffHeadM, coefficient }: typeof strong): number => {
      const over = (shutoffHeadM - headM) / coefficient;
      return Math.sign(over) * Math.sqrt(Math.abs(over));
    };
    expect(flowOf(net, 'l0') / flow(strong)).toBeCloseTo(1, 9);
    expect(flowOf(net, 'l1') / flow(weak)).toBeCloseTo(1, 9);
    expect(1e7 * flowOf(net, 'l2') ** 2).toBeCloseTo(headM, 12);
  });

  it('side by side push water back through the weaker one, unless a check valve stands behind it', () => {
    const steep = loss(0, 2e8);
    const open = linksOf(['tank', 'a', law(strong)], ['tank', 'a', law(weak)], ['a', 'tank', steep]);
    expect(flowOf(solved(networkOf(open)).net, 'l1')).toBeLessThan(0);
    const held = linksOf(
      ['tank', 'a', law(strong)],
      ['tank', 'b', law(weak)],
      ['b', 'a', checkValve(0)],
      ['a', 'tank', steep],
    );
    const { net } = solved(networkOf(held));
    expect(flowOf(net, 'l1')).toBe(0);
    expect(flowOf(net, 'l0')).toBeCloseTo(Math.sqrt(1.6 / 2.12e8), 14);
  });
});

describe('a coiled hose', () => {
  const hose = (curvature: number): LinkLaw => ({
    kind: 'conduit',
    areaM2: Math.PI * 0.008 ** 2,
    hydraulicDiameterM: 0.016,
    lengthM: 2,
    relativeRoughness: 1e-4,
    minorK: 0,
    linear: 0,
    laminarConstant: 64,
    friction: 'churchill',
    curvature,
  });
  const flow = (curvature: number): number =>
    flowOf(solved(networkOf(linksOf(['tank', 'a', smallPump], ['a', 'tank', hose(curvature)]))).net, 'l0');

  it('has the friction of the published law from creeping to fast flow, and the slope of its differences', () => {
    const at = (Re: number, curvature: number) => {
      const cell = { factor: 0, slope: 0 };
      churchill(Re, { relativeRoughness: 1e-4, laminarConstant: 64 }, cell);
      coil(Re, curvature, cell);
      return cell;
    };
    for (const curvature of [0.003, 0.02, 0.06, 0.15]) {
      for (let Re = 1e-3; Re < 1e6; Re *= 1.37) {
        const straightFactor = frictionFactorChurchill1977({ reynolds: Re, relativeRoughness: 1e-4 });
        const law = coilFrictionMishraGupta1979({ reynolds: Re, curvature, straightFactor });
        expect(at(Re, curvature).factor / law, `${Re}`).toBeCloseTo(1, 11);
        const [above, below] = [at(1.0001 * Re, curvature), at(0.9999 * Re, curvature)];
        // Both laws meet in a bend: a difference across it has no slope to agree with.
        if (above.slope / below.slope < 0.9) continue;
        const difference = (above.factor - below.factor) / (2e-4 * Re);
        expect(at(Re, curvature).slope / difference, `${Re}`).toBeCloseTo(1, 4);
      }
    }
  });

  it('lets through less the tighter it is coiled, and without a bend what a straight one does', () => {
    const flows = [0, 1e-9, 0.01, 0.03, 0.06, 0.1, 0.15].map(flow);
    expect(flows[1]! / flows[0]!).toBeCloseTo(1, 4);
    flows.slice(2).forEach((value, place) => {
      expect(value).toBeLessThan(flows[place + 1]!);
    });
  });
});
