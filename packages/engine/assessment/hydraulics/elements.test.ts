import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Filter, HoseRun, Model, SecondPump } from '../../model/model.ts';
import { flowOf } from '../../network/solve.ts';
import { filterFlow } from '../dirt/transport.ts';
import { solvedClean } from '../testing/compiled.ts';
import {
  hangOnBack,
  hose,
  internalBox,
  litresPerHour,
  pump,
  stackCanister,
  withFilter,
  withMeasurements,
} from '../testing/models.ts';
import { pumpAndSystem } from './curves.ts';
import { headBudgetOf, pumpHead } from './headBudget.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const RUNS = { numRuns: 40, seed: 6 };

const canister = stackCanister();
const withOutlet = (change: Partial<HoseRun>): Model => withFilter(canister, { outlet: hose(change) });
const flow = (model: Model): number => filterFlow(solvedClean(model));
const plain = flow(canister);

describe('what may stand in a hose', () => {
  it.each([
    ['a film', { filmM: 0.0005 }],
    ['a coil', { coil: { turns: 2, diameterM: 0.2 } }],
    ['a kink', { kinkOpenFraction: 0.4 }],
    ['a tap half shut', { tapOpenFraction: 0.5 }],
    ['a check valve', { checkValveHeadM: 0.2 }],
  ] as const)('%s takes flow away', (_, change) => {
    expect(flow(withOutlet(change))).toBeLessThan(0.99 * plain);
    expect(flow(withOutlet(change))).toBeGreaterThan(0);
  });

  it.each([
    ['no film', { filmM: 0 }],
    ['a coil of no turns', { coil: { turns: 0, diameterM: 0.2 } }],
    ['a kink that leaves all', { kinkOpenFraction: 1 }],
    ['a tap that is open', { tapOpenFraction: 1 }],
    ['a check valve that opens by itself', { checkValveHeadM: 0 }],
  ] as const)('%s changes nothing', (_, change) => {
    expect(flow(withOutlet(change)) / plain).toBeCloseTo(1, 9);
  });

  it('takes the more the further it goes', () => {
    const kinds: readonly ((size: number) => Partial<HoseRun>)[] = [
      (size) => ({ filmM: 0.003 * size }),
      (size) => ({ coil: { turns: 1.5, diameterM: 0.6 - 0.4 * size } }),
      (size) => ({ kinkOpenFraction: 1 - 0.9 * size }),
      (size) => ({ tapOpenFraction: 1 - 0.9 * size }),
      (size) => ({ checkValveHeadM: size }),
    ];
    fc.assert(
      fc.property(fc.constantFrom(...kinds), between(0, 1), between(0, 1), (kind, a, b) => {
        const more = flow(withOutlet(kind(Math.max(a, b))));
        const less = flow(withOutlet(kind(Math.min(a, b))));
        expect(more).toBeLessThanOrEqual(less * (1 + 1e-9));
      }),
      RUNS,
    );
  });

  it('a check valve that asks for more than the pump has lets nothing through', () => {
    expect(flow(withOutlet({ checkValveHeadM: 1.36 }))).toBe(0);
  });

  it('stands in the head budget, which still adds up to the head of the pump', () => {
    const model = withOutlet({
      filmM: 0.0003,
      coil: { turns: 1, diameterM: 0.25 },
      kinkOpenFraction: 0.6,
      tapOpenFraction: 0.8,
      checkValveHeadM: 0.1,
    });
    const compiled = solvedClean(model);
    const spent = headBudgetOf(compiled).reduce((sum, { headM }) => sum + headM, 0);
    expect(spent).toBeCloseTo(pumpHead(compiled), 9);
  });

  it('a coil takes no length away from a hose that is shorter than it', () => {
    const coil = { turns: 9, diameterM: 0.3 };
    expect(flow(withOutlet({ lengthM: 1, coil }))).toBeGreaterThan(0);
    expect(flow(withOutlet({ lengthM: 1, coil: { ...coil, turns: 90 } }))).toBe(
      flow(withOutlet({ lengthM: 1, coil })),
    );
  });
});

const second = (change: Partial<SecondPump> = {}): SecondPump => ({
  pump: pump(1.35, 850, 13),
  place: 'behind',
  running: true,
  ...change,
});
const withSecond = (change: Partial<SecondPump>, model = canister): Model =>
  withFilter(model, { secondPump: second(change) });

