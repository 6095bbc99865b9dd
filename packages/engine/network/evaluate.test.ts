import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateLink } from './evaluate.ts';
import type { LinkLaw } from './links.ts';
import { compiled, linksOf, loss, networkOf, smallPump } from './testing/solved.ts';

/** What a law takes at a flow, and its slope there. */
const at = (law: LinkLaw) => {
  const net = compiled(networkOf(linksOf(['tank', 'a', law])));
  return (flowM3PerS: number): { drop: number; slope: number } => {
    net.links.flow[0] = flowM3PerS;
    evaluateLink(net.links, 0);
    return { drop: net.links.drop[0]!, slope: net.links.slope[0]! };
  };
};

const slot: LinkLaw = {
  kind: 'conduit',
  areaM2: 1e-4,
  hydraulicDiameterM: 2e-3,
  lengthM: 0.05,
  relativeRoughness: 0,
  minorK: 1.5,
  linear: 20,
  laminarConstant: 96,
  friction: 'churchill',
};
const hose: LinkLaw = {
  kind: 'conduit',
  areaM2: 2e-4,
  hydraulicDiameterM: 0.016,
  lengthM: 1.4,
  relativeRoughness: 1e-4,
  minorK: 2,
  linear: 0,
  laminarConstant: 64,
  friction: 'churchill',
};
const measured: LinkLaw = {
  kind: 'pump-points',
  flowM3PerS: [0, 0.5e-4, 1.5e-4, 2.5e-4, 3e-4],
  headM: [1.8, 1.75, 1.2, 0.5, 0],
};

const laws: readonly (readonly [name: string, law: LinkLaw, runsBack: boolean])[] = [
  ['bed', loss(300, 2e7), true],
  ['hose', hose, true],
  ['slot', slot, true],
  ['pump by two points', smallPump, true],
  ['pump with a root', { kind: 'pump', shutoffHeadM: 2, coefficient: 100, exponent: 0.6 }, true],
  ['pump by measured points', measured, true],
  ['weir', { kind: 'weir', coefficient: 0.2 }, false],
  ['drowned weir', { kind: 'weir', coefficient: 0.2, tailwaterM: 0.01 }, false],
  ['one-way link', { kind: 'one-way', linear: 300, quadratic: 2e7 }, false],
  ['check valve', { kind: 'one-way', linear: 300, quadratic: 2e7, crackingHeadM: 0.05 }, false],
  ['coiled hose', { ...hose, curvature: 0.06 }, true],
];

describe.each(laws)('the law of a %s', (_, law, runsBack) => {
  const sizes = [1e-9, 1e-7, 2.3e-6, 1e-5, 3.1e-5, 0.8e-4, 1.9e-4, 2.7e-4, 5e-4, 3e-3];
  const flows = runsBack ? [...sizes, ...sizes.map((size) => -size)] : sizes;

  it('has the slope that central differences find', () => {
    const evaluate = at(law);
    for (const flow of flows) {
      const step = 1e-4 * Math.abs(flow);
      const difference = (evaluate(flow + step).drop - evaluate(flow - step).drop) / (2 * step);
      // Beside a pump's head the change of a small flow is lost in rounding.
      const rounding = (Math.abs(evaluate(flow).drop) * 1e-15) / step;
      expect(Math.abs(evaluate(flow).slope - difference), `${flow} m³/s`).toBeLessThan(
        1e-6 * difference + rounding,
      );
    }
  });

  it('rises with flow through nothing, forwards and back', () => {
    const evaluate = at(law);
    const rising = [-1, -1e-3, -1e-6, -1e-12, 0, 1e-15, 1e-12, 1e-9, 1e-6, 1e-3, 1].map(
      (flow) => evaluate(flow).drop,
    );
    for (const [place, drop] of rising.slice(1).entries())
      expect(drop).toBeGreaterThanOrEqual(rising[place]!);
    expect(rising.at(-1)).toBeGreaterThan(rising[0]!);
  });
});

describe('a pump by any measured points', () => {
  const points = fc
    .array(
      fc.record({
        gap: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
        fall: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      {
        minLength: 1,
        maxLength: 8,
      },
    )
    .map((steps) => {
      const flowM3PerS = [0];
      const headM = [steps.reduce((sum, { fall }) => sum + fall, 0)];
      for (const { gap, fall } of steps) {
        flowM3PerS.push(flowM3PerS.at(-1)! + gap);
        headM.push(headM.at(-1)! - fall);
      }
      return { flowM3PerS, headM };
    });

  it('gives its points, and between them never more head for more flow', () => {
    fc.assert(
      fc.property(points, ({ flowM3PerS, headM }) => {
        const evaluate = at({ kind: 'pump-points', flowM3PerS, headM });
        for (const [place, flow] of flowM3PerS.entries()) {
          // Level points are tilted by a billionth of the greatest head, so that each head has one flow.
          expect(Math.abs(-evaluate(flow).drop - headM[place]!)).toBeLessThanOrEqual(
            1.1e-9 * Math.max(headM[0]!, 1e-6),
          );
        }
        const most = flowM3PerS.at(-1)!;
        let before = Number.NEGATIVE_INFINITY;
        for (let part = -0.2; part < 1.3; part += 0.004) {
          const { drop } = evaluate(part * most);
          // Two neighbouring heads are each rounded: by a few units of the last place of the greatest term.
          const rounding = 4 * Number.EPSILON * Math.max(headM[0]!, Math.abs(drop));
          expect(drop).toBeGreaterThanOrEqual(before - rounding);
          before = drop;
        }
      }),
      { seed: 1980 },
    );
  });
});
