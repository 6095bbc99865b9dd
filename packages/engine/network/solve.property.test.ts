import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CompiledNetwork } from './compiled.ts';
import { evaluateLink } from './evaluate.ts';
import type { Link, NetworkSpec } from './links.ts';
import { flowOf, solveNetwork, startFrom } from './solve.ts';
import { type LawMix, type NetworkShape, randomNetwork, seededRandom } from './testing/randomNetworks.ts';
import { compiled, largestFlow, solved } from './testing/solved.ts';

/** Drawn the same each time: a check that fails must fail for everybody. */
const RUNS = { numRuns: 200, seed: 1977 };
const twoWayMixes: readonly LawMix[] = ['conduits', 'linear-quadratic', 'linear', 'quadratic', 'filter'];
const mixes: readonly LawMix[] = [...twoWayMixes, 'every'];

const shapes = (
  decades: readonly number[] = [0, 2, 6],
  kinds: readonly LawMix[] = mixes,
): fc.Arbitrary<NetworkShape> =>
  fc.record({
    seed: fc.integer({ min: 1, max: 1_000_000 }),
    spaces: fc.integer({ min: 2, max: 14 }),
    extraLinks: fc.integer({ min: 0, max: 12 }),
    mix: fc.constantFrom(...kinds),
    tanks: fc.constantFrom(1, 2),
    decades: fc.constantFrom(...decades),
    friction: fc.constantFrom('churchill', 'swamee-jain-cubic'),
  });

/** Flow that gathers at each node, without those whose level is held. */
const gathered = (net: CompiledNetwork): number[] => {
  const sum = new Array<number>(net.topology.nodes.length).fill(0);
  net.flow.forEach((flow, link) => {
    sum[net.topology.from[link]!] = sum[net.topology.from[link]!]! - flow;
    sum[net.topology.to[link]!] = sum[net.topology.to[link]!]! + flow;
  });
  return sum;
};

const isOneWay = ({ law }: Link): boolean => law.kind === 'one-way' || law.kind === 'weir';

/** Part of the largest head by which heads of a link's ends and what it takes disagree. */
const headMismatch = (spec: NetworkSpec, net: CompiledNetwork, scale: number): number => {
  const head = new Map(net.topology.nodes.map((node, place) => [node, net.nodeHead[place]!]));
  return Math.max(
    ...spec.links.map((link, place) => {
      const over = head.get(link.from)! - head.get(link.to)! - net.drop[place]!;
      const shut = isOneWay(link) && net.flow[place] === 0;
      return (shut ? Math.max(over, 0) : Math.abs(over)) / scale;
    }),
  );
};

const starts: readonly [name: string, scaleM3PerS: number][] = [
  ['a random start', 1e-3],
  ['flows of a millionth of a drop', 1e-15],
  ['absurd flows of a million m³/s', 1e6],
];

/**
 * How closely flows are settled, in parts of the largest. A purely quadratic cross way between even heads takes
 * b·Q², so that rounding of the head leaves its flow open to the root of rounding; any linear part settles it.
 */
const flowTolerance = (mix: LawMix): number => (mix === 'quadratic' ? 1e-6 : 1e-9);

/** Flows from a random start, beside those that stand in `net`; in parts of the larger of largest and usual flow. */
const differenceFromStart = (
  net: CompiledNetwork,
  start: { seed: number; scaleM3PerS: number; headTolerance: number },
): number => {
  const { seed, scaleM3PerS, headTolerance } = start;
  const before = net.flow.slice();
  const random = seededRandom(seed);
  const size = Math.max(largestFlow(net), net.spec.usualFlowM3PerS);
  startFrom(
    net,
    net.chordFlow.map(() => scaleM3PerS * (2 * random() - 1)),
  );
  const { energyErrorM, headScaleM } = solveNetwork(net);
  expect(energyErrorM).toBeLessThanOrEqual(headTolerance * headScaleM);
  return Math.max(...net.flow.map((flow, link) => Math.abs(flow - before[link]!))) / size;
};

