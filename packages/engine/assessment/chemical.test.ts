import { describe, expect, test } from 'vitest';
import { PHOSPHORUS_PER_FEED_RATIO } from '../laws/chemistry/loads.ts';
import { assess } from './assess.ts';
import { chemicalStates } from './chemical.ts';
import { cleanState } from './dirt/state.ts';
import type { Capacity } from './life/capacity.ts';
import { solvedClean } from './testing/compiled.ts';
import { days, oneBasket, withTank } from './testing/models.ts';

const chemicalOf = (layers: Parameters<typeof oneBasket>[0], change: Parameters<typeof withTank>[1] = {}) =>
  assess(withTank(oneBasket(layers), change)).chemical;

describe('a chemical bed', () => {
  test('holds its mass times its capacity, whatever the tank', () => {
    const [state] = chemicalOf([['zeolite-4mm', 30]]);
    const { media, packing } = oneBasket([['zeolite-4mm', 30]]);
    const medium = media['zeolite-4mm']!;
    const assessment = assess(oneBasket([['zeolite-4mm', 30]]));
    const volume = assessment.beds[0]!.volumeM3;
    const expected = volume * medium.bulkDensityKgPerM3.value * medium.removes!.capacityRatio.value;
    expect(state!.capacityKg).toBeCloseTo(expected, 12);
    expect(Object.values(packing).flat()).toHaveLength(1);
  });

  test('takes phosphate as it is made but for what water changes carry away, and lasts accordingly', () => {
    const model = oneBasket([
      ['ferric-oxide-1mm', 20],
      ['foam-20ppi', 30],
    ]);
    const { chemical, beds, carries } = assess(withTank(model, { waterChangePerS: 0 }));
    const [state] = chemical;
    expect(state!.takenFraction).toBe(1);
    const load = model.tank.feedKgPerS * PHOSPHORUS_PER_FEED_RATIO;
    const closing = (state!.capacityKg * (1 - state!.openFraction)) / carries.day.dayS;
    expect(state!.lastsS).toBeCloseTo(state!.capacityKg / (load + closing), 0);
    expect(beds.some((bed) => bed.id === state!.bed)).toBe(true);
  });

  test('takes less of the ammonium where bacteria have passed the water first, by how little they left', () => {
    const compiled = solvedClean(oneBasket([['zeolite-4mm', 40]]));
    const takenAt = (level: number): number => {
      const capacity: Capacity = {
        oxidisedKgNPerS: 1e-9,
        limit: 'area',
        ammoniaKgNPerM3: 1e-4,
        nitriteKgNPerM3: 0,
        outletOxygenKgPerM3: 0.008,
        byBedKgNPerS: [0],
        ammoniaBySpaceRatio: compiled.spaces.map(() => level),
      };
      return chemicalStates({ compiled, capacity, dirt: cleanState(compiled) })[0]!.takenFraction;
    };
    const { tank } = compiled.model;
    const flow = compiled.network.flow[compiled.beds[0]!.link]!;
    const others = 1e-9 / 1e-4 + tank.volumeM3 * tank.waterChangePerS;
    expect(takenAt(1)).toBeCloseTo(flow / (flow + others), 12);
    expect(takenAt(0.4)).toBeCloseTo((0.4 * flow) / (0.4 * flow + others), 12);
  });

  test('closes as dirt is laid on it, more on a later day, and not at all without feed', () => {
    const model = oneBasket([['carbon-granular-2mm', 40]]);
    const early = assess(model, { day: 5 }).chemical[0]!;
    const late = assess(model, { day: 60 }).chemical[0]!;
    expect(late.openFraction).toBeLessThan(early.openFraction);
    expect(chemicalOf([['carbon-granular-2mm', 40]], { feedKgPerS: 0 })[0]!.openFraction).toBe(1);
  });

  test('never fills where nothing comes to it', () => {
    const [state] = chemicalOf([['carbon-granular-2mm', 40]], { feedKgPerS: 0 });
    expect(state!.lastsS).toBe(Number.POSITIVE_INFINITY);
  });

  test('meets the hardness that water changes bring', () => {
    const model = withTank(oneBasket([['peat-granules-5mm', 40]]), {
      feedKgPerS: 0,
      alkalinityKgPerM3: 0.05,
    });
    const { chemical, dutyPoint } = assess(model);
    const changed = model.tank.volumeM3 * model.tank.waterChangePerS;
    const share = dutyPoint.flowM3PerS / (dutyPoint.flowM3PerS + changed);
    expect(chemical[0]!.takenFraction).toBeGreaterThan(0.99 * share);
    expect(chemical[0]!.lastsS).toBeGreaterThan(days(1));
  });
});

test('media that take nothing out are no chemical beds', () => {
  expect(chemicalOf([['foam-20ppi', 40]])).toEqual([]);
});
