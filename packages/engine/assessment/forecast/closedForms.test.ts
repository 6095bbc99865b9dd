import { describe, expect, it } from 'vitest';
import { media } from '../../catalogue/media.ts';
import { captureCoefficient } from '../../laws/dirt/capture.ts';
import { caughtFractionIwasaki1937, fillingBedBohartAdams1920 } from '../../laws/dirt/cleanBed.ts';
import type { Compiled, DirtGrid } from '../compiled.ts';
import { layGrid } from '../dirt/grid.ts';
import { cleanState } from '../dirt/state.ts';
import { solveAt } from '../dirt/step.ts';
import { filterFlow } from '../dirt/transport.ts';
import { compiledJob } from '../testing/compiled.ts';
import { days, oneBasket, withFilter, withTank } from '../testing/models.ts';
import { cleanFullState } from './fullState.ts';
import { advance, type FullMarching, settleFlows, tankOver } from './fullStep.ts';
import { makePassage, passSolids } from './passage.ts';

const DEPTH_M = 0.1;

/** One bed without a gap, and solids of one size that it catches at a coefficient that stays. */
const oneClass = (filterCoefficientPerM: number, fullFraction: number): Compiled => {
  const tight = withFilter(oneBasket([['foam-30ppi', 1000 * DEPTH_M]]), { chamberGapM: { 'basket-1': 0 } });
  const compiled = compiledJob(withTank(tight, { waterChangePerS: 0, volumeM3: 1e6 }));
  const beds = compiled.beds.map((bed) => ({
    ...bed,
    medium: { ...bed.medium, depositFactor: { ...bed.medium.depositFactor, value: 0 } },
  }));
  const grid: DirtGrid = {
    ...layGrid(beds, compiled.water, { refinement: 8 }),
    classShare: Float64Array.of(1),
    steadyPerM: Float64Array.of(filterCoefficientPerM),
    settlingPerS: Float64Array.of(0),
    matShare: Float64Array.of(0),
    fullFraction: Float64Array.of(fullFraction),
  };
  const one = { ...compiled, beds, grid };
  solveAt(one, cleanState(one));
  return one;
};

/** A march whose tank is so large that its water stays as it is, and in which nothing rots. */
const marchingIn = (compiled: Compiled, tankKgPerM3: number): FullMarching => ({
  compiled,
  passage: makePassage(compiled),
  madeKgPerS: 0,
  decay: { perS: 0, fraction: 0 },
  mean: Float64Array.of(tankKgPerM3),
});

const middles = ({ sliceThicknessM }: DirtGrid): number[] => {
  let from = 0;
  return Array.from(sliceThicknessM, (thickness) => {
    from += thickness;
    return from - thickness / 2;
  });
};

describe('one size of solids in one bed', () => {
  it('falls off exponentially with depth, as Iwasaki 1937 has it', () => {
    const compiled = oneClass(23, 0.48);
    const passage = makePassage(compiled);
    const { deposit, matKgPerM2 } = cleanState(compiled);
    passSolids(compiled, passage, {
      tank: Float64Array.of(1),
      start: deposit,
      middle: deposit,
      matKgPerM2,
      stepS: 0,
    });
    const flow = filterFlow(compiled);
    let [depth, kept] = [0, 0];
    compiled.grid.sliceThicknessM.forEach((thickness, slice) => {
      depth += thickness;
      kept += passage.kept[slice]!;
      const expected = caughtFractionIwasaki1937({ filterCoefficientPerM: 23, depthM: depth });
      expect(kept / flow / expected).toBeCloseTo(1, 9);
    });
  });

  it('fills a bed as Bohart & Adams 1920 have it, within a thousandth of full', () => {
    const [coefficient, full, tank] = [40, 0.02, 0.05];
    const compiled = oneClass(coefficient, full);
    const marching = marchingIn(compiled, tank);
    const [state, middle, next] = [
      cleanFullState(compiled),
      cleanFullState(compiled),
      cleanFullState(compiled),
    ];
    state.tankKgPerM3[0] = tank;
    settleFlows(compiled, state);
    const velocity = filterFlow(compiled) / compiled.beds[0]!.areaM2;
    const stepS = 200;
    for (let step = 1; step <= 40; step += 1) {
      advance(marching, state, { stepS: stepS / 2, middle: state.deposit, into: middle });
      advance(marching, state, { stepS, middle: middle.deposit, into: next });
      state.deposit.set(next.deposit);
      state.tankKgPerM3.set(next.tankKgPerM3);
    }
    const supplied = (coefficient * velocity * tank * 40 * stepS) / (50 * full);
    expect(supplied).toBeGreaterThan(2);
    middles(compiled.grid).forEach((depthM, slice) => {
      const { filledFraction } = fillingBedBohartAdams1920({
        filterCoefficientPerM: coefficient,
        depthM,
        suppliedOverFull: supplied,
      });
      expect(Math.abs(state.deposit[slice]! / full - filledFraction)).toBeLessThan(1e-3);
    });
  });

  it('that a bed catches without end is taken out as fast as the water turns over', () => {
    const compiled = oneClass(1e9, 1e9);
    const passage = makePassage(compiled);
    const { deposit, matKgPerM2 } = cleanState(compiled);
    passSolids(compiled, passage, {
      tank: Float64Array.of(2),
      start: deposit,
      middle: deposit,
      matKgPerM2,
      stepS: days(1),
    });
    expect(passage.removed[0]! / (2 * filterFlow(compiled))).toBeCloseTo(1, 12);
    expect(passage.kept[0]! / passage.removed[0]!).toBeCloseTo(1, 12);
  });
});