describe('a second pump', () => {
  it('behind or beside the first gives more than one alone, and less than twice', () => {
    for (const place of ['behind', 'beside'] as const) {
      const both = flow(withSecond({ place }));
      expect(both).toBeGreaterThan(1.02 * plain);
      expect(both).toBeLessThan(2 * plain);
    }
  });

  it.each([
    ['canister', canister],
    ['hang-on-back', hangOnBack()],
    ['internal box', internalBox()],
  ] as const)('of a %s shows in its flow, wherever the pump stands', (_, model) => {
    const one = flow(model);
    for (const place of ['behind', 'beside'] as const)
      expect(flow(withSecond({ place }, model)), place).toBeGreaterThan(one);
  });

  it('alike and beside the first carries half of the water, and all of it is counted', () => {
    const { network } = solvedClean(withSecond({ place: 'beside' }));
    expect(flowOf(network, 'pump:beside') / flowOf(network, 'pump')).toBeCloseTo(1, 9);
    expect(flowOf(network, 'outlet:hose')).toBeCloseTo(2 * flowOf(network, 'pump'), 12);
  });

  it('that stands still behind the first takes flow, and beside it lets water back', () => {
    expect(flow(withSecond({ running: false }))).toBeLessThan(plain);
    const beside = solvedClean(withSecond({ place: 'beside', running: false }));
    expect(flowOf(beside.network, 'pump:beside')).toBeLessThan(0);
    expect(filterFlow(beside)).toBeLessThan(plain);
  });

  it('that stands still beside the first lets nothing back through a check valve', () => {
    const held = solvedClean(withSecond({ place: 'beside', running: false, checkValveHeadM: 0.05 }));
    expect(flowOf(held.network, 'pump:beside')).toBe(0);
    expect(filterFlow(held) / plain).toBeCloseTo(1, 9);
  });

  it('runs with the first on one curve that meets the system in the duty point', () => {
    for (const place of ['behind', 'beside'] as const) {
      const model = withSecond({ place, pump: pump(1, 600, 8) });
      const compiled = solvedClean(model);
      const duty = { flowM3PerS: filterFlow(compiled), headM: pumpHead(compiled) };
      const { pump: curve, system } = pumpAndSystem(model, duty);
      const near = (points: typeof curve): number => {
        const without = points.filter((point) => point !== duty);
        const next = without.findIndex((point) => point.flowM3PerS >= duty.flowM3PerS);
        const [a, b] = [without[next - 1]!, without[next]!];
        return (
          a.headM + ((b.headM - a.headM) * (duty.flowM3PerS - a.flowM3PerS)) / (b.flowM3PerS - a.flowM3PerS)
        );
      };
      expect(Math.abs(near(curve) - duty.headM), place).toBeLessThan(0.01 * curve[0]!.headM);
      expect(Math.abs(near(system) - duty.headM), place).toBeLessThan(0.01 * curve[0]!.headM);
    }
  });
});

describe('several outlets', () => {
  const branches = (runs: readonly Partial<HoseRun>[], lifts: readonly number[] = []): Partial<Filter> => ({
    outletBranches: runs.map((run, place) => ({
      run: hose({ lengthM: 0.5, boreM: 0.012, barbBoreM: 0.01, fittings: ['spray-bar'], ...run }),
      liftM: lifts[place] ?? 0,
    })),
  });
  const ends = (model: Model): number[] => {
    const { network } = solvedClean(model);
    return (model.filter.outletBranches ?? []).map((_, place) => flowOf(network, `outlet-${place + 1}:hose`));
  };

  it('alike share the water evenly, and together carry all of it', () => {
    const model = withFilter(canister, branches([{}, {}]));
    const [first, other] = ends(model);
    expect(first! / other!).toBeCloseTo(1, 9);
    expect(first! + other!).toBeCloseTo(flow(model), 12);
  });

  it('give the longer and the higher one less', () => {
    const [short, long] = ends(withFilter(canister, branches([{}, { lengthM: 3 }])));
    expect(long).toBeLessThan(short!);
    const [low, high] = ends(withFilter(canister, branches([{}, {}], [0, 0.1])));
    expect(high).toBeLessThan(low!);
    const [all, none] = ends(withFilter(canister, branches([{}, {}], [0, 3])));
    expect(none).toBe(0);
    expect(all).toBeGreaterThan(0);
  });

  it('let more through than one of them alone', () => {
    expect(flow(withFilter(canister, branches([{}, {}])))).toBeGreaterThan(
      flow(withFilter(canister, branches([{}]))),
    );
  });

  it('have a head budget along the first of them that adds up', () => {
    const compiled = solvedClean(withFilter(canister, branches([{ checkValveHeadM: 0.05 }, {}])));
    const spent = headBudgetOf(compiled).reduce((sum, { headM }) => sum + headM, 0);
    expect(spent).toBeCloseTo(pumpHead(compiled), 9);
  });
});

describe('pump curves', () => {
  const points = [
    { flowM3PerS: 0, headM: 1.4 },
    { flowM3PerS: litresPerHour(400), headM: 1.1 },
    { flowM3PerS: litresPerHour(800), headM: 0.3 },
  ];
  const curve = (form: 'through' | 'power', speedRatio = 1): Model =>
    withFilter(canister, {
      pump: { ...canister.filter.pump, speedRatio, curve: { kind: 'points', points, form } },
    });

  it('through three points agree at the points, and nearly between them, as power form and as they are', () => {
    const [power, through] = [flow(curve('power')), flow(curve('through'))];
    expect(Math.abs(power / through - 1)).toBeLessThan(0.02);
    expect(power).not.toBe(through);
  });

  it('dimmed follow the affinity laws: flow by the speed, head by its square, against a loss without viscosity', () => {
    // Without linear losses the duty point of a closed loop moves along Q ∝ n, H ∝ n²; hoses come near to that.
    for (const form of ['power', 'through'] as const) {
      const full = solvedClean(curve(form));
      const half = solvedClean(curve(form, 0.5));
      expect(filterFlow(half) / filterFlow(full)).toBeGreaterThan(0.42);
      expect(filterFlow(half) / filterFlow(full)).toBeLessThan(0.5);
      const slower = pumpHead(half) / pumpHead(full);
      expect(slower).toBeGreaterThan(0.2);
      expect(slower).toBeLessThan(0.3);
    }
  });
});

describe('a crest below the water', () => {
  it('of a hang-on-back lets as much through as Villemonte says, at a level above the tank', () => {
    const drowned = solvedClean(withMeasurements(hangOnBack(), { outletCrestHeight: -0.01 }));
    const free = solvedClean(withMeasurements(hangOnBack(), { outletCrestHeight: 0.01 }));
    const level = (compiled: typeof free, crest: number): number =>
      crest + compiled.network.drop[compiled.network.linkIndex.get('outlet-edge')!]!;
    expect(level(drowned, -0.01)).toBeGreaterThan(0);
    expect(level(drowned, -0.01)).toBeLessThan(level(free, 0.01));
    expect(filterFlow(drowned)).toBeGreaterThan(filterFlow(free));
  });
});
