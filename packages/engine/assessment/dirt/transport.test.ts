import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Compiled } from '../compiled.ts';
import { compiledJob, solvedClean } from '../testing/compiled.ts';
import { gramsPerDay, oneBasket, stackCanister, withFilter } from '../testing/models.ts';
import { randomModel } from '../testing/randomModels.ts';
import { sliceThicknesses } from './grid.ts';
import { bedRatio, cleanState, heldKg } from './state.ts';
import { beginMarch, midpointStep, solveAt } from './step.ts';
import { filterFlow, layDown, makeTransport, type Transport } from './transport.ts';

const madeKgPerS = 0.25 * gramsPerDay(1.5);
const sum = (values: Iterable<number>): number => [...values].reduce((all, one) => all + one, 0);

/** Solids laid down in all beds and mats, kg/s. */
const laidDown = ({ laid, laidByMat }: Transport): number => sum(laid) + sum(laidByMat);
/** Solids that water changes take out, kg/s. */
const changed = ({ model }: Compiled, { tankKgPerM3 }: Transport): number =>
  tankKgPerM3 * model.tank.volumeM3 * model.tank.waterChangePerS;

describe('solids', () => {
  it('that are made are caught or go out with the water changes, step by step, with any packing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const compiled = compiledJob(randomModel(seed));
        // Nothing rots here, so that all that was laid down is found.
        const marching = { ...beginMarch(compiled, madeKgPerS), decay: { perS: 0, fraction: 0.5 } };
        const { transport } = marching;
        let state = cleanState(compiled);
        for (let step = 0; step < 12; step += 1) {
          solveAt(compiled, state);
          const next = midpointStep(marching, state, 1e7);
          // The rates of the step's middle stand in `transport`.
          expect(
            Math.abs((laidDown(transport) + changed(compiled, transport)) / madeKgPerS - 1),
          ).toBeLessThan(1e-9);
          const grown = sum(heldKg(compiled, next)) - sum(heldKg(compiled, state));
          const laid = laidDown(transport) * (next.timeS - state.timeS);
          expect(Math.abs(grown - laid)).toBeLessThanOrEqual(
            1e-9 * Math.max(laid, sum(heldKg(compiled, next))),
          );
          state = next;
        }
      }),
      { numRuns: 40 },
    );
  });

  it('that another filter catches do not reach this one', () => {
    const alone = stackCanister();
    const helped = { ...alone, otherFilters: [{ name: 'sponge', flowM3PerS: 1e-4, areaM2: 1 }] };
    const caught = (model: typeof alone): number => {
      const compiled = solvedClean(model);
      const transport = makeTransport(compiled);
      layDown(compiled, transport, { dirt: cleanState(compiled), madeKgPerS });
      return laidDown(transport);
    };
    expect(caught(helped)).toBeLessThan(caught(alone));
  });

  it('are caught by a lone bed as Iwasaki 1937 has it, size by size', () => {
    const tight = withFilter(oneBasket([['foam-45ppi', 40]]), { chamberGapM: { 'basket-1': 0 } });
    const compiled = solvedClean(tight);
    const transport = makeTransport(compiled);
    layDown(compiled, transport, { dirt: cleanState(compiled), madeKgPerS });
    const flow = filterFlow(compiled);
    const { grid, beds, model } = compiled;
    const velocity = flow / beds[0]!.areaM2;
    const out = model.tank.volumeM3 * model.tank.waterChangePerS;
    let tank = 0;
    let caught = 0;
    grid.classShare.forEach((share, size) => {
      const coefficient = grid.steadyPerM[size]! + grid.settlingPerS[size]! / velocity;
      const kept = -Math.expm1(-coefficient * 0.04);
      const level = (madeKgPerS * share) / (flow * kept + out);
      tank += level;
      caught += level * flow * kept;
    });
    expect(transport.tankKgPerM3 / tank).toBeCloseTo(1, 9);
    expect(laidDown(transport) / caught).toBeCloseTo(1, 9);
    expect(transport.caughtShare).toBeCloseTo(caught / (tank * flow), 9);
  });

  it('stay in the tank where no water runs and none is changed', () => {
    const still = withFilter(stackCanister(), { outletLiftM: 3 });
    const compiled = solvedClean({ ...still, tank: { ...still.tank, waterChangePerS: 0 } });
    const transport = makeTransport(compiled);
    layDown(compiled, transport, { dirt: cleanState(compiled), madeKgPerS });
    expect(laidDown(transport)).toBe(0);
    expect(transport.caughtShare).toBe(0);
  });
});

describe('slices of a bed', () => {
  it('make up its depth and grow inward', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 1, noNaN: true }),
        fc.constantFrom(1, 2, 4),
        (depthM, refinement) => {
          const slices = sliceThicknesses(depthM, refinement);
          expect(sum(slices) / depthM).toBeCloseTo(1, 9);
          expect(slices.every((slice) => slice > 0)).toBe(true);
          expect(slices.slice(0, -1)).toEqual(slices.slice(0, -1).toSorted((a, b) => a - b));
        },
      ),
    );
  });

  it('are about twice as many where each is halved', () => {
    const ratio = sliceThicknesses(0.1, 2).length / sliceThicknesses(0.1, 1).length;
    expect(ratio).toBeGreaterThan(1.7);
    expect(ratio).toBeLessThan(2.3);
  });
});

describe('resistance of a dirty bed', () => {
  it('grows by (1 + γσ)² where dirt lies evenly', () => {
    const compiled = compiledJob(oneBasket([['foam-30ppi', 100]]));
    const deposit = cleanState(compiled).deposit.fill(0.05);
    const factor = compiled.beds[0]!.medium.depositFactor.value;
    expect(bedRatio(compiled, deposit, 0)).toBeCloseTo((1 + factor * 0.05) ** 2, 9);
    expect(bedRatio(compiled, cleanState(compiled).deposit, 0)).toBeCloseTo(1, 12);
  });

  it('takes a mat on its face as a cake of 1e10 m/kg', () => {
    const compiled = compiledJob(oneBasket([['foam-30ppi', 100]]));
    const bed = compiled.beds[0]!;
    const state = { ...cleanState(compiled), matKgPerM2: Float64Array.of(0.01) };
    for (let again = 0; again < 20; again += 1) solveAt(compiled, state);
    const flow = compiled.network.flow[bed.link]!;
    const head = compiled.network.drop[bed.link]!;
    solveAt(compiled, cleanState(compiled));
    const { parameters } = compiled.network;
    const clean = parameters[bed.link * 10]! * flow + parameters[bed.link * 10 + 1]! * flow ** 2;
    const { viscosityPaS, densityKgPerM3 } = compiled.water;
    const cake = (1e10 * 0.01 * viscosityPaS * flow) / bed.areaM2 / (densityKgPerM3 * 9.80665);
    expect(head / (clean + cake)).toBeCloseTo(1, 5);
  });
});