describe('a well-mixed tank over a step', () => {
  it('goes to its balance exponentially, and its mean is that of the exponential', () => {
    const { endKgPerM3, meanKgPerM3 } = tankOver({
      startKgPerM3: 3,
      madeKgPerS: 2,
      sinkM3PerS: 4,
      volumeM3: 8,
      stepS: 5,
    });
    expect(endKgPerM3).toBeCloseTo(0.5 + 2.5 * Math.exp(-2.5), 12);
    expect(meanKgPerM3).toBeCloseTo(0.5 + (2.5 * (1 - Math.exp(-2.5))) / 2.5, 12);
  });

  it('out of which nothing goes fills evenly', () => {
    const over = tankOver({ startKgPerM3: 3, madeKgPerS: 2, sinkM3PerS: 0, volumeM3: 8, stepS: 4 });
    expect(over).toEqual({ endKgPerM3: 4, meanKgPerM3: 3.5 });
  });
});

describe('what others measured', () => {
  it('in a run of sand: 15.2 cm of head grew to about 50 cm when 3.82 % of the pores had filled', () => {
    // The run that γ of sand was fitted to (references/sand-run): the form holds it, through slices and network.
    const compiled = compiledJob(oneBasket([['sand-coarse', 100]]));
    const deposit = cleanState(compiled).deposit.fill(0.0382 * 0.4);
    solveAt(compiled, { deposit, matKgPerM2: cleanState(compiled).matKgPerM2 });
    const ratio = compiled.network.resistanceRatio[compiled.beds[0]!.link]!;
    expect(0.152 * ratio).toBeGreaterThan(0.495);
    expect(0.152 * ratio).toBeLessThan(0.505);
  });

  it.each([
    [0.5, 5],
    [0.5, 10],
    [1, 5],
    [1, 10],
    [1, 20],
  ])('in rapid filters: sand of %s mm catches solids of %s µm at 0.2 to 20 a metre', (sandMm, solidsUm) => {
    // Hendricks, Fundamentals of Water Treatment Unit Processes, p. 345: 0.2 to 20 ln-cycles per metre.
    const grain = media['sand-coarse']!.resistance;
    if (grain.law !== 'grains') throw new Error('sand is of grains');
    const sizeM = { ...grain.sizeM, value: sandMm / 1000 };
    const resistance = { ...grain, sizeM, voidage: { ...grain.voidage, value: 0.4 } };
    const solids = { sizeM: solidsUm * 1e-6, viscosityPaS: 1e-3 };
    const { steadyPerM, settlingPerS } = captureCoefficient({ resistance, ...solids });
    const coefficient = steadyPerM + settlingPerS / (10 / 3600);
    expect(coefficient).toBeGreaterThan(0.2);
    expect(coefficient).toBeLessThan(20);
  });
});