describe('any network of pump, hoses, beds, gaps and weirs', () => {
  it('gathers no water anywhere: 1e-12 of the largest flow', () => {
    fc.assert(
      fc.property(shapes(), (shape) => {
        const { net, largestFlowM3PerS } = solved(randomNetwork(shape));
        const worst = Math.max(...gathered(net).map(Math.abs));
        expect(worst).toBeLessThanOrEqual(1e-12 * largestFlowM3PerS);
      }),
      RUNS,
    );
  });

  it('has heads that agree over every link: 1e-9 of the largest head', () => {
    fc.assert(
      fc.property(shapes(), (shape) => {
        const spec = randomNetwork(shape);
        const { net, report } = solved(spec);
        expect(report.converged).toBe(true);
        expect(report.energyErrorM).toBeLessThanOrEqual(1e-9 * report.headScaleM);
        expect(headMismatch(spec, net, report.headScaleM)).toBeLessThanOrEqual(1e-9);
      }),
      RUNS,
    );
  });

  it.each(starts)('has the same flows from %s as from rest', (_, scaleM3PerS) => {
    fc.assert(
      fc.property(shapes(), (shape) => {
        const { net } = solved(randomNetwork(shape));
        const difference = differenceFromStart(net, { seed: shape.seed, scaleM3PerS, headTolerance: 1e-9 });
        expect(difference).toBeLessThanOrEqual(flowTolerance(shape.mix));
      }),
      RUNS,
    );
  });

  // Between ways of such contrasts the lesser flow is a difference of two greater ones, and what it takes has their
  // rounding times its own resistance: at 24 decades that alone may come to more than 1e-9 of the largest head. A
  // one-way link closes a loop whatever it takes, so that with those the limit comes sooner.
  it.each([
    ['hoses, beds and pumps', 8, twoWayMixes, 1e-9],
    ['hoses, beds and pumps', 12, twoWayMixes, 1e-8],
    ['one-way links and weirs too', 8, ['every'], 1e-9],
  ] as const)('keeps mass, energy and flows, with %s, at 1e∓%i of the usual resistances', (...row) => {
    const [, power, kinds, headTolerance] = row;
    fc.assert(
      fc.property(shapes([2 * power], kinds), (shape) => {
        const spec = randomNetwork(shape);
        const { net, report, largestFlowM3PerS } = solved(spec);
        expect(report.energyErrorM).toBeLessThanOrEqual(headTolerance * report.headScaleM);
        expect(Math.max(...gathered(net).map(Math.abs))).toBeLessThanOrEqual(1e-12 * largestFlowM3PerS);
        expect(headMismatch(spec, net, report.headScaleM)).toBeLessThanOrEqual(headTolerance);
        for (const [, scaleM3PerS] of starts) {
          const difference = differenceFromStart(net, { seed: shape.seed, scaleM3PerS, headTolerance });
          expect(difference).toBeLessThanOrEqual(flowTolerance(shape.mix));
        }
      }),
      RUNS,
    );
  });

  it.each(['linear', 'quadratic'] as const)(
    'gets no more water from its pump when any part resists more and all laws are %s',
    (mix) => {
      // Laws of one power only: where powers differ, opening a cross way can take flow away (Braess).
      fc.assert(
        fc.property(shapes(), fc.nat(), fc.double({ min: 1, max: 100, noNaN: true }), (shape, pick, more) => {
          const spec = randomNetwork({ ...shape, mix, tanks: 1 });
          const { net, largestFlowM3PerS } = solved(spec);
          const before = flowOf(net, 'pump');
          net.resistanceRatio[pick % spec.links.length] = more;
          solveNetwork(net);
          expect(flowOf(net, 'pump')).toBeLessThanOrEqual(before + 1e-11 * largestFlowM3PerS);
        }),
        RUNS,
      );
    },
  );

  it('answers the same warm as cold after its resistances have changed', () => {
    fc.assert(
      fc.property(shapes(), fc.double({ min: -1, max: 1, noNaN: true }), (shape, decade) => {
        const spec = randomNetwork(shape);
        const warm = solved(spec).net;
        const cold = compiled(spec);
        const random = seededRandom(shape.seed + 1);
        const ratio = warm.resistanceRatio.map(() => 10 ** (decade * random()));
        for (const net of [warm, cold]) {
          net.resistanceRatio.set(ratio);
          solveNetwork(net);
        }
        const size = largestFlow(cold);
        cold.flow.forEach((flow, link) => {
          expect(Math.abs(flow - warm.flow[link]!)).toBeLessThanOrEqual(flowTolerance(shape.mix) * size);
        });
      }),
      RUNS,
    );
  });

  it.each([
    ['1 %', 0.00432],
    ['tenfold', 1],
    ['ten-thousandfold', 4],
  ])('follows its resistances from change to change of up to %s to ten times the tolerance', (_, decades) => {
    fc.assert(
      fc.property(shapes([0, 2]), (shape) => {
        const spec = randomNetwork(shape);
        const [warm, cold] = [solved(spec).net, compiled(spec)];
        const random = seededRandom(shape.seed + 2);
        for (let change = 0; change < 6; change += 1) {
          for (let link = 0; link < spec.links.length; link += 1) {
            const ratio = 10 ** (decades * (random() - 0.5));
            warm.resistanceRatio[link] = ratio;
            cold.resistanceRatio[link] = ratio;
          }
          solveNetwork(warm, 1e-9);
          startFrom(cold);
          solveNetwork(cold);
          const size = largestFlow(cold);
          // Purely quadratic ways have their flow to the root of the tolerance, as they have it to that of rounding.
          const tolerance = shape.mix === 'quadratic' ? 1e-4 : 1e-8;
          cold.flow.forEach((flow, link) => {
            expect(Math.abs(flow - warm.flow[link]!)).toBeLessThanOrEqual(tolerance * size);
          });
        }
      }),
      RUNS,
    );
  });

  it('tells of every link what its own law takes at its flow: 1e-11 of the largest head', () => {
    fc.assert(
      fc.property(shapes(), (shape) => {
        const { net, report } = solved(randomNetwork(shape));
        const [told, slopes] = [net.drop.slice(), net.slope.slice()];
        for (let link = 0; link < told.length; link += 1) {
          evaluateLink(net.links, link);
          const { drop, slope } = net.links;
          expect(Math.abs(told[link]! - drop[link]!)).toBeLessThanOrEqual(1e-11 * report.headScaleM);
          expect(Math.abs(slopes[link]! - slope[link]!)).toBeLessThanOrEqual(1e-4 * slope[link]!);
        }
      }),
      RUNS,
    );
  });

  it('lets nothing back through a one-way link or over a weir', () => {
    fc.assert(
      fc.property(shapes(), (shape) => {
        const spec = randomNetwork({ ...shape, mix: 'every' });
        const { net } = solved(spec);
        // Held links stand at exactly 0; one that alone joins a part to the rest may leak 1e-10 m²/s per metre.
        spec.links.forEach((link, place) => {
          if (isOneWay(link)) expect(net.flow[place]).toBeGreaterThanOrEqual(-1e-10 * 5);
        });
        for (const chord of net.topology.chords) {
          const link = spec.links[chord];
          if (link && isOneWay(link)) expect(net.flow[chord]).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });
});
