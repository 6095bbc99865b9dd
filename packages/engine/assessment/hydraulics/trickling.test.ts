import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../../laws/constants.ts';
import { assess } from '../assess.ts';
import { filterFlow } from '../dirt/transport.ts';
import { solvedClean } from '../testing/compiled.ts';
import { sump, trickleTower, withFilter, withMeasurements } from '../testing/models.ts';
import { headBudgetOf } from './headBudget.ts';
import { waterInBed, wettedShare } from './trickling.ts';

const flowOf = (compiled: ReturnType<typeof solvedClean>, id: string): number =>
  compiled.network.flow[compiled.network.linkIndex.get(id)!]!;
const headAt = (compiled: ReturnType<typeof solvedClean>, node: string): number =>
  compiled.network.nodeHead[compiled.network.topology.nodes.indexOf(node)]!;

describe('a filter that the overflow feeds', () => {
  it.each([
    ['sump', sump()],
    ['trickle tower', trickleTower()],
  ])('takes down in a %s as much as its pump lifts', (_name, model) => {
    const compiled = solvedClean(model);
    expect(flowOf(compiled, 'tank-overflow') / filterFlow(compiled)).toBeCloseTo(1, 11);
  });

  it('is lifted for real: more height, less water, and none beyond the pump', () => {
    const flows = [0.6, 1.2, 2, 2.7, 2.9].map((lift) =>
      filterFlow(solvedClean(withMeasurements(sump(), { lift }))),
    );
    expect(flows).toEqual(flows.toSorted((a, b) => b - a));
    expect(flows[3]).toBeGreaterThan(0);
    expect(flows[4]).toBe(0);
  });

  it('spends the pump on lift and hose, not on what lies on the way down', () => {
    const parts = new Set(headBudgetOf(solvedClean(sump())).map(({ part }) => part));
    expect(parts.has('beds')).toBe(false);
    const lift = headBudgetOf(solvedClean(sump())).find(({ part }) => part === 'lift');
    expect(lift?.headM).toBeCloseTo(1.2, 12);
    const above = headBudgetOf(solvedClean(withFilter(sump(), { outletLiftM: 0.1 })));
    expect(above.find(({ part }) => part === 'lift')?.headM).toBeCloseTo(1.3, 12);
  });

  it('ends its interval by the rim of the sock, with all its flow left', () => {
    const { cleaning } = assess(sump());
    expect([cleaning.endedBy, cleaning.place]).toEqual(['overflow', 'sock-rim']);
    expect(cleaning.flowRatio).toBeCloseTo(1, 6);
  });
});

describe('a drip plate', () => {
  it('holds the water as high as its holes ask for', () => {
    const compiled = solvedClean(trickleTower({ 'layer-1': [['plastic-carrier-10mm', 200]] }));
    const { areaM2, fallsAtM } = compiled.layout.openings[0]!;
    const standing = headAt(compiled, 'under-pad') - fallsAtM!;
    const byHand = (filterFlow(compiled) / (0.61 * areaM2)) ** 2 / (2 * GRAVITY);
    expect(standing / byHand).toBeCloseTo(1, 2);
  });

  it('spills once too many of its holes are blocked, and the media miss that water', () => {
    const open = solvedClean(trickleTower());
    const blocked = solvedClean(withMeasurements(trickleTower(), { holesBlocked: 0.85 }));
    expect(flowOf(open, 'plate-rim')).toBe(0);
    expect(flowOf(blocked, 'plate-rim')).toBeGreaterThan(0.1 * filterFlow(blocked));
    expect(filterFlow(blocked) / filterFlow(open)).toBeCloseTo(1, 9);
  });
});

describe('media that water trickles over', () => {
  it('lose the share to the walls that lies within half a piece of them', () => {
    const compiled = solvedClean(trickleTower());
    const size = compiled.beds.find(({ id }) => id === 'layer-1/1')!.pieceM;
    expect(flowOf(compiled, 'gap:layer-1') / filterFlow(compiled)).toBeCloseTo(1 - (1 - size / 0.24) ** 2, 9);
  });

  it('are wetted in part, more with more water, and hold little of it', () => {
    const beds = [0.3, 0.6, 1].map((speedRatio) => {
      const { pump } = trickleTower().filter;
      const compiled = solvedClean(
        withMeasurements(withFilter(trickleTower(), { pump: { ...pump, speedRatio } }), { lift: 0.1 }),
      );
      const bed = compiled.beds.find(({ id }) => id === 'layer-1/1')!;
      return { wetted: wettedShare(compiled, bed), held: waterInBed(compiled, bed) / bed.volumeM3 };
    });
    const wetted = beds.map((one) => one.wetted);
    expect(wetted).toEqual(wetted.toSorted((a, b) => a - b));
    for (const one of beds) {
      expect(one.wetted).toBeGreaterThan(0.1);
      expect(one.wetted).toBeLessThan(1);
      expect(one.held).toBeLessThan(0.3);
    }
  });

  it('under water are wetted all over', () => {
    const compiled = solvedClean(sump());
    for (const bed of compiled.beds) {
      expect(wettedShare(compiled, bed)).toBe(1);
      expect(waterInBed(compiled, bed)).toBeCloseTo(bed.volumeM3 * bed.voidage, 12);
    }
  });

  it('never starve of oxygen, however much they carry', () => {
    const tower = trickleTower();
    const { carries } = assess({ ...tower, tank: { ...tower.tank, oxygenFraction: 0.4 } });
    const full = assess({ ...tower, tank: { ...tower.tank, oxygenFraction: 1 } });
    expect(carries.clean.feedKgPerS / full.carries.clean.feedKgPerS).toBeGreaterThan(0.95);
  });
});
