import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../constants.ts';
import {
  type AirLiftState,
  airLiftFlowReinemann1990,
  airLiftHeadReinemann1990,
  type LiftTube,
} from './airLift.ts';
import {
  expandedVoidageRichardsonZaki1954,
  fluidisingVelocityWenYu1966,
  settlingVelocityHaiderLevenspiel1989,
} from './fluidised.ts';
import { bubbleRiseTungParlange1976 } from './taylorBubble.ts';

const water = { densityKgPerM3: 997, kinematicViscosityM2PerS: 8.93e-7, surfaceTensionNPerM: 0.072 };
const litrePerHour = 1 / 3.6e6;

const state = (tube: LiftTube, airLPerH: number): AirLiftState => ({
  ...water,
  tube,
  airFlowM3PerS: airLPerH * litrePerHour,
  pressurePa: 101_325,
});

const anyTube = fc.record({
  tubes: fc.integer({ min: 1, max: 4 }),
  boreM: fc.double({ min: 0.006, max: 0.03, noNaN: true }),
  riseM: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  airDepthM: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  bendK: fc.double({ min: 0, max: 3, noNaN: true }),
});
const anyAir = fc.double({ min: 1, max: 500, noNaN: true });

describe('an air-lift', () => {
  it('gives less head the more water flows, without a halt', () => {
    const flows = Array.from({ length: 60 }, (_, i) => i * 20 * litrePerHour);
    fc.assert(
      fc.property(anyTube, anyAir, (tube, air) => {
        const heads = flows.map((flow) => airLiftHeadReinemann1990(flow, state(tube, air)));
        for (const [i, head] of heads.slice(1).entries()) expect(head).toBeLessThan(heads[i]!);
      }),
    );
  });

  it('never lifts higher than the share of gas in its tube', () => {
    fc.assert(
      fc.property(anyTube, anyAir, (tube, air) => {
        expect(airLiftHeadReinemann1990(0, state(tube, air))).toBeLessThan(tube.riseM / 1.2);
      }),
    );
  });

  it('lifts nothing without air, and nothing against more head than it gives', () => {
    const tube = { tubes: 1, boreM: 0.016, riseM: 0.25, airDepthM: 0.2 };
    expect(airLiftFlowReinemann1990(0.01, state(tube, 0))).toBe(0);
    const most = airLiftHeadReinemann1990(0, state(tube, 60));
    expect(airLiftFlowReinemann1990(1.001 * most, state(tube, 60))).toBe(0);
    expect(airLiftFlowReinemann1990(0.999 * most, state(tube, 60))).toBeGreaterThan(0);
  });

  it('moves twice the water in two tubes with twice the air', () => {
    const one = { tubes: 1, boreM: 0.016, riseM: 0.25, airDepthM: 0.25, bendK: 1 };
    const single = airLiftFlowReinemann1990(0.01, state(one, 60));
    const both = airLiftFlowReinemann1990(0.01, state({ ...one, tubes: 2 }, 120));
    expect(both / single).toBeCloseTo(2, 9);
  });

  it.each([
    [0.01, 0.25, 0.25],
    [0.016, 0.25, 0.25],
    [0.016, 0.3, 0.25],
    [0.025, 0.4, 0.35],
  ])(
    'of %s m bore moves more water with more air up to one optimum, and less beyond it',
    (boreM, riseM, airDepthM) => {
      const tube = { tubes: 1, boreM, riseM, airDepthM, bendK: 1 };
      const area = (Math.PI * boreM ** 2) / 4;
      const speeds = Array.from({ length: 60 }, (_, i) => 0.03 * 1.12 ** i);
      const flows = speeds.map((gas) =>
        airLiftFlowReinemann1990(
          riseM - Math.min(riseM, airDepthM),
          state(tube, (gas * area) / litrePerHour),
        ),
      );
      const best = flows.indexOf(Math.max(...flows));
      expect(speeds[best]).toBeGreaterThan(0.5);
      expect(speeds[best]).toBeLessThan(8);
      for (let i = 1; i < flows.length; i += 1) {
        if (i <= best) expect(flows[i]).toBeGreaterThanOrEqual(flows[i - 1]!);
        else expect(flows[i]).toBeLessThanOrEqual(flows[i - 1]!);
      }
    },
  );

  it('gains from a longer tube that ends no higher than the surface', () => {
    const flowOf = (riseM: number) =>
      airLiftFlowReinemann1990(0, state({ tubes: 1, boreM: 0.016, riseM, airDepthM: 0.3, bendK: 1 }, 60));
    expect(flowOf(0.2)).toBeGreaterThan(flowOf(0.1));
    expect(flowOf(0.3)).toBeGreaterThan(flowOf(0.2));
  });
});

describe('a bubble that fills its tube', () => {
  it('rises as in a wide tube where surface tension does not count, and not at all in a narrow one', () => {
    const rise = (boreM: number) => bubbleRiseTungParlange1976({ ...water, boreM });
    expect(rise(2) / Math.sqrt(GRAVITY * 2)).toBeCloseTo(0.352, 4);
    expect(rise(0.006)).toBe(0);
    expect(rise(0.02)).toBeGreaterThan(rise(0.01));
  });
});

describe('grains that water carries', () => {
  const grains = fc.record({
    sizeM: fc.double({ min: 1e-4, max: 5e-3, noNaN: true }),
    solidDensityKgPerM3: fc.double({ min: 1200, max: 4000, noNaN: true }),
    densityKgPerM3: fc.constant(997),
    viscosityPaS: fc.constant(8.9e-4),
  });

  it('sink faster one by one than the water must rise to carry a bed of them', () => {
    fc.assert(
      fc.property(grains, (one) => {
        const alone = settlingVelocityHaiderLevenspiel1989({ ...one, sphericity: 0.8 });
        expect(fluidisingVelocityWenYu1966(one)).toBeLessThan(alone);
      }),
    );
  });

  it('lie at rest in still water and are carried off where it rises as fast as they sink', () => {
    const bed = { settlingMPerS: 0.05, exponent: 3, settledVoidage: 0.42 };
    expect(expandedVoidageRichardsonZaki1954({ ...bed, velocityMPerS: 0 })).toBe(0.42);
    expect(expandedVoidageRichardsonZaki1954({ ...bed, velocityMPerS: 0.05 })).toBe(1);
  });
});
