import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slotPressure } from '../laws/hydraulics/slot.ts';
import { compileNetwork } from './compile.ts';
import type { LinkLaw } from './links.ts';
import { dropOf, flowOf, solveNetwork } from './solve.ts';
import { linksOf, loss, networkOf, smallPump, solved } from './testing/solved.ts';

const L_PER_H = 1 / 3.6e6;
/** A way that takes nothing. */
const open: LinkLaw = loss(0, 0);

describe('published and worked cases', () => {
  it('finds the duty point of a 2 m, 1200 L/h pump against 8e6 Q²: 998.46 L/h at 0.6154 m', () => {
    // Worked by hand: 2(1 − (Q/Q0)²) = 8e6 Q² gives Q = √(2/(2/Q0² + 8e6)).
    const { net } = solved(networkOf(linksOf(['tank', 'a', smallPump], ['a', 'tank', loss(0, 8e6)])));
    expect(flowOf(net, 'l0') / L_PER_H).toBeCloseTo(998.46, 2);
    expect(dropOf(net, 'l1')).toBeCloseTo(0.6154, 4);
    expect(flowOf(net, 'l0')).toBeCloseTo(Math.sqrt(2 / (2 / (1200 * L_PER_H) ** 2 + 8e6)), 16);
  });

  it('parts 600 L/h between a bed and the slot beside it: 481.7 and 118.3 L/h at 103.9 Pa', () => {
    // Both laws worked by bisection apart from this program: bed 0.01 m² × 0.1 m of 5 mm grains, voidage 0.4,
    // by Ergun 1952; slot 1 mm × 0.4 m × 0.1 m by 12µLV/h² and 1.5 velocity heads; 998.2 kg/m³, 1.002 mPa·s.
    const water = { density: 998.2, viscosity: 1.002e-3, gravity: 9.80665 };
    const [grain, voidage, depth, area] = [0.005, 0.4, 0.1, 0.01];
    const perHead = depth / (water.density * water.gravity);
    const linear = (150 * water.viscosity * (1 - voidage) ** 2) / (voidage ** 3 * grain ** 2);
    const quadratic = (1.75 * water.density * (1 - voidage)) / (voidage ** 3 * grain);
    const bed = loss((linear * perHead) / area, (quadratic * perHead) / area ** 2);
    const slot: LinkLaw = {
      kind: 'conduit',
      areaM2: 1e-3 * 0.4,
      hydraulicDiameterM: 2e-3,
      lengthM: 0.1,
      relativeRoughness: 0,
      minorK: 1.5,
      linear: 0,
      laminarConstant: 96,
      friction: 'churchill',
    };
    // A pump so steep that it gives 600 L/h whatever stands against it.
    const steady: LinkLaw = {
      kind: 'pump',
      shutoffHeadM: 1e9,
      coefficient: 1e9 / (600 * L_PER_H),
      exponent: 1,
    };
    const spec = networkOf(linksOf(['tank', 'a', steady], ['a', 'tank', bed], ['a', 'tank', slot]));
    const { net } = solved({ ...spec, kinematicViscosityM2PerS: water.viscosity / water.density });
    expect(flowOf(net, 'l1') / L_PER_H).toBeCloseTo(481.7, 1);
    expect(flowOf(net, 'l2') / L_PER_H).toBeCloseTo(118.3, 1);
    expect(dropOf(net, 'l1') * water.density * water.gravity).toBeCloseTo(103.9, 1);
  });

  it('takes over a slot what the law of slots says', () => {
    const flowM3PerS = 5e-5;
    const gap = {
      thicknessM: 1e-3,
      widthM: 0.1,
      lengthM: 0.05,
      densityKgPerM3: 998.2,
      viscosityPaS: 1.0016e-3,
    };
    const slot: LinkLaw = {
      kind: 'conduit',
      areaM2: gap.thicknessM * gap.widthM,
      hydraulicDiameterM: 2 * gap.thicknessM,
      lengthM: gap.lengthM,
      relativeRoughness: 0,
      minorK: 1.5,
      linear: 0,
      laminarConstant: 96,
      friction: 'churchill',
    };
    const steady: LinkLaw = { kind: 'pump', shutoffHeadM: 1e6, coefficient: 1e6 / flowM3PerS, exponent: 1 };
    const spec = networkOf(linksOf(['tank', 'a', steady], ['a', 'tank', slot]));
    const { net } = solved({ ...spec, kinematicViscosityM2PerS: gap.viscosityPaS / gap.densityKgPerM3 });
    const lawHead = slotPressure({ ...gap, flowM3PerS: flowOf(net, 'l1') }) / (gap.densityKgPerM3 * 9.80665);
    expect(dropOf(net, 'l1') / lawHead).toBeCloseTo(1, 11);
  });
});

const resistances = fc.record({
  linear: fc.double({ min: 1, max: 1e5, noNaN: true }),
  quadratic: fc.double({ min: 1e4, max: 1e9, noNaN: true }),
});

