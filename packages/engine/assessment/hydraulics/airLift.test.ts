import { describe, expect, it } from 'vitest';
import { airLiftHeadReinemann1990 } from '../../laws/hydraulics/airLift.ts';
import { compileNetwork } from '../../network/compile.ts';
import { dropAt } from '../../network/evaluate.ts';
import type { LinkLaw } from '../../network/links.ts';
import { assess } from '../assess.ts';
import { layoutOf } from '../compile.ts';
import {
  fluidisedBed,
  matFilter,
  movingBed,
  onAir,
  spongeFilter,
  undergravel,
} from '../testing/airModels.ts';
import { withMeasurements } from '../testing/models.ts';
import { airLiftLaw, airLiftOf, outletLiftOf } from './airLift.ts';
import { carriedBed, carriedBedLaw, stirredMedium } from './movedBed.ts';
import { waterState } from './water.ts';

const onAirAll = [spongeFilter(), matFilter(), undergravel(), movingBed()];

/** Head that a link takes at a flow, m. */
const takenBy = (law: LinkLaw) => {
  const result = compileNetwork({
    fixedHeadsM: { tank: 0 },
    links: [{ id: 'link', from: 'tank', to: 'out', law }],
    kinematicViscosityM2PerS: 1e-6,
    gravityMPerS2: 9.80665,
    usualFlowM3PerS: 1e-4,
  });
  if (!result.ok) throw new Error(result.problem.code);
  const net = result.network;
  return (flow: number): number => dropAt(net, 'link', flow);
};

describe('an air-lift in the network', () => {
  it.each(onAirAll.map((model) => [model.filter.family, model] as const))(
    'of a %s gives the head of its law within 1e-4 of the greatest',
    (_, model) => {
      const lift = airLiftOf(model);
      const taken = takenBy(airLiftLaw(lift));
      const most = airLiftHeadReinemann1990(0, lift);
      for (const share of [0, 0.03, 0.11, 0.37, 0.62, 0.93, 1.1]) {
        const flow = share * model.filter.pump.ratedFlowM3PerS;
        expect(Math.abs(-taken(flow) - airLiftHeadReinemann1990(flow, lift))).toBeLessThan(1e-4 * most);
      }
    },
  );

  it('takes water that runs back against more and more head', () => {
    const model = spongeFilter();
    const taken = takenBy(airLiftLaw(airLiftOf(model)));
    const flows = [-1e-3, -1e-4, -1e-6, 0, 1e-6, 1e-4, 1e-3, 1];
    const heads = flows.map(taken);
    for (const [i, head] of heads.slice(1).entries()) expect(head).toBeGreaterThan(heads[i]!);
  });

  it('raises the water where its mouth stands over the surface, and stops where that is too high', () => {
    const raised = withMeasurements(spongeFilter(), { tubeRise: 0.24 });
    expect(outletLiftOf(raised, layoutOf(raised))).toBeCloseTo(0.02, 12);
    expect(assess(raised).headBudget.find(({ part }) => part === 'lift')?.headM).toBeCloseTo(0.02, 9);
    expect(assess(raised).dutyPoint.flowM3PerS).toBeLessThan(assess(spongeFilter()).dutyPoint.flowM3PerS);
    const high = withMeasurements(spongeFilter(), { tubeRise: 0.6 });
    expect(assess(high).dutyPoint.flowM3PerS).toBeCloseTo(0, 9);
  });

  it('moves more water with more air', () => {
    const flows = [15, 30, 60, 120].map((air) => assess(onAir(spongeFilter(), air)).dutyPoint.flowM3PerS);
    expect(flows).toEqual(flows.toSorted((a, b) => a - b));
    expect(flows[3]).toBeGreaterThan(flows[0]!);
  });
});

describe('a bed that is moved about', () => {
  const model = fluidisedBed();
  const sand = model.media['fluidised-sand']!;
  const carried = carriedBed({ medium: sand, depthM: 0.18 }, waterState(model.tank))!;

  it('takes its own loss at rest and its buoyant weight once it is carried, whatever flows', () => {
    const packed = { linear: 3000, quadratic: 1e6 };
    const taken = takenBy(carriedBedLaw(packed, carried.buoyantHeadM));
    expect(taken(1e-5)).toBeCloseTo(3000 * 1e-5 + 1e6 * 1e-10, 4);
    expect(taken(4e-4)).toBeCloseTo(carried.buoyantHeadM, 6);
    expect(taken(8e-4)).toBeCloseTo(carried.buoyantHeadM, 6);
    expect(taken(8e-4)).toBeGreaterThan(taken(4e-4));
  });

  it('grows deeper the faster the water rises', () => {
    expect(carried.depthAt(0)).toBeCloseTo(0.18, 12);
    expect(carried.depthAt(0.02)).toBeGreaterThan(carried.depthAt(0.01));
    expect(carried.depthAt(1)).toBe(Number.POSITIVE_INFINITY);
  });

  it('is none where its pieces float', () => {
    const balls = { medium: model.media['plastic-balls-35mm']!, depthM: 0.1 };
    expect(carriedBed(balls, waterState(model.tank))).toBeUndefined();
  });

  it('holds no dirt and does not clog', () => {
    const { beds, dutyPoint, carries } = assess(model);
    expect(beds[0]!.dirtKg).toBe(0);
    expect(carries.day.flowM3PerS).toBeCloseTo(dutyPoint.flowM3PerS, 12);
  });

  it('spreads out over its chamber by the share that it fills', () => {
    const carrier = model.media['plastic-carrier-10mm-tumbling']!;
    const half = stirredMedium(carrier, 0.5);
    if (half.resistance.law !== 'hollow') throw new Error('a carrier is hollow');
    expect(half.resistance.voidage.value).toBeCloseTo(0.92, 12);
    expect(half.resistance.surfacePerM.value).toBeCloseTo(400, 9);
  });
});
