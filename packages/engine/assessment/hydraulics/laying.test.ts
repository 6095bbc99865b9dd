import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { media } from '../../catalogue/media.ts';
import type { Bed, Laying, Model } from '../../model/model.ts';
import { mediumInBed } from '../../packing/mediumInBed.ts';
import { assess } from '../assess.ts';
import { laid } from '../testing/laid.ts';
import { stackCanister } from '../testing/models.ts';
import { bedResistance, voidageOf } from './bed.ts';
import { waterState } from './water.ts';

const foam = stackCanister({ 'basket-1': [['foam-45ppi', 50]] });
const water = waterState(foam.tank);
const place = { water, vesselM: 0.168 };
const bedOf = (medium: string, laying: Laying): Bed => ({ id: 'b', medium, depthM: 0.05, laying });
const linear = (medium: string, laying: Laying): number =>
  bedResistance(mediumInBed(bedOf(medium, laying), media), place).linearPaSPerM2;
const wayShare = (model: Model, way: string): number => {
  const { wayFlowM3PerS, dutyPoint } = assess(model);
  return wayFlowM3PerS[way]! / dutyPoint.flowM3PerS;
};

describe('a bed that lies loose from wall to wall', () => {
  it('is the same whether that is said or not', () => {
    const { layout: _, ...plain } = assess(foam);
    const { layout: __, ...said } = assess(laid(foam, {}));
    expect(said).toMatchObject(plain);
    expect(assess(laid(foam, { pressedRatio: 1, cutGapM: 0 })).dutyPoint).toEqual(plain.dutyPoint);
  });
});

describe('a piece that was cut too small', () => {
  it('lets the more water past the wider its gap, and nothing is lost between gap and bed', () => {
    const shares = [0.0005, 0.001, 0.002, 0.004].map((cutGapM) => {
      const { wayFlowM3PerS, dutyPoint, beds } = assess(laid(foam, { cutGapM }));
      const past = wayFlowM3PerS['cut:basket-1/1']!;
      const besides = wayFlowM3PerS['gap:basket-1']!;
      expect((wayFlowM3PerS['bed:basket-1/1']! + past + besides) / dutyPoint.flowM3PerS).toBeCloseTo(1, 9);
      expect(beds[0]!.volumeM3).toBeCloseTo((0.168 - 2 * cutGapM) ** 2 * 0.05, 12);
      return past / dutyPoint.flowM3PerS;
    });
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares[0]).toBeGreaterThan(0);
  });

  it('is a bypass of its stage, and shares of routes still sum to 1', () => {
    const { bypass, routes } = assess(laid(foam, { cutGapM: 0.003 }));
    expect(bypass.mechanical).toBeGreaterThan(assess(foam).bypass.mechanical);
    expect(routes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(routes.flatMap(({ past }) => past)).toContain('cut:basket-1/1');
  });
});

describe('foam and floss that are pressed', () => {
  it.each(['foam-20ppi', 'foam-45ppi', 'floss-loose'])('%s resists the more the tighter it is', (medium) => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3.8, noNaN: true }), (pressedRatio) => {
        expect(linear(medium, { pressedRatio: 1.05 * pressedRatio })).toBeGreaterThan(
          linear(medium, { pressedRatio }),
        );
      }),
    );
  });

  it('keep their mass and their area for bacteria', () => {
    const free = media['foam-20ppi']!;
    const pressed = mediumInBed(bedOf('foam-20ppi', { pressedRatio: 2 }), media);
    expect(pressed.areaPerM.value).toBeCloseTo(2 * free.areaPerM.value, 9);
    expect(pressed.bulkDensityKgPerM3.value).toBeCloseTo(2 * free.bulkDensityKgPerM3.value, 9);
    expect(free.resistance).toBe(media['foam-20ppi']!.resistance);
  });
});

describe('two media mixed in one bed', () => {
  const mixed = (first: string, medium: string, share: number) =>
    mediumInBed(bedOf(first, { mixed: { medium, share } }), media);

  it('leave less open than either alone where their sizes differ much', () => {
    const both = voidageOf(mixed('gravel-10mm', 'sand-coarse', 0.35));
    expect(both).toBeLessThan(voidageOf(media['gravel-10mm']!));
    expect(both).toBeLessThan(voidageOf(media['sand-coarse']!));
  });

  it('are nearly the first alone with a trace of the second', () => {
    const trace = mixed('gravel-10mm', 'lava-15mm', 1e-6);
    expect(voidageOf(trace)).toBeCloseTo(voidageOf(media['gravel-10mm']!), 4);
    expect(trace.areaPerM.value / media['gravel-10mm']!.areaPerM.value).toBeCloseTo(1, 4);
  });

  it('with carbon in rings take out what the carbon takes, by its share of the mass', () => {
    const both = mixed('ceramic-rings-15mm', 'carbon-granular-2mm', 0.5);
    const alone = media['carbon-granular-2mm']!.removes!.capacityRatio.value;
    expect(both.removes!.substance).toBe('dissolved-organics');
    expect(both.removes!.capacityRatio.value).toBeGreaterThan(0);
    expect(both.removes!.capacityRatio.value).toBeLessThan(alone);
  });
});

describe('a bag about a bed', () => {
  const carbon = stackCanister({ 'basket-1': [['carbon-granular-2mm', 50]] });

  it('costs head by its mesh, the more the closer it is', () => {
    const meshHead = (openFraction: number): number =>
      assess(laid(carbon, { bag: { openFraction, cornerRadiusM: 0 } }))
        .headBudget.filter(({ part, place: at }) => part === 'openings' && at === 'basket-1/1')
        .reduce((sum, { headM }) => sum + headM, 0);
    expect(meshHead(0.3)).toBeGreaterThan(meshHead(0.6));
    expect(meshHead(0.6)).toBeGreaterThan(0);
  });

  it('lets water past in the corners that it does not fill', () => {
    const { wayFlowM3PerS } = assess(laid(carbon, { bag: { openFraction: 0.5, cornerRadiusM: 0.01 } }));
    expect(wayFlowM3PerS['corners:basket-1/1']).toBeGreaterThan(0);
  });
});

describe('a slot at a lip', () => {
  it('takes water past the chamber, none where it is closed', () => {
    const slot = { id: 'lip', chamber: 'basket-1', at: 'tray-lip', widthM: 0.5, lengthM: 0.003 } as const;
    const withSlot = (thicknessM: number): Model => ({
      ...foam,
      filter: { ...foam.filter, otherSlots: [{ ...slot, thicknessM }] },
    });
    expect(wayShare(withSlot(0.002), 'slot:lip')).toBeGreaterThan(wayShare(withSlot(0.001), 'slot:lip'));
    expect(assess(withSlot(0)).dutyPoint).toEqual(assess(foam).dutyPoint);
  });
});