/** Flow that a linear–quadratic way lets through at a head: the root of b·Q² + a·Q = h without cancellation. */
const flowThrough = (way: { linear: number; quadratic: number }, headM: number): number =>
  (2 * headM) / (way.linear + Math.sqrt(way.linear ** 2 + 4 * way.quadratic * headM));

describe('ways in series and in parallel', () => {
  it('adds resistances in series', () => {
    fc.assert(
      fc.property(resistances, resistances, (a, b) => {
        const pumped = (...ways: LinkLaw[]) => {
          const rows = ways.map(
            (law, i) => [`n${i}`, i + 1 === ways.length ? 'tank' : `n${i + 1}`, law] as const,
          );
          return flowOf(solved(networkOf(linksOf(['tank', 'n0', smallPump], ...rows))).net, 'l0');
        };
        const separate = pumped(loss(a.linear, a.quadratic), loss(b.linear, b.quadratic));
        const together = pumped(loss(a.linear + b.linear, a.quadratic + b.quadratic));
        expect(separate / together).toBeCloseTo(1, 10);
      }),
    );
  });

  it('gives ways in parallel, between levels that are held, what each takes alone', () => {
    const heads = fc.double({ min: 1e-3, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.array(resistances, { minLength: 1, maxLength: 6 }), heads, (ways, headM) => {
        const rows = ways.map((way) => ['tank', 'sump', loss(way.linear, way.quadratic)] as const);
        const { net } = solved(networkOf(linksOf(...rows), { tank: headM, sump: 0 }));
        ways.forEach((way, place) => {
          expect(flowOf(net, `l${place}`) / flowThrough(way, headM)).toBeCloseTo(1, 9);
        });
      }),
    );
  });

  it('makes n equal ways one with a linear part of 1/n and a quadratic one of 1/n²', () => {
    fc.assert(
      fc.property(resistances, fc.integer({ min: 1, max: 8 }), (way, count) => {
        const rows = Array.from(
          { length: count },
          () => ['a', 'tank', loss(way.linear, way.quadratic)] as const,
        );
        const { net } = solved(networkOf(linksOf(['tank', 'a', smallPump], ...rows)));
        const one = loss(way.linear / count, way.quadratic / count ** 2);
        const joined = solved(networkOf(linksOf(['tank', 'a', smallPump], ['a', 'tank', one])));
        expect(flowOf(net, 'l0') / flowOf(joined.net, 'l0')).toBeCloseTo(1, 10);
        expect((flowOf(net, 'l1') * count) / flowOf(net, 'l0')).toBeCloseTo(1, 10);
      }),
    );
  });

  it('parts water evenly between two halves that are alike, and none over the cross way', () => {
    fc.assert(
      fc.property(resistances, resistances, resistances, (near, far, cross) => {
        const { net, largestFlowM3PerS } = solved(
          networkOf(
            linksOf(
              ['tank', 'in', smallPump],
              ['in', 'left', loss(near.linear, near.quadratic)],
              ['in', 'right', loss(near.linear, near.quadratic)],
              ['left', 'right', loss(cross.linear, cross.quadratic)],
              ['left', 'tank', loss(far.linear, far.quadratic)],
              ['right', 'tank', loss(far.linear, far.quadratic)],
            ),
          ),
        );
        expect(Math.abs(flowOf(net, 'l1') - flowOf(net, 'l2'))).toBeLessThanOrEqual(
          1e-10 * largestFlowM3PerS,
        );
        expect(Math.abs(flowOf(net, 'l3'))).toBeLessThanOrEqual(1e-10 * largestFlowM3PerS);
      }),
    );
  });

  it('lets ways that take nothing close a loop, and still closes mass and energy', () => {
    const { net, report } = solved(
      networkOf(
        linksOf(
          ['tank', 'a', smallPump],
          ['a', 'b', open],
          ['a', 'b', open],
          ['b', 'a', open],
          ['b', 'tank', loss(0, 8e6)],
        ),
      ),
    );
    expect(report.converged).toBe(true);
    expect(flowOf(net, 'l0') / L_PER_H).toBeCloseTo(998.46, 2);
    expect(flowOf(net, 'l1') + flowOf(net, 'l2') - flowOf(net, 'l3')).toBeCloseTo(flowOf(net, 'l0'), 16);
  });
});

const head = (spec: { nodes: readonly string[] }, nodeHead: Float64Array, node: string): number =>
  nodeHead[spec.nodes.indexOf(node)]!;

describe('weirs and one-way links', () => {
  const overWeir = (crestM: number, coefficient: number) =>
    solved(
      networkOf(
        linksOf(
          ['tank', 'box', smallPump],
          ['box', 'tank', loss(0, 8e6)],
          ['box', 'crest', { kind: 'weir', coefficient }],
        ),
        { tank: 0, crest: crestM },
      ),
    ).net;

  it('stays dry below its crest, to the last drop', () => {
    const net = overWeir(0.62, 0.1);
    expect(flowOf(net, 'l2')).toBe(0);
    expect(flowOf(net, 'l1') / L_PER_H).toBeCloseTo(998.46, 2);
  });

  it('passes coefficient·h^1.5 above it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.61, noNaN: true }),
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        (crestM, coefficient) => {
          const net = overWeir(crestM, coefficient);
          const level = head(net.topology, net.nodeHead, 'box') - crestM;
          expect(level).toBeGreaterThan(0);
          expect(Math.abs(flowOf(net, 'l2') - coefficient * level ** 1.5)).toBeLessThanOrEqual(
            1e-9 * flowOf(net, 'l0'),
          );
        },
      ),
    );
  });

  it.each([
    [1.999, true],
    [2, false],
    [2.001, false],
    [50, false],
  ])('gives water over a lift of %s m from a 2 m pump: %s', (liftM, flows) => {
    const fall: LinkLaw = { kind: 'one-way', linear: 1, quadratic: 0 };
    const rows = linksOf(['tank', 'a', smallPump], ['a', 'mouth', loss(100, 8e6)], ['mouth', 'lift', fall]);
    const { net, report } = solved(networkOf(rows, { tank: 0, lift: liftM }));
    expect(report.converged).toBe(true);
    if (flows) expect(flowOf(net, 'l0')).toBeGreaterThan(0);
    else expect([...net.flow].map(Math.abs)).toEqual(new Array(net.flow.length).fill(0));
  });

  it('opens again when the pump gains what it lacked', () => {
    const rows = linksOf(
      ['high', 'a', loss(10, 1e6)],
      ['a', 'low', { kind: 'one-way', linear: 10, quadratic: 1e6 }],
    );
    const shut = solved(networkOf(rows, { high: 1, low: 2 })).net;
    expect(flowOf(shut, 'l1')).toBe(0);
    shut.parameters[rows.length * (shut.parameters.length / shut.links.kind.length)] = 3;
    expect(solveNetwork(shut).converged).toBe(true);
    expect(flowOf(shut, 'l1')).toBeCloseTo(flowThrough({ linear: 20, quadratic: 2e6 }, 1), 14);
  });
});

describe('pumps', () => {
  it('share the water evenly when two of a kind stand side by side', () => {
    const rows = linksOf(['tank', 'a', smallPump], ['tank', 'a', smallPump], ['a', 'tank', loss(50, 8e6)]);
    const { net } = solved(networkOf(rows));
    expect(flowOf(net, 'l0') / flowOf(net, 'l1')).toBeCloseTo(1, 10);
    // Two alike: half of the flow each, so 2 − c(Q/2)² = 50 Q + 8e6 Q².
    const c = 2 / (1200 * L_PER_H) ** 2;
    expect(flowOf(net, 'l2')).toBeCloseTo(flowThrough({ linear: 50, quadratic: 8e6 + c / 4 }, 2), 14);
  });

  it('gives exactly the measured head at a measured flow, and less at any greater flow', () => {
    const flowM3PerS = [0, 0.5e-4, 1.5e-4, 2.5e-4, 3e-4];
    const headM = [1.8, 1.75, 1.2, 0.5, 0];
    const pump: LinkLaw = { kind: 'pump-points', flowM3PerS, headM };
    const at = (resistance: number) => {
      const { net } = solved(networkOf(linksOf(['tank', 'a', pump], ['a', 'tank', loss(resistance, 0)])));
      return { flow: flowOf(net, 'l0'), head: -dropOf(net, 'l0') };
    };
    flowM3PerS.forEach((flow, place) => {
      if (flow === 0) return;
      const found = at(headM[place]! / flow);
      expect(found.flow).toBeCloseTo(flow, 14);
      expect(found.head).toBeCloseTo(headM[place]!, 10);
    });
    const swept = Array.from({ length: 400 }, (_, i) => at(10 ** (i / 50 - 1)));
    for (const [place, point] of swept.slice(1).entries()) {
      expect(point.flow).toBeLessThan(swept[place]!.flow);
      expect(point.head).toBeGreaterThan(swept[place]!.head);
    }
  });

  it.each([0.5, 0.9, 1, 1.3, 2, 3.2])('runs on a curve A − B·Q^%s', (exponent) => {
    const pump: LinkLaw = { kind: 'pump', shutoffHeadM: 1.5, coefficient: 1.5 / 3e-4 ** exponent, exponent };
    const { net, report } = solved(networkOf(linksOf(['tank', 'a', pump], ['a', 'tank', loss(0, 8e6)])));
    const flow = flowOf(net, 'l0');
    expect(report.converged).toBe(true);
    expect(1.5 * (1 - (flow / 3e-4) ** exponent)).toBeCloseTo(8e6 * flow ** 2, 11);
  });
});

describe('networks that cannot be solved', () => {
  it('says so when no level is held', () => {
    const result = compileNetwork(networkOf(linksOf(['a', 'b', open]), {}));
    expect(result).toEqual({ ok: false, problem: { code: 'no-fixed-head' } });
  });

  it('names the nodes that nothing joins to a held level', () => {
    const result = compileNetwork(networkOf(linksOf(['tank', 'a', open], ['b', 'c', open])));
    expect(result).toEqual({ ok: false, problem: { code: 'disconnected', nodes: ['b', 'c'] } });
  });
});
